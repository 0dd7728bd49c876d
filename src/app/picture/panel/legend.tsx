/** What the lines of the picture mean, each with a sample and in words; the scale of the deviation with its numbers. */
import type { ReactNode } from 'react';
import { useWords } from '../../words/use-words.ts';
import type { Colours } from '../colours.ts';
import { deviationScale, stepRows } from '../deviation.ts';
import { type LineStyle, legendOf } from '../layers.ts';
import { deviationColour, SPAN_OFF, TOLERANCE_OFF } from '../paint/paint-ground.ts';
import type { PictureGround } from '../scene.ts';

interface LegendProps {
  readonly ground: PictureGround;
  readonly colours: Colours;
  /** Pixels per mm of what is seen: the magnification follows it. */
  readonly scale: number;
  readonly marked: boolean;
  readonly replayed: boolean;
}

export const Legend = ({ ground, colours, scale, marked, replayed }: LegendProps): ReactNode => {
  const words = useWords().picture;
  return (
    <figcaption className="picture-legend">
      <details open>
        <summary>{words.legend}</summary>
        {ground.chapter === 'proof' && <DeviationLegend ground={ground} colours={colours} scale={scale} />}
        <ul className="legend-rows">
          {legendOf(ground.picture.layers, ground.chapter).map(({ role, pass, style }) => (
            <li key={`${role} ${pass ?? ''}`}>
              {role === 'start hole' ? <Sign colour={colours.ink} crossed={false} /> : <Sample style={style} colours={colours} />}
              {words.line(role, pass)}
            </li>
          ))}
          {replayed && (
            <li>
              <Sample style={{ colour: 'ink', width: 5, dash: [] }} core="paper" colours={colours} />
              {words.overRow}
            </li>
          )}
          <li>
            <Sign colour={colours.ink} crossed />
            {words.datumRow}
          </li>
          {marked && (
            <li>
              <Sign colour={colours.pencil} crossed={false} />
              {words.findingRow}
            </li>
          )}
        </ul>
      </details>
    </figcaption>
  );
};

interface SampleProps {
  readonly style: LineStyle;
  readonly colours: Colours;
  /** A second, thinner line within. */
  readonly core?: 'paper' | undefined;
}

const Sample = ({ style, colours, core }: SampleProps): ReactNode => (
  <svg className="picture-sample" width="40" height="14" aria-hidden="true">
    {(style.fill !== undefined || style.hatched === true) && (
      <rect x="1" y="1" width="38" height="12" style={{ fill: colours[style.fill ?? 'grid'] }} />
    )}
    {style.hatched === true &&
      [0, 8, 16, 24, 32].map((x) => <line key={x} x1={x} y1="13" x2={x + 10} y2="1" style={{ stroke: colours.muted }} />)}
    {style.fill !== undefined || style.hatched === true ? (
      <rect
        x="1"
        y="1"
        width="38"
        height="12"
        style={{ fill: 'none', stroke: colours[style.colour], strokeWidth: style.width }}
        strokeDasharray={style.dash.join(' ')}
      />
    ) : (
      <line
        x1="0"
        y1="7"
        x2="40"
        y2="7"
        style={{ stroke: colours[style.colour], strokeWidth: style.width }}
        strokeDasharray={style.dash.join(' ')}
      />
    )}
    {core !== undefined && <line x1="0" y1="7" x2="40" y2="7" style={{ stroke: colours[core], strokeWidth: style.width - 2 }} />}
  </svg>
);

const Sign = ({ colour, crossed }: { readonly colour: string; readonly crossed: boolean }): ReactNode => (
  <svg className="picture-sample" width="40" height="14" aria-hidden="true">
    <circle cx="20" cy="7" r="5" style={{ fill: 'none', stroke: colour, strokeWidth: 1.5 }} />
    {crossed && <path d="M12 7H28M20 0V14" style={{ stroke: colour, strokeWidth: 1.2 }} />}
  </svg>
);

const DeviationLegend = ({ ground, colours, scale }: Pick<LegendProps, 'ground' | 'colours' | 'scale'>): ReactNode => {
  const words = useWords().picture;
  const shown = deviationScale(ground.deviations, ground.tolerance, scale, SPAN_OFF);
  const { lengths, tolerance } = ground;
  if (shown === undefined) return <p>{words.noDeviation}</p>;
  const inPicture = tolerance * shown.factor * scale <= TOLERANCE_OFF;
  const allowed = `±${lengths.small(tolerance)}`;
  return (
    <div className="picture-deviation">
      <p>
        <strong>{words.deviationTitle(lengths.count(shown.factor))}</strong> {words.deviationUnit(lengths.unit === 'mm' ? 'µm' : 'µin')}
      </p>
      <ol>
        {stepRows(shown)
          .toReversed()
          .map(({ step, from, to }) => (
            <li key={step}>
              <span className="picture-step" style={{ backgroundColor: deviationColour({ colours }, step) }} />
              {words.deviationStep(lengths.signedBare(from), lengths.signedBare(to))}
            </li>
          ))}
      </ol>
      <p className="picture-ends">
        <span>{words.deviationDeep}</span>
        <span>{words.deviationLeft}</span>
      </p>
      {tolerance > 0 && (
        <p>
          {inPicture ? words.toleranceRow(allowed) : words.toleranceFar(allowed, lengths.count(tolerance / shown.most))}
          {shown.most > shown.span * (1 + 1e-9) && ` ${words.deviationBeyond}`}
        </p>
      )}
    </div>
  );
};

/** A picture of a paper as SVG: strokes and labels in mm of the work, y up, with its scale bar. */
import type { ReactNode } from 'react';
import { type Label, type Picture, type Stroke, scaleBar } from '../../picture/strokes.ts';

/** mm on the paper: pictures are as wide as the text. */
const WIDTH = 170;

export const PaperPicture = ({ picture, caption }: { readonly picture: Picture; readonly caption: string }): ReactNode => {
  const { low, high } = picture;
  const [width, height] = [high.x - low.x, high.y - low.y];
  // Line widths and letters are told in mm of the paper, everything else in mm of the work.
  const scale = width / WIDTH;
  const bar = picture.scaled === false ? undefined : scaleBar(width, picture.bar);
  const foot = bar === undefined ? 0 : 8 * scale;
  return (
    <figure>
      <svg viewBox={`${low.x} ${-high.y} ${width} ${height + foot}`} role="img" aria-label={caption}>
        <g transform="scale(1 -1)">
          {numbered(picture.strokes).map(({ number, item }) => (
            <Line key={number} stroke={item} scale={scale} />
          ))}
        </g>
        {numbered(picture.labels).map(({ number, item }) => (
          <Text key={number} label={item} scale={scale} />
        ))}
        {bar === undefined ? null : <ScaleBar x={low.x} y={-low.y + 5 * scale} length={bar.mm} text={bar.text} scale={scale} />}
      </svg>
      <figcaption>{caption}</figcaption>
    </figure>
  );
};

const numbered = <T,>(items: readonly T[]) => items.map((item, number) => ({ number, item }));

/** Greys are shares of the ink, so that a dark page shows them too. */
const ink = (grey: number): string => `color-mix(in srgb, currentColor ${Math.round((1 - grey) * 100)}%, var(--paper, white))`;

const Line = ({ stroke, scale }: { readonly stroke: Stroke; readonly scale: number }): ReactNode => (
  <path
    d={stroke.data}
    style={{ stroke: ink(stroke.grey), fill: stroke.fill === undefined ? 'none' : ink(stroke.fill) }}
    strokeWidth={stroke.width * scale}
    strokeLinejoin="round"
    {...(stroke.dash === undefined ? {} : { strokeDasharray: stroke.dash.map((d) => d * scale).join(' ') })}
  />
);

const Text = ({ label, scale }: { readonly label: Label; readonly scale: number }): ReactNode => {
  const size = 3 * scale;
  const away = label.ring ? size * 1.1 : size * 0.5;
  const x = label.at.x + (label.side === 'right' ? away : 0);
  const y = -label.at.y - (label.side === 'above' ? away : 0);
  return (
    <g>
      {label.ring ? (
        <circle cx={x + size * 0.3} cy={y} r={size * Math.max(0.75, label.text.length * 0.4)} className="ring" strokeWidth={0.2 * scale} />
      ) : null}
      <text
        x={label.ring ? x + size * 0.3 : x}
        y={y}
        fontSize={size}
        dominantBaseline="central"
        textAnchor={label.ring || label.side !== 'right' ? 'middle' : 'start'}
      >
        {label.text}
      </text>
    </g>
  );
};

interface ScaleBarProps {
  readonly x: number;
  readonly y: number;
  /** mm */
  readonly length: number;
  readonly text: string;
  readonly scale: number;
}

const ScaleBar = ({ x, y, length, text, scale }: ScaleBarProps): ReactNode => {
  return (
    <g>
      <path d={`M${x} ${y - scale}V${y}H${x + length}V${y - scale}`} className="bar" strokeWidth={0.3 * scale} />
      <text x={x + length + scale} y={y} fontSize={3 * scale}>
        {text}
      </text>
    </g>
  );
};

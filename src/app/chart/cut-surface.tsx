/** Under the glass: the cut wall after each pass, to one scale; and the walls of other processes at the same thickness. */

import { type ReactNode, useMemo, useRef } from 'react';
import { roundBelow } from '../../picture/round-length.ts';
import { sideBySide } from '../../sequence/sequence.ts';
import type { Numbers } from '../../text/print/reader.ts';
import { useWidth } from '../look/use-width.ts';
import { useWords } from '../words/use-words.ts';
import type { WallView } from '../work/views.ts';
import { craterProfile } from './crater-profile.ts';
import { OtherWalls } from './other-walls.tsx';
import '../look/replay.css';

export interface UnderGlassProps {
  readonly wall: WallView;
  readonly numbers: Pick<Numbers, 'value' | 'length' | 'finish' | 'plain' | 'finishUnit'>;
}

type WallPass = WallView['passes'][number];

/** px: no wall is narrower, between two of them. */
const LEAST = 150;
const GAP = 14;
/** Height of a wall in its width. */
const HIGH = 1.15;

export const UnderGlass = ({ wall, numbers }: UnderGlassProps): ReactNode => {
  const words = useWords().glass;
  const frame = useRef<HTMLDivElement>(null);
  const width = useWidth(frame, 700);
  const columns = Math.max(1, Math.min(wall.passes.length, Math.floor((width + GAP) / (LEAST + GAP)), 4));
  const each = Math.floor((width - (columns - 1) * GAP) / columns);
  const { low, high } = useMemo(() => depthsOf(wall.passes), [wall]);
  const scale = each / (high - low);
  return (
    <section className="under-glass" aria-label={words.title}>
      <h3>{words.title}</h3>
      <p className="fact">{words.lead}</p>
      <div className="glass-walls" ref={frame}>
        {wall.passes.map((pass) => (
          <figure key={pass.number} style={{ width: each }}>
            <Wall pass={pass} low={low} scale={scale} width={each} finishUnit={numbers.finishUnit} numbers={numbers} />
            <figcaption>
              <strong>{words.pass(pass.number)}</strong>
              <dl>
                <dt>{words.ra}</dt>
                <dd>{numbers.finish(pass.ra.value)}</dd>
                <dt>{words.damage}</dt>
                <dd>{numbers.value(pass.damage)}</dd>
                <dt>{words.stock}</dt>
                <dd>{pass.stock.value > 0 ? micrometres(numbers, pass.stock.value) : words.nothing}</dd>
              </dl>
            </figcaption>
          </figure>
        ))}
      </div>
      <Key />
      <p className="table-note">{words.caption}</p>
      {wall.faces.length > 0 && <OtherWalls wall={wall} numbers={numbers} width={width} />}
    </section>
  );
};

const micrometres = (numbers: Pick<Numbers, 'value'>, mm: number): string => {
  const value = mm * 1000;
  return numbers.value({ value, unit: 'µm', low: value * 0.97, high: value * 1.03 });
};

/** Crests stand so far above the mean line of a wall of bowls, in Ra; enough for drawing. */
const CREST = 4;

/** µm from the wanted surface, outwards positive: what all walls together need, with some metal behind. */
const depthsOf = (passes: readonly WallPass[]): { readonly low: number; readonly high: number } => {
  const outside = passes.map((p) => p.stock.value * 1000 + CREST * p.ra.value);
  const inside = passes.map((p) => p.stock.value * 1000 + CREST * p.ra.value - p.damage.value);
  const [high, deep] = [Math.max(...outside), Math.min(...inside, 0)];
  const room = 0.12 * (high - deep) || 1;
  return { low: deep - 2 * room, high: high + room };
};

interface WallProps {
  readonly pass: WallPass;
  readonly low: number;
  /** px in a µm. */
  readonly scale: number;
  readonly width: number;
  readonly finishUnit: 'µm' | 'µin';
  readonly numbers: Pick<Numbers, 'value'>;
}

const Wall = ({ pass, low, scale, width, finishUnit, numbers }: WallProps): ReactNode => {
  const words = useWords().glass;
  const high = width * HIGH;
  const { along, off } = useMemo(() => craterProfile(pass.ra.value, high / scale, pass.number), [pass, high, scale]);
  const x = (depth: number): number => (depth - low) * scale;
  const surface = pass.stock.value * 1000;
  const under = surface + Math.max(...off) - pass.damage.value;
  const wall = sideBySide(along, off);
  const edge = wall.map(([a, out]) => `${x(surface + out).toFixed(1)} ${(a * scale).toFixed(1)}`);
  // The layer follows the bowls a little: it was molten where they are deepest.
  const layer = wall.map(
    ([a, out]) =>
      `${x(Math.min(surface + out, under + 0.35 * (out - Math.max(...off)) + layerLift(off))).toFixed(1)} ${(a * scale).toFixed(1)}`,
  );
  const unit = finishUnit === 'µin' ? 0.0254 : 1;
  const bar = roundBelow((width * 0.3) / scale / unit) * unit;
  return (
    <svg width={width} height={high} viewBox={`0 0 ${width} ${high}`} role="img" aria-label={words.pass(pass.number)}>
      <rect className="glass-gone" width={width} height={high} />
      <path className="glass-layer" d={`M0 0L${edge.join('L')}L0 ${high}Z`} />
      <path className="glass-metal" d={`M0 0L${layer.join('L')}L0 ${high}Z`} />
      {pass.stock.value > 0 && <Stock id={`glass-${pass.number}`} from={x(0)} width={width} high={high} edge={edge} />}
      <path className="glass-edge" d={`M${edge.join('L')}`} />
      <path className="glass-wanted" d={`M${x(0)} 0V${high}`} />
      <path className="glass-bar" d={`M${width - 10 - bar * scale} ${high - 12}v6h${bar * scale}v-6`} />
      <text className="glass-bar-text" x={width - 10} y={high - 16} textAnchor="end">
        {numbers.value({ value: bar, unit: 'µm', low: bar, high: bar })}
      </text>
    </svg>
  );
};

interface StockProps {
  readonly id: string;
  readonly from: number;
  readonly width: number;
  readonly high: number;
  readonly edge: readonly string[];
}

/** Hatched from the wanted surface outwards: the layer beneath it is seen. */
const Stock = ({ id, from, width, high, edge }: StockProps): ReactNode => (
  <>
    <clipPath id={`${id}-metal`}>
      <path d={`M0 0L${edge.join('L')}L0 ${high}Z`} />
    </clipPath>
    <clipPath id={`${id}-outside`}>
      <rect x={from} width={Math.max(0, width - from)} height={high} />
    </clipPath>
    <g clipPath={`url(#${id}-metal)`}>
      <path className="glass-stock" d={hatch(from, width, high)} clipPath={`url(#${id}-outside)`} />
    </g>
  </>
);

/** px between the lines of a hatch. */
const APART = 9;

const hatch = (from: number, width: number, high: number): string =>
  Array.from({ length: Math.ceil((width - from + high) / APART) }, (_, i) => `M${from + i * APART} 0l${-high} ${high}`).join('');

/** Keeps the mean depth of the layer's lower side where its figure says. */
const layerLift = (off: readonly number[]): number => 0.35 * Math.max(...off);

const Key = (): ReactNode => {
  const words = useWords().glass;
  return (
    <ul className="glass-key">
      {(['metal', 'layer', 'stock', 'wanted'] as const).map((part) => (
        <li key={part}>
          <svg width={26} height={14} viewBox="0 0 26 14" aria-hidden="true">
            {part === 'wanted' && <path className="glass-wanted" d="M13 0V14" />}
            {part === 'stock' && <path className="glass-stock" d={hatch(0, 26, 14)} />}
            {(part === 'metal' || part === 'layer') && <rect className={`glass-${part}`} width={26} height={14} />}
          </svg>{' '}
          {part === 'stock' ? words.stockWord : words[part]}
        </li>
      ))}
    </ul>
  );
};

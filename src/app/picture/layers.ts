/** What each chapter shows, and how each kind of line is drawn: colour and dash together, so that neither says it alone. */
import { lastOf, type NonEmpty } from '../../sequence/sequence.ts';
import type { Chapter, LayerView } from '../work/views.ts';
import type { ColourName } from './colours.ts';

export type Role = LayerView['role'];

export interface LineStyle {
  readonly colour: ColourName;
  /** Pixels. */
  readonly width: number;
  /** Pixels drawn and left out in turn; empty for a full line. */
  readonly dash: readonly number[];
  readonly fill?: ColourName;
  /** Filled with slanted lines instead of a colour. */
  readonly hatched?: boolean;
}

const STYLES: Readonly<Record<Exclude<Role, 'pass'>, LineStyle>> = {
  block: { colour: 'muted', width: 1.5, dash: [], fill: 'metal' },
  clamp: { colour: 'muted', width: 1.5, dash: [], hatched: true },
  'metal left': { colour: 'ink', width: 1, dash: [], fill: 'paper' },
  slug: { colour: 'muted', width: 1, dash: [6, 3], fill: 'gone' },
  'comes out': { colour: 'pass-1', width: 1, dash: [1, 3] },
  core: { colour: 'pass-1', width: 1, dash: [1, 3] },
  drawing: { colour: 'ink', width: 1.4, dash: [] },
  'open line': { colour: 'ink', width: 1.4, dash: [12, 3, 3, 3] },
  lead: { colour: 'ink', width: 1.2, dash: [3, 3] },
  tab: { colour: 'ink', width: 4.5, dash: [] },
  'start hole': { colour: 'ink', width: 1.2, dash: [], fill: 'paper' },
};

/** The first pass is a full dark line; each further one is paler and more broken. */
const PASSES: NonEmpty<LineStyle> = [
  { colour: 'pass-1', width: 1.6, dash: [] },
  { colour: 'pass-2', width: 1.4, dash: [12, 4] },
  { colour: 'pass-3', width: 1.4, dash: [7, 4] },
  { colour: 'pass-4', width: 1.4, dash: [4, 4] },
  { colour: 'pass-5', width: 1.4, dash: [1.5, 3.5] },
];

export const styleOf = ({ role, pass = 1 }: Pick<LayerView, 'role' | 'pass'>): LineStyle => {
  if (role !== 'pass') return STYLES[role];
  return PASSES[Math.max(1, pass) - 1] ?? lastOf(PASSES);
};

/** From the lowest to the topmost. */
const FROM_BELOW: readonly Role[] = [
  'block',
  'metal left',
  'slug',
  'comes out',
  'core',
  'drawing',
  'open line',
  'pass',
  'lead',
  'tab',
  'start hole',
  'clamp',
];

const PLAIN: readonly Role[] = ['block', 'drawing', 'open line'];
const SHOWN: Readonly<Record<Chapter, readonly Role[]>> = {
  drawing: ['drawing', 'open line'],
  asked: ['block', 'drawing', 'open line'],
  passes: ['block', 'drawing', 'open line', 'pass'],
  way: ['block', 'drawing', 'open line', 'pass', 'comes out', 'core', 'lead', 'tab', 'start hole', 'clamp'],
  proof: ['block', 'metal left', 'slug', 'open line'],
  hours: ['block', 'drawing', 'open line', 'lead', 'start hole', 'clamp'],
  price: PLAIN,
  papers: ['block', 'drawing', 'open line', 'start hole', 'clamp'],
  log: ['block', 'drawing', 'open line', 'start hole'],
};

/** The layers of a picture that a chapter shows, from the lowest to the topmost. */
export const layersOf = (layers: readonly LayerView[], chapter: Chapter): readonly LayerView[] =>
  layers
    .filter((l) => SHOWN[chapter].includes(l.role))
    .toSorted((a, b) => FROM_BELOW.indexOf(a.role) - FROM_BELOW.indexOf(b.role) || (b.pass ?? 0) - (a.pass ?? 0));

/** Whether start holes bear the names of their contours. */
export const holesNamed = (chapter: Chapter): boolean => ['way', 'hours', 'papers', 'log'].includes(chapter);

export interface LegendRow {
  readonly role: Role;
  readonly pass?: number | undefined;
  readonly style: LineStyle;
}

/** One row for each kind of line that is in the picture now, passes in the order of cutting. */
export const legendOf = (layers: readonly LayerView[], chapter: Chapter): readonly LegendRow[] =>
  layersOf(layers, chapter)
    .map((l) => ({ role: l.role, pass: l.pass, style: styleOf(l) }))
    .toSorted((a, b) => FROM_BELOW.indexOf(a.role) - FROM_BELOW.indexOf(b.role) || (a.pass ?? 0) - (b.pass ?? 0));

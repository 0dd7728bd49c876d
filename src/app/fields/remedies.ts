/** What the page can do against a finding: fill in the value that its remedy names, or lead to the inputs that can help. */
import type { Numbers } from '../../text/print/reader.ts';
import type { Input } from '../state/input.ts';
import { labelOf } from '../words/fields.ts';
import type { Words } from '../words/words-for.ts';
import type { FindingView } from '../work/views.ts';
import { changeOf, refused, saidOf, valueText } from './field-value.ts';
import { fieldOf, fieldOfFinding } from './fields.ts';
import type { Lists } from './lists.ts';
import { shapeFieldAt } from './shape-field.ts';

const HELPING: Readonly<Record<string, readonly string[]>> = {
  'corner-too-tight': ['insideCorner', 'ease', 'wire'],
  'corner-too-round': ['insideCorner', 'ease', 'wire'],
  'slot-too-narrow': ['wire'],
  'finish-out-of-reach': ['finish', 'passes'],
  'tolerance-out-of-reach': ['tolerance', 'passes'],
  'metal-left': ['tolerance'],
  'contour-gouged': ['tolerance'],
  'wire-unknown': ['wire'],
  'wire-out-of-range': ['wire'],
  'wire-not-for-machine': ['wire'],
  'no-wire-in-stock': ['wire'],
  'height-out-of-range': ['height'],
  'stack-too-high': ['stack', 'height'],
  'material-unknown': ['material'],
  'material-not-conducting': ['material'],
  'passes-too-many': ['passes'],
  'offsets-not-for-passes': ['offsets', 'passes'],
  'offset-below-wire': ['offsets'],
  'hole-does-not-fit': ['startHole'],
  'hole-too-fine': ['startHole', 'wire'],
  'no-room-for-lead': ['startHole', 'wire'],
  'outside-stock': ['size'],
  'layer-unknown': ['layers'],
  'no-loop': ['layers', 'join'],
  'no-closed-contour': ['layers', 'join'],
  'nothing-to-cut': ['layers', 'outline'],
  'ease-failed': ['ease'],
  'rates-not-yet': ['date'],
};

/** Paths of fields that are on the sheet: what the remedy names, the finding's own, then what helps against its kind. */
export const helpingFields = ({ code, place, change }: Pick<FindingView, 'code' | 'place' | 'change'>): readonly string[] => {
  const own = place?.kind === 'field' ? fieldOfFinding(place.path)?.path : undefined;
  const named = change && fieldOf(change.field)?.path;
  return [...new Set([named, own, ...(HELPING[code] ?? [])].filter((path) => path !== undefined))];
};

/** A value that a remedy fills in: what the button says, the step's name, what it changes in the job. */
export interface Filling {
  readonly path: string;
  readonly said: string;
  readonly step: string;
  readonly change: Input;
}

interface Means {
  readonly input: Input;
  readonly numbers: Numbers;
  readonly lists: Lists;
  readonly words: Words;
}

/** Nothing where the remedy names no value, no field of the sheet, or a value that the job would not take. */
export const fillingOf = ({ change }: Pick<FindingView, 'change'>, { input, numbers, lists, words }: Means): Filling | undefined => {
  if (change?.value === undefined) return undefined;
  const field = fieldOf(change.field) ?? shapeFieldAt(change.field, input, numbers, words.shape);
  if (field === undefined) return undefined;
  const wanted = field.kind === 'texts' ? withThose(saidOf(field, input), change.value) : change.value;
  const changed = changeOf(field, wanted);
  if (refused(field, input, changed, words) !== undefined) return undefined;
  const [label, value] = [labelOf(field.path), valueText(field, wanted, numbers, lists, words)];
  return { path: field.path, said: words.sheet.setField(label, value), step: words.sheet.step(label, value), change: changed };
};

/** A list grows by what is named: what stood in it answered another question. */
const withThose = (standing: unknown, named: unknown): readonly unknown[] => [...new Set([standing ?? [], named].flat())];

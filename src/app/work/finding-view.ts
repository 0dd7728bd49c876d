/** Findings with the chapter whose line they stand beside and their place in the picture, mm. */

import type { Finding } from '../../text/finding.ts';
import type { Text } from '../../text/text.ts';
import type { Chapter, FindingView, FoundView } from './views.ts';

/** Fields of the job file that belong to a chapter of their own; the others are asked in 'asked'. */
const OF_FIELD: Readonly<Record<string, Chapter>> = {
  wire: 'passes',
  finish: 'passes',
  tolerance: 'passes',
  passes: 'passes',
  offsets: 'passes',
  overrides: 'way',
  order: 'way',
  datum: 'way',
  kept: 'way',
  start: 'way',
  open: 'way',
  core: 'way',
  holes: 'way',
  clamps: 'way',
  run: 'hours',
  startAt: 'hours',
  shifts: 'hours',
  spoolLeft: 'hours',
  quantity: 'price',
  rates: 'price',
};

/** `millimetres` in one unit of the drawing, in which findings point; `codes` are those of the drawing itself. */
export const findingViews = (
  findings: readonly Finding[],
  drawn: ReadonlySet<Finding>,
  millimetres: number,
): readonly FindingView<Text>[] =>
  findings.map((f, i) => ({
    ...foundView(f),
    id: `f${i + 1}`,
    chapter: chapterOf(f, drawn),
    at:
      f.place?.kind === 'spot'
        ? { x: f.place.x * millimetres, y: f.place.y * millimetres, reach: (f.place.reach ?? 0) * millimetres, loop: f.place.loop }
        : undefined,
  }));

/** A finding as it crosses to the page, its words not printed yet. */
export const foundView = ({ code, severity, text, place, done, remedy, stands }: Finding): FoundView<Text> => ({
  code,
  severity,
  sentence: text,
  place,
  done,
  remedy: remedy?.text,
  change: remedy?.field === undefined ? undefined : { field: remedy.field, value: remedy.value },
  stands,
});

const chapterOf = (finding: Finding, drawn: ReadonlySet<Finding>): Chapter => {
  if (drawn.has(finding)) return 'drawing';
  const { place } = finding;
  if (place?.kind === 'field') return OF_FIELD[place.path.split('.')[0] ?? ''] ?? 'asked';
  if (place?.kind === 'line') return 'proof';
  if (place?.kind === 'byte') return 'drawing';
  if (place?.kind === 'spot') return 'way';
  return 'passes';
};

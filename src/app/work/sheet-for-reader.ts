/** The sheet in the words of its reader: every text of the core printed in his language, units and number marks. */

import type { Comparison } from '../../result/comparison.ts';
import { print, printedParts, printPlain } from '../../text/print/print.ts';
import type { Reader } from '../../text/reader.ts';
import type { Text } from '../../text/text.ts';
import type { Corrected, Judged } from './job-worker.ts';
import type {
  FindingView,
  FoundView,
  MarkedSentence,
  PictureView,
  ScheduleView,
  SentenceMark,
  SentencePart,
  Sheet,
  SheetInTexts,
  Shown,
  TableView,
  WallView,
  WhyTree,
} from './views.ts';

export type Tell = (said: Text) => string;

/** The program is left: it speaks as its control does. */
export const printedSheet = (sheet: SheetInTexts, reader: Reader): Sheet => printedIn(sheet, reader, tellIn(reader));

/** Every text printed for a reader. */
export const tellIn =
  (reader: Reader): Tell =>
  (said) =>
    print(said, reader);

const printedIn = (sheet: SheetInTexts, reader: Reader, tell: Tell): Sheet => ({
  ...sheet,
  sentence: printedSentence(sheet.sentence, reader, tell),
  findings: sheet.findings.map((f) => toldFinding(f, tell)),
  assumed: sheet.assumed.map(({ text, field }) => ({ text: tell(text), field })),
  figures: sheet.figures.map((f) => printedShown(f, tell)),
  ...tables(sheet, tell),
  picture: sheet.picture && printedPicture(sheet.picture, tell),
  toleranceUse: sheet.toleranceUse && tell(sheet.toleranceUse),
  schedule: sheet.schedule && printedSchedule(sheet.schedule, tell),
  wall: sheet.wall && toldWall(sheet.wall, tell),
  shape: sheet.shape && {
    name: tell(sheet.shape.name),
    sizes: sheet.shape.sizes.map((s) => ({ ...s, shown: printedShown(s.shown, tell) })),
  },
});

export const printedSchedule = (schedule: ScheduleView<Text>, tell: Tell): ScheduleView => ({
  ...schedule,
  startText: tell(schedule.startText),
  finishText: tell(schedule.finishText),
  events: schedule.events.map((e) => ({ ...e, what: tell(e.what), plain: e.plain ?? printPlain(e.what), timeOfDay: tell(e.timeOfDay) })),
});

/** What fills a marked hole stands together, and so do the words between two of them. */
const printedSentence = ({ text, marks }: MarkedSentence, reader: Reader, tell: Tell): readonly SentencePart[] => {
  const stretches: { text: string; readonly hole: string | undefined }[] = [];
  for (const part of printedParts(text, reader)) {
    const hole = part.holes.find((h) => Object.hasOwn(marks, h));
    const last = stretches.at(-1);
    if (last !== undefined && last.hole === hole) last.text += part.text;
    else stretches.push({ text: part.text, hole });
  }
  return stretches.map((s) => printedPartOfSheet(s.text, s.hole === undefined ? undefined : marks[s.hole], tell));
};

const printedPartOfSheet = (text: string, mark: SentenceMark<Text> | undefined, tell: Tell): SentencePart => {
  if (mark === undefined) return { kind: 'words', text };
  return mark.kind === 'result' ? { ...mark, text, shown: printedShown(mark.shown, tell) } : { ...mark, text };
};

const printedShown = (shown: Shown<Text>, tell: Tell): Shown => ({ ...shown, name: tell(shown.name) });

const TABLES = ['passes', 'wires', 'contours', 'hours', 'costs', 'breaks', 'budget', 'sizes', 'others'] as const;

const tables = (sheet: SheetInTexts, tell: Tell): Record<(typeof TABLES)[number], TableView | undefined> =>
  Object.fromEntries(
    TABLES.map((key) => {
      const table = sheet[key];
      return [key, table && printedTable(table, tell)];
    }),
  ) as Record<(typeof TABLES)[number], TableView | undefined>;

export const printedTable = (table: TableView<Text>, tell: Tell): TableView => ({
  ...table,
  columns: table.columns.map((c) => ({ ...c, title: tell(c.title) })),
  rows: table.rows.map((row) => row.map((cell) => (isShown(cell) ? printedShown(cell, tell) : tell(cell)))),
  note: table.note && tell(table.note),
});

const isShown = (cell: Text | Shown<Text>): cell is Shown<Text> => typeof cell === 'object' && 'key' in cell && 'unit' in cell;

const printedFinding = ({ code, severity, sentence, place, done, remedy, change, stands }: FoundView<Text>, tell: Tell): FoundView => ({
  code,
  severity,
  sentence: tell(sentence),
  place,
  done: done && tell(done),
  remedy: remedy && tell(remedy),
  change,
  stands,
});

const toldFinding = (finding: FindingView<Text>, tell: Tell): FindingView => ({
  id: finding.id,
  chapter: finding.chapter,
  at: finding.at,
  ...printedFinding(finding, tell),
});

const printedPicture = (picture: PictureView<Text>, tell: Tell): PictureView => ({
  ...picture,
  contours: picture.contours.map((c) => ({
    ...c,
    piece: c.piece && tell(c.piece),
    state: c.state && tell(c.state),
    tab: c.tab && { ...c.tab, reason: tell(c.tab.reason) },
  })),
});

const toldWall = (wall: WallView<Text>, tell: Tell): WallView => ({
  ...wall,
  passes: wall.passes.map((p) => ({
    ...p,
    ra: printedShown(p.ra, tell),
    damage: printedShown(p.damage, tell),
    stock: printedShown(p.stock, tell),
    gap: printedShown(p.gap, tell),
  })),
  faces: wall.faces.map((f) => ({ ...f, name: tell(f.name), sentence: tell(f.sentence) })),
  without: wall.without.map(tell),
});

export const printedCalculation = (tree: WhyTree<Text>, tell: Tell): WhyTree => ({
  ...tree,
  shown: printedShown(tree.shown, tell),
  source: tell(tree.source),
  formula: tree.formula && tell(tree.formula),
  warnings: tree.warnings.map(tell),
  from: tree.from.map((f) => printedCalculation(f, tell)),
});

/** What-ifs with what changes and why something cannot be tried. */
export const printedComparison = (comparison: Comparison, tell: Tell): Comparison<string> =>
  comparison.kind === 'cannot'
    ? { ...comparison, reason: tell(comparison.reason) }
    : {
        ...comparison,
        rows: comparison.rows.map((row) =>
          row.kind === 'can'
            ? { ...row, sentence: tell(row.sentence) }
            : { ...row, sentence: tell(row.sentence), reason: tell(row.reason) },
        ),
      };

export const toldJudged = (judged: Judged<Text>, tell: Tell): Judged =>
  judged.kind === 'cannot'
    ? { ...judged, sentence: tell(judged.sentence) }
    : { ...judged, report: judged.report.map(tell), findings: judged.findings.map((f) => printedFinding(f, tell)) };

export const toldCorrected = (corrected: Corrected<Text>, tell: Tell): Corrected => {
  if (corrected.kind === 'corrected') return corrected;
  if (corrected.kind === 'cannot') return { ...corrected, sentence: tell(corrected.sentence) };
  return { ...corrected, findings: corrected.findings.map((f) => printedFinding(f, tell)) };
};

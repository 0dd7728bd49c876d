/** The sheet in the words of its reader: every sentence and cell of the core in the units and with the number marks that were chosen. */
import type { Comparison } from '../../result/comparison.ts';
import type { Judged } from './job-worker.ts';
import type { FindingView, PictureView, Sheet, TableView, WallView, WhyTree } from './views.ts';

export type Tell = (text: string) => string;

/** Results within the answer sentence are left: they are told one by one. So is the program, which speaks as its control does. */
export const toldSheet = (sheet: Sheet, tell: Tell): Sheet => ({
  ...sheet,
  sentence: sheet.sentence.map((part) => (part.kind === 'words' ? { ...part, text: tell(part.text) } : part)),
  findings: sheet.findings.map((f) => toldFinding(f, tell)),
  assumed: sheet.assumed.map(tell),
  ...tables(sheet, tell),
  ...(sheet.picture === undefined ? {} : { picture: toldPicture(sheet.picture, tell) }),
  ...(sheet.clock === undefined
    ? {}
    : { clock: { ...sheet.clock, events: sheet.clock.events.map((e) => ({ ...e, what: tell(e.what), plain: e.plain ?? e.what })) } }),
  ...(sheet.wall === undefined ? {} : { wall: toldWall(sheet.wall, tell) }),
  ...(sheet.shape === undefined
    ? {}
    : {
        shape: {
          name: tell(sheet.shape.name),
          sizes: sheet.shape.sizes.map((s) => ({ ...s, shown: { ...s.shown, name: tell(s.shown.name) } })),
        },
      }),
});

const TABLES = ['passes', 'wires', 'contours', 'hours', 'costs', 'breaks', 'budget', 'sizes', 'others'] as const;

const tables = (sheet: Sheet, tell: Tell): Partial<Pick<Sheet, (typeof TABLES)[number]>> =>
  Object.fromEntries(
    TABLES.flatMap((key) => {
      const table = sheet[key];
      return table === undefined ? [] : [[key, toldTable(table, tell)]];
    }),
  );

export const toldTable = (table: TableView, tell: Tell): TableView => ({
  ...table,
  rows: table.rows.map((row) => row.map((cell) => (typeof cell === 'string' ? tell(cell) : { ...cell, name: tell(cell.name) }))),
  ...(table.note === undefined ? {} : { note: tell(table.note) }),
});

const toldFinding = (finding: FindingView, tell: Tell): FindingView => ({
  ...finding,
  sentence: tell(finding.sentence),
  ...(finding.done === undefined ? {} : { done: tell(finding.done) }),
  ...(finding.remedy === undefined ? {} : { remedy: tell(finding.remedy) }),
});

const toldPicture = (picture: PictureView, tell: Tell): PictureView => ({
  ...picture,
  contours: picture.contours.map((c) => ({
    ...c,
    ...(c.piece === undefined ? {} : { piece: tell(c.piece) }),
    ...(c.tab === undefined ? {} : { tab: { ...c.tab, reason: tell(c.tab.reason) } }),
  })),
});

const toldWall = (wall: WallView, tell: Tell): WallView => ({
  ...wall,
  faces: wall.faces.map((f) => ({ ...f, sentence: tell(f.sentence) })),
  without: wall.without.map(tell),
});

export const toldWhy = (tree: WhyTree, tell: Tell): WhyTree => ({
  ...tree,
  shown: { ...tree.shown, name: tell(tree.shown.name) },
  warnings: tree.warnings.map(tell),
  from: tree.from.map((f) => toldWhy(f, tell)),
});

/** What-ifs with what changes and why something cannot be tried. */
export const toldComparison = (comparison: Comparison, tell: Tell): Comparison =>
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

export const toldJudged = (judged: Judged, tell: Tell): Judged =>
  judged.kind === 'cannot'
    ? { ...judged, sentence: tell(judged.sentence) }
    : {
        ...judged,
        text: tell(judged.text),
        findings: judged.findings.map((f) => ({
          ...f,
          sentence: tell(f.sentence),
          ...(f.remedy === undefined ? {} : { remedy: tell(f.remedy) }),
        })),
      };

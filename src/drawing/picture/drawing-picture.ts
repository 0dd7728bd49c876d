/** Draws a drawing as an SVG picture: to scale, with a scale bar, its loops told apart by role, and its findings numbered. */

import { boundsOfChain, mergedBounds } from '../../geometry/area.ts';
import type { Bounds } from '../../geometry/measure.ts';
import { scaleBar } from '../../picture/scale-bar.ts';
import type { View } from '../../picture/svg.ts';
import { escaped, INK, PAPER, pathOf, px, QUIET, text } from '../../picture/svg.ts';
import { count, list, number, type Part, term, upTo } from '../../text/part.ts';
import { print } from '../../text/print/print.ts';
import { HOUSE, type Reader } from '../../text/reader.ts';
import { only, phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import type { Drawing } from '../drawing.ts';
import { findingsOnSheet } from './findings-on-sheet.ts';
import { loopNames } from './loop-names.ts';
import { keyOf, rolesOf } from './roles.ts';

const WIDTH = 1000;
const MARGIN = 40;
/** Room for the drawing itself, in px: never flatter than this, never taller. */
const LOWEST = 120;
const TALLEST = 760;

/** The whole picture as the text of an SVG file; `title` is written at its head, the file's name for instance. */
export const drawingPicture = (drawing: Drawing, title = '', reader: Reader = HOUSE): string => {
  const heading = title === '' ? print(words.title, reader) : title;
  const view = viewOf(boundsOfDrawing(drawing));
  const roles = rolesOf(drawing);
  const field = roles.flatMap(({ style, chains }) => chains.map((chain) => `<path d="${pathOf(chain, view)}" ${style}/>`));
  const marks = drawing.marks.map(({ at }) => {
    const [x, y] = view.at(at);
    return `<path d="M${px(x - 4)} ${px(y)}h8M${px(x)} ${px(y - 4)}v8" fill="none" stroke="${INK}" stroke-width="0.8"/>`;
  });
  const bar = scaleBar(view, drawing.units, MARGIN, view.bottom + 34, reader);
  const key = keyOf(roles, drawing.marks.length > 0, view.bottom + (view.empty ? 34 : 66), { left: MARGIN, right: WIDTH - MARGIN, reader });
  const findings = findingsOnSheet(drawing, view, key.bottom + 26, { left: MARGIN, right: WIDTH - MARGIN, reader });
  const height = Math.ceil(findings.bottom + MARGIN / 2);
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDTH} ${height}" width="${WIDTH}" height="${height}" font-family="DejaVu Sans, Helvetica, Arial, sans-serif">`,
    `<title>${escaped(heading)}</title>`,
    `<rect width="${WIDTH}" height="${height}" fill="${PAPER}"/>`,
    text(MARGIN, 34, heading, { size: 16, colour: INK }),
    text(MARGIN, 54, print(subtitleOf(drawing, view), reader), { size: 11, colour: QUIET }),
    '<g stroke-linejoin="round" stroke-linecap="round">',
    ...field,
    ...marks,
    '</g>',
    ...loopNames(drawing, view),
    view.empty ? text(MARGIN, view.bottom, print(words.nothing, reader), { size: 12, colour: QUIET }) : '',
    bar,
    key.svg,
    findings.svg,
    '</svg>',
    '',
  ].join('\n');
};

const subtitleOf = (drawing: Drawing, view: View): Text => {
  if (drawing.state === 'refused') return words.notRead;
  const hidden = drawing.loops.filter((l) => l.hidden).length;
  const findings = drawing.findings.reduce((n, f) => n + (f.stands ?? 1), 0);
  return only(
    list(
      [
        ...(view.empty ? [] : [sizeOf(drawing, view)]),
        count(drawing.loops.length - hidden, 'loop'),
        ...(hidden > 0 ? [words.hidden(hidden)] : []),
        ...(drawing.openChains.length > 0 ? [count(drawing.openChains.length, 'open chain')] : []),
        count(findings, 'finding'),
      ],
      'dot',
    ),
  );
};

/** In the unit of the drawing, whoever reads it. */
const sizeOf = ({ units: { name, millimetres, basis } }: Drawing, { wide, high }: View): Text => {
  const [across, up] = [wide, high].map((size) => number(size / millimetres, upTo(3))) as [Part, Part];
  return (basis === 'assumed' ? words.sizeAssumed : words.size)(across, up, name);
};

const words = phrases('drawing-picture', {
  title: say`Drawing`,
  notRead: say`The file was not read.`,
  nothing: say`Nothing is drawn.`,
  hidden: (hidden: number) => say`${{ hidden: count(hidden) }} hidden`,
  size: (wide: Part, high: Part, unit: string) => say`${{ wide }} by ${{ high }} ${{ unit: term(unit) }}`,
  sizeAssumed: (wide: Part, high: Part, unit: string) => say`${{ wide }} by ${{ high }} ${{ unit: term(unit) }} (unit assumed)`,
});

const boundsOfDrawing = (drawing: Drawing): Bounds =>
  mergedBounds([
    ...drawing.loops.map((l) => boundsOfChain(l.contour)),
    ...drawing.openChains.map((c) => boundsOfChain(c.path)),
    ...drawing.marks.map(({ at }) => ({ minX: at.x, minY: at.y, maxX: at.x, maxY: at.y })),
  ]);

/** The view that fits the box into the sheet, y upwards. */
const viewOf = (b: Bounds): View => {
  const empty = !(b.maxX >= b.minX);
  const [wide, high] = empty ? [0, 0] : [b.maxX - b.minX, b.maxY - b.minY];
  const room = WIDTH - 2 * MARGIN - 40;
  const scale = Math.min(room / Math.max(wide, 1e-9), TALLEST / Math.max(high, 1e-9));
  const drawn = empty ? 24 : Math.max(LOWEST, high * scale);
  const top = 84;
  const left = (WIDTH - wide * scale) / 2;
  const middle = top + drawn / 2;
  return {
    empty,
    wide,
    high,
    scale: empty ? 1 : scale,
    top,
    bottom: top + drawn,
    at: (p) => (empty ? [WIDTH / 2, middle] : [left + (p.x - b.minX) * scale, middle - (p.y - (b.minY + b.maxY) / 2) * scale]),
  };
};

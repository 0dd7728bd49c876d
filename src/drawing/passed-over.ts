/** Tells what kinds of entity were met and not drawn: harmless ones in a note, those that may be outlines in a warning. */

import { firstItem } from '../sequence/sequence.ts';
import type { Place } from '../text/finding.ts';
import { count, list, type Part, term } from '../text/part.ts';
import { phrases, say } from '../text/say.ts';
import type { Ledger } from './ledger.ts';

export const passedOverFindings = (told: Ledger, passedOver: ReadonlyMap<string, number>, firstPlace: (type: string) => Place): void => {
  const types = [...passedOver.keys()];
  const harmless = types.filter((type) => HARMLESS.has(type));
  const shapes = types.filter((type) => !HARMLESS.has(type));
  const counted = (types: readonly string[]): Part => list(types.map((type) => words.some(passedOver.get(type) ?? 0, type)));
  if (harmless.length > 0)
    told.add('entities-passed-over', say`Passed over, since nothing is cut along them: ${{ kinds: counted(harmless) }}.`, {
      place: firstPlace(firstItem(harmless)),
    });
  if (shapes.length > 0)
    told.add('shapes-not-read', say`The drawing has shapes of kinds not supported here: ${{ kinds: counted(shapes) }}.`, {
      place: firstPlace(firstItem(shapes)),
      done: say`They were left out.`,
      remedy: say`If they belong to the part, convert them to lines, arcs or polylines and save again.`,
    });
};

export const isHarmless = (type: string): boolean => HARMLESS.has(type);

/** Kinds that explain a drawing or hold its views, and never bound a part. */
const HARMLESS: ReadonlySet<string> = new Set([
  'TEXT',
  'MTEXT',
  'RTEXT',
  'ARCALIGNEDTEXT',
  'ATTRIB',
  'ATTDEF',
  'DIMENSION',
  'ARC_DIMENSION',
  'LARGE_RADIAL_DIMENSION',
  'LEADER',
  'MULTILEADER',
  'MLEADER',
  'TOLERANCE',
  'HATCH',
  'INSERT of a hatch or dimension block',
  'INSERT of an arrowhead',
  'VIEWPORT',
  'IMAGE',
  'WIPEOUT',
  'XLINE',
  'RAY',
  'LIGHT',
  'SUN',
  'CAMERA',
  'ACAD_TABLE',
  'TABLE',
  'GEOPOSITIONMARKER',
  'PDFUNDERLAY',
  'DWFUNDERLAY',
  'DGNUNDERLAY',
  'UNDERLAY',
  'OLEFRAME',
  'OLE2FRAME',
  'SEQEND',
  'text',
  'flowRoot',
  'image',
  'foreignObject',
]);

const words = phrases('kinds-of-entity', {
  some: (n: number, type: string) => say`${{ n: count(n) }} ${{ type: term(type) }}`,
});

/** Lays the pieces of a nest file into its plate, weighs and prices them, and makes the job that cuts them out. */

import { ratesOn } from '../../estimate/rates.ts';
import type { Contour } from '../../geometry/contour.ts';
import { nest, placedContours } from '../../nest/lay/nest.ts';
import type { LaidNest } from '../../nest/nest-outcome.ts';
import { type NestPiece, type NestQuestion, USUAL_WORK } from '../../nest/nest-question.ts';
import { stackOf } from '../../nest/stack.ts';
import type { Material } from '../../physics/material/material.ts';
import { massOf } from '../../physics/material/piece-mass.ts';
import { workHeight } from '../../physics/work-height.ts';
import type { Figure } from '../../quantity/figure.ts';
import type { LaidPiece, NestFacts, PieceRow } from '../../result/nest-facts.ts';
import { firstItem, itemOf } from '../../sequence/sequence.ts';
import type { Finding } from '../../text/finding.ts';
import { name as asName } from '../../text/part.ts';
import { only, phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import type { NestFile } from '../files/nest-file.ts';
import { rectangleOf } from '../files/setup-file.ts';
import { materialOf } from '../job-material.ts';
import { metalOf, shareOf } from '../pipeline/metal.ts';
import type { Shop } from '../shop.ts';
import { type DrawingOf, type NestPieces, piecesOf } from './nest-pieces.ts';

export interface NestRun {
  readonly file: NestFile;
  /** What the nest is called where the file says nothing. */
  readonly name: string;
  /** What was found on reading its files. */
  readonly notes?: readonly Finding[] | undefined;
  readonly drawingOf: DrawingOf;
  readonly shop: Shop;
  /** ISO 8601 */
  readonly day: string;
  /** Told now and then; 'stop' ends the search with the best layout so far. */
  readonly progress?: NestQuestion['progress'] | undefined;
}

export type NestAnswer =
  | { readonly kind: 'laid'; readonly facts: NestFacts }
  /** Nothing can be laid as asked. */
  | { readonly kind: 'refused'; readonly findings: readonly Finding[] }
  | { readonly kind: 'bad input'; readonly findings: readonly Finding[] };

export const runNest = (run: NestRun): NestAnswer => {
  const { file, shop } = run;
  const read = piecesOf(file, run.drawingOf);
  if (read.kind === 'bad') return { kind: 'bad input', findings: read.findings };
  const found = materialOf(file.material, shop);
  if (found.kind === 'unknown') return { kind: 'bad input', findings: [found.finding] };
  if (found.kind === 'non-conductor') return { kind: 'refused', findings: [found.finding] };
  const sheets = stackFor(file, shop);
  if (sheets.kind === 'refused') return { kind: 'refused', findings: sheets.findings };
  const laid = nest(questionOf(run, read));
  if (laid.kind === 'refused') return { kind: 'refused', findings: laid.findings };
  const nested = file.inHoles ? laid : openingsTaken(laid, read.pieces);
  const findings = [...(run.notes ?? []), ...read.findings, ...found.findings, ...laid.findings, ...sheets.findings];
  return { kind: 'laid', facts: factsOf(run, read, found.material, { laid: nested, stack: sheets.stack }, findings) };
};

/** Openings of pieces are laid full only when asked: a part that lies in the slug of another has to be cut and taken out first. */
const questionOf = ({ file, progress }: NestRun, { pieces, plate, holes }: NestPieces): NestQuestion => ({
  plate,
  border: file.border,
  forbidden: [...holes, ...file.forbidden.map((c) => rectangleOf(c.low, c.high))],
  pieces: file.inHoles ? pieces : pieces.map(({ holes: _, ...piece }) => piece),
  web: file.web,
  manner: file.manner,
  work: Math.round(file.effort * USUAL_WORK),
  progress,
});

/** Pieces were laid as if they had no openings: what is missing in them is no metal. */
const openingsTaken = (laid: LaidNest, pieces: readonly NestPiece[]): LaidNest => {
  const own = new Map(pieces.map((p) => [p.id, metalOf([p.outline, ...(p.holes ?? [])])]));
  const metalArea = laid.placed.reduce((sum, p) => sum + itemOf(own, p.piece), 0);
  const wanted = pieces.reduce((sum, p) => sum + p.quantity * itemOf(own, p.id), 0);
  return { ...laid, metalArea, yield: metalArea / laid.plateArea, bound: Math.min(laid.bound, wanted / laid.plateArea) };
};

type Sheets =
  | { readonly kind: 'stacked'; readonly stack: NestFacts['stack']; readonly findings: readonly Finding[] }
  | { readonly kind: 'refused'; readonly findings: readonly Finding[] };

const stackFor = ({ sheets, thickness }: NestFile, shop: Shop): Sheets => {
  const asked = { thickness, flatness: sheets.flatness, burr: sheets.burr, tallest: firstItem(shop.machines).height };
  const most = stackOf(asked);
  if (most.kind === 'refused') return most;
  const wanted = stackOf({ ...asked, wanted: sheets.stack ?? 1 });
  if (wanted.kind === 'refused') return wanted;
  const { height, gap } = wanted;
  return { kind: 'stacked', stack: { sheets: wanted.sheets, most: most.sheets, height, gap }, findings: wanted.findings };
};

const factsOf = (
  { file, name, shop, day }: NestRun,
  { pieces, plate, holes }: NestPieces,
  material: Material,
  { laid, stack }: { readonly laid: LaidNest; readonly stack: NestFacts['stack'] },
  findings: readonly Finding[],
): NestFacts => {
  const onPlate = laidPieces(pieces, laid);
  const area = (contours: readonly Contour[]): number => metalOf(contours);
  const height = workHeight(file.thickness);
  const weigh = (key: string, what: Text, mm2: number): Figure => massOf({ key, what, area: mm2, height, density: material.density });
  const plateMass = weigh('nest.plate', names.plate, area([plate, ...holes]));
  const metal = onPlate.reduce((sum, p) => sum + area([p.outline, ...p.holes]), 0);
  const onDay = ratesOn(shop.rates, day);
  const rates = onDay.kind === 'rates' ? onDay.rates : undefined;
  const price = file.suppliedBy === 'customer' ? undefined : (file.price ?? rates?.materialPrices?.[file.material]);
  const platePrice =
    price === undefined ? undefined : shareOf('nest.plate.price', say('nest.plate-price')`price of the plate`, plateMass, price);
  return {
    name: file.name ?? name,
    day,
    material: material.name,
    thickness: file.thickness,
    border: file.border,
    web: file.web,
    plate,
    plateHoles: holes,
    forbidden: file.forbidden,
    pieces: onPlate,
    rows: pieces.map((piece): PieceRow => {
      const own = area([piece.outline, ...(piece.holes ?? [])]);
      const count = laid.placed.filter((p) => p.piece === piece.id).length;
      const each = weigh(`nest.piece.${piece.id}`, only(asName(piece.id)), own);
      const perKg = price === undefined || metal === 0 ? undefined : (price * plateMass.value * own) / (metal * each.value);
      return {
        piece: piece.id,
        laid: count,
        left: piece.quantity - count,
        mass: each,
        share: perKg === undefined ? undefined : shareOf(`nest.piece.${piece.id}.price`, names.share(piece.id), each, perKg),
      };
    }),
    nest: laid,
    plateMass,
    piecesMass: weigh('nest.pieces', names.pieces, metal),
    scrapMass: weigh('nest.scrap', names.scrap, Math.max(0, area([plate, ...holes]) - metal)),
    platePrice,
    suppliedBy: file.suppliedBy,
    currency: platePrice === undefined || rates === undefined ? undefined : rates.currency,
    stack,
    findings,
  };
};

/** In the order of the file, so that the numbers of one kind follow each other. */
const laidPieces = (pieces: readonly NestPiece[], { placed }: LaidNest): readonly LaidPiece[] => {
  const byId = new Map(pieces.map((piece) => [piece.id, piece]));
  return placed.map((p, i) => ({
    number: i + 1,
    piece: p.piece,
    copy: p.copy,
    degrees: p.degrees,
    ...placedContours(itemOf(byId, p.piece), p),
  }));
};

const names = phrases('nest-metal', {
  plate: say`the plate`,
  pieces: say`the pieces laid`,
  scrap: say`the scrap`,
  share: (piece: string) => say`metal for ${{ piece: asName(piece) }}, its share of the scrap included`,
});

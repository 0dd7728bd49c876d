/** What a nest is handed out as: the plate as picture and drawing, and the job that cuts all pieces out of it. */

import { platePicture } from '../../documents/part/plate-picture.ts';
import type { Drawing } from '../../drawing/drawing.ts';
import { readDrawing } from '../../drawing/read/read-drawing.ts';
import type { Drawn } from '../../drawing/write/drawn.ts';
import { writeDxf } from '../../drawing/write/dxf.ts';
import type { NestFacts } from '../../result/nest-facts.ts';
import type { Reader } from '../../text/reader.ts';
import type { NestFile } from '../files/nest-file.ts';
import type { JobInput } from '../job.ts';

/** Layers of the drawing of the plate: each says how its loops are cut. */
const PLATE = 'PLATE';
const PART = 'PART';
const OPENING = 'OPENING';

/** Where shop and dialect lie as seen from the folder the job is written to. */
export interface Beside {
  readonly shop?: string | undefined;
  readonly dialect?: string | undefined;
}

export const nestFiles = (
  facts: NestFacts,
  file: NestFile,
  stem: string,
  { reader, ...beside }: Beside & { readonly reader: Reader },
): Readonly<Record<string, string>> => {
  const drawing = plateDrawing(facts);
  const name = `${stem}.plate.dxf`;
  return {
    [`${stem}.plate.svg`]: platePicture(facts, reader),
    [name]: drawing,
    [`${stem}.plate.job.json`]: `${JSON.stringify(plateJob(facts, file, name, drawing, beside), null, 2)}\n`,
  };
};

/** The plate on a layer of its own, every piece where it lies. */
export const plateDrawing = ({ plate, plateHoles, pieces }: NestFacts): string =>
  writeDxf(
    [
      ...[plate, ...plateHoles].map((chain): Drawn => ({ chain, layer: PLATE })),
      ...pieces.flatMap((p): Drawn[] => [{ chain: p.outline, layer: PART }, ...p.holes.map((chain): Drawn => ({ chain, layer: OPENING }))]),
    ],
    'mm',
  );

/** The job by which `kerfwright answer` cuts all pieces out of the plate in one program. */
export const plateJob = (facts: NestFacts, file: NestFile, drawingName: string, drawing: string, beside: Beside): JobInput => {
  const { sheets, gap } = facts.stack;
  return {
    name: facts.name,
    drawing: drawingName,
    ...beside,
    date: file.date,
    material: file.material,
    height: file.thickness,
    ...file.cut,
    quantity: sheets,
    stack: sheets === 1 ? undefined : sheets,
    stackGap: sheets === 1 ? undefined : Number(gap.value.toFixed(4)),
    outline: 'block',
    kept: keptOf(readDrawing(new TextEncoder().encode(drawing), drawingName, {})),
    clamps: file.forbidden.length === 0 ? undefined : file.forbidden,
    stock: file.price === undefined && file.suppliedBy === undefined ? undefined : { price: file.price, suppliedBy: file.suppliedBy },
  };
};

/** By the names that the reader gives the loops. Holes that are in the plate already are not cut. */
const keptOf = ({ loops }: Drawing): JobInput['kept'] =>
  Object.fromEntries(
    loops.filter((l) => l.depth > 0).map((l) => [l.id, l.layer === PART ? 'punch' : l.layer === OPENING ? 'die' : 'leave'] as const),
  );

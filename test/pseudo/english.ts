/** Words that are left in English where all was printed in the pseudo-language, and what may stay as it is. */
import { readdirSync } from 'node:fs';
import { materialRows, wireRows } from '../../src/job/files/catalogue.ts';
import type { JobRun } from '../../src/job/job-run.ts';
import { machineOf } from '../../src/job/shop.ts';
import { materials } from '../../src/physics/material/materials.ts';
import { type Printed, printedParts } from '../../src/text/print/print.ts';
import type { Reader } from '../../src/text/reader.ts';
import type { Text } from '../../src/text/text.ts';

/** The same in every language: units, symbols, standards, file formats, words of a program, currencies, the name of the house. */
const EXEMPT: ReadonlySet<string> = new Set([
  ...['mm', 'µm', 'in', 'inch', 'µin', 'min', 'kg', 'kW', 'kWh', 'deg', 'EUR', 'MB', 'ms', 'rad', 'ft'],
  ...['Ra', 'Rz', 'ISO', 'DIN', 'ASME', 'ANSI', 'VDI', 'DXF', 'SVG', 'PDF', 'JSON', 'CSV', 'dxf', 'svg', 'nc', 'json', 'txt'],
  // Fields of the job file.
  ...['kept', 'outsideCorners'],
  ...['Kerfwright', 'Esc', 'Ctrl', 'Shift', 'Enter', 'Tab', 'WEDM'],
]);

/** As it is typed on the command line. */
const TYPED = ['L2: 24.006 of 24 at 22'];

/** Names of wires and materials as the house has them. */
const NAMES: readonly string[] = [...wireRows(), ...materialRows()]
  .flatMap(({ id, name }) => [name, id])
  .toSorted((a, b) => b.length - a.length);

/** What shop and customer named. */
export const namesIn = ({
  shop,
  job,
  drawingName,
  dialect,
}: Pick<JobRun, 'shop' | 'job' | 'drawingName' | 'dialect'>): readonly string[] => [
  ...[...shop.wires, ...materials, ...shop.materials].map(({ name }) => name),
  ...[job.name ?? '', job.customer ?? '', shop.name, drawingName, dialect.name, machineOf(shop).name].filter((name) => name !== ''),
];

const WORD = /(?<![\p{L}\p{M}\p{N}_])[A-Za-z]{2,}(?![\p{L}\p{M}\p{N}_])/gu;

/** What is cited has a proper name in every language: files of `sources/` that are not of the house. */
const SOURCES: readonly string[] = readdirSync('sources')
  .map((file) => file.replace(/\.md$/, ''))
  .filter((file) => !['definition', 'starting-model', 'common-practice'].includes(file));

/** Words in plain letters that nothing exempts; `names` are those of this job: its layers, files, customer. */
export const englishIn = (said: string, names: readonly string[] = []): readonly string[] => {
  const bare = [...TYPED, ...names, ...NAMES, ...SOURCES].reduce((rest, name) => (name === '' ? rest : rest.replaceAll(name, ' ')), said);
  return [...bare.matchAll(WORD)].map(([word]) => word).filter((word) => !EXEMPT.has(word));
};

/** What a part may hold without being translated: data that people or files gave, and numbers. */
const OWN = new Set(['name', 'term', 'contour', 'number', 'quantity', 'unit', 'money', 'mass', 'duration']);

/** The words of a text for this reader, without what stands in it by name. */
export const wordsOf = (text: Text, reader: Reader): Printed =>
  printedParts(text, reader)
    .map((part) => (OWN.has(part.of) ? ' ' : part.text))
    .join('') as Printed;

/** `kerfwright nest`: pieces laid into a plate, and the job that cuts them out of it. */

import { basename, dirname, extname, relative, resolve } from 'node:path';
import { type NestFile, nestSchema } from '../job/files/nest-file.ts';
import { type FileName, parseFile, parseValue } from '../job/files/parse.ts';
import { type NestAnswer, nestFiles, nestJson, nestText, runNest } from '../job/nest/nest-answer.ts';
import { readerOfPapers } from '../job/reader-of-papers.ts';
import { firstItem, itemAt } from '../sequence/sequence.ts';
import type { Finding } from '../text/finding.ts';
import { name } from '../text/part.ts';
import type { Reader } from '../text/reader.ts';
import { phrases, say } from '../text/say.ts';
import type { Text } from '../text/text.ts';
import { BadInput, badInput, readBytes, readText, writeFiles } from './files.ts';
import { shopAt } from './inputs.ts';
import { type Out, writtenLines } from './out.ts';
import { millimetres, numberOf } from './typed-numbers.ts';

export interface NestCommand {
  readonly name?: string;
  readonly plate?: string;
  readonly thickness?: string;
  readonly material?: string;
  readonly border?: string;
  readonly web?: string;
  readonly turns?: string | undefined;
  readonly manner?: string;
  readonly stack?: string | undefined;
  readonly shop?: string;
  readonly date?: string;
  readonly within?: string;
  readonly out?: string;
  readonly json?: boolean;
}

/** Exit code: 0 all pieces are laid, 1 some are left over or nothing can be laid. */
export const nestCommand = (files: readonly string[], options: NestCommand, out: Out): number => {
  const only = files.length === 1 && extname(firstItem(files)).toLowerCase() === '.json' ? firstItem(files) : undefined;
  const { file, notes, beside, stem } = only === undefined ? fromLine(files, options) : fromFile(only, options);
  const shopPath = options.shop ?? (file.shop === undefined ? undefined : beside(file.shop));
  const { shop, notes: ofShop } = shopAt(shopPath);
  const answer = runNest({
    file,
    notes: [...notes, ...ofShop],
    name: stem,
    drawingOf: (drawing) => readBytes(beside(drawing)),
    shop,
    day: file.date ?? out.today,
    progress: onlooker(options.within, out),
  });
  if (answer.kind === 'bad input') throw new BadInput(answer.findings);
  const reader = readerOfPapers({ shop });
  const written =
    options.out === undefined || answer.kind !== 'laid'
      ? []
      : handOut(answer, { file, beside, stem, shopPath, reader, folder: options.out });
  out.print(
    options.json === true
      ? JSON.stringify(nestJson(answer, written), null, 2)
      : [nestText(answer, reader), ...writtenLines(written)].join('\n\n'),
  );
  return answer.kind === 'laid' && answer.facts.nest.left.length === 0 ? 0 : 1;
};

interface Asked {
  readonly file: NestFile;
  readonly notes: readonly Finding[];
  readonly beside: (path: string) => string;
  readonly stem: string;
}

/** A nest file; options overrule it. */
const fromFile = (path: string, options: NestCommand): Asked => {
  const parsed = parseFile(nestSchema, readText(path), basename(path));
  if (parsed.kind === 'bad') throw new BadInput(parsed.findings);
  return {
    file: checked({ ...(parsed.given as object), ...typed(options, parsed.value) }, basename(path)),
    notes: parsed.notes,
    beside: (drawing) => resolve(dirname(path), drawing),
    stem: basename(path).replace(/(\.nest)?\.json$/i, ''),
  };
};

/** Drawings on the line, each with how many of it: 'bracket.dxf:4'. */
const fromLine = (files: readonly string[], options: NestCommand): Asked => {
  if (options.plate === undefined) throw badInput(words.plate, 'plate');
  if (options.thickness === undefined) throw badInput(words.thickness, 'thickness');
  const pieces = files.map((text) => {
    const split = /^(.+):(\d+)$/.exec(text);
    const drawing = split?.[1] ?? text;
    return {
      drawing,
      quantity: split === null ? undefined : Number(split[2]),
      turns: options.turns === undefined ? undefined : turnsOf(options.turns),
    };
  });
  return {
    file: checked({ pieces, ...typed(options) }, words.line),
    notes: [],
    beside: (drawing) => resolve(drawing),
    stem: options.name ?? 'nest',
  };
};

const words = phrases('command-nest', {
  plate: say`Give the plate size, as in --plate 300x200, or name the drawing of a plate.`,
  thickness: say`Give the plate thickness, as in --thickness 10.`,
  noPlate: (typed: string) => say`'${{ typed: name(typed) }}' is no plate: write it like 300x200, or name a drawing.`,
  line: say`the command line`,
});

const checked = (value: unknown, file: FileName): NestFile => {
  const parsed = parseValue(nestSchema, value, file);
  if (parsed.kind === 'bad') throw new BadInput(parsed.findings);
  return parsed.value;
};

const typed = (options: NestCommand, file?: NestFile): Record<string, unknown> => {
  const values: Record<string, unknown> = {};
  for (const key of ['thickness', 'border', 'web'] as const) if (options[key] !== undefined) values[key] = millimetres(key, options[key]);
  for (const key of ['name', 'material', 'manner', 'date'] as const) if (options[key] !== undefined) values[key] = options[key];
  if (options.plate !== undefined) values.plate = plateOf(options.plate);
  if (options.stack !== undefined) values.sheets = { ...file?.sheets, stack: numberOf('stack', options.stack) };
  return values;
};

/** '300x200', '12 in x 8 in', or the drawing of a plate. */
const plateOf = (text: string): object => {
  if (/\.(dxf|svg)$/i.test(text)) return { drawing: text };
  const sides = text.split(/[x×*]/i);
  if (sides.length !== 2) throw badInput(words.noPlate(text), 'plate');
  return { width: millimetres('plate', firstItem(sides)), depth: millimetres('plate', itemAt(sides, 1)) };
};

const turnsOf = (text: string): unknown => (/^[\d.]+$/.test(text) ? { step: Number(text) } : text);

/** Progress on stderr; the search ends after so many seconds with the best layout so far. */
const onlooker = (within: string | undefined, out: Out): ((share: number, note: Text) => 'go on' | 'stop') => {
  const until = within === undefined ? Number.POSITIVE_INFINITY : Date.now() + 1000 * numberOf('within', within);
  return (share, note) => {
    out.progress.tell(note, share);
    return Date.now() > until ? 'stop' : 'go on';
  };
};

interface Handout extends Omit<Asked, 'notes'> {
  readonly shopPath: string | undefined;
  readonly reader: Reader;
  readonly folder: string;
}

/** Shop and dialect are named as they lie from the folder that the job goes to. */
const handOut = (
  answer: Extract<NestAnswer, { kind: 'laid' }>,
  { file, beside, stem, shopPath, reader, folder }: Handout,
): readonly string[] => {
  const seen = (path: string): string => relative(resolve(folder), resolve(path)).replaceAll('\\', '/');
  const dialect = file.dialect === undefined || file.dialect === 'standard' ? file.dialect : seen(beside(file.dialect));
  return writeFiles(
    folder,
    nestFiles(answer.facts, file, stem, {
      reader,
      shop: shopPath === undefined ? undefined : seen(shopPath),
      dialect,
    }),
  );
};

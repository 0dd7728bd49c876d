/** `kerfwright shape`: a part by numbers, as a drawing with the sizes one would measure, or straight into the whole job. */
import { relative, resolve } from 'node:path';
import { type Command, Option } from 'commander';
import { lettersWith } from '../font-files/letters-on-disk.ts';
import { parseValue } from '../job/files/parse.ts';
import { shapeText, wholeShapeJson } from '../job/handout/shape-report.ts';
import { drawShape, shapeDxf, shapeSchema, shapeSvg } from '../job/request/shape-drawing.ts';
import { type ShapeForm, type ShapeKey, shapeForms } from '../job/request/shape-keys.ts';
import { name, term } from '../text/part.ts';
import { printPlain } from '../text/print/print.ts';
import { say } from '../text/say.ts';
import type { Text } from '../text/text.ts';
import { type AnswerCommand, answerRun } from './answer.ts';
import { BadInput, badInput, writeFiles } from './files.ts';
import { about, options } from './help.ts';
import { runWith } from './inputs.ts';
import type { Out } from './out.ts';
import { millimetres, numberOf } from './typed-numbers.ts';

type Given = Readonly<Record<string, unknown>> & AnswerCommand & { readonly answer?: boolean; readonly inch?: boolean };

/** One command for each kind, whose options are the numbers that the kind asks for. */
export const shapeCommand = (
  program: Command,
  withJobOptions: (command: Command) => Command,
  out: Out,
  finish: (code: number) => void,
): void => {
  const shape = program.command('shape').description(printPlain(about.shape));
  for (const form of shapeForms()) {
    const command = shape.command(form.kind).description(printPlain(form.what));
    for (const key of form.keys) command.addOption(optionOf(key));
    command
      .option('--inch', printPlain(options.shapeInch))
      .option('--out <folder>', printPlain(options.shapeOut))
      .option('--answer', printPlain(options.shapeAnswer));
    withJobOptions(command);
    command.action(async (given: Given) => finish(await make(form, given, out)));
  }
};

const optionOf = ({ key, about: said, takes, choices, usual }: ShapeKey): Option => {
  const name = `--${key.replace(/[A-Z]/g, (c) => `-${c.toLowerCase()}`)}`;
  const told = printPlain(usual === undefined || usual === '' ? said : leftOut(said, JSON.stringify(usual)));
  if (takes === 'yes or no') return new Option(`${name} [yes|no]`, told).choices(['yes', 'no']);
  const option = new Option(`${name} <${takes}>`, told);
  return choices === undefined ? option : option.choices(choices);
};

const leftOut = (said: Text, usual: string): Text => say('command-shape.usual')`${{ said }} (${{ usual: term(usual) }} when left out)`;

/** Exit code: 0, or with `--answer` that of the answer. */
const make = async (form: ShapeForm, given: Given, out: Out): Promise<number> => {
  const request = requestOf(form, given);
  const parsed = parseValue(shapeSchema, request, `kerfwright shape ${form.kind}`);
  if (parsed.kind === 'bad') throw new BadInput(parsed.findings);
  const made = drawShape(parsed.value, { letters: lettersWith((path) => resolve(path)) });
  if (made.kind === 'refused') throw new BadInput(made.findings);
  const stem = given.name ?? form.kind;
  const unit = given.inch === true ? 'inch' : 'mm';
  const fields = { shape: request };
  const files = {
    [`${stem}.dxf`]: shapeDxf(made.shape, unit),
    [`${stem}.svg`]: shapeSvg(made.shape, unit),
    [`${stem}.sizes.txt`]: `${shapeText(made.shape, unit)}\n`,
    [`${stem}.job.json`]: `${JSON.stringify(movedTo(given.out, fields), null, 2)}\n`,
  };
  if (given.answer === true)
    return answerRun(
      runWith(fields, stem, (path) => resolve(path), given, out.today),
      stem,
      given,
      out,
      files,
    );
  const written = given.out === undefined ? [] : writeFiles(given.out, files);
  if (given.json === true) out.print(JSON.stringify({ ...wholeShapeJson(made.shape), files: written }, null, 2));
  else
    out.print(
      [shapeText(made.shape, unit), ...(written.length === 0 ? [] : [`Written\n${written.map((w) => `  ${w}`).join('\n')}`])].join('\n\n'),
    );
  return 0;
};

/** A job file names a font by where it lies from the job file, and the command line by where it lies from here. */
const movedTo = (folder: string | undefined, { shape }: { readonly shape: Readonly<Record<string, unknown>> }): object =>
  typeof shape['font'] === 'string' && folder !== undefined
    ? { shape: { ...shape, font: relative(folder, shape['font']).replaceAll('\\', '/') } }
    : { shape };

const requestOf = ({ kind, keys }: ShapeForm, given: Given): Record<string, unknown> => {
  const request: Record<string, unknown> = { kind };
  for (const key of keys) {
    const value = given[key.key];
    if (value !== undefined) request[key.key] = typedValue(key, value);
  }
  return request;
};

const typedValue = ({ key, takes }: ShapeKey, given: unknown): unknown => {
  // A word that says yes or no may stand alone.
  if (takes === 'yes or no') return given === true || given === 'yes';
  const text = String(given);
  if (takes === 'length') return millimetres(key, text);
  if (takes === 'number' || takes === 'whole number') return numberOf(key, text);
  if (takes === 'data') return dataOf(key, text);
  return text;
};

const notJson = (text: string, key: string): Text =>
  say('command-shape')`'${{ typed: name(text) }}' cannot be read; ${{ key: term(key) }} is written as JSON, as in [1, 2].`;

const dataOf = (key: string, text: string): unknown => {
  try {
    return JSON.parse(text);
  } catch {
    throw badInput(notJson(text, key), key);
  }
};

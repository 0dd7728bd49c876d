/** The words of the command line, its options and its exit codes (0 yes, 1 no or not proven, 2 bad input), run with whatever is given to print on. */

import { Command, CommanderError, Option } from 'commander';
import { printPlain } from '../text/print/print.ts';
import { stated } from '../text/print/stated.ts';
import { type AnswerCommand, answer } from './answer.ts';
import { type CompareCommand, compare } from './compare.ts';
import { type CorrectCommand, correct } from './correct.ts';
import { BadInput } from './files.ts';
import { type NestCommand, nestCommand } from './nest.ts';
import type { Out } from './out.ts';
import type { Progress } from './progress.ts';
import { type ProveCommand, prove } from './prove.ts';
import { type ReadCommand, read } from './read.ts';
import { list, schema } from './schema.ts';
import { shapeCommand } from './shape.ts';
import { type WhyCommand, why } from './why.ts';

/** What a run of the command writes to, and the day it takes for today. */
export interface Streams {
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
  readonly progress: Progress;
  /** ISO 8601 */
  readonly today: string;
}

export const BAD_INPUT = 2;
/** A program that broke, not an answer: what `sysexits` calls a software error. */
const OUR_MISTAKE = 70;

/** Runs the command line `args`, without the name of the command, and gives its exit code; nothing is thrown. */
export const run = async (args: readonly string[], streams: Streams): Promise<number> => {
  const { err, progress, today } = streams;
  const out: Out = { print: (text) => streams.out(`${harmless(text)}\n`), progress, today };
  let code = 0;
  try {
    await commands(out, streams, (c) => {
      code = c;
    }).parseAsync([...args], { from: 'user' });
    return code;
  } catch (error) {
    if (error instanceof BadInput) return sayBad(error, args.includes('--json'), out, err);
    if (error instanceof CommanderError) return error.exitCode === 0 ? 0 : BAD_INPUT;
    err(`Kerfwright itself failed; this is our mistake, not yours.\n${error instanceof Error ? error.stack : String(error)}\n`);
    return OUR_MISTAKE;
  } finally {
    progress.done();
  }
};

const sayBad = (bad: BadInput, json: boolean, out: Out, err: Streams['err']): number => {
  if (json) out.print(JSON.stringify({ answer: 'bad input', findings: bad.findings.map((f) => stated(f)) }, null, 2));
  else
    for (const f of bad.findings) err(`${harmless(printPlain(f.text))}${f.remedy === undefined ? '' : ` ${printPlain(f.remedy.text)}`}\n`);
  return BAD_INPUT;
};

/** Names in a customer's file may hold anything; nothing that would steer a terminal is printed. */
const harmless = (text: string): string => text.replace(/[^\P{Cc}\n\t]/gu, '\uFFFD');

const withJobOptions = (command: Command): Command =>
  command
    .option('--name <text>', 'what the job is called on the papers')
    .option('--material <key>', 'material of the block, see: kerfwright list materials')
    .option('--height <length>', 'height of the block, as in 32, 32 mm or 1.25 in')
    .option('--wire <key>', 'insist on this wire, see: kerfwright list wires')
    .option('--finish <Ra>', 'finish asked for, Ra in µm')
    .option('--tolerance <length>', 'profile tolerance either side of the drawing')
    .option('--inside-corner <length>', 'radius allowed at inside corners that are drawn sharper')
    .option('--ease <length>', 'round inside corners of the drawing to this radius first')
    .option('--join <length>', 'join ends of the drawing that are nearer than this')
    .option('--quantity <number>', 'how many pieces')
    .addOption(new Option('--units <unit>', 'unit of the drawing, against its header').choices(['mm', 'inch', 'µm', 'cm', 'm']))
    .addOption(new Option('--outline <meaning>', 'what the outermost contours are').choices(['cut', 'block']))
    .option('--dialect <file>', 'how the control wants its program spelled; standard when left out')
    .option('--shop <file>', 'shop file with wires, machine and rates')
    .addOption(new Option('--paper-lengths <unit>', 'lengths on papers and in the printed answer').choices(['mm', 'inch']))
    .addOption(new Option('--paper-finish <unit>', 'finishes on papers and in the printed answer').choices(['µm', 'um', 'µin', 'uin']))
    .addOption(new Option('--paper-decimals <mark>', 'what stands before decimals there').choices(['point', 'comma']))
    .option('--date <day>', 'day of the answer, as in 2026-11-25')
    .option('--json', 'print the answer as JSON');

const commands = (out: Out, { out: writeOut, err: writeErr }: Streams, finish: (code: number) => void): Command => {
  const program = new Command('kerfwright')
    .description('From a drawing to a proven wire-EDM program, its hours and its price.')
    .exitOverride()
    .configureOutput({ writeOut, writeErr })
    .showHelpAfterError();
  withJobOptions(
    program
      .command('answer <drawing-or-job>')
      .description('the whole job: can it be cut, how, how long, for how much; with --out program, pictures and papers'),
  )
    .option('--out <folder>', 'write program, set-up, pictures and papers here')
    .action(async (file: string, options: AnswerCommand) => finish(await answer(file, options, out)));
  withJobOptions(
    program
      .command('compare <drawing-or-job>')
      .description('what the job would cost if something gave way, ranked by what it saves; price against finish'),
  ).action((file: string, options: CompareCommand) => finish(compare(file, options, out)));
  correctCommand(program, out, finish);
  shapeCommand(program, withJobOptions, out, finish);
  nestOptions(program).action((files: string[], options: NestCommand) => finish(nestCommand(files, options, out)));
  program
    .command('read <drawing...>')
    .description('what a drawing holds and what is wrong with it')
    .addOption(new Option('--units <unit>', 'unit of the drawing, against its header').choices(['mm', 'inch', 'µm', 'cm', 'm']))
    .option('--join <length>', 'join ends nearer than this; 0.01 units means drawing units')
    .option('--fit <length>', 'largest distance between a curve and the arcs that stand for it')
    .option('--out <folder>', 'draw each file as a picture here')
    .option('--json', 'print as JSON')
    .action((files: string[], options: ReadCommand) => finish(read(files, options, out)));
  program
    .command('prove <program>')
    .description('cut a program in the computer and hold it against the drawing')
    .requiredOption('--drawing <file>', 'the drawing it should make')
    .option('--setup <file>', 'offsets, gaps, wire and holes; the .setup.json beside the program when left out')
    .addOption(new Option('--units <unit>', 'unit of the drawing, against its header').choices(['mm', 'inch', 'µm', 'cm', 'm']))
    .option('--out <folder>', 'draw the proof here')
    .option('--json', 'print as JSON')
    .action((file: string, options: ProveCommand) => finish(prove(file, options, out)));
  withJobOptions(
    program
      .command('why <drawing-or-job> [figure]')
      .description('where a figure comes from, down to the drawing and the shop file; all figures when none is named'),
  ).action((file: string, figure: string | undefined, options: WhyCommand) => finish(why(file, figure, options, out)));
  program
    .command('schema [file]')
    .description('the fields of job, shop, dialect and setup files, as JSON Schema')
    .action((name?: string) => finish(schema(name, out)));
  program
    .command('list <what>')
    .description('keys of materials or wires')
    .option('--json', 'print as JSON')
    .action((what: string, options: { json?: boolean }) => finish(list(what, options.json === true, out)));
  return program;
};

const correctCommand = (program: Command, out: Out, finish: (code: number) => void): Command =>
  withJobOptions(
    program
      .command('correct <drawing-or-job>')
      .description('new offset registers from what was measured; what can still be saved; what a change would do'),
  )
    .option(
      '--measured <text...>',
      'contour, size, size drawn, °C, as in "L2: 24.006 of 24 at 22"; add "one side" where only one face is cut',
    )
    .option('--change <length>', 'what sizes come of this change of every register, as in -0.003')
    .action((file: string, options: CorrectCommand) => finish(correct(file, options, out)));

const nestOptions = (program: Command): Command =>
  program
    .command('nest <nest-or-drawings...>')
    .description('lay pieces into a plate: a nest file, or drawings with how many of each, as in bracket.dxf:4')
    .option('--name <text>', 'what the plate is called')
    .option('--plate <size>', 'as in 300x200, or the drawing of a plate')
    .option('--thickness <length>', 'of the plate, or of one sheet of a stack')
    .option('--material <key>', 'see: kerfwright list materials')
    .option('--border <length>', 'kept free along the edge')
    .option('--web <length>', 'between two pieces')
    .option('--turns <how>', 'of drawings on the line: none, half turns, quarter turns, or a step in degrees')
    .addOption(new Option('--manner <how>', 'how they are laid').choices(['rows', 'free', 'best']))
    .option('--stack <n>', 'sheets cut in one stack')
    .option('--shop <file>', 'wires, machine and rates of the shop')
    .option('--date <day>', 'day that decides which rates hold')
    .option('--within <seconds>', 'end the search then with the best layout so far')
    .option('--out <folder>', 'write plate picture, drawing and job here')
    .option('--json', 'print as JSON');

/** The words of the command line, its options and its exit codes (0 yes, 1 no or not proven, 2 bad input), run with whatever is given to print on. */

import { Command, CommanderError, Option } from 'commander';
import { printPlain } from '../text/print/print.ts';
import { stated } from '../text/print/stated.ts';
import { type AnswerCommand, answer } from './answer.ts';
import { type CompareCommand, compare } from './compare.ts';
import { type CorrectCommand, correct } from './correct.ts';
import { BadInput } from './files.ts';
import { about, options, troubles } from './help.ts';
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
    err(`${printPlain(troubles.ourMistake)}\n${error instanceof Error ? error.stack : String(error)}\n`);
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
    .option('--name <text>', printPlain(options.name))
    .option('--material <key>', printPlain(options.material))
    .option('--height <length>', printPlain(options.height))
    .option('--wire <key>', printPlain(options.wire))
    .option('--finish <Ra>', printPlain(options.finish))
    .option('--tolerance <length>', printPlain(options.tolerance))
    .addOption(new Option('--finish-rule <rule>', printPlain(options.finishRule)).choices(['16%', 'maximum']))
    .option('--confidence <k>', printPlain(options.confidence))
    .option('--program-share <share>', printPlain(options.programShare))
    .option('--inside-corner <length>', printPlain(options.insideCorner))
    .option('--start-hole <length>', printPlain(options.startHole))
    .option('--datum <x,y>', printPlain(options.datum))
    .option('--ease <length>', printPlain(options.ease))
    .option('--join <length>', printPlain(options.join))
    .option('--quantity <number>', printPlain(options.quantity))
    .addOption(new Option('--units <unit>', printPlain(options.units)).choices(['mm', 'inch', 'µm', 'cm', 'm']))
    .addOption(new Option('--outline <meaning>', printPlain(options.outline)).choices(['cut', 'block']))
    .option('--layers <names>', printPlain(options.layers))
    .option('--without <loops>', printPlain(options.without))
    .option('--contour <key:what=value>', printPlain(options.contour), (text: string, before: string[] = []) => [...before, text])
    .option('--dialect <file>', printPlain(options.dialect))
    .option('--shop <file>', printPlain(options.shop))
    .addOption(new Option('--paper-lengths <unit>', printPlain(options.paperLengths)).choices(['mm', 'inch']))
    .addOption(new Option('--paper-finish <unit>', printPlain(options.paperFinish)).choices(['µm', 'um', 'µin', 'uin']))
    .addOption(new Option('--paper-decimals <mark>', printPlain(options.paperDecimals)).choices(['point', 'comma']))
    .option('--date <day>', printPlain(options.date))
    .option('--json', printPlain(options.json));

const commands = (out: Out, { out: writeOut, err: writeErr }: Streams, finish: (code: number) => void): Command => {
  const program = new Command('kerfwright')
    .description(printPlain(about.kerfwright))
    .exitOverride()
    .configureOutput({ writeOut, writeErr })
    .showHelpAfterError();
  withJobOptions(program.command('answer <drawing-or-job>').description(printPlain(about.answer)))
    .option('--out <folder>', printPlain(options.answerOut))
    .action(async (file: string, options: AnswerCommand) => finish(await answer(file, options, out)));
  withJobOptions(program.command('compare <drawing-or-job>').description(printPlain(about.compare))).action(
    (file: string, options: CompareCommand) => finish(compare(file, options, out)),
  );
  correctCommand(program, out, finish);
  shapeCommand(program, withJobOptions, out, finish);
  nestOptions(program).action((files: string[], options: NestCommand) => finish(nestCommand(files, options, out)));
  program
    .command('read <drawing...>')
    .description(printPlain(about.read))
    .addOption(new Option('--units <unit>', printPlain(options.units)).choices(['mm', 'inch', 'µm', 'cm', 'm']))
    .option('--join <length>', printPlain(options.readJoin))
    .option('--fit <length>', printPlain(options.readFit))
    .option('--out <folder>', printPlain(options.readOut))
    .option('--json', printPlain(options.readJson))
    .action((files: string[], options: ReadCommand) => finish(read(files, options, out)));
  program
    .command('prove <program>')
    .description(printPlain(about.prove))
    .requiredOption('--drawing <file>', printPlain(options.proveDrawing))
    .option('--setup <file>', printPlain(options.proveSetup))
    .addOption(new Option('--units <unit>', printPlain(options.units)).choices(['mm', 'inch', 'µm', 'cm', 'm']))
    .option('--out <folder>', printPlain(options.proveOut))
    .option('--json', printPlain(options.readJson))
    .action((file: string, options: ProveCommand) => finish(prove(file, options, out)));
  withJobOptions(program.command('why <drawing-or-job> [figure]').description(printPlain(about.why))).action(
    (file: string, figure: string | undefined, options: WhyCommand) => finish(why(file, figure, options, out)),
  );
  program
    .command('schema [file]')
    .description(printPlain(about.schema))
    .action((name?: string) => finish(schema(name, out)));
  program
    .command('list <what>')
    .description(printPlain(about.list))
    .option('--json', printPlain(options.readJson))
    .action((what: string, options: { json?: boolean }) => finish(list(what, options.json === true, out)));
  return program;
};

const correctCommand = (program: Command, out: Out, finish: (code: number) => void): Command =>
  withJobOptions(program.command('correct <drawing-or-job>').description(printPlain(about.correct)))
    .option('--measured <text...>', printPlain(options.correctMeasured))
    .option('--change <length>', printPlain(options.correctChange))
    .action((file: string, options: CorrectCommand) => finish(correct(file, options, out)));

const nestOptions = (program: Command): Command =>
  program
    .command('nest <nest-or-drawings...>')
    .description(printPlain(about.nest))
    .option('--name <text>', printPlain(options.nestName))
    .option('--plate <size>', printPlain(options.nestPlate))
    .option('--thickness <length>', printPlain(options.nestThickness))
    .option('--material <key>', printPlain(options.nestMaterial))
    .option('--border <length>', printPlain(options.nestBorder))
    .option('--web <length>', printPlain(options.nestWeb))
    .option('--turns <how>', printPlain(options.nestTurns))
    .addOption(new Option('--manner <how>', printPlain(options.nestManner)).choices(['rows', 'free', 'best']))
    .option('--stack <n>', printPlain(options.nestStack))
    .option('--shop <file>', printPlain(options.nestShop))
    .option('--date <day>', printPlain(options.nestDate))
    .option('--within <seconds>', printPlain(options.nestWithin))
    .option('--out <folder>', printPlain(options.nestOut))
    .option('--json', printPlain(options.readJson));

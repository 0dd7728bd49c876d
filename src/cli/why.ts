/** `kerfwright why`: the tree of one figure of a job. */

import { runUpTo } from '../job/pipeline/pipeline.ts';
import { list, name, term } from '../text/part.ts';
import { type Explanation, explain, explainLines } from '../text/print/explain.ts';
import { printPlain } from '../text/print/print.ts';
import { phrases, say } from '../text/say.ts';
import type { Text } from '../text/text.ts';
import { BadInput, badInput } from './files.ts';
import { type AnswerOptions, jobRun } from './inputs.ts';
import type { Out } from './out.ts';

export interface WhyCommand extends AnswerOptions {
  readonly json?: boolean;
}

/** Exit code: 0 told, 1 nothing can be cut, so that there are no figures. */
export const why = (file: string, key: string | undefined, options: WhyCommand, out: Out): number => {
  const answer = runUpTo({ ...jobRun(file, options, out.today), progress: out.progress.tell }, 'answer');
  if (answer.kind === 'bad input') throw new BadInput(answer.findings);
  if (answer.kind === 'cannot') {
    const sentence = printPlain(answer.sentence);
    out.print(options.json === true ? JSON.stringify({ answer: 'no', sentence }, null, 2) : sentence);
    return 1;
  }
  const { outcome } = answer.facts;
  const currency = outcome.kind === 'program' ? outcome.hours?.estimate.currency : undefined;
  const printing = currency === undefined ? {} : { currency };
  if (key === undefined) {
    const all = [...answer.figures.values()].map((f) => explain(f, printing));
    out.print(
      options.json === true
        ? JSON.stringify(
            all.map(({ key: k, name: called, printed }) => ({ key: k, name: called, printed })),
            null,
            2,
          )
        : keyList(all),
    );
    return 0;
  }
  const figure = answer.figures.get(key);
  if (figure === undefined) throw badInput(noFigure(key, [...answer.figures.keys()]), key);
  const tree = explain(figure, printing);
  out.print(options.json === true ? JSON.stringify(tree, null, 2) : explainLines(tree).join('\n'));
  return 0;
};

const words = phrases('command-why', {
  none: (key: string) => say`The job has no figure '${{ key: name(key) }}'. Without a figure, why lists them all.`,
  near: (key: string, like: readonly string[]) =>
    say`The job has no figure '${{ key: name(key) }}'. Near it: ${{ like: list(like.map(term)) }}. Without a figure, why lists them all.`,
});

const keyList = (all: readonly Explanation[]): string => {
  const width = Math.max(...all.map((e) => e.key.length));
  return all
    .toSorted((a, b) => a.key.localeCompare(b.key, 'en', { numeric: true }))
    .map((e) => `${e.key.padEnd(width)}  ${e.printed}  ${e.name}`)
    .join('\n');
};

const noFigure = (key: string, keys: readonly string[]): Text => {
  const like = keys.filter((k) => k.includes(key) || key.includes(k) || k.split('.').at(-1) === key.split('.').at(-1)).slice(0, 5);
  return like.length === 0 ? words.none(key) : words.near(key, like);
};

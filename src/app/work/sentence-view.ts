/** The answer sentence with what its holes are: inputs that can be edited, results that can be asked why. Its words are the job's own. */

import type { Answered } from '../../job/pipeline/answer.ts';
import type { Text } from '../../text/text.ts';
import { shown } from './figure-view.ts';
import type { MarkedSentence, SentenceMark } from './views.ts';

type Marks = Readonly<Record<string, SentenceMark<Text>>>;

export const sentenceView = ({ facts }: Answered): MarkedSentence => {
  const { outcome, sentence: text } = facts;
  if (outcome.answer === 'no') return noView(text);
  const { plan, budgets } = outcome.cut;
  const { estimate } = outcome.hours;
  const results = {
    within: budgets?.profile.total ?? plan.accuracy,
    ra: plan.finish,
    minutes: estimate.total,
    unattended: estimate.unattended,
    each: estimate.each,
  };
  const marked = Object.entries(results).map(([hole, figure]) => [hole, { kind: 'result', shown: shown(figure) }] as const);
  return { text, marks: { ...INPUTS, ...Object.fromEntries(marked) } };
};

export const noView = (text: Text): MarkedSentence => ({ text, marks: { verdict: { kind: 'verdict' } } });

/** Holes that bear the name of a field of the job file. */
const INPUTS: Marks = Object.fromEntries(
  ['wire', 'material', 'height', 'passes', 'tolerance', 'finish', 'quantity'].map((field) => [field, { kind: 'input', field }]),
);

/** The answer sentence in pieces that can be edited or asked why. The words are the job's own; here they are only taken apart. */

import type { Answered } from '../../job/pipeline/answer.ts';
import type { Figure } from '../../quantity/figure.ts';
import type { HoursFacts } from '../../result/outcome-facts.ts';
import { printDuration } from '../../text/print/duration.ts';
import { printNumber } from '../../text/print/figure.ts';
import { printMoney } from '../../text/print/money.ts';
import { accuracy, finish } from '../../text/print/phrases.ts';
import { shown } from './figure-view.ts';
import type { SentencePart, Untold } from './views.ts';

export const sentenceView = ({ facts, job }: Answered): readonly SentencePart<Untold>[] => {
  const { outcome, asked } = facts;
  if (outcome.answer === 'no') return [words(facts.sentence)];
  const { plan, within, budgets } = outcome.cut;
  const { estimate } = outcome.hours;
  return [
    words(within <= job.tolerance ? 'Yes. A ' : 'Yes, but the tolerance is in doubt. A '),
    input('wire', `${plan.wire.name} wire`),
    words(' in '),
    input('material', asked.material.name),
    words(', '),
    input('height', `${printNumber(job.height)} mm`),
    words(' high, with '),
    input('passes', plan.passes.length === 1 ? '1 pass' : `${plan.passes.length} passes`),
    words(', holds '),
    result(`±${accuracy(within)} mm`, budgets?.profile.total ?? plan.accuracy),
    words(' where '),
    input('tolerance', `±${printNumber(job.tolerance)} mm`),
    words(' is asked, and '),
    result(`Ra ${finish(plan.finish)} µm`, plan.finish),
    words(' where '),
    input('finish', `Ra ${printNumber(job.finish)} µm`),
    words(' is; it runs '),
    result(printDuration(estimate.total.value), estimate.total),
    ...alone(estimate),
    words(' and costs '),
    result(printMoney(estimate.each.value, estimate.currency), estimate.each),
    words(job.quantity === 1 ? ' for ' : ' each for '),
    input('quantity', job.quantity === 1 ? 'one piece' : `${job.quantity} pieces`),
    words('.'),
  ];
};

const alone = ({ unattended }: HoursFacts['estimate']): readonly SentencePart<Untold>[] =>
  unattended.value < 1
    ? [words(', all of it with somebody there,')]
    : [words(', of which '), result(printDuration(unattended.value), unattended), words(' need nobody,')];

export const words = (text: Untold): SentencePart<Untold> => ({ kind: 'words', text });
const input = (field: string, text: string): SentencePart<Untold> => ({ kind: 'input', field, text });
const result = (text: string, figure: Figure): SentencePart<Untold> => ({ kind: 'result', text, shown: shown(figure) });

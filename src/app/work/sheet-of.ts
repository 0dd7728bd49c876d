/** The whole answer as the sheet shows it. */

import type { JobRun } from '../../job/job-run.ts';
import type { Ran } from '../../job/pipeline/pipeline.ts';
import type { JobFacts } from '../../result/facts.ts';
import { printPlain } from '../../text/print/print.ts';
import { clockView } from './clock-view.ts';
import { shown } from './figure-view.ts';
import { findingViews } from './finding-view.ts';
import { pictureView } from './picture-view.ts';
import { programView } from './program-view.ts';
import { sentenceView, words } from './sentence-view.ts';
import { shapeView } from './shape-view.ts';
import { breaksView, budgetView, costView, hoursView, othersView, passesTable, sizesView, wiresView } from './table-view.ts';
import type { Sheet } from './views.ts';
import { wallView } from './wall-view.ts';

/** `took` is filled in by the worker. */
export const sheetOf = (ran: Ran, run: JobRun): Omit<Sheet, 'took'> => {
  const { answer } = ran;
  const none = { assumed: [], figures: [], ...(ran.drawing === undefined ? {} : given('picture', pictureView({ drawing: ran.drawing }))) };
  if (answer.kind === 'bad input') {
    const line = answer.findings.map((f) => printPlain(f.text))[0] ?? 'The inputs cannot be used.';
    return { answer: 'bad input', sentence: [words(line)], findings: findingViews(answer.findings, new Set(), 1), line, ...none };
  }
  if (answer.kind === 'cannot')
    return {
      answer: 'cannot',
      sentence: [words(answer.sentence)],
      findings: findingViews(answer.findings, new Set(), 1),
      line: answer.sentence,
      ...none,
    };
  const { facts } = answer;
  return {
    answer: facts.answer,
    sentence: sentenceView(answer),
    findings: findingViews(facts.findings, new Set(facts.drawing.findings), facts.drawing.units.millimetres),
    assumed: facts.assumed,
    figures: [...answer.figures.values()].map(shown),
    line: facts.sentence,
    ...given('picture', pictureView(facts)),
    ...given('shape', shapeView(facts)),
    ...given('program', programView(ran, run)),
    ...given('clock', clockView(facts, run.shop)),
    ...given('wall', wallView(facts)),
    ...tables(facts),
    ...(facts.estimate === undefined ? {} : { currency: facts.estimate.currency }),
  };
};

const tables = (facts: JobFacts) => ({
  ...given('passes', passesTable(facts)),
  ...given('wires', wiresView(facts)),
  ...given('hours', hoursView(facts)),
  ...given('costs', costView(facts)),
  ...given('breaks', breaksView(facts)),
  ...given('budget', budgetView(facts)),
  ...given('sizes', sizesView(facts)),
  ...given('others', othersView(facts)),
});

const given = <K extends keyof Sheet>(key: K, value: Sheet[K] | undefined): Partial<Pick<Sheet, K>> =>
  value === undefined ? {} : ({ [key]: value } as unknown as Pick<Sheet, K>);

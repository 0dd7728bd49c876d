/** The whole answer as the sheet shows it. */

import type { JobRun } from '../../job/job-run.ts';
import type { Answer, Answered } from '../../job/pipeline/answer.ts';
import { cutOf, hoursOf, type JobFacts, plannedOf, programOf, resultOf } from '../../result/facts.ts';
import type { HoursFacts } from '../../result/outcome-facts.ts';
import { toleranceTold } from '../../result/tolerance-told.ts';
import { phrases, say } from '../../text/say.ts';
import { shown } from './figure-view.ts';
import { findingViews } from './finding-view.ts';
import { pictureView } from './picture-view.ts';
import { programView } from './program-view.ts';
import { scheduleView } from './schedule-view.ts';
import { noView, sentenceView } from './sentence-view.ts';
import { shapeView } from './shape-view.ts';
import { breaksView, budgetView, costView, hoursView, othersView, passesTable, sizesView, wiresView } from './table-view.ts';
import type { SheetInTexts } from './views.ts';
import { wallView } from './wall-view.ts';

const words = phrases('page.no-answer', { unusable: say`The inputs cannot be used.` });

/** `took` is filled in by the worker. */
export const sheetOf = (answer: Answer, run: JobRun): Omit<SheetInTexts, 'took'> => {
  if (answer.kind === 'answered') return answeredSheet(answer, run);
  const line = answer.kind === 'cannot' ? answer.sentence : (answer.findings[0]?.text ?? words.unusable);
  return {
    answer: answer.kind,
    sentence: noView(line),
    findings: findingViews(answer.findings, new Set(), 1),
    assumed: [],
    figures: [],
    ...given('picture', pictureView(answer.drawing)),
  };
};

const answeredSheet = (answer: Answered, run: JobRun): Omit<SheetInTexts, 'took'> => {
  const { facts } = answer;
  const { drawing, asked, outcome, findings } = facts;
  const hours = hoursOf(facts);
  const use = programOf(facts)?.proof.use;
  return {
    answer: outcome.answer,
    sentence: sentenceView(answer),
    findings: findingViews(findings, new Set(drawing.findings), drawing.units.millimetres),
    assumed: asked.assumed,
    figures: [...answer.figures.values()].map(shown),
    ...given('picture', pictureView(drawing, facts)),
    ...given('shape', shapeView(facts)),
    ...given('program', programView(answer, run)),
    ...given('toleranceUse', use && toleranceTold(use, cutOf(facts)?.within)),
    ...given('schedule', hours && scheduleView(hours, run.shop)),
    ...given('wall', wallView(facts)),
    ...planTables(facts),
    ...(hours && hoursTables(hours.estimate, asked.quantity)),
  };
};

const planTables = (facts: JobFacts) => {
  const [planned, result, budgets] = [plannedOf(facts), resultOf(facts), cutOf(facts)?.budgets];
  return {
    ...given('passes', result && passesTable(result, hoursOf(facts)?.estimate)),
    ...given('wires', planned?.wires && wiresView(planned.wires)),
    ...given('budget', budgets && budgetView(budgets)),
    ...given('sizes', budgets && sizesView(budgets)),
    ...given('others', planned?.otherWays && othersView(planned.otherWays)),
  };
};

const hoursTables = (estimate: HoursFacts['estimate'], quantity: number) => ({
  hours: hoursView(estimate),
  costs: costView(estimate),
  breaks: breaksView(estimate, quantity),
  currency: estimate.currency,
});

const given = <K extends keyof SheetInTexts>(key: K, value: SheetInTexts[K] | undefined): Partial<Pick<SheetInTexts, K>> =>
  value === undefined ? {} : ({ [key]: value } as unknown as Pick<SheetInTexts, K>);

/** What the chapters tell beside their inputs: the drawing, the contours on their way, the proof, the clock, the papers, the log. */

import type { ReactNode } from 'react';
import { localMoment } from '../../text/print/local.ts';
import { FigureTable } from '../fields/figure-table.tsx';
import { useOnSheet, useTools } from '../fields/tools.ts';
import { PapersChapter } from '../handout/papers-chapter.tsx';
import { useWords } from '../words/use-words.ts';
import type { ContourView, TableView } from '../work/views.ts';
import { ShapePart } from './shape-part.tsx';

const NONE: readonly ContourView[] = [];
const useContours = (): readonly ContourView[] => useOnSheet((s) => s.sheet?.picture?.contours) ?? NONE;

const left = (title: string) => ({ title, align: 'left' }) as const;
const right = (title: string) => ({ title, align: 'right' }) as const;

export const DrawingFacts = (): ReactNode => {
  const words = useWords().sheet;
  const { numbers } = useTools();
  const picture = useOnSheet((s) => s.sheet?.picture);
  const answered = useOnSheet((s) => s.sheet !== undefined);
  const name = useOnSheet((s) => s.record?.drawingName) ?? '';
  if (!answered) return null;
  if (picture === undefined)
    return (
      <>
        <p>{words.noDrawing}</p>
        <ShapePart />
      </>
    );
  const { drawn, contours } = picture;
  return (
    <>
      <p className="fact">
        {words.drawingLine(name, numbers.length(drawn?.width ?? 0), numbers.length(drawn?.depth ?? 0), contours.length)}
      </p>
      <ShapePart />
    </>
  );
};

export const WayFacts = (): ReactNode => {
  const words = useWords().sheet;
  const { numbers } = useTools();
  const cut = useContours().filter((c) => c.number > 0);
  const table: TableView = {
    columns: [
      right(words.contourColumns.number),
      left(words.contourColumns.id),
      left(words.contourColumns.kept),
      right(words.contourColumns.length),
      right(words.contourColumns.hole),
      right(words.contourColumns.tab),
      left(words.contourColumns.piece),
    ],
    rows: cut.map((c) => [
      String(c.number),
      c.id,
      words.kept[c.kept],
      numbers.length(c.perimeter),
      c.hole === undefined || c.hole.diameter === 0 ? words.fromEdge : `Ø ${numbers.length(c.hole.diameter)}`,
      c.tab === undefined ? words.noTab : numbers.length(c.tab.length),
      c.piece ?? '',
    ]),
  };
  return <FigureTable title={words.contours} table={table} place="way" />;
};

export const ProofFacts = (): ReactNode => {
  const words = useWords().sheet;
  const answer = useOnSheet((s) => s.sheet);
  const proven = useContours().filter((c) => c.state !== undefined);
  if (answer === undefined) return null;
  return (
    <>
      <p className="fact">{proven.length === 0 ? words.noProof : answer.answer === 'yes' ? words.proven : words.notProven}</p>
      {answer.toleranceUse !== undefined && <p className="fact">{answer.toleranceUse}</p>}
      <FigureTable title={words.budget} table={answer.budget} place="budget" />
      <FigureTable title={words.sizes} table={answer.sizes} place="sizes" />
    </>
  );
};

export const Schedule = (): ReactNode => {
  const words = useWords().sheet;
  const schedule = useOnSheet((s) => s.sheet?.schedule);
  return schedule === undefined ? null : <p className="fact">{words.schedule(schedule.startText, schedule.finishText)}</p>;
};

export const PapersOfJob = (): ReactNode => {
  const words = useWords().sheet;
  const { sheet } = useTools();
  const answered = useOnSheet((s) => s.sheet !== undefined && s.sheet.answer !== 'bad input' && s.sheet.answer !== 'cannot');
  return answered ? <PapersChapter sheet={sheet} /> : <p className="fact">{words.nothingYet}</p>;
};

export const LogOfJob = (): ReactNode => {
  const words = useWords().sheet;
  const { sheet } = useTools();
  const record = useOnSheet((s) => s.record);
  if (record === undefined) return null;
  const { log, steps, cursor, id } = record;
  const goTo = (step: number): void => {
    for (let at = cursor; at > step; at -= 1) sheet.actions.undo();
    for (let at = cursor; at < step; at += 1) sheet.actions.redo();
  };
  return (
    <>
      <p className="fact">
        <a href={`/run/${id}`}>{words.atMachine}</a>
      </p>
      {log.length === 0 ? (
        <p className="fact">{words.noLog}</p>
      ) : (
        <ol className="log">
          {log.map((entry) => (
            <li key={`${entry.at} ${entry.kind} ${entry.about}`}>
              <time dateTime={entry.at}>{localMoment(entry.at)}</time> {words.logKind(entry.kind)} {entry.about} {entry.text}
            </li>
          ))}
        </ol>
      )}
      <h3>{words.steps}</h3>
      <ol className="steps">
        {steps.map((step, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a step is known by its turn alone
          <li key={i} data-undone={i > cursor}>
            <button type="button" className="plain" aria-current={i === cursor ? 'step' : undefined} onClick={() => goTo(i)}>
              {step.name}
            </button>
            {i === cursor && <em> {words.stepNow}</em>}
            {i > cursor && <em> {words.stepUndone}</em>}
          </li>
        ))}
      </ol>
    </>
  );
};

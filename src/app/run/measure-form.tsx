/** A size as it was measured, and what follows from it: new registers, whether they may be set, and why not. */
import type { Remote } from 'comlink';
import { type FormEvent, type ReactNode, useState } from 'react';
import { numbersIn } from '../../text/print/reader.ts';
import { readLength } from '../fields/typed.ts';
import { toldLine } from '../state/answer-line.ts';
import { preferences } from '../state/open-sheet.ts';
import { runWords } from '../words/run.ts';
import type { Corrected, JobWorker } from '../work/job-worker.ts';
import type { ContourView } from '../work/views.ts';
import type { WriteDown } from './write-down.ts';

const words = runWords.measure;

export interface MeasureProps {
  readonly contours: readonly ContourView[];
  readonly worker: () => Remote<JobWorker>;
  readonly writeDown: WriteDown;
}

export const MeasureForm = ({ contours, worker, writeDown }: MeasureProps): ReactNode => {
  const [answer, setAnswer] = useState<Corrected>();
  const ask = async (event: FormEvent<HTMLFormElement>): Promise<void> => {
    event.preventDefault();
    const said = new FormData(event.currentTarget);
    const field = (name: string): string => String(said.get(name) ?? '').trim();
    const [size, wanted] = [sizeIn(field('size')), sizeIn(field('wanted'))];
    const unread = [size, wanted].find((s) => s.kind === 'cannot');
    if (unread?.kind === 'cannot') return setAnswer(unread);
    const degrees = field('degrees') === '' ? '' : ` at ${field('degrees')}`;
    const text = `${field('contour')}: ${textOf(size)} of ${textOf(wanted)}${degrees}${said.has('one-side') ? ' one side' : ''}`;
    writeDown({ kind: 'measured', about: field('contour'), text });
    setAnswer(await worker().correct([text]));
  };
  const cut = contours.filter((c) => c.number > 0);
  return (
    <section aria-labelledby="measure-title">
      <h2 id="measure-title">{words.title}</h2>
      <form className="measure" onSubmit={(event) => void ask(event)}>
        <label>
          {words.contour}
          <select name="contour">
            {cut.map((c) => (
              <option key={c.id}>{c.id}</option>
            ))}
          </select>
        </label>
        <label>
          {words.size}
          <input name="size" required inputMode="decimal" autoComplete="off" />
        </label>
        <label>
          {words.wanted}
          <input name="wanted" required inputMode="decimal" autoComplete="off" />
        </label>
        <label>
          {words.degrees}
          <input name="degrees" defaultValue="20" inputMode="decimal" autoComplete="off" />
        </label>
        <label className="check">
          <input type="checkbox" name="one-side" />
          {words.oneSide}
        </label>
        <button type="submit" className="big">
          {words.ask}
        </button>
      </form>
      <div role="status">{answer === undefined ? null : <Answer answer={answer} />}</div>
    </section>
  );
};

type Size = { readonly kind: 'size'; readonly mm: number } | { readonly kind: 'cannot'; readonly sentence: string };

/** As this user writes numbers, in the unit they chose. */
const sizeIn = (text: string): Size => {
  const typed = readLength(text, numbersIn(preferences()));
  if (typed.kind === 'value') return { kind: 'size', mm: typed.value as number };
  return {
    kind: 'cannot',
    sentence:
      typed.kind === 'wrong'
        ? typed.reason
        : words.unclear(
            text,
            typed.readings.map((r) => r.said),
          ),
  };
};

const textOf = (size: Size): string => (size.kind === 'size' ? String(size.mm) : '');

const Answer = ({ answer }: { readonly answer: Corrected }): ReactNode => {
  if (answer.kind === 'cannot') return <p className="warning">{toldLine(answer.sentence)}</p>;
  if (answer.kind === 'bad')
    return answer.findings.map((f) => (
      <p key={f.sentence} className="warning">
        {toldLine(`${f.sentence} ${f.remedy ?? ''}`)}
      </p>
    ));
  return (
    <>
      <p className={answer.safe ? 'safe' : 'warning'}>{answer.safe ? words.safe : words.notSafe}</p>
      <table>
        <caption>{words.registers}</caption>
        <thead>
          <tr>
            <th scope="col">{words.register}</th>
            <th scope="col">{words.before}</th>
            <th scope="col">{words.after}</th>
          </tr>
        </thead>
        <tbody>
          {answer.registers.map((r) => (
            <tr key={r.register}>
              <th scope="row">D{r.register}</th>
              <td>{r.before}</td>
              <td>
                <strong>{r.after}</strong>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {/* As it stands: registers keep the unit of the program, whoever reads it. */}
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reached by keyboard */}
      <section className="told" tabIndex={0} aria-label={words.inFull}>
        <pre>{answer.text}</pre>
      </section>
    </>
  );
};

/** A size as it was measured, and what follows from it: new registers, whether they may be set, and why not. */
import type { Remote } from 'comlink';
import { type FormEvent, type ReactNode, useState } from 'react';
import { numbersIn } from '../../text/print/reader.ts';
import { readLength } from '../fields/typed.ts';
import { preferences } from '../state/preferences.ts';
import { useReader, useWords } from '../words/use-words.ts';
import type { Words } from '../words/words-for.ts';
import type { Corrected, JobWorker } from '../work/job-worker.ts';
import { type Tell, toldCorrected } from '../work/sheet-for-reader.ts';
import type { ContourView } from '../work/views.ts';
import type { WriteDown } from './write-down.ts';

export interface MeasureProps {
  readonly contours: readonly ContourView[];
  readonly worker: () => Remote<JobWorker>;
  readonly tell: Tell;
  readonly writeDown: WriteDown;
}

export const MeasureForm = ({ contours, worker, tell, writeDown }: MeasureProps): ReactNode => {
  const words = useWords();
  const reader = useReader();
  const said = words.run.measure;
  const [answer, setAnswer] = useState<Corrected>();
  const [measured, setMeasured] = useState('');
  const ask = async (event: FormEvent<HTMLFormElement>): Promise<void> => {
    event.preventDefault();
    const form = new FormData(event.currentTarget);
    const field = (name: string): string => String(form.get(name) ?? '').trim();
    const [size, wanted] = [sizeIn(field('size'), words), sizeIn(field('wanted'), words)];
    const unread = [size, wanted].find((s) => s.kind === 'cannot');
    if (unread?.kind === 'cannot') return setAnswer(unread);
    const degrees = field('degrees') === '' ? '' : ` at ${field('degrees')}`;
    const text = `${field('contour')}: ${textOf(size)} of ${textOf(wanted)}${degrees}${form.has('one-side') ? ' one side' : ''}`;
    writeDown({ kind: 'measured', about: field('contour'), text });
    setMeasured(text);
    await correct(text);
  };
  const correct = async (text: string): Promise<void> => setAnswer(toldCorrected(await worker().correct([text], reader), tell));
  const cut = contours.filter((c) => c.number > 0);
  return (
    <section aria-labelledby="measure-title">
      <h2 id="measure-title">{said.title}</h2>
      <form className="measure" onSubmit={(event) => void ask(event)}>
        <label>
          {said.contour}
          <select name="contour">
            {cut.map((c) => (
              <option key={c.id}>{c.id}</option>
            ))}
          </select>
        </label>
        <label>
          {said.size}
          <input name="size" required inputMode="decimal" autoComplete="off" />
        </label>
        <label>
          {said.wanted}
          <input name="wanted" required inputMode="decimal" autoComplete="off" />
        </label>
        <label>
          {said.degrees}
          <input name="degrees" defaultValue="20" inputMode="decimal" autoComplete="off" />
        </label>
        <label className="check">
          <input type="checkbox" name="one-side" />
          {said.oneSide}
        </label>
        <button type="submit" className="big">
          {said.ask}
        </button>
      </form>
      <div role="status">
        {answer === undefined ? null : <Answer answer={answer} onAnyway={() => void correct(`${measured} anyway`)} />}
      </div>
    </section>
  );
};

type Size = { readonly kind: 'size'; readonly mm: number } | { readonly kind: 'cannot'; readonly sentence: string };

/** As this user writes numbers, in the unit they chose. */
const sizeIn = (text: string, words: Words): Size => {
  const typed = readLength(text, numbersIn(preferences()), words.typed);
  if (typed.kind === 'value') return { kind: 'size', mm: typed.value as number };
  return {
    kind: 'cannot',
    sentence:
      typed.kind === 'wrong'
        ? typed.reason
        : words.run.measure.unclear(
            text,
            typed.readings.map((r) => r.said),
          ),
  };
};

const textOf = (size: Size): string => (size.kind === 'size' ? String(size.mm) : '');

const Answer = ({ answer, onAnyway }: { readonly answer: Corrected; readonly onAnyway: () => void }): ReactNode => {
  const words = useWords().run.measure;
  if (answer.kind === 'cannot') return <p className="warning">{answer.sentence}</p>;
  if (answer.kind === 'bad')
    return (
      <>
        {answer.findings.map((f) => (
          <p key={f.sentence} className="warning">
            {f.sentence} {f.severity === 'doubt' ? '' : f.remedy}
          </p>
        ))}
        {answer.findings.every((f) => f.severity === 'doubt') && (
          <button type="button" onClick={onAnyway}>
            {words.anyway}
          </button>
        )}
      </>
    );
  return (
    <>
      <p className={answer.safe ? 'safe' : 'warning'}>{answer.safe ? (answer.worth ? words.safe : words.notWorth) : words.notSafe}</p>
      {answer.safe && answer.worth && <Registers registers={answer.registers} />}
      {/* As it stands: registers keep the unit of the program, whoever reads it. */}
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reached by keyboard */}
      <section className="told" tabIndex={0} aria-label={words.inFull}>
        <pre>{answer.text}</pre>
      </section>
    </>
  );
};

const Registers = ({ registers }: Pick<Extract<Corrected, { kind: 'corrected' }>, 'registers'>): ReactNode => {
  const words = useWords().run.measure;
  return (
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
        {registers.map((r) => (
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
  );
};

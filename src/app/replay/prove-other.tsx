/** A program from elsewhere: dropped or chosen, held against the drawing of this job, judged with its reasons and their lines. */
import { type DragEvent, type ReactNode, useRef, useState } from 'react';
import type { Finding } from '../../finding/finding.ts';
import { programWords as words } from '../words/replay.ts';
import type { Judged } from '../work/job-worker.ts';
import './replay.css';

export interface ProveOtherProps {
  readonly prove: (text: string) => Promise<Judged>;
  readonly locale?: string | undefined;
  /** Called with a program that was judged, so that it can be kept with the job. */
  readonly onJudged?: ((name: string, text: string, judged: Judged) => void) | undefined;
}

type State =
  | { readonly kind: 'none' }
  | { readonly kind: 'proving'; readonly name: string }
  | { readonly kind: 'failed'; readonly sentence: string }
  | { readonly kind: 'judged'; readonly name: string; readonly text: string; readonly judged: Judged };

/** The worker reads programs as they come from a machine, MB. */
const MOST = 20;

const useJudging = (prove: ProveOtherProps['prove'], onJudged: ProveOtherProps['onJudged']) => {
  const [state, setState] = useState<State>({ kind: 'none' });
  const take = async (file: File | undefined): Promise<void> => {
    if (file === undefined) return;
    const { name } = file;
    if (file.size > MOST * 1e6) return setState({ kind: 'failed', sentence: words.tooLarge(name, String(MOST)) });
    setState({ kind: 'proving', name });
    try {
      const text = await file.text();
      const judged = await prove(text);
      setState({ kind: 'judged', name, text, judged });
      onJudged?.(name, text, judged);
    } catch {
      setState({ kind: 'failed', sentence: words.readingFailed(name) });
    }
  };
  return { state, take, leave: () => setState({ kind: 'none' }) };
};

export const ProveOther = ({ prove, locale, onJudged }: ProveOtherProps): ReactNode => {
  const { state, take, leave } = useJudging(prove, onJudged);
  const [over, setOver] = useState(false);
  const field = useRef<HTMLInputElement>(null);
  const dropped = (event: DragEvent): void => {
    event.preventDefault();
    // The page takes drawings wherever they are dropped: what is dropped here is a program.
    event.stopPropagation();
    setOver(false);
    void take(event.dataTransfer.files[0]);
  };
  return (
    <section
      className="prove-other"
      aria-label={words.other}
      data-over={over}
      onDragOver={(event) => {
        event.preventDefault();
        event.stopPropagation();
        setOver(true);
      }}
      onDragLeave={() => setOver(false)}
      onDrop={dropped}
    >
      <h3>{words.other}</h3>
      <div role="status">
        {state.kind === 'proving' && <p>{words.proving(state.name)}</p>}
        {state.kind === 'failed' && <p>{state.sentence}</p>}
        {state.kind === 'judged' && <Verdict name={state.name} text={state.text} judged={state.judged} locale={locale} />}
      </div>
      {state.kind === 'none' && <p className="fact">{words.otherLead}</p>}
      <p className="prove-ways">
        <button type="button" disabled={state.kind === 'proving'} onClick={() => field.current?.click()}>
          {words.choose}
        </button>
        {state.kind !== 'none' && state.kind !== 'proving' && (
          <button type="button" className="plain" onClick={leave}>
            {words.own}
          </button>
        )}
      </p>
      <input
        ref={field}
        className="unseen"
        type="file"
        tabIndex={-1}
        aria-label={words.choose}
        accept=".nc,.txt,.cnc,.iso,.eia,.din,.tap,.mpf,.ngc,.prg,text/plain"
        onChange={(event) => {
          void take(event.currentTarget.files?.[0]);
          event.currentTarget.value = '';
        }}
      />
    </section>
  );
};

interface VerdictProps {
  readonly name: string;
  readonly text: string;
  readonly judged: Judged;
  readonly locale: string | undefined;
}

const Verdict = ({ name, text, judged, locale }: VerdictProps): ReactNode => {
  if (judged.kind === 'cannot')
    return (
      <p className="verdict" data-verdict="cannot">
        <strong>{words.cannot(name)}</strong> {judged.sentence}
      </p>
    );
  const lines = text.split(/\r?\n/);
  const proven = judged.verdict === 'proven';
  return (
    <>
      <p className="verdict" data-verdict={judged.verdict}>
        <span aria-hidden="true">{proven ? '✓' : '✕'}</span> <strong>{proven ? words.proven(name) : words.notProven(name)}</strong>
      </p>
      {judged.findings.length > 0 && (
        <ol className="judged" aria-label={words.findings}>
          {judged.findings.map((finding, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: findings of one judgement never move
            <li key={i} data-severity={finding.severity}>
              <Judgement finding={finding} lines={lines} locale={locale} />
            </li>
          ))}
        </ol>
      )}
      {judged.text !== '' && (
        <details>
          <summary>{words.whole}</summary>
          {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a text that scrolls must be reached by keyboard */}
          <pre className="judged-text" tabIndex={0}>
            {judged.text}
          </pre>
        </details>
      )}
    </>
  );
};

const Judgement = ({
  finding,
  lines,
  locale,
}: {
  readonly finding: Finding;
  readonly lines: readonly string[];
  readonly locale: string | undefined;
}): ReactNode => {
  const { place } = finding;
  return (
    <>
      <strong>{words.severity(finding.severity)}.</strong> {finding.sentence}
      {finding.remedy !== undefined && ` ${finding.remedy}`}
      {place?.kind === 'line' && (
        <span className="judged-line">
          {words.line(new Intl.NumberFormat(locale).format(place.line))} <code>{place.text ?? lines[place.line - 1] ?? ''}</code>
        </span>
      )}
    </>
  );
};

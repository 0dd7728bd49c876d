/** What the proof says of a program from elsewhere: the verdict, and its reasons, each with the line at fault. */
import type { ReactNode } from 'react';
import { useWords } from '../words/use-words.ts';
import type { Judged } from '../work/job-worker.ts';
import type { FoundView } from '../work/views.ts';

interface VerdictProps {
  readonly name: string;
  readonly lines: readonly string[];
  readonly judged: Judged;
  readonly count: (n: number) => string;
  /** Line counted from 0. */
  readonly onLine: (line: number) => void;
}

export const Verdict = ({ name, lines, judged, count, onLine }: VerdictProps): ReactNode => {
  const words = useWords().program;
  if (judged.kind === 'cannot')
    return (
      <p className="verdict" data-verdict="cannot" role="status">
        <strong>{words.cannot(name)}</strong> {judged.sentence}
      </p>
    );
  const proven = judged.verdict === 'proven';
  return (
    <>
      <p className="verdict" data-verdict={judged.verdict} role="status">
        <span aria-hidden="true">{proven ? '✓' : '✕'}</span> <strong>{proven ? words.proven(name) : words.notProven(name)}</strong>
      </p>
      {judged.findings.length > 0 && (
        <ol className="judged" aria-label={words.findings}>
          {judged.findings.map((finding, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: findings of one judgement never move
            <li key={i} data-severity={finding.severity}>
              <Judgement finding={finding} lines={lines} count={count} onLine={onLine} />
            </li>
          ))}
        </ol>
      )}
      {judged.report.length > 0 && (
        <details>
          <summary>{words.whole}</summary>
          {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a text that scrolls must be reached by keyboard */}
          <pre className="judged-text" tabIndex={0}>
            {judged.report.join('\n')}
          </pre>
        </details>
      )}
    </>
  );
};

interface JudgementProps extends Pick<VerdictProps, 'lines' | 'count' | 'onLine'> {
  readonly finding: FoundView;
}

/** A line may be as long as a file that is no program at all. */
const LONGEST = 120;

const Judgement = ({ finding, lines, count, onLine }: JudgementProps): ReactNode => {
  const { program: words, sheet } = useWords();
  const { place } = finding;
  return (
    <>
      <strong>{sheet.severity(finding.severity)}.</strong> {finding.sentence}
      {finding.remedy !== undefined && ` ${finding.remedy}`}
      {place?.kind === 'line' && (
        <span className="judged-line">
          <button type="button" className="plain" onClick={() => onLine(place.line - 1)}>
            {words.line(count(place.line))}
          </button>{' '}
          <code>{(place.text ?? lines[place.line - 1] ?? '').slice(0, LONGEST)}</code>
        </span>
      )}
    </>
  );
};

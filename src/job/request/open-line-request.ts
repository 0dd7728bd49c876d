/** The open lines of a drawing that a job wants cut. */

import type { Drawing } from '../../drawing/drawing.ts';
import type { WantedLine } from '../../plan/open-line.ts';
import type { Finding } from '../../text/finding.ts';
import { contour, list, name } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import { contoursIn } from '../../text/within.ts';
import { find } from '../findings.ts';
import type { Job } from '../job.ts';

export interface OpenLineRequest {
  readonly lines: readonly WantedLine[];
  readonly findings: readonly Finding[];
}

/** Hidden lines are cut when the job names them; a name that no line has is said. */
export const openRequest = (drawing: Drawing, { open }: Pick<Job, 'open'>): OpenLineRequest => {
  const known = new Map(drawing.openChains.map((c) => [c.id, c]));
  const asked = Object.entries(open);
  const lines = asked.flatMap(([id, kept]): WantedLine[] => {
    const chain = known.get(id);
    return chain === undefined || kept === 'leave' ? [] : [{ id, path: chain.path, kept, fit: chain.fitDeviation }];
  });
  const findings = asked.filter(([id]) => !known.has(id)).map(([id]) => unknown(id, [...known.keys()]));
  return { lines, findings };
};

const unknown = (id: string, known: readonly string[]): Finding =>
  find('open-of-unknown-line', known.length === 0 ? words.none(id) : words.others(id, known), {
    place: { kind: 'field', path: `open.${id}` },
  });

const words = phrases('open-of-unknown-line', {
  none: (id: string) => say`The job says how to cut the open line ${{ line: name(id) }}; the drawing has no open line.`,
  others: (id: string, known: readonly string[]) =>
    say`The job says how to cut the open line ${{ line: name(id) }}; the drawing has ${{ known: list(known.map(contour)) }}.`,
});

/** What the drawing says of lines that do not close, and of a drawing that has only those, without what is cut as lines. */
export const withoutCutLines = (findings: readonly Finding[], lines: readonly WantedLine[]): readonly Finding[] => {
  if (lines.length === 0) return findings;
  const cut = ({ text }: Finding): boolean => {
    const [first] = contoursIn(text);
    return lines.some((l) => l.id === first);
  };
  return findings.filter((f) => f.code !== 'no-loop' && ((f.code !== 'open-chain' && f.code !== 'chain-ends-on-loop') || !cut(f)));
};

/** Findings as numbered marks of the pencil: the same numbers in the margin and in the picture. */
import type { Chapter, FindingView } from '../work/views.ts';

export interface PencilMark {
  readonly id: string;
  readonly number: number;
  readonly x: number;
  readonly y: number;
  /** mm */
  readonly reach: number;
  /** It refuses the job. */
  readonly heavy: boolean;
  /** Only good to know: a smaller, thinner mark. */
  readonly light: boolean;
  /** The contour it speaks of. */
  readonly loop?: string | undefined;
  readonly sentence: string;
}

/** Number of each finding that has a place, counted through the whole sheet in its order. */
export const findingNumbers = (findings: readonly FindingView[]): ReadonlyMap<string, number> =>
  new Map(findings.filter((f) => f.at !== undefined).map((f, i) => [f.id, i + 1]));

/** Marks in a chapter's picture: its own, those that refuse the job, and the one pointed at. */
export const marksOf = (findings: readonly FindingView[], chapter: Chapter, pointed?: string): readonly PencilMark[] => {
  const numbers = findingNumbers(findings);
  return findings.flatMap((f): readonly PencilMark[] => {
    if (f.at === undefined) return [];
    const heavy = f.severity === 'refusal';
    if (!(f.chapter === chapter || heavy || f.id === pointed)) return [];
    return [
      {
        id: f.id,
        number: numbers.get(f.id) ?? 0,
        x: f.at.x,
        y: f.at.y,
        reach: f.at.reach,
        heavy,
        light: f.severity === 'note',
        sentence: f.sentence,
        loop: f.at.loop,
      },
    ];
  });
};

/** The steps of one contour before it is known which loop they are for: stops speak of the loop they are told. */
import type { Segment } from '../../geometry/segment.ts';
import type { Step, StopReason } from '../plan.ts';

type Cut = Extract<Step, { readonly kind: 'cut' }>;

export type DesignStep =
  | Exclude<Step, { readonly kind: 'stop' | 'contour begins' | 'travel' | 'end' }>
  | { readonly kind: 'stop'; readonly reason: StopReason; readonly say: (loop: string) => string };

export const cut = (pass: number, part: Cut['part'], pieces: { readonly programmed?: Segment; readonly centre?: Segment }): DesignStep => ({
  kind: 'cut',
  ...(pieces.programmed && { programmed: pieces.programmed }),
  ...(pieces.centre && { centre: pieces.centre }),
  pass,
  part,
});

export const stop = (reason: StopReason, say: (loop: string) => string): DesignStep => ({ kind: 'stop', reason, say });

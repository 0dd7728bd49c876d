/** The steps of one contour before it is known which loop they are for. */
import type { Segment } from '../../geometry/segment.ts';
import type { Text } from '../../text/text.ts';
import type { PlannedStop, Step } from '../plan.ts';

type CutStep = Extract<Step, { readonly kind: 'cut' }>;

export type DesignStep =
  | Exclude<Step, { readonly kind: 'stop' | 'contour begins' | 'travel' | 'end' }>
  | { readonly kind: 'stop'; readonly purpose: PlannedStop; readonly text: Text; readonly details: readonly Text[] };

export const cut = (
  pass: number,
  part: CutStep['part'],
  pieces: { readonly programmed?: Segment | undefined; readonly centre?: Segment | undefined },
): DesignStep => ({
  kind: 'cut',
  programmed: pieces.programmed,
  centre: pieces.centre,
  pass,
  part,
});

/** `details` are comment lines of their own before it. */
export const stop = (purpose: PlannedStop, text: Text, details: readonly Text[] = []): DesignStep => ({
  kind: 'stop',
  purpose,
  text,
  details,
});

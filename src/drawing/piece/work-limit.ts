/** Steps of work that are left to the joining of a drawing: counted, not timed, so that the same file always ends alike. */

export interface WorkLimit {
  left: number;
}

/** Thrown by `spend` and caught by `readDrawing` alone, so that no stage has to hand the refusal through. */
export class WorkSpent extends Error {}

export const spend = (work: WorkLimit, steps: number): void => {
  work.left -= steps;
  if (work.left < 0) throw new WorkSpent('the work limit is spent');
};

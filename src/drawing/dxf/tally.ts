/** Counts what was met and not drawn, for the file as a whole or for one block until it is seen whether that is drawn. */

/** How often, and the first place. */
interface Met {
  readonly count: number;
  readonly first: number;
}

export interface Tally {
  readonly passedOver: ReadonlyMap<string, Met>;
  /** Polylines with a width. */
  readonly wide: Met;
  readonly passOver: (type: string, place: number) => void;
  readonly width: (place: number) => void;
  readonly addAll: (other: Tally) => void;
}

export const tally = (): Tally => {
  const passedOver = new Map<string, Met>();
  let wide: Met = NONE;
  const passOver = (type: string, met: Met): void => {
    passedOver.set(type, together(passedOver.get(type) ?? NONE, met));
  };
  return {
    passedOver,
    get wide() {
      return wide;
    },
    passOver: (type, first) => passOver(type, { count: 1, first }),
    width: (first) => {
      wide = together(wide, { count: 1, first });
    },
    addAll: (other) => {
      wide = together(wide, other.wide);
      for (const [type, met] of other.passedOver) passOver(type, met);
    },
  };
};

/** The first place is the earlier one in the file, in whatever order blocks are drawn. */
const together = (a: Met, b: Met): Met => ({ count: a.count + b.count, first: Math.min(a.first, b.first) });

const NONE: Met = { count: 0, first: Number.POSITIVE_INFINITY };

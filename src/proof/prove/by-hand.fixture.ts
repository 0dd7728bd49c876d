/** For tests of the proof: shapes, questions, and programs written by hand in a few short words. */

import { boundsOfChain } from '../../geometry/area.ts';
import type { Contour } from '../../geometry/contour.ts';
import type { Point } from '../../geometry/segment.ts';
import { circle, line, point } from '../../geometry/segment.ts';
import { standardDialect } from '../../nc/dialect/dialect.ts';
import type { Action } from '../../nc/read/program.ts';
import { stopSaid } from '../../nc/read/stop-purpose.ts';
import type { Proof, ProofQuestion, Wanted } from '../proof.ts';

export const box = (x0: number, y0: number, x1: number, y1: number): Contour => ({
  closed: true,
  segments: [
    line(point(x0, y0), point(x1, y0)),
    line(point(x1, y0), point(x1, y1)),
    line(point(x1, y1), point(x0, y1)),
    line(point(x0, y1), point(x0, y0)),
  ],
});

export const ring = (x: number, y: number, radius: number): Contour => ({ closed: true, segments: [circle(point(x, y), radius)] });

export const RADIUS = 0.155;
/** Just wide enough for the wire, and narrower than its kerf. */
export const START_HOLE = 0.26;

/** There the openings of these tests begin. */
export const middleOf = (contour: Contour): Point => {
  const { minX, minY, maxX, maxY } = boundsOfChain(contour);
  return point((minX + maxX) / 2, (minY + maxY) / 2);
};

export const question = (wanted: readonly Wanted[], more: Partial<ProofQuestion> = {}): ProofQuestion => ({
  program: '',
  dialect: standardDialect,
  registers: new Map([[1, RADIUS]]),
  wireDiameter: 0.25,
  gaps: new Map([[1, 0.03]]),
  wanted,
  block: box(0, 0, 60, 40),
  holes: wanted.filter((w) => w.kept === 'die').map((w) => ({ at: middleOf(w.contour), diameter: START_HOLE })),
  height: 25,
  density: 7.7,
  tolerance: 0.002,
  insideCorner: 0.16,
  ...more,
});

/** A list of actions by a few short words. */
export const script = () => {
  const actions: Action[] = [];
  let at = point(0, 0);
  let block = -1;
  const move = (rapid: boolean) => (x: number, y: number) => {
    block += 1;
    const centre = line(at, point(x, y));
    actions.push({ kind: 'move', block, rapid, programmed: centre, centre, register: 1 });
    at = point(x, y);
  };
  return {
    actions,
    go: move(true),
    cut: move(false),
    circle: (x: number, y: number, radius: number) => {
      block += 1;
      const centre = circle(point(x, y), radius);
      actions.push({ kind: 'move', block, rapid: false, programmed: centre, centre, register: 1 });
      at = centre.to;
    },
    stop: (comment: string) => {
      block += 1;
      actions.push({ kind: 'stop', block, optional: false, comment, ...stopSaid(comment) });
    },
    end: () => {
      block += 1;
      actions.push({ kind: 'end', block });
    },
  };
};

/** What is more than a note. */
export const faults = (proof: Proof): readonly string[] => proof.findings.filter((f) => f.severity !== 'note').map((f) => f.code);

export const codes = (proof: Proof): readonly string[] => proof.findings.map((f) => f.code);

/** Cuts a box of the wire's centre from its lower middle, all but a tab of 2 mm, then the tab after a stop. */
export const cutBox = (s: ReturnType<typeof script>, x0: number, y0: number, x1: number, y1: number): void => {
  const middle = (x0 + x1) / 2;
  s.cut(middle, y0);
  s.cut(x1, y0);
  s.cut(x1, y1);
  s.cut(x0, y1);
  s.cut(x0, y0);
  s.cut(middle - 2, y0);
  s.stop('SECURE THE SLUG');
  s.cut(middle + 0.2, y0);
  s.stop('TAKE THE SLUG OUT');
};

export const openingOf = (x: number, y: number, s = script()) => {
  s.go(x + 5, y + 5);
  s.stop('THREAD THE WIRE');
  cutBox(s, x + RADIUS, y + RADIUS, x + 10 - RADIUS, y + 10 - RADIUS);
  return s;
};

/** A part in the middle of the block, cut from a hole below it. */
export const PART: Wanted = { loop: 'out', contour: box(20, 5, 40, 35), kept: 'punch' };
export const PART_HOLE = { holes: [{ at: point(30, 2), diameter: START_HOLE }] };
export const aroundPart = (s: ReturnType<typeof script>) => {
  s.go(30, 2);
  s.stop('THREAD THE WIRE');
  cutBox(s, 20 - RADIUS, 5 - RADIUS, 40 + RADIUS, 35 + RADIUS);
  return s;
};

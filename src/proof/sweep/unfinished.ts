/** Which passes came by on each face: the size may be right there, and the finish that of an earlier pass, or the stock that of two. */
import { perimeterOf } from '../../geometry/area.ts';
import type { Chain } from '../../geometry/contour.ts';
import { distanceToSegment, lengthOf, pointAt } from '../../geometry/measure.ts';
import type { Point } from '../../geometry/segment.ts';
import { itemAt } from '../../sequence/sequence.ts';
import { drawnLine, turnsRound } from '../drawn-line.ts';
import type { GroupWork, OwnLimits, WorkCut } from './group-alone.ts';
import { inSlit } from './open-line-deviation.ts';

/** Places along a face stand this far apart, mm, and there are so many at most. */
const SPACING = 0.1;
const MOST_PLACES = 1200;

/** A pass leaves no more stock, mm, than this for the next: a cut that runs further from the face is none of its passes. */
const STOCK = 0.3;

/**
 * Where even the nearest cut stays off, as in a needle, a wider one stays off further: by no more than this many times as much, since offsets
 * of one job lie no further apart.
 */
const WIDER = 3;

/** A pass that leaves so much more, mm, than one before it takes nothing; one with the same register and a finer spark may leave a little more. */
const IDLE = 5e-3;

/** Of one face. */
export interface Coverage {
  /** Where another pass than the last one cut last, all such stretches together; none where the last one did. */
  readonly unfinished?: (Stretch & { readonly cut: number }) | undefined;
  /** Passes that did not come by, by their number, and the longest stretch that each missed: beside every corner it may miss a little. */
  readonly leftOut: readonly (Stretch & { readonly pass: number })[];
  /** Passes that came by where an earlier one had been nearer: they take nothing there. */
  readonly idle: readonly (Stretch & { readonly pass: number })[];
}

interface Stretch {
  /** Where it begins. */
  readonly at: Point;
  /** mm of the face. */
  readonly length: number;
}

/** Of wanted contours, and of open lines with one side kept, as far as they lie in the block and in the mouth of no slit. */
export interface Covered {
  readonly wanted: readonly Coverage[];
  readonly open: readonly Coverage[];
}

export const coveredBy = (work: GroupWork): Covered => {
  const block = work.block && drawnLine(work.block);
  const inBlock = (at: Point): boolean => block === undefined || turnsRound(block, at) !== 0;
  const inMouth = inSlit(work);
  return {
    wanted: work.wanted.map(({ contour, own }) => coverageOf(work, contour, (at) => !inMouth(at), own)),
    // A slit is as wide as one kerf: it has one pass.
    open: work.open.map((line) =>
      line.kept === 'slit' ? NOTHING : coverageOf(work, line.path, (at) => inBlock(at) && !inMouth(at, line), line.own),
    ),
  };
};

const NOTHING: Coverage = { leftOut: [], idle: [] };

const coverageOf = (work: GroupWork, face: Chain, isFace: (at: Point) => boolean, own?: OwnLimits): Coverage => {
  const { tolerance } = own ?? work;
  const due = own?.due ?? [...work.passes.keys()];
  // A cut of other contours' passes is none that finishes this one.
  const isFinish = ({ energy }: WorkCut): boolean => energy.isLast && (own === undefined || due.includes(energy.pass ?? -1));
  let unfinished: Coverage['unfinished'];
  const missed = work.passes.map(() => longest());
  const idle = work.passes.map(() => longest());
  for (const { at, step } of placesOn(face)) {
    const isWanted = isFace(at);
    const last = isWanted ? work.cuts.findLastIndex((cut) => reaches(cut, at, tolerance)) : -1;
    if (last >= 0 && !isFinish(itemAt(work.cuts, last)))
      unfinished = { at: unfinished?.at ?? at, length: (unfinished?.length ?? 0) + step, cut: unfinished?.cut ?? last };
    const lefts = isWanted ? leftsAt(work, at) : undefined;
    const most =
      lefts &&
      mostLeft(
        work,
        due.map((pass) => itemAt(lefts, pass)),
        at,
      );
    for (const [turn, pass] of due.entries()) {
      const left = lefts?.[pass] ?? 0;
      const before = lefts === undefined ? [] : due.slice(0, turn).map((earlier) => itemAt(lefts, earlier));
      itemAt(missed, pass).go(at, step, most !== undefined && left > most && !isNear(work, pass, at, most));
      itemAt(idle, pass).go(at, step, lefts !== undefined && left <= STOCK && Math.min(...before) < left - IDLE);
    }
  }
  return { unfinished, leftOut: foundIn(missed), idle: foundIn(idle) };
};

const foundIn = (passes: readonly ReturnType<typeof longest>[]): Coverage['idle'] =>
  passes.flatMap((m, pass) => m.found().map((stretch) => ({ ...stretch, pass })));

const placesOn = function* (face: Chain): Iterable<{ readonly at: Point; readonly step: number }> {
  const most = Math.max(SPACING, perimeterOf(face) / MOST_PLACES);
  for (const s of face.segments) {
    const steps = Math.max(1, Math.round(lengthOf(s) / most));
    for (let i = 0; i < steps; i += 1) yield { at: pointAt(s, (i + 0.5) / steps), step: lengthOf(s) / steps };
  }
};

/** The longest of the stretches that are gone along one after the other. */
const longest = () => {
  let run: Stretch | undefined;
  let most: Stretch | undefined;
  return {
    go: (at: Point, step: number, isOn: boolean): void => {
      run = isOn ? { at: run?.at ?? at, length: (run?.length ?? 0) + step } : undefined;
      if (run !== undefined && run.length > (most?.length ?? 0)) most = run;
    },
    found: (): readonly Stretch[] => (most === undefined ? [] : [most]),
  };
};

/** mm that each pass leaves at a place, as far as it comes near. */
const leftsAt = ({ cuts, passes }: GroupWork, at: Point): readonly number[] => {
  const lefts = passes.map(() => Infinity);
  for (const cut of cuts) {
    const { pass } = cut.energy;
    if (pass !== undefined && isBeside(cut, at, STOCK)) lefts[pass] = Math.min(itemAt(lefts, pass), leftBy(cut, at));
  }
  return lefts;
};

/** mm that a pass may leave: none is asked for where all came near. */
const mostLeft = ({ cuts }: GroupWork, lefts: readonly number[], at: Point): number | undefined =>
  lefts.every((left) => left <= STOCK) ? undefined : STOCK + WIDER * Math.max(0, Math.min(...cuts.map((c) => leftBy(c, at))));

const isNear = ({ cuts }: GroupWork, pass: number, at: Point, most: number): boolean =>
  cuts.some((c) => c.energy.pass === pass && leftBy(c, at) <= most);

const leftBy = ({ segment, radius }: WorkCut, at: Point): number => distanceToSegment(segment, at) - radius;

const reaches = (cut: WorkCut, at: Point, beyond: number): boolean => isBeside(cut, at, beyond) && leftBy(cut, at) <= beyond;

/** By its box. */
const isBeside = ({ segment, radius }: WorkCut, at: Point, beyond: number): boolean => {
  const { from, to } = segment;
  const more = radius + beyond + (segment.kind === 'arc' ? 2 * segment.radius : 0);
  return (
    at.x >= Math.min(from.x, to.x) - more &&
    at.x <= Math.max(from.x, to.x) + more &&
    at.y >= Math.min(from.y, to.y) - more &&
    at.y <= Math.max(from.y, to.y) + more
  );
};

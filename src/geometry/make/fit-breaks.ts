/** Where a curve is best cut before it is fitted: at corners, told or found, and where its bend changes side or turns back. */
import { lastOf, neighbours } from '../../sequence/sequence.ts';
import { turnBetween } from '../angle.ts';
import type { Point } from '../segment.ts';
import { distanceBetween } from '../segment.ts';
import type { FitCurve } from './fit-curve.ts';
import { directionAt, isFinitePoint } from './fit-curve.ts';

export type Breaks =
  /** From start to end; `speed` is the greatest size of the derivative where it was looked at. */
  | { readonly kind: 'broken'; readonly at: readonly CurveBreak[]; readonly speed: number }
  | { readonly kind: 'no extent' }
  | { readonly kind: 'not finite'; readonly parameter: number };

const sizeOf = (d: Point): number => (isFinitePoint(d) ? Math.hypot(d.x, d.y) : 0);

export interface CurveBreak {
  readonly t: number;
  /** The direction jumps here, or may jump. */
  readonly corner: boolean;
}

/** The cuts of a curve, its start and end included. */
export const breaksOf = (curve: FitCurve): Breaks => {
  const range = curve.end - curve.start;
  if (!Number.isFinite(range)) return { kind: 'not finite', parameter: curve.start };
  const inner = (curve.breaks ?? []).filter((t) => (t - curve.start) / range > 1e-12 && (curve.end - t) / range > 1e-12);
  const told = [curve.start, ...inner.sort((a, b) => (a - b) * Math.sign(range)), curve.end];
  const looks = neighbours(told).map(([start, end]) => lookOver(curve, start, end));
  const bad = looks.flat().find((l) => !isFinitePoint(l.at));
  if (bad !== undefined) return { kind: 'not finite', parameter: bad.t };
  const length = looks.reduce((sum, l) => sum + lengthOver(l), 0);
  if (!(length > 0)) return { kind: 'no extent' };
  const speed = looks.flat().reduce((most, l) => Math.max(most, sizeOf(curve.tangentAt(l.t))), 0);
  const at = looks.flatMap((l, i) => [{ t: l[0].t, corner: i > 0 }, ...found(curve, l, speed)]);
  const all = [...at, { t: curve.end, corner: false }];
  return { kind: 'broken', at: all.filter((cut, i) => cut.t !== all[i - 1]?.t), speed };
};

interface Look {
  readonly t: number;
  readonly at: Point;
}

/** At both ends at least. */
type Looks = readonly [Look, ...Look[], Look];

const LOOKS = 64;

/** Evenly spaced places over one piece between told breaks. */
const lookOver = (curve: FitCurve, start: number, end: number): Looks => {
  const share = Math.abs((end - start) / (curve.end - curve.start));
  const count = LOOKS * Math.max(1, Math.min(Math.ceil((curve.pieces ?? 1) * share), 4096) / 4);
  const steps = Math.ceil(count);
  const look = (t: number): Look => ({ t, at: curve.pointAt(t) });
  const between = Array.from({ length: steps - 1 }, (_, i) => look(start + ((end - start) * (i + 1)) / steps));
  return [look(start), ...between, look(end)];
};

const lengthOver = (looks: Looks): number => neighbours(looks).reduce((sum, [a, b]) => sum + distanceBetween(a.at, b.at), 0);

/** Corners nobody told of, and the extremes and zeros of the bend. */
const found = (curve: FitCurve, looks: Looks, speed: number): CurveBreak[] => {
  const seen = looks.map(({ t, at }) => ({ t, at, ahead: directionAt(curve, t, 1, speed), behind: directionAt(curve, t, -1, speed) }));
  const steps = neighbours(seen).map(([from, to]) => ({
    from,
    to,
    turn: turnBetween(from.ahead.x, from.ahead.y, to.behind.x, to.behind.y),
  }));
  const onLooks = seen.slice(1, -1).flatMap(({ t, behind, ahead }) => {
    const turn = turnBetween(behind.x, behind.y, ahead.x, ahead.y);
    return Math.abs(turn) > CORNER ? [t] : [];
  });
  const between = steps.flatMap(({ from, to, turn }) => (Math.abs(turn) > CORNER ? cornerBetween(curve, from.t, to.t, speed) : []));
  const way = Math.sign(lastOf(looks).t - looks[0].t);
  const corners = [...onLooks, ...between].sort((a, b) => (a - b) * way);
  const gap = Math.abs(looks[1].t - looks[0].t);
  const bends = bendCuts(steps).filter((t) => corners.every((c) => Math.abs(c - t) > 2 * gap));
  const cuts = [...corners.map((t) => ({ t, corner: true })), ...bends.map((t) => ({ t, corner: false }))];
  return cuts.sort((a, b) => (a.t - b.t) * way);
};

/** Rad: a turn this large over a vanishing stretch is a corner, and one larger between two looks is looked into. */
const CORNER = 0.01;

/** Halves the stretch, keeping the half that turns more; a smooth bend halves as well and is left, a corner does not. */
const cornerBetween = (curve: FitCurve, start: number, end: number, speed: number): number[] => {
  let [low, high] = [start, end];
  let most = turnOver(curve, low, high, speed);
  for (let i = 0, fading = 0; i < 48 && fading < 2; i += 1) {
    const middle = (low + high) / 2;
    if (middle === low || middle === high) break;
    const [first, second] = [turnOver(curve, low, middle, speed), turnOver(curve, middle, high, speed)];
    fading = Math.max(first, second) < 0.6 * most ? fading + 1 : 0;
    most = Math.max(first, second);
    if (most < CORNER) return [];
    if (first > second) high = middle;
    else low = middle;
    if (fading === 2) return [];
  }
  return [high];
};

const turnOver = (curve: FitCurve, a: number, b: number, speed: number): number => {
  const u = directionAt(curve, a, 1, speed);
  const v = directionAt(curve, b, -1, speed);
  return Math.abs(turnBetween(u.x, u.y, v.x, v.y));
};

/** From one look to the next. */
interface StepOver {
  readonly from: Look;
  readonly to: Look;
  /** rad */
  readonly turn: number;
}

/** How much a curve bends, rad/mm, in the middle between two looks. */
interface Bend {
  readonly bend: number;
  readonly t: number;
}

/** Parameters where the bend (turn per length) changes sign or is greatest or least by more than noise. */
const bendCuts = (steps: readonly StepOver[]): number[] => {
  const bends = steps.map(
    ({ from, to, turn }): Bend => ({
      bend: turn / Math.max(distanceBetween(from.at, to.at), Number.MIN_VALUE),
      t: (from.t + to.t) / 2,
    }),
  );
  const noise = 0.01 * Math.max(...bends.map(({ bend }) => Math.abs(bend)).filter(Number.isFinite), 0);
  return neighbours(bends).flatMap(([a, b], i) => {
    const gap = b.t - a.t;
    if (a.bend * b.bend < 0 && Math.abs(a.bend) + Math.abs(b.bend) > noise) return [a.t + (gap * a.bend) / (a.bend - b.bend)];
    return extremeAt(bends, i, noise, gap);
  });
};

/** Where the bend is greatest or least near the middle `i`, if it is; not at the first and the last middle. */
const extremeAt = (bends: readonly Bend[], i: number, noise: number, gap: number): number[] => {
  const [before, here, after] = [bends[i - 1], bends[i], bends[i + 1]];
  const [far, farther] = [bends[Math.max(0, i - 4)], bends[Math.min(bends.length - 1, i + 4)]];
  if (before === undefined || here === undefined || after === undefined || far === undefined || farther === undefined) return [];
  const [over, under] = [here.bend - before.bend, here.bend - after.bend];
  if (!(over * under >= 0) || (over === 0 && under === 0) || over === 0) return [];
  const [high, low] = [here.bend - far.bend, here.bend - farther.bend];
  if (!(high * low > 0 && Math.min(Math.abs(high), Math.abs(low)) > noise)) return [];
  return [peakOf(before.bend, here.bend, after.bend, here.t, gap)];
};

/** Top of the parabola through three neighbours. */
const peakOf = (a: number, b: number, c: number, t: number, gap: number): number => {
  const bow = a - 2 * b + c;
  return bow === 0 ? t : t + (gap * (a - c)) / (2 * bow);
};

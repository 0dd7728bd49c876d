/** Where a curve is best cut before it is fitted: at corners, told or found, and where its bend changes side or turns back. */
import { turnBetween } from '../angle.ts';
import type { Point } from '../segment.ts';
import { distanceBetween } from '../segment.ts';
import type { FitCurve } from './fit-curve.ts';
import { directionAt, isFinitePoint } from './fit-curve.ts';

export type Breaks =
  /** From start to end; `speed` is the greatest size of the derivative where it was looked at. */
  | { readonly kind: 'broken'; readonly at: readonly Cut[]; readonly speed: number }
  | { readonly kind: 'no extent' }
  | { readonly kind: 'not finite'; readonly parameter: number };

const sizeOf = (d: Point): number => (isFinitePoint(d) ? Math.hypot(d.x, d.y) : 0);

export interface Cut {
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
  const looks = told.slice(1).map((end, i) => lookOver(curve, told[i]!, end));
  const bad = looks.flat().find((l) => !isFinitePoint(l.at));
  if (bad !== undefined) return { kind: 'not finite', parameter: bad.t };
  const length = looks.reduce((sum, l) => sum + lengthOver(l), 0);
  if (!(length > 0)) return { kind: 'no extent' };
  const speed = looks.flat().reduce((most, l) => Math.max(most, sizeOf(curve.tangentAt(l.t))), 0);
  const at = looks.flatMap((l, i) => [{ t: l[0]!.t, corner: i > 0 }, ...found(curve, l, speed)]);
  const all = [...at, { t: curve.end, corner: false }];
  return { kind: 'broken', at: all.filter((cut, i) => i === 0 || cut.t !== all[i - 1]!.t), speed };
};

interface Look {
  readonly t: number;
  readonly at: Point;
}

const LOOKS = 64;

/** Evenly spaced places over one piece between told breaks. */
const lookOver = (curve: FitCurve, start: number, end: number): Look[] => {
  const share = Math.abs((end - start) / (curve.end - curve.start));
  const count = LOOKS * Math.max(1, Math.min(Math.ceil((curve.pieces ?? 1) * share), 4096) / 4);
  return Array.from({ length: Math.ceil(count) + 1 }, (_, i) => {
    const t = i === Math.ceil(count) ? end : start + ((end - start) * i) / Math.ceil(count);
    return { t, at: curve.pointAt(t) };
  });
};

const lengthOver = (looks: readonly Look[]): number =>
  looks.reduce((sum, l, i) => (i === 0 ? 0 : sum + distanceBetween(looks[i - 1]!.at, l.at)), 0);

/** Corners nobody told of, and the extremes and zeros of the bend. */
const found = (curve: FitCurve, looks: readonly Look[], speed: number): Cut[] => {
  const ahead = looks.map((l) => directionAt(curve, l.t, 1, speed));
  const behind = looks.map((l) => directionAt(curve, l.t, -1, speed));
  const turns = looks.slice(1).map((_, i) => turnBetween(ahead[i]!.x, ahead[i]!.y, behind[i + 1]!.x, behind[i + 1]!.y));
  const onLooks = looks.slice(1, -1).flatMap((l, i) => {
    const turn = turnBetween(behind[i + 1]!.x, behind[i + 1]!.y, ahead[i + 1]!.x, ahead[i + 1]!.y);
    return Math.abs(turn) > CORNER ? [l.t] : [];
  });
  const between = turns.flatMap((turn, i) => (Math.abs(turn) > CORNER ? cornerBetween(curve, looks[i]!.t, looks[i + 1]!.t, speed) : []));
  const way = Math.sign(looks.at(-1)!.t - looks[0]!.t);
  const corners = [...onLooks, ...between].sort((a, b) => (a - b) * way);
  const gap = Math.abs(looks[1]!.t - looks[0]!.t);
  const bends = bendCuts(looks, turns).filter((t) => corners.every((c) => Math.abs(c - t) > 2 * gap));
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

/** Parameters where the bend (turn per length) changes sign or is greatest or least by more than noise. */
const bendCuts = (looks: readonly Look[], turns: readonly number[]): number[] => {
  const bend = turns.map((turn, i) => turn / Math.max(distanceBetween(looks[i]!.at, looks[i + 1]!.at), Number.MIN_VALUE));
  const noise = 0.01 * Math.max(...bend.map(Math.abs).filter(Number.isFinite), 0);
  const middle = (i: number): number => (looks[i]!.t + looks[i + 1]!.t) / 2;
  const cuts: number[] = [];
  for (let i = 1; i < bend.length; i += 1) {
    const [a, b] = [bend[i - 1]!, bend[i]!];
    if (a * b < 0 && Math.abs(a) + Math.abs(b) > noise) cuts.push(middle(i - 1) + ((middle(i) - middle(i - 1)) * a) / (a - b));
    else if (i > 1 && isExtreme(bend, i - 1, noise)) cuts.push(peakAt(bend, i - 1, middle(i - 1), middle(i) - middle(i - 1)));
  }
  return cuts;
};

const isExtreme = (bend: readonly number[], i: number, noise: number): boolean => {
  const here = bend[i]!;
  const [before, after] = [here - bend[i - 1]!, here - bend[i + 1]!];
  if (!(before * after >= 0) || (before === 0 && after === 0) || before === 0) return false;
  const [far, farther] = [here - bend[Math.max(0, i - 4)]!, here - bend[Math.min(bend.length - 1, i + 4)]!];
  return far * farther > 0 && Math.min(Math.abs(far), Math.abs(farther)) > noise;
};

/** Top of the parabola through three neighbours. */
const peakAt = (bend: readonly number[], i: number, t: number, gap: number): number => {
  const [a, b, c] = [bend[i - 1]!, bend[i]!, bend[i + 1]!];
  const bow = a - 2 * b + c;
  return bow === 0 ? t : t + (gap * (a - c)) / (2 * bow);
};

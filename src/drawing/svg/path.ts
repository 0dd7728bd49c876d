/** The data of an SVG path as runs of curves, each run ending where the pen is lifted. */

import { SVGPathData } from 'svg-pathdata';
import { line, type Point } from '../../geometry/segment.ts';
import { firstItem, itemAt, lastItem } from '../../sequence/sequence.ts';
import { name } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import type { Curve, Spline } from '../curve/curve.ts';
import { pathArc } from './arc.ts';

export interface PathRun {
  readonly curves: readonly Curve[];
  readonly closes: boolean;
}

export type PathOutcome =
  | { readonly kind: 'runs'; readonly runs: readonly PathRun[] }
  | { readonly kind: 'unreadable'; readonly why: Text };

/** All or nothing: a path cut off in the middle is not the outline that was drawn. */
export const pathRuns = (data: string): PathOutcome => {
  try {
    const commands = SVGPathData.parse(data);
    if (commands.length > 0 && firstItem(commands).type !== SVGPathData.MOVE_TO) return { kind: 'unreadable', why: words.noMove };
    const pen = new Pen();
    for (const command of commands) pen.follow(command);
    return { kind: 'runs', runs: pen.finish() };
  } catch (error) {
    return { kind: 'unreadable', why: words.parser(error instanceof Error ? error.message : String(error)) };
  }
};

type Command = ReturnType<typeof SVGPathData.parse>[number];

class Pen {
  readonly #runs: PathRun[] = [];
  #curves: Curve[] = [];
  #at: Point = { x: 0, y: 0 };
  #start: Point = { x: 0, y: 0 };
  /** The last control point, for smooth commands, and the degree of the curve that had it. */
  #control: Point = this.#at;
  #degree = 0;

  follow(command: Command): void {
    const from = this.#at;
    const base = 'relative' in command && command.relative ? from : { x: 0, y: 0 };
    const point = (x: number, y: number): Point => ({ x: base.x + x, y: base.y + y });
    switch (command.type) {
      case SVGPathData.MOVE_TO:
        this.#lift(false);
        this.#at = point(command.x, command.y);
        this.#start = this.#at;
        break;
      case SVGPathData.LINE_TO:
        this.#line(point(command.x, command.y));
        break;
      case SVGPathData.HORIZ_LINE_TO:
        this.#line({ x: base.x + command.x, y: from.y });
        break;
      case SVGPathData.VERT_LINE_TO:
        this.#line({ x: from.x, y: base.y + command.y });
        break;
      case SVGPathData.CURVE_TO:
        this.#bezier([from, point(command.x1, command.y1), point(command.x2, command.y2), point(command.x, command.y)]);
        break;
      case SVGPathData.SMOOTH_CURVE_TO:
        this.#bezier([from, this.#mirrored(3), point(command.x2, command.y2), point(command.x, command.y)]);
        break;
      case SVGPathData.QUAD_TO:
        this.#bezier([from, point(command.x1, command.y1), point(command.x, command.y)]);
        break;
      case SVGPathData.SMOOTH_QUAD_TO:
        this.#bezier([from, this.#mirrored(2), point(command.x, command.y)]);
        break;
      case SVGPathData.ARC: {
        const to = point(command.x, command.y);
        const { rX, rY, xRot } = command;
        // Without a chord there is no arc; the standard leaves it out.
        if (to.x !== from.x || to.y !== from.y)
          this.#draw(pathArc(from, to, { rX, rY, xRot, large: command.lArcFlag === 1, sweep: command.sweepFlag === 1 }), to);
        break;
      }
      case SVGPathData.CLOSE_PATH:
        if (from.x !== this.#start.x || from.y !== this.#start.y) this.#line(this.#start);
        this.#lift(true);
        this.#at = this.#start;
        break;
    }
  }

  finish(): readonly PathRun[] {
    this.#lift(false);
    return this.#runs;
  }

  #lift(closes: boolean): void {
    if (this.#curves.length > 0) this.#runs.push({ curves: this.#curves, closes });
    this.#curves = [];
    this.#degree = 0;
  }

  #line(to: Point): void {
    this.#draw(line(this.#at, to), to);
  }

  #draw(curve: Curve, to: Point): void {
    this.#curves.push(curve);
    this.#at = to;
    this.#degree = 0;
  }

  #bezier(points: readonly Point[]): void {
    this.#draw(bezierSpline(points), lastItem(points));
    this.#degree = points.length - 1;
    this.#control = itemAt(points, points.length - 2);
  }

  /** The control point of a smooth command: that of a curve of the same degree before it, turned over; else where the pen is. */
  #mirrored(degree: number): Point {
    if (this.#degree !== degree) return this.#at;
    return { x: 2 * this.#at.x - this.#control.x, y: 2 * this.#at.y - this.#control.y };
  }
}

/** A Bézier curve is a spline whose knots all lie at its ends. */
const bezierSpline = (points: readonly Point[]): Spline => {
  const degree = points.length - 1;
  const knots = [...new Array<number>(degree + 1).fill(0), ...new Array<number>(degree + 1).fill(1)];
  return { kind: 'spline', degree, points, weights: points.map(() => 1), knots };
};

const words = phrases('svg-path', {
  noMove: say`it does not begin with a move`,
  parser: (message: string) => say`${{ parser: name(message) }}`,
});

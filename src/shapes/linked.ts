/** Segments turned round the middle, and linked so that each begins where the one before ends. */
import { line, type Point, point, type Segment } from '../geometry/segment.ts';

export const turned = (s: Segment, angle: number): Segment => {
  if (angle === 0) return s;
  const [c, n] = [Math.cos(angle), Math.sin(angle)];
  const turn = ({ x, y }: Point): Point => point(c * x - n * y, n * x + c * y);
  return s.kind === 'line' ? line(turn(s.from), turn(s.to)) : { ...s, from: turn(s.from), to: turn(s.to), centre: turn(s.centre) };
};

/** Each begins with the very numbers that the one before ends with. */
export const linked = (segments: readonly Segment[], closed = true): readonly Segment[] => {
  const n = segments.length;
  return segments.map((s, i) => {
    const before = i > 0 || closed ? segments[(i + n - 1) % n] : undefined;
    return before === undefined ? s : { ...s, from: before.to };
  });
};

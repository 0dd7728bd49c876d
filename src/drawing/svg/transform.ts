/** The `transform` attribute: a list of moves, the first of which is the outermost. */

import { sineCosineOfDegrees } from '../../geometry/angle.ts';
import { itemAt } from '../../sequence/sequence.ts';
import { composed, type Matrix, UNMOVED } from '../curve/move-curve.ts';
import { numbersOf } from './lengths.ts';

/** None where the list makes no sense. */
export const transformOf = (text: string): Matrix | undefined => {
  let matrix = UNMOVED;
  let rest = text.trim();
  if (rest === 'none') return UNMOVED;
  while (rest !== '') {
    const step = /^([a-zA-Z]+)\s*\(([^()]*)\)[\s,]*/.exec(rest);
    const move = step === null ? undefined : moveOf(itemAt(step, 1), numbersOf(itemAt(step, 2)));
    if (step === null || move === undefined) return undefined;
    matrix = composed(matrix, move);
    rest = rest.slice(step[0].length);
  }
  return Object.values(matrix).every(Number.isFinite) ? matrix : undefined;
};

const moveOf = (name: string, values: readonly number[]): Matrix | undefined => {
  if (values.some(Number.isNaN)) return undefined;
  const [p = 0, q, r] = values;
  switch (`${name} ${values.length}`) {
    case 'matrix 6': {
      const [a, b, c, d, e, f] = values as [number, number, number, number, number, number];
      return { a, b, c, d, e, f };
    }
    case 'translate 1':
    case 'translate 2':
      return { ...UNMOVED, e: p, f: q ?? 0 };
    case 'scale 1':
    case 'scale 2':
      return { ...UNMOVED, a: p, d: q ?? p };
    case 'rotate 1':
    case 'rotate 3':
      return turnedAbout(p, q ?? 0, r ?? 0);
    case 'skewX 1':
      return { ...UNMOVED, c: Math.tan((p * Math.PI) / 180) };
    case 'skewY 1':
      return { ...UNMOVED, b: Math.tan((p * Math.PI) / 180) };
    default:
      return undefined;
  }
};

const turnedAbout = (degrees: number, x: number, y: number): Matrix => {
  const { sine: s, cosine: c } = sineCosineOfDegrees(degrees);
  return { a: c, b: s, c: -s, d: c, e: x - c * x + s * y, f: y - s * x - c * y };
};

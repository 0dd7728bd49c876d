/** Every combination of what a dialect can ask for. */
import { type Dialect, standardDialect } from '../../src/nc/dialect/dialect.ts';
import { there } from '../there.ts';

const options = {
  units: ['mm', 'inch'],
  unitsWord: ['G20/G21', 'G70/G71', 'none'],
  decimals: [2, 3, 4, 5, 6],
  trailingZeros: [false, true],
  arcs: ['centre', 'radius'],
  coordinates: ['absolute', 'incremental'],
  sequence: [undefined, { start: 10, step: 10 }, { start: 99_990, step: 7 }],
  compensation: ['control', 'path'],
  outsideCorners: ['arc', 'intersection'],
  comments: ['round brackets', 'semicolon', 'none'],
  optionalStops: [false, true],
  percent: [false, true],
  end: ['M02', 'M30'],
} as const;

/** Words of our own invention, standing for no control. */
export const inventedWords: Dialect['words'] = {
  thread: 'M71 P1',
  cutWire: 'M71 P2',
  wireOn: 'M72',
  wireOff: 'M73',
  flushOn: 'M08',
  flushOff: 'M09',
  powerOn: 'M76',
  powerOff: 'M77',
  condition: 'E{n}',
};

const wordSets: readonly Dialect['words'][] = [{}, { thread: 'M71', flushOn: 'M8' }, inventedWords];

/** Without comments a dialect needs the words, or nobody would know what to do. */
export function* everyDialect(): Generator<Dialect> {
  const names = Object.keys(options) as (keyof typeof options)[];
  const sizes = names.map((name) => options[name].length);
  const total = sizes.reduce((product, size) => product * size, 1);
  for (let index = 0; index < total; index += 1) {
    let rest = index;
    const chosen: Record<string, unknown> = { ...standardDialect };
    for (const [k, name] of names.entries()) {
      chosen[name] = options[name][rest % there(sizes[k])];
      rest = Math.floor(rest / there(sizes[k]));
    }
    if (chosen['sequence'] === undefined) delete chosen['sequence'];
    for (const words of chosen['comments'] === 'none' ? [inventedWords] : wordSets) yield { ...chosen, words } as Dialect;
  }
}

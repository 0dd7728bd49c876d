/** What shops remember of passes and their time: 0.25 wire in 50 mm of tool steel. Nobody printed any of it. */
import { conditions, everyMachine } from '../../physics/cases.fixture.ts';
import { cutModel } from '../../physics/cut/model.ts';
import type { CheckRow } from '../../quantity/check.ts';
import type { NonEmpty } from '../../sequence/sequence.ts';
import { findLadder } from './find-ladder.ts';

const cut = conditions();

const energiesFor = (finish: number): NonEmpty<number> => {
  const ladder = findLadder({ ...cut, machine: everyMachine }, { finish, finishRule: 'mean', tolerance: 0.02 });
  if (ladder.kind !== 'found') throw new Error(ladder.kind);
  return ladder.energies;
};

/** Times the rough alone. */
const minutesFor = (finish: number): number => {
  const ladder = findLadder(cut, { finish, finishRule: 'mean', tolerance: 0.02 });
  return ladder.kind === 'found' ? ladder.minutesPerMillimetre * cutModel(cut).roughFeed : Number.NaN;
};

const remembered = (id: string, question: string, value: string, [low, high]: readonly [number, number], ours: () => number): CheckRow => ({
  id: `CP-${id}`,
  source: 'common-practice',
  place: 'passes of 0.25 wire in 50 mm of tool steel',
  how: 'memory',
  question,
  value,
  ours,
  limits: { low, high, reason: 'the range that shops remember' },
});

export const checks: readonly CheckRow[] = [
  remembered('passes-1.4', 'passes for Ra 1.4 µm', '2', [2, 2], () => energiesFor(1.4).length),
  remembered('passes-0.8', 'passes for Ra 0.8 µm', '3', [3, 3], () => energiesFor(0.8).length),
  remembered('passes-0.5', 'passes for Ra 0.5 µm', '4', [4, 4], () => energiesFor(0.5).length),
  remembered('three-passes', 'time of a job of three passes against its rough cut', '2', [1.7, 2.3], () => minutesFor(0.8)),
];

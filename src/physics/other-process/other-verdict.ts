/** The honest word on other processes: whether this is work for the wire at all. */
import { printDuration } from '../../text/print/duration.ts';
import { printNumber } from '../../text/print/figure.ts';
import type { OtherQuestion, OtherWay, OtherWays } from './other-question.ts';

export const otherVerdict = (ways: readonly OtherWay[], question: OtherQuestion): Pick<OtherWays, 'kind' | 'verdict'> => {
  const able = ways.filter((w) => w.kind === 'would do').toSorted((a, b) => minutesOf(a) - minutesOf(b));
  const quickest = able[0];
  if (quickest !== undefined) return { kind: 'not for the wire', verdict: rather(quickest, question) };
  const asked = `±${printNumber(question.tolerance)} mm and Ra ${printNumber(question.finish)} µm at ${printNumber(question.thickness)} mm`;
  if (question.wire === undefined)
    return { kind: 'none of them', verdict: `None of these holds ${asked}, nor does the wire as asked. ${nearest(ways)}` };
  return { kind: 'only the wire', verdict: `Only the wire, of these, holds ${asked}. ${nearest(ways)}` };
};

const minutesOf = (way: OtherWay): number => way.edge?.minutes.value ?? Number.POSITIVE_INFINITY;

const rather = (way: OtherWay, { tolerance, finish, wire, material }: OtherQuestion): string => {
  const holds = `holds ±${printNumber(tolerance)} mm and Ra ${printNumber(finish)} µm`;
  const time = `in about ${printDuration(minutesOf(way))}`;
  if (wire === undefined) return `Don't use the wire for this: a ${way.process} cut ${holds} ${time}, and the wire cannot do it as asked.`;
  const steel = material.family === 'tool steel' || material.family === 'steel';
  const heat = steel && way.process !== 'water jet' ? ' Where the steel is hardened, mind the heated rim that it leaves.' : '';
  return `Don't use the wire for this: a ${way.process} cut ${holds} ${time}, where the wire takes ${printDuration(wire.minutes)}.${heat}`;
};

/** What comes nearest: the process with the narrowest zone of those that cut it at all. */
const nearest = (ways: readonly OtherWay[]): string => {
  const cutting = ways.flatMap((w) => (w.edge === undefined ? [] : [{ zone: w.edge.perpendicularity.value, sentence: w.sentence }]));
  const best = cutting.toSorted((a, b) => a.zone - b.zone)[0];
  return best === undefined ? 'None of the others cuts it at all.' : `Nearest to it: ${lowered(best.sentence)}`;
};

const lowered = (sentence: string): string =>
  sentence.startsWith('A ') ? `a ${sentence.slice(2)}` : sentence.toLowerCase().slice(0, 1) + sentence.slice(1);

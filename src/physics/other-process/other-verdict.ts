/** The honest word on other processes: whether this is work for the wire at all. */
import { duration, limit, type Part, quantity } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import type { OtherQuestion, OtherWay, OtherWays } from './other-question.ts';
import { processWords } from './process-words.ts';

export const otherVerdict = (ways: readonly OtherWay[], question: OtherQuestion): Pick<OtherWays, 'kind' | 'verdict'> => {
  const able = ways.filter((w) => w.kind === 'would do').toSorted((a, b) => minutesOf(a) - minutesOf(b));
  const quickest = able[0];
  if (quickest !== undefined) return { kind: 'not for the wire', verdict: rather(quickest, question) };
  if (question.wire === undefined) return { kind: 'none of them', verdict: words.none(question, nearest(ways)) };
  return { kind: 'only the wire', verdict: words.only(question, nearest(ways)) };
};

const minutesOf = (way: OtherWay): number => way.edge?.minutes.value ?? Number.POSITIVE_INFINITY;

const rather = (way: OtherWay, question: OtherQuestion): Text => {
  const { wire, material } = question;
  const [process, time] = [processWords[way.process], duration(minutesOf(way))];
  if (wire === undefined) return words.without(process, question, time);
  const steel = material.family === 'tool steel' || material.family === 'steel';
  const said = steel && way.process !== 'water jet' ? words.ratherHeated : words.rather;
  return said(process, question, time, duration(wire.minutes));
};

/** What comes nearest: the process with the narrowest zone of those that cut it at all. */
const nearest = (ways: readonly OtherWay[]): Text => {
  const cutting = ways.flatMap(({ edge, within }) => (edge && within ? [{ zone: edge.perpendicularity.value, within }] : []));
  const best = cutting.toSorted((a, b) => a.zone - b.zone)[0];
  return best === undefined ? words.noOther : words.nearest(best.within);
};

type Asked = Pick<OtherQuestion, 'tolerance' | 'finish' | 'thickness'>;

const within = ({ tolerance }: Asked): Part => limit(tolerance);
const ra = ({ finish }: Asked): Part => quantity(finish, 'µm');
const thick = ({ thickness }: Asked): Part => quantity(thickness, 'mm');

const words = phrases('other-verdict', {
  only: (asked: Asked, near: Text) =>
    say`Of these processes only wire EDM holds ${{ tolerance: within(asked) }} and Ra ${{ finish: ra(asked) }} at ${{ thickness: thick(asked) }}. ${{ nearest: near }}`,
  none: (asked: Asked, near: Text) =>
    say`None of these processes holds ${{ tolerance: within(asked) }} and Ra ${{ finish: ra(asked) }} at ${{ thickness: thick(asked) }}, nor does wire EDM as specified. ${{ nearest: near }}`,
  without: (process: Text, asked: Asked, time: Part) =>
    say`Not a job for wire EDM: a ${{ process }} cut holds ${{ tolerance: within(asked) }} and Ra ${{ finish: ra(asked) }} in about ${{ time }}, and wire EDM cannot do it as specified.`,
  rather: (process: Text, asked: Asked, time: Part, wire: Part) =>
    say`Not a job for wire EDM: a ${{ process }} cut holds ${{ tolerance: within(asked) }} and Ra ${{ finish: ra(asked) }} in about ${{ time }}; wire EDM takes ${{ wire }}.`,
  ratherHeated: (process: Text, asked: Asked, time: Part, wire: Part) =>
    say`Not a job for wire EDM: a ${{ process }} cut holds ${{ tolerance: within(asked) }} and Ra ${{ finish: ra(asked) }} in about ${{ time }}; wire EDM takes ${{ wire }}. If the steel is hardened, watch the heat-affected edge.`,
  noOther: say`None of the others can cut it.`,
  nearest: (way: Text) => say`Nearest is ${{ way }}`,
});

/** Why a wire drops out, in few words with number and place, and of which kind the reason is. */
import type { WireDropOut } from '../../result/wires.ts';
import type { Finding } from '../../text/finding.ts';
import { located } from '../../text/located.ts';
import { clause, fixed, type Part, place } from '../../text/part.ts';
import { only, phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { namesPlace } from '../../text/within.ts';

const KINDS: Readonly<Record<string, WireDropOut>> = {
  'corner-too-tight': 'corner',
  'slot-too-narrow': 'slot',
  'height-out-of-range': 'height',
  'wire-not-for-machine': 'machine',
  'wire-out-of-range': 'machine',
  'finish-out-of-reach': 'finish',
  'tolerance-out-of-reach': 'tolerance',
};

/** `fault` is what the planner says in a few words; where it says nothing, the gravest finding stands for it. */
export const dropOutOf = (
  findings: readonly Finding[],
  fault?: Text,
): { readonly kind: 'drops out'; readonly why: WireDropOut; readonly reason: Text } => {
  const refusal = findings.find((f) => f.severity === 'refusal');
  const why = refusal !== undefined && Object.hasOwn(KINDS, refusal.code) ? (KINDS[refusal.code] as WireDropOut) : 'layout';
  const said = fault ?? (refusal === undefined ? words.notLaid : located(refusal));
  return { kind: 'drops out', why, reason: withPlace(said, refusal) };
};

const withPlace = (said: Text, refusal: Finding | undefined): Text => {
  const at = refusal?.place;
  return at?.kind !== 'spot' || namesPlace(said, at) ? only(clause(said)) : words.at(clause(said), place(at, fixed(3)));
};

const words = phrases('wire-drops-out', {
  notLaid: say`no wire path is possible`,
  at: (why: Part, at: Part) => say`${{ why }} at ${{ at }}`,
});

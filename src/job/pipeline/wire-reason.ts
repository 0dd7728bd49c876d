/** Why a wire drops out, in few words with number and place, and of which kind the reason is. */
import type { WireDropOut } from '../../result/wires.ts';
import type { Finding } from '../../text/finding.ts';
import { located } from '../../text/print/phrases.ts';

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
  fault?: string,
): { readonly kind: 'drops out'; readonly why: WireDropOut; readonly reason: string } => {
  const refusal = findings.find((f) => f.severity === 'refusal');
  const why = refusal !== undefined && Object.hasOwn(KINDS, refusal.code) ? (KINDS[refusal.code] as WireDropOut) : 'layout';
  const said = fault ?? (refusal === undefined ? 'it cannot be laid out' : located(refusal));
  return { kind: 'drops out', why, reason: `${said.replace(/\.$/, '')}${placeOf(refusal, said)}` };
};

const placeOf = (refusal: Finding | undefined, said: string): string => {
  const at = refusal?.place;
  if (at?.kind !== 'spot') return '';
  const place = `(${at.x.toFixed(3)}, ${at.y.toFixed(3)})`;
  return said.includes(place) ? '' : ` at ${place}`;
};

/**
 * Leaves by what they are of: whoever asks for a number of the same wire, machine or rates gets the same leaf, so that no range is counted
 * twice where plan, hours and price meet. Kept as long as the thing itself; nothing else is remembered.
 */
import { type Figure, type Given, given } from './figure.ts';

const made = new WeakMap<object, Map<string, Figure>>();

/** The leaf of this key; made anew where the thing says another number by now. */
export const leafOf = (thing: object, of: Given): Figure => {
  const leaves = made.get(thing) ?? new Map<string, Figure>();
  made.set(thing, leaves);
  const known = leaves.get(of.key);
  if (known !== undefined && known.value === of.value && (known.shares.get(known) ?? 0) === (of.deviation ?? 0)) return known;
  const leaf = given(of);
  leaves.set(of.key, leaf);
  return leaf;
};

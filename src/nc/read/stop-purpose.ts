/**
 * What a stop is for, by what its comment says: the one place where words of a program become purposes, of our own programs as of those
 * of others. The plan is not asked: it might be wrong in the same way.
 */
import type { StopPurpose } from '../../text/stop-purpose.ts';

/** What a stop says of itself; `loop` is the contour or line that its comment begins with. */
export interface StopSaid {
  readonly purpose: StopPurpose;
  readonly loop?: string | undefined;
}

export const stopSaid = (comment: string): StopSaid => {
  const loop = /^(?:[A-Z]\d+(?=[,:])|[LC]\d+(?= ))/.exec(comment)?.[0];
  return { purpose: purposeOf(comment), loop };
};

/** Words of securing a piece count before all others; a stop without a comment may be for anything. */
const purposeOf = (comment: string): StopPurpose => {
  if (!SECURE.test(comment)) {
    if (/\bcondition \d/i.test(comment)) return 'set condition';
    if (/\bcut the wire/i.test(comment)) return 'cut the wire';
    if (/\bthread/i.test(comment)) return 'thread';
    if (!TAKE_OUT.test(comment)) return 'other';
  }
  return `${TAKE_OUT.test(comment) ? 'take out' : 'secure'} ${SLUG.test(comment) ? 'slug' : 'part'}`;
};

const SLUG = /\b(slug|waste|core|scrap)/i;
const TAKE_OUT = /\b(take|lift|hoist)\b.*\b(out|away)\b/i;
const SECURE = /\b(secure|hold|clamp|magnet|glue|wax|wedge|fix|catch|bars or props|tackle or bars)/i;

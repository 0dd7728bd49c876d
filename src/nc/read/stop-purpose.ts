/** What a stop is for, as far as its comment says: the wire, a condition to be set by hand, or somebody to do anything else. */
export type StopPurpose = 'thread' | 'cut wire' | 'condition' | 'anything';

/** Words of securing a piece count before all others; a stop without a comment may be for anything. */
export const purposeOf = (comment: string): StopPurpose => {
  if (/\b(secure|hold|clamp|magnet|glue|wax|wedge|fix)/i.test(comment)) return 'anything';
  if (/\bcondition \d/i.test(comment)) return 'condition';
  if (/\bcut the wire/i.test(comment)) return 'cut wire';
  return /\bthread/i.test(comment) ? 'thread' : 'anything';
};

/** What a program stops for: the closed list by which stops are planned, written, read back, counted, scheduled and ticked off. */
export type StopPurpose =
  | 'thread'
  | 'cut the wire'
  | 'set condition'
  | 'secure slug'
  | 'take out slug'
  | 'secure part'
  | 'take out part'
  /** Something is looked at; the operator may run on without doing anything. */
  | 'check'
  /** Nothing of the above is said. */
  | 'other';

const FOR_THE_WIRE: ReadonlySet<StopPurpose> = new Set(['thread', 'cut the wire', 'set condition']);

/** A stop that asks for the wire or a condition; at any other somebody may tend to the work. */
export const isForTheWire = (purpose: StopPurpose): boolean => FOR_THE_WIRE.has(purpose);

/**
 * What is said, as data until it is printed: an English template with named holes, what stands in them, and the key under which another
 * language has its own template. Opaque outside this folder: it has no members, so that nothing but the printer can look into a sentence.
 */

declare const hidden: unique symbol;

/** Plain data underneath, so that it crosses threads and is kept in files; only `src/text` may look inside (`body.ts`). */
export interface Text {
  readonly [hidden]: 'printed by text/print alone';
  readonly toString: never;
  readonly valueOf: never;
}

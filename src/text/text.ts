/**
 * What is said, as data until it is printed: an English template with named holes, what stands in them, and the key under which another
 * language has its own template. Opaque outside this folder: it has no members, so that nothing but the printer can look into a sentence.
 */

declare const hidden: unique symbol;

/**
 * Plain data underneath, so that it crosses threads and is kept in files; only `src/text` may look inside (`body.ts`). To the compiler it
 * is a symbol as well: of all types that one alone may neither stand in a template literal nor be added to a string.
 */
export type Text = symbol & {
  readonly [hidden]: 'printed by text/print alone';
  readonly description: never;
  readonly toString: never;
  readonly valueOf: never;
};

declare global {
  interface StringConstructor {
    /** A text is printed for a reader, never turned into a string: what comes of it is of no use anywhere. */
    // biome-ignore lint/style/useShorthandFunctionType: one more way to call what is there
    (text: Text): symbol;
  }
}

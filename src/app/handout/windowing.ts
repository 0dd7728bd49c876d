/** Which lines of a long text are drawn, how a line comes into view, and where a search finds something. */

export interface Lines {
  readonly first: number;
  /** Not included. */
  readonly end: number;
}

/** Browsers draw nothing taller than some millions of px: longer texts are squeezed, and scrolled in larger steps. */
export const TALLEST = 5_000_000;

/** A few lines more on either side, so that scrolling shows no gaps. */
const MORE = 8;

/** How high the whole text is for the scroll bar, px. */
export const heightOf = (count: number, line: number): number => Math.min(count * line, TALLEST);

/** The lines to be drawn, and how far down the first of them stands, px. */
export const linesInView = (
  { top, height, line }: { readonly top: number; readonly height: number; readonly line: number },
  count: number,
): Lines & { readonly offset: number } => {
  const whole = count * line;
  const scrolled = Math.max(1, heightOf(count, line) - height);
  // Where the text is squeezed the share that was scrolled says where in it the reader is.
  const at = whole > TALLEST ? (Math.min(top, scrolled) / scrolled) * (whole - height) : top;
  const first = Math.max(0, Math.floor(at / line) - MORE);
  const end = Math.min(count, Math.ceil((at + height) / line) + MORE);
  return { first, end, offset: top - (at - first * line) };
};

/** Where to scroll so that a line stands in view, px; the same place when it does already. */
export const scrollTo = (
  wanted: number,
  { top, height, line }: { readonly top: number; readonly height: number; readonly line: number },
  count: number,
): number => {
  const whole = count * line;
  const scrolled = Math.max(1, heightOf(count, line) - height);
  const at = whole > TALLEST ? (Math.min(top, scrolled) / scrolled) * (whole - height) : top;
  const y = wanted * line;
  if (y >= at + line && y <= at + height - 2 * line) return top;
  const goal = Math.min(Math.max(0, y - height / 3), Math.max(0, whole - height));
  return whole > TALLEST ? (goal / (whole - height)) * scrolled : goal;
};

/** Lines in which a text stands, no matter how its letters are written. */
export const linesWith = (lines: readonly string[], text: string): readonly number[] => {
  const wanted = text.trim().toUpperCase();
  if (wanted === '') return [];
  return lines.flatMap((line, i) => (line.toUpperCase().includes(wanted) ? [i] : []));
};

/**
 * How far a text rounded to its last digit may be from what was meant. Everything is counted in the last digit of the
 * program, so that a dialect of three decimals is judged by its own fineness and not by another's.
 */

/**
 * Ends of an arc may differ by this many last digits in their distance from the centre. Rounding start, end and centre
 * alone can make 2.1; a coordinate that somebody moved by more is found.
 */
export const ARC_CLOSES = 2.5;

/** R may fall short of half the chord by this many last digits: a half circle with its ends rounded outward. */
export const RADIUS_REACHES = 1.5;

/** Arcs of less than half a turn whose ends are nearer than this many last digits are read as lines. */
export const SHORTEST_ARC = 4;

/**
 * An inside arc of a radius within this many last digits of the offset is one of exactly the offset: its path shrinks to a
 * point. Radius and register are rounded apart, which makes 1.4 in the worst case.
 */
export const ARC_VANISHES = 1.5;

/** Last digits by which the corner of two offset elements may lie beyond the end of one of them. */
export const CORNER_SLACK = 2;

/** Last digits of error that rounding may leave across an element; divided by its length it is the error of its direction. */
export const DIRECTION_NOISE = 2;

/** Rad: an element so short that its direction is worth less than this is judged as if it were this good. */
export const MOST_NOISE = 0.4;

/** Rad: turns closer to half a turn than this have no side on which the wire could go round. */
export const TURNS_BACK = 1e-4;

/** Offset lines that meet further from the corner than this many offsets are joined by an arc instead. */
export const FARTHEST_INTERSECTION = 2;

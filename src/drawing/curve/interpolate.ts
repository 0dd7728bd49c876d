/** The smooth cubic through given points, for splines of which a file gives nothing else. Its rows are plain numbers: `!` stands where one is read. */

/** Control values in every coordinate, and the knots they share; the degree is 3. */
export interface Interpolated {
  readonly coordinates: readonly (readonly number[])[];
  readonly knots: readonly number[];
}

export interface EndConditions {
  /** Directions at the ends, one number for each coordinate; natural (without bend) where they are not given. */
  readonly startDirection?: readonly number[] | undefined;
  readonly endDirection?: readonly number[] | undefined;
  /** Runs smoothly through its first point, which is repeated as the last. */
  readonly closed?: boolean | undefined;
}

/**
 * The twice smooth cubic through at least two points, its parameter growing with the distance from point to point.
 * `coordinates[k][i]` is coordinate k of point i; neighbouring points must differ. Source: nurbs-book, chapter 9.
 */
export const cubicThrough = (coordinates: readonly (readonly number[])[], ends: EndConditions = {}): Interpolated => {
  const parameters = chordLengths(coordinates);
  const knots = [0, ...parameters.flatMap((t) => [t, t, t]), parameters.at(-1)!];
  return {
    knots,
    coordinates: coordinates.map((values, k) => {
      const slopes = ends.closed
        ? closedSlopes(parameters, values)
        : openSlopes(parameters, values, directionPart(ends.startDirection, k), directionPart(ends.endDirection, k));
      return controlValues(parameters, values, slopes);
    }),
  };
};

const chordLengths = (coordinates: readonly (readonly number[])[]): readonly number[] => {
  const parameters = [0];
  for (let i = 1; i < coordinates[0]!.length; i++)
    parameters.push(parameters[i - 1]! + Math.hypot(...coordinates.map((values) => values[i]! - values[i - 1]!)));
  return parameters;
};

/** The parameter is a length, so that the curve moves by about one unit for each: a direction is made a unit vector. */
const directionPart = (direction: readonly number[] | undefined, k: number): number | undefined => {
  const length = direction === undefined ? 0 : Math.hypot(...direction);
  return length > 0 ? direction![k]! / length : undefined;
};

/** Between two points a cubic is given by values and slopes at both; these are its four control values. */
const controlValues = (t: readonly number[], values: readonly number[], slopes: readonly number[]): readonly number[] => {
  const control = [values[0]!];
  for (let i = 0; i + 1 < values.length; i++) {
    const third = (t[i + 1]! - t[i]!) / 3;
    control.push(values[i]! + slopes[i]! * third, values[i + 1]! - slopes[i + 1]! * third, values[i + 1]!);
  }
  return control;
};

/** Slopes that make the bend continuous: a row for each inner point, and one for each end. */
const openSlopes = (
  t: readonly number[],
  values: readonly number[],
  first: number | undefined,
  last: number | undefined,
): readonly number[] => {
  const n = values.length;
  const [below, middle, above, right] = [new Array<number>(n), new Array<number>(n), new Array<number>(n), new Array<number>(n)];
  for (let i = 1; i < n - 1; i++) {
    const row = smoothRow(t[i]! - t[i - 1]!, t[i + 1]! - t[i]!, values[i - 1]!, values[i]!, values[i + 1]!);
    [below[i], middle[i], above[i], right[i]] = row;
  }
  const rise = (i: number): number => (values[i + 1]! - values[i]!) / (t[i + 1]! - t[i]!);
  [below[0], middle[0], above[0], right[0]] = first === undefined ? [0, 2, 1, 3 * rise(0)] : [0, 1, 0, first];
  [below[n - 1], middle[n - 1], above[n - 1], right[n - 1]] = last === undefined ? [1, 2, 0, 3 * rise(n - 2)] : [0, 1, 0, last];
  return solvedThreeBand(below, middle, above, right);
};

/** h of the step before, k of the step after: k m(i-1) + 2 (h + k) m(i) + h m(i+1) = 3 (k rise before + h rise after). */
const smoothRow = (h: number, k: number, a: number, b: number, c: number): [number, number, number, number] => [
  k,
  2 * (h + k),
  h,
  3 * ((k * (b - a)) / h + (h * (c - b)) / k),
];

/** In a closed curve the first slope appears in the last row too: solved once for the values and once for that corner (Sherman and Morrison). */
const closedSlopes = (t: readonly number[], values: readonly number[]): readonly number[] => {
  const n = values.length - 1;
  if (n < 3) return openSlopes(t, values, undefined, undefined);
  const step = (i: number): number => t[((i + n) % n) + 1]! - t[(i + n) % n]!;
  const rows = Array.from({ length: n }, (_, i) =>
    smoothRow(step(i - 1), step(i), values[(i - 1 + n) % n]!, values[i]!, values[(i + 1) % n]!),
  );
  const [below, middle, above, right] = [0, 1, 2, 3].map((part) => rows.map((row) => row[part]!)) as [
    number[],
    number[],
    number[],
    number[],
  ];
  const [cornerTop, cornerBottom] = [below[0]!, above[n - 1]!];
  const gamma = -middle[0]!;
  middle[0] = middle[0]! - gamma;
  middle[n - 1] = middle[n - 1]! - (cornerTop * cornerBottom) / gamma;
  const plain = solvedThreeBand(below, middle, above, right);
  const corner = solvedThreeBand(below, middle, above, [gamma, ...new Array<number>(n - 2).fill(0), cornerBottom]);
  const share = (plain[0]! + (cornerTop * plain[n - 1]!) / gamma) / (1 + corner[0]! + (cornerTop * corner[n - 1]!) / gamma);
  const slopes = plain.map((m, i) => m - share * corner[i]!);
  return [...slopes, slopes[0]!];
};

/** Elimination for a matrix with three bands (Thomas); the rows here are dominated by their middle, so nothing is divided by 0. */
const solvedThreeBand = (
  below: readonly number[],
  middle: readonly number[],
  above: readonly number[],
  right: readonly number[],
): readonly number[] => {
  const n = right.length;
  const [ratio, value] = [new Array<number>(n), new Array<number>(n)];
  for (let i = 0; i < n; i++) {
    const pivot = middle[i]! - (i > 0 ? below[i]! * ratio[i - 1]! : 0);
    ratio[i] = above[i]! / pivot;
    value[i] = (right[i]! - (i > 0 ? below[i]! * value[i - 1]! : 0)) / pivot;
  }
  for (let i = n - 2; i >= 0; i--) value[i] = value[i]! - ratio[i]! * value[i + 1]!;
  return value;
};

/**
 * Serrations with straight flanks by DIN 5481: bore of the hub, outer diameter of the shaft, pitch circle, teeth. mm, from memory.
 * Sizes over 55x60 are left out: their flanks have another angle, and how thick their teeth are is not known here.
 */

export interface SerrationRow {
  /** '8x10' */
  readonly size: string;
  /** Bore of the hub, A11, and outer diameter of the shaft, a11. */
  readonly bore: number;
  readonly outer: number;
  readonly pitchDiameter: number;
  readonly teeth: number;
}

const TABLE = `
7x8 6.9 8.1 7.5 28 | 8x10 8.1 10.1 9 28 | 10x12 10.1 12 11 30 | 12x14 12 14.2 13 31 | 15x17 14.9 17.2 16 32 | 17x20 17.3 20 18.5 33 |
21x24 20.8 23.9 22 34 | 26x30 26.5 30 28 35 | 30x34 30.5 34 32 36 | 36x40 36 39.9 38 37 | 40x44 40 44 42 38 | 45x50 45 50 47.5 39 |
50x55 50 54.9 52.5 40 | 55x60 55 60 57.5 42`;

const rowsOf = (text: string): readonly SerrationRow[] =>
  text
    .trim()
    .split(/\s*\|\s*/)
    .map((row) => {
      const [size = '', ...numbers] = row.split(' ');
      const [bore = 0, outer = 0, pitchDiameter = 0, teeth = 0] = numbers.map(Number);
      return { size, bore, outer, pitchDiameter, teeth };
    });

export const DIN_5481: ReadonlyMap<string, SerrationRow> = new Map(rowsOf(TABLE).map((row) => [row.size, row]));

/** Angle between the flanks of a space of the shaft, rad; that of the hub is less by a pitch. */
export const DIN_5481_ANGLE = Math.PI / 3;

/** Radius in the bottom of a space as a part of the pitch: it gives back the roots of the smaller sizes. */
export const USUAL_ROOT = 0.08;

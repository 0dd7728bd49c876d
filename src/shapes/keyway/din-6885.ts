/** Parallel keys by DIN 6885-1, high form, which ISO 773 has alike: the whole table. mm. */

export interface KeyRow {
  /** Shafts over this, up to and including `to`. */
  readonly over: number;
  readonly to: number;
  readonly width: number;
  readonly height: number;
  /** Depth in the shaft and in the hub, from the nominal circle. */
  readonly shaft: number;
  readonly hub: number;
  /** The depths may be larger by this. */
  readonly deeper: number;
  /** Radius in the bottom of the keyway, least and most. */
  readonly corner: readonly [number, number];
}

type Short = readonly [over: number, to: number, width: number, height: number, shaft: number, hub: number];

const ROWS: readonly Short[] = [
  [6, 8, 2, 2, 1.2, 1.0],
  [8, 10, 3, 3, 1.8, 1.4],
  [10, 12, 4, 4, 2.5, 1.8],
  [12, 17, 5, 5, 3.0, 2.3],
  [17, 22, 6, 6, 3.5, 2.8],
  [22, 30, 8, 7, 4.0, 3.3],
  [30, 38, 10, 8, 5.0, 3.3],
  [38, 44, 12, 8, 5.0, 3.3],
  [44, 50, 14, 9, 5.5, 3.8],
  [50, 58, 16, 10, 6.0, 4.3],
  [58, 65, 18, 11, 7.0, 4.4],
  [65, 75, 20, 12, 7.5, 4.9],
  [75, 85, 22, 14, 9.0, 5.4],
  [85, 95, 25, 14, 9.0, 5.4],
  [95, 110, 28, 16, 10.0, 6.4],
  [110, 130, 32, 18, 11.0, 7.4],
  [130, 150, 36, 20, 12.0, 8.4],
  [150, 170, 40, 22, 13.0, 9.4],
  [170, 200, 45, 25, 15.0, 10.4],
  [200, 230, 50, 28, 17.0, 11.4],
  [230, 260, 56, 32, 20.0, 12.4],
  [260, 290, 63, 32, 20.0, 12.4],
  [290, 330, 70, 36, 22.0, 14.4],
  [330, 380, 80, 40, 25.0, 15.4],
  [380, 440, 90, 45, 28.0, 17.4],
  [440, 500, 100, 50, 31.0, 19.5],
];

const deeperFor = (width: number): number => (width <= 6 ? 0.1 : width <= 32 ? 0.2 : 0.3);

const CORNERS: readonly (readonly [upTo: number, least: number, most: number])[] = [
  [4, 0.08, 0.16],
  [8, 0.16, 0.25],
  [18, 0.25, 0.4],
  [32, 0.4, 0.6],
  [50, 0.7, 1.0],
  [70, 1.2, 1.6],
  [100, 2.0, 2.5],
];

const cornerFor = (width: number): readonly [number, number] => {
  const row = CORNERS.find(([upTo]) => width <= upTo) ?? CORNERS[CORNERS.length - 1];
  return [row?.[1] ?? 0, row?.[2] ?? 0];
};

export const DIN_6885: readonly KeyRow[] = ROWS.map(([over, to, width, height, shaft, hub]) => ({
  over,
  to,
  width,
  height,
  shaft,
  hub,
  deeper: deeperFor(width),
  corner: cornerFor(width),
}));

/** None outside of the table. */
export const din6885 = (shaft: number): KeyRow | undefined => DIN_6885.find((r) => shaft > r.over && shaft <= r.to);

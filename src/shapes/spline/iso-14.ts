/** Straight-sided splines of ISO 14, centred on the inner diameter: the light and the medium series whole, with where their tolerances lie. */

export interface Iso14Row {
  /** '6x23x26': splines, inner and outer diameter. */
  readonly size: string;
  readonly series: 'light' | 'medium';
  readonly splines: number;
  /** mm, as are the rest. */
  readonly inner: number;
  readonly outer: number;
  readonly width: number;
}

const LIGHT = `
6x23x26 6 | 6x26x30 6 | 6x28x32 7 | 8x32x36 6 | 8x36x40 7 | 8x42x46 8 | 8x46x50 9 | 8x52x58 10 | 8x56x62 10 | 8x62x68 12 |
10x72x78 12 | 10x82x88 12 | 10x92x98 14 | 10x102x108 16 | 10x112x120 18`;

const MEDIUM = `
6x11x14 3 | 6x13x16 3.5 | 6x16x20 4 | 6x18x22 5 | 6x21x25 5 | 6x23x28 6 | 6x26x32 6 | 6x28x34 7 | 8x32x38 6 | 8x36x42 7 |
8x42x48 8 | 8x46x54 9 | 8x52x60 10 | 8x56x65 10 | 8x62x72 12 | 10x72x82 12 | 10x82x92 12 | 10x92x102 14 | 10x102x112 16 |
10x112x125 18`;

const rowsOf = (text: string, series: Iso14Row['series']): readonly Iso14Row[] =>
  text
    .trim()
    .split(/\s*\|\s*/)
    .map((row) => {
      const [size = '', width = ''] = row.split(' ');
      const [splines = 0, inner = 0, outer = 0] = size.split('x').map(Number);
      return { size, series, splines, inner, outer, width: Number(width) };
    });

const all = [...rowsOf(LIGHT, 'light'), ...rowsOf(MEDIUM, 'medium')];

export const ISO_14: ReadonlyMap<string, Iso14Row> = new Map(
  [...all].sort((a, b) => a.inner - b.inner || a.outer - b.outer).map((row) => [row.size, row]),
);

/** How the shaft sits in the hub. */
export type Seat = 'sliding' | 'close' | 'fixed';

export interface Zones {
  readonly inner: string;
  readonly outer: string;
  readonly width: string;
}

export const SHAFT_ZONES: Readonly<Record<Seat, Zones>> = {
  sliding: { inner: 'f7', outer: 'a11', width: 'd10' },
  close: { inner: 'g7', outer: 'a11', width: 'f9' },
  fixed: { inner: 'h7', outer: 'a11', width: 'h10' },
};

/** `treated`: the hub is hardened after its splines are cut. */
export const hubZones = (treated: boolean): Zones => ({ inner: 'H7', outer: 'H10', width: treated ? 'H11' : 'H9' });

/** Symmetry of the splines to the axis, mm. */
export const symmetryOf = (width: number): number => (width <= 3 ? 0.01 : width <= 6 ? 0.012 : width <= 10 ? 0.015 : 0.018);

/** Chamfer of the ridges and radius at their feet, mm, as sister standards of ISO 14 have them; from memory. */
export const usualCorners = (inner: number): { readonly chamfer: number; readonly radius: number } =>
  inner <= 32 ? { chamfer: 0.3, radius: 0.2 } : inner <= 60 ? { chamfer: 0.4, radius: 0.3 } : { chamfer: 0.5, radius: 0.5 };

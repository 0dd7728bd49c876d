/** Roller chains of ISO 606: pitch and greatest diameter of the roller, mm. */

export interface RollerChain {
  readonly pitch: number;
  readonly roller: number;
}

const TABLE = `
04C 6.35 3.30 | 06C 9.525 5.08 | 05B 8 5.00 | 06B 9.525 6.35 | 08A 12.7 7.92 | 08B 12.7 8.51 | 081 12.7 7.75 | 083 12.7 7.75 |
084 12.7 7.75 | 085 12.7 7.77 | 10A 15.875 10.16 | 10B 15.875 10.16 | 12A 19.05 11.91 | 12B 19.05 12.07 | 16A 25.4 15.88 |
16B 25.4 15.88 | 20A 31.75 19.05 | 20B 31.75 19.05 | 24A 38.1 22.23 | 24B 38.1 25.40 | 28A 44.45 25.40 | 28B 44.45 27.94 |
32A 50.8 28.58 | 32B 50.8 29.21 | 36A 57.15 35.71 | 40A 63.5 39.68 | 40B 63.5 39.37 | 48A 76.2 47.63 | 48B 76.2 48.26 |
56B 88.9 53.98 | 64B 101.6 63.50 | 72B 114.3 72.39`;

export const ROLLER_CHAINS: ReadonlyMap<string, RollerChain> = new Map(
  TABLE.trim()
    .split(/\s*\|\s*/)
    .map((row) => {
      const [name = '', pitch = '', roller = ''] = row.split(' ');
      return [name, { pitch: Number(pitch), roller: Number(roller) }];
    }),
);

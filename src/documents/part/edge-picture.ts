/**
 * The cut faces of wire, flame, plasma, laser and jet side by side, as SVG: the height to scale, everything sideways larger by one
 * stated factor, the same for all.
 */

import { roundBelow } from '../../picture/round-length.ts';
import { escaped, INK, METAL, PAPER, px, QUIET } from '../../picture/svg.ts';
import type { OtherWay, OtherWays } from '../../result/shown.ts';
import { bare, deviating, mm, number, type Part, quantities, significant, um } from '../../text/part.ts';
import { print } from '../../text/print/print.ts';
import { HOUSE, type Reader } from '../../text/reader.ts';
import { only, phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';

const HIGH = 260;
const COLUMN = 190;
const LEFT = 70;
const TOP = 80;
/** Metal to the left of every face, and the most that a face may stray sideways, px. */
const METAL_WIDTH = 70;
const STRAY = 70;

/** A face from its upper to its lower edge. */
interface Face {
  readonly name: Text;
  readonly lines: readonly Text[];
  /** mm that the face lies off the straight at a share of the height, without its roughness. */
  readonly off: (down: number) => number;
  /** Height of the roughness there, mm. */
  readonly rough: (down: number) => number;
  readonly most: number;
}

export const edgePicture = (ways: OtherWays, reader: Reader = HOUSE): string => {
  const faces = facesOf(ways);
  const scale = HIGH / ways.thickness;
  const factor = factorFor(Math.max(...faces.map((f) => f.most), 1e-6) * scale);
  const absent = ways.ways.filter((w) => w.edge === undefined).map((w) => w.sentence);
  const width = LEFT + Math.max(faces.length, 2) * COLUMN + 20;
  const height = TOP + HIGH + 70 + absent.length * 18 + 20;
  const caption = print(words.caption(ways.thickness, factor), reader);
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" font-family="sans-serif" font-size="12">`,
    `<title>${escaped(caption)}</title>`,
    `<rect width="${width}" height="${height}" fill="${PAPER}"/>`,
    set(LEFT, 24, caption, { size: 13 }),
    heightBar(print(only(thick(ways.thickness)), reader)),
    ...faces.flatMap((face, i) => faceShapes(face, { left: LEFT + i * COLUMN, sideways: scale * factor, reader })),
    ...absent.map((sentence, i) => set(LEFT, TOP + HIGH + 76 + i * 18, print(sentence, reader), { colour: QUIET })),
    '</svg>\n',
  ].join('\n');
};

const facesOf = (ways: OtherWays): readonly Face[] => [...wireFace(ways), ...ways.ways.flatMap(otherFace)];

const wireFace = ({ wire }: OtherWays): readonly Face[] => {
  if (wire === undefined) return [];
  const barrel = wire.formError / 1000;
  const rough = wire.rz / 1000;
  return [
    {
      name: wire.name,
      lines: [words.barrel(um(wire.formError, TWO)), words.allTheWay(um(wire.ra, TWO))],
      off: (down) => barrel * 4 * down * (1 - down),
      rough: () => rough,
      most: barrel + rough,
    },
  ];
};

const otherFace = ({ process, name, edge }: OtherWay): readonly Face[] => {
  if (edge === undefined) return [];
  const zone = edge.perpendicularity.value;
  const jet = process === 'water jet';
  const rz = edge.rz / 1000;
  return [
    {
      name,
      lines: [
        words.within(mm(zone, significant(3)), bare(edge.slope.value, '°', TWO)),
        words.finish(quantities([edge.ra.low, edge.ra.high], 'to', 'µm', TWO)),
      ],
      off: (down) => zone * down,
      // A jet tires on its way down.
      rough: (down) => rz * (jet ? 0.4 + 0.6 * down : 1),
      most: zone + rz,
    },
  ];
};

/** The largest of 1, 2 and 5 times a power of ten with which nothing strays too far. */
const factorFor = (widest: number): number => Math.max(1, roundBelow(STRAY / widest));

const STEPS = 160;

interface Standing {
  readonly left: number;
  /** px per mm across the height. */
  readonly sideways: number;
  readonly reader: Reader;
}

const faceShapes = (face: Face, { left, sideways, reader }: Standing): readonly string[] => {
  const straight = left + METAL_WIDTH;
  const points = Array.from({ length: STEPS + 1 }, (_, i) => {
    const down = i / STEPS;
    const x = straight + sideways * (face.off(down) + face.rough(down) * (ripple(i) - 0.5));
    return `${px(x)} ${px(TOP + down * HIGH)}`;
  });
  const bottom = TOP + HIGH;
  return [
    `<path d="M${left} ${TOP}L${points.join('L')}L${left} ${bottom}Z" fill="${METAL}" stroke="none"/>`,
    `<path d="M${straight} ${TOP - 8}V${bottom + 8}" fill="none" stroke="${QUIET}" stroke-width="0.6" stroke-dasharray="4 3"/>`,
    `<path d="M${points.join('L')}" fill="none" stroke="${INK}" stroke-width="1.1" stroke-linejoin="round"/>`,
    set(left, TOP - 16, print(face.name, reader), { bold: true }),
    ...face.lines.map((line, i) => set(left, bottom + 24 + i * 16, print(line, reader))),
  ];
};

/** A rough line that is the same every time: two tones that never fall in step, 0 to 1. */
const ripple = (i: number): number => 0.5 + 0.3 * Math.sin(i * 2.4) + 0.2 * Math.sin(i * 1.07 + 1);

const heightBar = (thickness: string): string => {
  const x = LEFT - 22;
  const bottom = TOP + HIGH;
  return [
    `<path d="M${x - 5} ${TOP}H${x + 5}M${x} ${TOP}V${bottom}M${x - 5} ${bottom}H${x + 5}" fill="none" stroke="${QUIET}" stroke-width="0.8"/>`,
    `<text x="${x - 6}" y="${TOP + HIGH / 2}" text-anchor="middle" fill="${INK}" transform="rotate(-90 ${x - 6} ${TOP + HIGH / 2})">${escaped(thickness)}</text>`,
  ].join('\n');
};

const set = (
  x: number,
  y: number,
  text: string,
  { size = 12, colour = INK, bold = false }: { readonly size?: number; readonly colour?: string; readonly bold?: boolean } = {},
): string => `<text x="${x}" y="${y}" font-size="${size}" fill="${colour}"${bold ? ' font-weight="bold"' : ''}>${escaped(text)}</text>`;

const thick = (thickness: number): Part => mm(thickness, deviating(0));
const TWO = significant(2);

const words = phrases('cut-faces', {
  caption: (thickness: number, factor: number) =>
    say`Cut faces of ${{ thickness: thick(thickness) }}. Height to scale; sideways × ${{ factor: number(factor) }} for all.`,
  barrel: (barrel: Part) => say`bow ${{ barrel }}`,
  allTheWay: (finish: Part) => say`Ra ${{ finish }} over the full height`,
  within: (zone: Part, slope: Part) => say`within ${{ zone }}, ${{ slope }}°`,
  finish: (range: Part) => say`Ra ${{ range }}`,
});

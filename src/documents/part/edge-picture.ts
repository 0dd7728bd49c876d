/**
 * The cut faces of wire, flame, plasma, laser and jet side by side, as SVG: the height to scale, everything sideways larger by one
 * stated factor, the same for all.
 */

import type { OtherWay, OtherWays } from '../../physics/other-process/other-question.ts';
import { roundBelow } from '../../picture/round-length.ts';
import { INK, METAL, PAPER, px, QUIET } from '../../picture/svg.ts';
import { rzBand } from '../../quantity/finish.ts';
import { printNumber } from '../../text/print/figure.ts';
import { printPlain } from '../../text/print/print.ts';

const HIGH = 260;
const COLUMN = 190;
const LEFT = 70;
const TOP = 80;
/** Metal to the left of every face, and the most that a face may stray sideways, px. */
const METAL_WIDTH = 70;
const STRAY = 70;

/** A face from its upper to its lower edge. */
interface Face {
  readonly name: string;
  readonly lines: readonly string[];
  /** mm that the face lies off the straight at a share of the height, without its roughness. */
  readonly off: (down: number) => number;
  /** Height of the roughness there, mm. */
  readonly rough: (down: number) => number;
  readonly most: number;
}

export const edgePicture = (ways: OtherWays): string => {
  const faces = facesOf(ways);
  const scale = HIGH / ways.thickness;
  const factor = factorFor(Math.max(...faces.map((f) => f.most), 1e-6) * scale);
  const absent = ways.ways.filter((w) => w.edge === undefined).map((w) => printPlain(w.sentence));
  const width = LEFT + Math.max(faces.length, 2) * COLUMN + 20;
  const height = TOP + HIGH + 70 + absent.length * 18 + 20;
  const caption = `Cut faces of ${printNumber(ways.thickness)} mm. Height to scale; sideways ${printNumber(factor)} times as large, for all alike.`;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" font-family="sans-serif" font-size="12">`,
    `<title>${caption}</title>`,
    `<rect width="${width}" height="${height}" fill="${PAPER}"/>`,
    words(LEFT, 24, caption, { size: 13 }),
    heightBar(ways.thickness),
    ...faces.flatMap((face, i) => faceShapes(face, LEFT + i * COLUMN, scale * factor)),
    ...absent.map((sentence, i) => words(LEFT, TOP + HIGH + 76 + i * 18, sentence, { colour: QUIET })),
    '</svg>\n',
  ].join('\n');
};

const facesOf = (ways: OtherWays): readonly Face[] => [...wireFace(ways), ...ways.ways.flatMap(otherFace)];

const wireFace = ({ wire }: OtherWays): readonly Face[] => {
  if (wire === undefined) return [];
  const barrel = wire.formError / 1000;
  const rough = rzBand(wire.ra).nominal / 1000;
  return [
    {
      name: 'wire',
      lines: [`barrel ${printNumber(Number(wire.formError.toPrecision(2)))} µm`, `Ra ${two(wire.ra)} µm all the way down`],
      off: (down) => barrel * 4 * down * (1 - down),
      rough: () => rough,
      most: barrel + rough,
    },
  ];
};

const otherFace = ({ process, edge }: OtherWay): readonly Face[] => {
  if (edge === undefined) return [];
  const zone = edge.perpendicularity.value;
  const jet = process === 'water jet';
  const rz = (jet ? rzBand(edge.roughness.value).nominal : edge.roughness.value) / 1000;
  return [
    {
      name: process,
      lines: [`within ${three(zone)} mm, ${two(edge.slope.value)}°`, `Ra ${two(edge.ra.low)} to ${two(edge.ra.high)} µm`],
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

/** `sideways` is px per mm across the height. */
const faceShapes = (face: Face, left: number, sideways: number): readonly string[] => {
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
    words(left, TOP - 16, face.name, { bold: true }),
    ...face.lines.map((line, i) => words(left, bottom + 24 + i * 16, line)),
  ];
};

/** A rough line that is the same every time: two tones that never fall in step, 0 to 1. */
const ripple = (i: number): number => 0.5 + 0.3 * Math.sin(i * 2.4) + 0.2 * Math.sin(i * 1.07 + 1);

const heightBar = (thickness: number): string => {
  const x = LEFT - 22;
  const bottom = TOP + HIGH;
  return [
    `<path d="M${x - 5} ${TOP}H${x + 5}M${x} ${TOP}V${bottom}M${x - 5} ${bottom}H${x + 5}" fill="none" stroke="${QUIET}" stroke-width="0.8"/>`,
    `<text x="${x - 6}" y="${TOP + HIGH / 2}" text-anchor="middle" fill="${INK}" transform="rotate(-90 ${x - 6} ${TOP + HIGH / 2})">${printNumber(thickness)} mm</text>`,
  ].join('\n');
};

const words = (
  x: number,
  y: number,
  text: string,
  { size = 12, colour = INK, bold = false }: { readonly size?: number; readonly colour?: string; readonly bold?: boolean } = {},
): string => `<text x="${x}" y="${y}" font-size="${size}" fill="${colour}"${bold ? ' font-weight="bold"' : ''}>${escaped(text)}</text>`;

const escaped = (text: string): string => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;');
const two = (x: number): string => Number(x.toPrecision(2)).toString();
const three = (x: number): string => Number(x.toPrecision(3)).toString();

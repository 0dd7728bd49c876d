/** The wire's centre keeps its distance: on contours of lines and arcs with corners of every kind, drawn at random. */

import { describe, expect, it } from 'vitest';
import { pathsApart, unsound } from '../../../test/nc/compare.ts';
import { type Random, seeded } from '../../../test/seeded.ts';
import { distanceToSegment, lengthOf, pointAt, startDirection } from '../../geometry/measure.ts';
import { line, type Point, type Segment } from '../../geometry/segment.ts';
import { sentenceOf } from '../../text/finding.fixture.ts';
import { standardDialect } from '../dialect/dialect.ts';
import { arcsAbout } from './arc.ts';
import type { Action } from './program.ts';
import { readProgram } from './read.ts';

const DIGIT = 1e-4;
const number = (value: number): string => `${value.toFixed(4)}`;
const onGrid = (value: number): number => Math.round(value / DIGIT) * DIGIT;

/** A star of lines and arcs from the middle of a side, counter-clockwise, with ends and centres on the grid of last digits. */
const starOf = (random: Random): readonly Segment[] => {
  const count = 4 + Math.floor(5 * random());
  const corners = Array.from({ length: count }, (_, k): Point => {
    const angle = (2 * Math.PI * (k + 0.5 * random())) / count;
    const radius = 8 + 8 * random();
    return { x: onGrid(radius * Math.cos(angle)), y: onGrid(radius * Math.sin(angle)) };
  });
  const [first, second] = [corners[0] as Point, corners[1] as Point];
  const middle = { x: onGrid((first.x + second.x) / 2), y: onGrid((first.y + second.y) / 2) };
  const rest = corners.slice(1).map((from, k) => {
    const to = corners[(k + 2) % count] as Point;
    const bulge = random() < 0.4 ? 0 : 0.5 * (random() - 0.5);
    return bulge === 0 ? line(from, to) : bulged(from, to, bulge);
  });
  return [line(middle, second), ...rest, line(first, middle)];
};

const bulged = (from: Point, to: Point, bulge: number): Segment => {
  const reach = (1 / bulge - bulge) / 4;
  const centre = { x: onGrid((from.x + to.x) / 2 - reach * (to.y - from.y)), y: onGrid((from.y + to.y) / 2 + reach * (to.x - from.x)) };
  return arcsAbout(from, to, centre, bulge > 0, DIGIT)[0] as Segment;
};

const blockOf = (segment: Segment): string => {
  const end = `X${number(segment.to.x)} Y${number(segment.to.y)}`;
  if (segment.kind === 'line') return `G01 ${end}`;
  const { from, centre } = segment;
  return `${segment.sweep > 0 ? 'G03' : 'G02'} ${end} I${number(onGrid(centre.x) - from.x)} J${number(onGrid(centre.y) - from.y)}`;
};

const programOf = (segments: readonly Segment[], side: 'left' | 'right'): string => {
  const first = segments[0] as Segment;
  const normal = startDirection(first);
  const away = side === 'left' ? 1 : -1;
  const hole = `X${number(first.from.x - away * normal.y * 2)} Y${number(first.from.y + away * normal.x * 2)}`;
  const start = `X${number(first.from.x)} Y${number(first.from.y)}`;
  const blocks = segments.map(blockOf);
  return [
    '%',
    'G71 G90',
    `G00 ${hole}`,
    `${side === 'left' ? 'G41' : 'G42'} D1 G01 ${start}`,
    ...blocks,
    `G40 G01 ${hole}`,
    'M02',
    '%',
  ].join('\n');
};

describe('a compensated path round random contours', () => {
  it('stays at the offset from the contour, and runs on no further than twice that', () => {
    const faults: string[] = [];
    let read = 0;
    for (let seed = 1; seed <= 500; seed += 1) {
      const random = seeded(seed);
      const segments = starOf(random);
      const side = random() < 0.5 ? 'left' : 'right';
      const offset = 0.05 + 0.2 * random();
      const outsideCorners = random() < 0.5 ? 'arc' : 'intersection';
      const text = programOf(segments, side);
      const program = readProgram(text, { ...standardDialect, outsideCorners }, new Map([[1, offset]]));
      if (program.state === 'refused') {
        faults.push(`${seed}: ${sentenceOf(program.findings[0])}`);
        continue;
      }
      read += 1;
      const moves = program.actions.filter((action) => action.kind === 'move');
      for (const wrong of unsound(moves)) faults.push(`${seed}: ${wrong}`);
      for (const distance of distances(moves, segments)) {
        if (distance < offset - 3 * DIGIT || distance > (outsideCorners === 'arc' ? 1 : 2) * offset + 3 * DIGIT)
          faults.push(`${seed}: ${distance} for ${offset}`);
      }
    }
    expect(faults.slice(0, 5)).toEqual([]);
    expect(read).toBe(500);
  });

  it('is the contour itself with register 0', () => {
    const faults: number[] = [];
    for (let seed = 1; seed <= 100; seed += 1) {
      const segments = starOf(seeded(seed));
      const text = programOf(segments, 'left').replace('D1', 'D0');
      const moves = readProgram(text, standardDialect, new Map()).actions.filter((action) => action.kind === 'move');
      const apart = pathsApart(
        segments,
        moves.slice(2, -1).map((move) => move.centre),
        DIGIT,
      );
      if (!(apart < 1)) faults.push(seed);
    }
    expect(faults).toEqual([]);
  });
});

/** Distances from places on the compensated moves to the nearest place of the contour. */
const distances = (moves: readonly Extract<Action, { kind: 'move' }>[], segments: readonly Segment[]): readonly number[] =>
  moves
    .filter((move) => move.register !== undefined)
    .slice(1)
    .filter((move) => lengthOf(move.centre) > 0)
    .flatMap(({ centre }) =>
      [0.02, 0.5, 0.98].map((share) => Math.min(...segments.map((segment) => distanceToSegment(segment, pointAt(centre, share))))),
    );

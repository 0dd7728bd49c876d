/** Blocks are drawn where their inserts put them; layers, sheets and visibility are told apart. */

import { describe, expect, it } from 'vitest';
import { asciiDxf, block, dxfTags, entity, layer, lightPolyline, lineTags, type Parts, type Tag } from '../../../test/dxf-writer.ts';
import { there } from '../../../test/there.ts';
import type { Arc } from '../../geometry/segment.ts';
import { sentenceOf } from '../../text/finding.fixture.ts';
import { usualLimits } from '../budget.ts';
import type { Curve, DrawnFile, EllipticArc } from '../curve/curve.ts';
import { readDxf } from './read-dxf.ts';

const read = (parts: Parts): DrawnFile => readDxf(asciiDxf(dxfTags(parts)));
const codesOf = (file: DrawnFile): readonly string[] => file.findings.map((f) => f.code);
const insert = (name: string, numbers: Readonly<Record<number, string | number>> = {}): readonly Tag[] =>
  entity('INSERT', { 8: '0', 10: 0, 20: 0, ...numbers, 2: name });

/** The curves that one block of the given entities gives under one insert. */
const inserted = (
  entities: readonly (readonly Tag[])[],
  numbers: Readonly<Record<number, number>>,
  base?: readonly [number, number],
): readonly Curve[] => read({ blocks: [block('B', entities, base)], entities: [insert('B', numbers)] }).curves.map((c) => c.curve);

const close = (curve: Curve | undefined, from: readonly [number, number], to: readonly [number, number]): void => {
  if (curve?.kind !== 'line' && curve?.kind !== 'arc') throw new Error('neither line nor arc');
  for (const [have, want] of [
    [curve.from.x, from[0]],
    [curve.from.y, from[1]],
    [curve.to.x, to[0]],
    [curve.to.y, to[1]],
  ] as const)
    expect(have).toBeCloseTo(want, 12);
};

describe('INSERT', () => {
  it('takes off the base point, scales, turns and moves, in this order', () => {
    const [curve] = inserted([lineTags(1, 2, 4, 2)], { 10: 100, 20: 50, 41: 2, 42: 2, 50: 90 }, [1, 1]);
    close(curve, [98, 50], [98, 56]);
  });

  it('turns a bulge over where it mirrors', () => {
    const [arc] = inserted(
      [
        lightPolyline(
          [
            [0, 0, 1],
            [2, 0],
          ],
          false,
        ),
      ],
      { 41: -1 },
    ) as [Arc];
    expect(arc.sweep).toBe(-Math.PI);
    close(arc, [0, 0], [-2, 0]);
  });

  it('keeps a circle round where both scales have the same size', () => {
    const [arc] = inserted([entity('CIRCLE', { 10: 1, 20: 0, 40: 1 })], { 41: -3, 42: 3, 50: 33 }) as [Arc];
    expect(arc.kind).toBe('arc');
    expect(arc.radius).toBeCloseTo(3, 12);
    expect(arc.sweep).toBe(-2 * Math.PI);
  });

  it('makes ellipses of arcs and bulges where it stretches', () => {
    const [arc, piece] = inserted(
      [
        entity('ARC', { 10: 0, 20: 0, 40: 1, 50: 0, 51: 90 }),
        lightPolyline(
          [
            [0, 0, 1],
            [2, 0],
          ],
          false,
        ),
      ],
      { 41: 2, 42: 1 },
    ) as [EllipticArc, EllipticArc];
    expect(arc).toMatchObject({ kind: 'ellipse', major: { x: 2, y: 0 }, start: 0 });
    expect(arc.end).toBeCloseTo(Math.PI / 2, 14);
    expect(arc.minor).toEqual({ x: 0, y: 1 });
    expect(piece).toMatchObject({ kind: 'ellipse', centre: { x: 2, y: 0 }, end: Math.PI });
  });

  it('makes a circle again of what was stretched one way and then the other', () => {
    const inner = block('inner', [entity('CIRCLE', { 10: 0, 20: 0, 40: 1 })]);
    const outer = block('outer', [insert('inner', { 41: 2 })]);
    const { curves } = read({ blocks: [inner, outer], entities: [insert('outer', { 42: 2 })] });
    expect(curves.map((c) => c.curve)).toMatchObject([{ kind: 'arc', radius: 2 }]);
  });

  it('reaches into blocks within blocks, from the inside out', () => {
    const inner = block('inner', [lineTags(0, 0, 1, 0)], [0.5, 0]);
    const outer = block('outer', [insert('inner', { 10: 10, 20: 0, 50: 90 })], [10, 0]);
    const { curves } = read({ blocks: [outer, inner], entities: [insert('OUTER', { 10: 0, 20: 5, 41: 2, 42: 2 })] });
    close(curves[0]?.curve, [0, 4], [0, 6]);
  });

  it('turns over with its plane', () => {
    const [curve] = inserted([lineTags(1, 1, 2, 1)], { 10: 5, 20: 7, 50: 90, 210: 0, 220: 0, 230: -1 });
    // On its own plane the line stands at (4, 8) to (4, 9).
    close(curve, [-4, 8], [-4, 9]);
  });

  it('repeats in rows and columns that turn with it and do not scale', () => {
    const curves = inserted([lineTags(0, 0, 1, 0)], { 10: 0, 20: 0, 41: 2, 42: 2, 50: 90, 70: 2, 71: 3, 44: 5, 45: 7 });
    expect(curves.length).toBe(6);
    close(curves[1], [0, 5], [0, 7]);
    close(curves[2], [-7, 0], [-7, 2]);
  });

  it('is drawn from above where it is tilted', () => {
    const file = read({
      blocks: [block('B', [lineTags(0, 0, 1, 0), lineTags(0, 0, 0, 1)])],
      entities: [insert('B', { 210: 0, 220: -1, 230: 1 })],
    });
    close(file.curves[0]?.curve, [0, 0], [1, 0]);
    close(file.curves[1]?.curve, [0, 0], [0, Math.SQRT1_2]);
    expect(codesOf(file)).toEqual(['tilted-projected']);
  });

  it('says which block is missing', () => {
    const file = read({ entities: [insert('nowhere')] });
    expect(file.findings.map((f) => [f.code, sentenceOf(f)])).toEqual([
      ['reference-missing', "The block 'nowhere' is inserted here and is not in the file."],
    ]);
  });

  it('does not take a block of another file for an empty one', () => {
    const external = block('other', []).map((tag): Tag => (tag[0] === 70 ? [70, 4] : tag));
    expect(codesOf(read({ blocks: [external], entities: [insert('other')] }))).toEqual(['reference-missing']);
  });

  it.each([
    ['x', 41],
    ['y', 42],
  ])('is left out with scale 0 in %s', (_, code) => {
    expect(codesOf(read({ blocks: [block('B', [lineTags(0, 0, 1, 1)])], entities: [insert('B', { [code]: 0 })] }))).toEqual([
      'entity-impossible',
    ]);
  });

  it('leaves the hatches and dimensions of R12 out, which are blocks there', () => {
    const file = read({ blocks: [block('*X7', [lineTags(0, 0, 1, 0)])], entities: [insert('*X7'), lineTags(0, 0, 1, 1)] });
    expect(file.curves.length).toBe(1);
    expect([...file.passedOver]).toEqual([['INSERT of a hatch or dimension block', 1]]);
    expect(codesOf(file)).toEqual(['entities-passed-over']);
  });

  it('draws no block that is only there', () => {
    expect(read({ blocks: [block('B', [lineTags(0, 0, 1, 0)])], entities: [] }).curves).toEqual([]);
  });
});

describe('blocks that were made to do harm', () => {
  it('stops at a block within itself, and draws the rest', () => {
    const file = read({ blocks: [block('A', [lineTags(0, 0, 1, 0), insert('B')]), block('B', [insert('a')])], entities: [insert('A')] });
    expect(file.state).toBe('complete');
    expect(file.curves.length).toBe(1);
    expect(codesOf(file)).toEqual(['reference-to-itself']);
  });

  it.each(['__proto__', 'constructor', 'toString', 'hasOwnProperty'])('takes the name %s like any other', (name) => {
    const parts = { layers: [layer(name, { colour: -1 })], blocks: [block(name, [lineTags(0, 0, 1, 0, name)])], entities: [insert(name)] };
    const file = read(parts);
    expect(file.curves).toMatchObject([{ layer: name, hidden: true }]);
    expect(read({ entities: [insert(name)] }).curves).toEqual([]);
  });

  const bomb = (levels: number, copies: number, core: readonly (readonly Tag[])[]): Parts => ({
    blocks: Array.from({ length: levels }, (_, i) =>
      block(`L${i}`, i === 0 ? core : Array.from({ length: copies }, () => insert(`L${i - 1}`))),
    ),
    entities: [insert(`L${levels - 1}`)],
  });

  it.each([
    ['of lines', [lineTags(0, 0, 1, 0)], 'too-many-entities'],
    ['of nothing', [], 'too-much-work'],
  ])('refuses a bomb %s at once', (_, core, code) => {
    // Drawn out, it would be a million million lines: the test would not end.
    const file = read(bomb(12, 10, core));
    expect(file).toMatchObject({ state: 'refused', curves: [], findings: [{ code, severity: 'refusal' }] });
  });

  it('refuses rows and columns without end', () => {
    const parts = { blocks: [block('B', [lineTags(0, 0, 1, 0)])], entities: [insert('B', { 70: 32767, 71: 32767, 44: 1, 45: 1 })] };
    expect(read(parts)).toMatchObject({ state: 'refused', findings: [{ code: 'too-many-entities' }] });
  });

  it('refuses blocks nested too deep', () => {
    expect(read(bomb(70, 1, [lineTags(0, 0, 1, 0)]))).toMatchObject({ state: 'refused', findings: [{ code: 'nested-too-deep' }] });
    expect(read(bomb(60, 1, [lineTags(0, 0, 1, 0)])).curves.length).toBe(1);
    expect(read(bomb(5000, 1, [lineTags(0, 0, 1, 0)])).state).toBe('refused');
  });

  it('refuses by the limits it is given, each by name', () => {
    const bytes = asciiDxf(dxfTags({ entities: [lineTags(0, 0, 1, 0), lineTags(0, 0, 1, 1)] }));
    const code = (limits: object): string | undefined => readDxf(bytes, { ...usualLimits, ...limits }).findings[0]?.code;
    expect([code({ bytes: 10 }), code({ entities: 1 }), code({ work: 1 }), code({})]).toEqual([
      'file-too-large',
      'too-many-entities',
      'too-much-work',
      undefined,
    ]);
  });
});

describe('layers and visibility', () => {
  it('hides what is off, frozen or invisible, and lists layers with how much lies on them', () => {
    const file = read({
      layers: [layer('0'), layer('Off', { colour: -7 }), layer('Frozen', { flags: 1 }), layer('empty')],
      entities: [
        lineTags(0, 0, 1, 0),
        lineTags(0, 0, 1, 0, 'off'),
        lineTags(0, 0, 1, 0, 'FROZEN'),
        entity('LINE', { 8: 'new', 10: 0, 20: 0, 11: 1, 21: 0, 60: 1 }),
      ],
    });
    expect(file.curves.map((c) => [c.layer, c.hidden])).toEqual([
      ['0', false],
      ['Off', true],
      ['Frozen', true],
      ['new', true],
    ]);
    expect(file.layers).toEqual([
      { name: '0', hidden: false, entities: 1 },
      { name: 'Off', hidden: true, entities: 1 },
      { name: 'Frozen', hidden: true, entities: 1 },
      { name: 'empty', hidden: false, entities: 0 },
      { name: 'new', hidden: false, entities: 1 },
    ]);
  });

  it('gives what lies on layer 0 of a block the layer of the insert', () => {
    const parts = {
      layers: [layer('off', { colour: -1 }), layer('frozen', { flags: 1 }), layer('own')],
      blocks: [block('B', [lineTags(0, 0, 1, 0), lineTags(0, 0, 1, 0, 'own')]), block('C', [insert('B')])],
      entities: [insert('C', { 8: 'off' }), insert('C', { 8: 'frozen' }), insert('C', { 60: 1 })],
    };
    // A layer that is off hides only its own; a frozen one hides all that is inserted on it.
    expect(read(parts).curves.map((c) => [c.layer, c.hidden])).toEqual([
      ['off', true],
      ['own', false],
      ['frozen', true],
      ['own', true],
      ['0', true],
      ['own', true],
    ]);
  });

  it('knows layers from a table that comes after the entities', () => {
    const tags = dxfTags({ layers: [layer('off', { colour: -1 })], entities: [lineTags(0, 0, 1, 0, 'off')] });
    const table = tags.findIndex(([code, value]) => code === 2 && value === 'ENTITIES') - 1;
    const turned = [...tags.slice(table, -1), ...tags.slice(0, table), there(tags.at(-1))];
    expect(readDxf(asciiDxf(turned)).curves).toMatchObject([{ layer: 'off', hidden: true }]);
  });

  it('leaves out layout sheets, in the list of entities and in blocks of their own', () => {
    const sheetLine = entity('LINE', { 8: '0', 10: 0, 20: 0, 11: 999, 21: 999, 67: 1 });
    const file = read({ blocks: [block('*Paper_Space0', [lineTags(0, 0, 5, 5)])], entities: [sheetLine, lineTags(0, 0, 1, 0)] });
    expect(file.curves.length).toBe(1);
    expect(file.findings.map((f) => [f.code, sentenceOf(f)])).toEqual([
      ['paper-space-left-out', '2 entities lie on layout sheets (paper space).'],
    ]);
  });

  it('draws what lies in the block of model space', () => {
    expect(read({ blocks: [block('*Model_Space', [lineTags(0, 0, 1, 0)])], entities: [] }).curves.length).toBe(1);
  });

  it('counts what it passes over, and warns only of shapes', () => {
    const file = read({
      entities: [
        entity('TEXT', { 10: 0, 20: 0, 1: 'a' }),
        entity('MTEXT', { 10: 0, 20: 0, 1: 'b' }, [
          [101, 'Embedded Object'],
          [10, 1],
          [20, 'not a number'],
        ]),
        entity('DIMENSION', { 2: '*D1', 10: 0, 20: 0 }),
        entity('HATCH', { 10: 0, 20: 0 }, [
          [10, 1],
          [20, 1],
        ]),
        entity('3DFACE', { 10: 0, 20: 0 }),
        entity('SOLID', { 10: 0, 20: 0 }),
        entity('SOLID', { 10: 0, 20: 0 }),
      ],
    });
    expect([...file.passedOver]).toEqual([
      ['TEXT', 1],
      ['MTEXT', 1],
      ['DIMENSION', 1],
      ['HATCH', 1],
      ['3DFACE', 1],
      ['SOLID', 2],
    ]);
    expect(file.findings.map((f) => [f.code, f.severity])).toEqual([
      ['entities-passed-over', 'note'],
      ['shapes-not-read', 'warning'],
    ]);
  });
});

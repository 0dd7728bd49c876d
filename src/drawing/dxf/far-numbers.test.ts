/** Numbers beyond all sense are named for what they are, and a block pressed flat in height loses nothing. */
import { describe, expect, it } from 'vitest';
import { asciiDxf, block, dxfTags, entity, lightPolyline, type Tag } from '../../../test/dxf-writer.ts';
import { sentenceOf } from '../../text/finding.fixture.ts';
import type { DrawnFile } from '../curve/curve.ts';
import { readDxf } from './read-dxf.ts';

const square = lightPolyline([
  [0, 0],
  [6, 0],
  [6, 6],
  [0, 6],
]);
const read = (...entities: readonly (readonly Tag[])[]): DrawnFile =>
  readDxf(asciiDxf(dxfTags({ units: 4, blocks: [block('B', [square])], entities })));
const inserted = (more: Readonly<Record<number, number>>): readonly Tag[] => entity('INSERT', { 2: 'B', 10: 4, 20: 4, ...more });

describe('numbers beyond all sense', () => {
  it.each([
    ['scale', inserted({ 41: 1e300 }), "'B' is scaled by 1e+300"],
    ['scale near nothing', inserted({ 42: 1e-300 }), "'B' is scaled by 1e-300"],
    ['scale of 0', inserted({ 41: 0 }), "'B' is scaled by 0"],
    ['place', inserted({ 10: 1e300 }), 'inserted at (1e+300, 4)'],
    ['turn', inserted({ 50: 1e18 }), "'B' is turned by 1000000000000000000 degrees"],
    ['angle of an arc', entity('ARC', { 10: 0, 20: 0, 40: 5, 50: 1e18, 51: 30 }), 'An angle is 1000000000000000000'],
    ['end of an arc', entity('ARC', { 10: 0, 20: 0, 40: 5, 50: 0, 51: -1e18 }), 'An angle is -1000000000000000000'],
    ['parameter', entity('ELLIPSE', { 10: 0, 20: 0, 11: 5, 21: 0, 40: 0.5, 41: 0, 42: 1e18 }), 'An angle is 1000000000000000000'],
    ['ratio', entity('ELLIPSE', { 10: 0, 20: 0, 11: 5, 21: 0, 40: 1e-300 }), 'ratio 1e-300'],
  ])('are named: the %s', (_, tags, sentence) => {
    const file = read(tags);
    expect(file.curves).toEqual([]);
    expect(file.findings.map((f) => f.code)).toEqual(['entity-impossible']);
    expect(sentenceOf(file.findings[0])).toContain(sentence);
  });
});

describe('a block scaled by 0 in height', () => {
  it.each([{}, { 41: 2, 42: 2 }, { 50: 30 }, { 210: 0, 220: 0, 230: -1 }])('is drawn as with any other height (%o)', (more) => {
    const flat = read(inserted({ ...more, 43: 0 }));
    expect(flat.findings).toEqual([]);
    expect(flat.curves).toEqual(read(inserted({ ...more, 43: 1 })).curves);
    expect(flat.curves.length).toBe(4);
  });
});

describe('arrowheads', () => {
  const solid = entity('SOLID', { 10: 0, 20: 0, 11: 1, 21: 0, 12: 0, 22: 1 });
  const kinds = (entities: readonly (readonly Tag[])[], blocks: readonly (readonly Tag[])[]): readonly (readonly [string, number])[] => [
    ...readDxf(asciiDxf(dxfTags({ units: 4, blocks, entities: [square, ...entities] }))).passedOver,
  ];

  it('belong to their dimension, in its block or in one of the format, also where the dimension was exploded', () => {
    const dimension = entity('DIMENSION', { 2: '*D1', 10: 0, 20: 0 });
    expect(kinds([dimension], [block('*D1', [solid, entity('MTEXT', { 10: 0, 20: 0 })])])).toEqual([['DIMENSION', 1]]);
    expect(kinds([dimension], [block('_CLOSEDFILLED', [solid]), block('*D1', [entity('INSERT', { 2: '_CLOSEDFILLED' })])])).toEqual([
      ['DIMENSION', 1],
    ]);
    const loop = block('_ClosedBlank', [square]);
    expect(kinds([entity('INSERT', { 2: '_ClosedBlank', 10: 0, 20: 0 })], [loop])).toEqual([['INSERT of an arrowhead', 1]]);
  });

  it('leave other solids to be told, once for a block that is drawn often and not at all for one that is not drawn', () => {
    const twice = [entity('INSERT', { 2: 'PAD', 10: 0, 20: 0 }), entity('INSERT', { 2: 'PAD', 10: 9, 20: 0 })];
    expect(kinds([...twice, solid], [block('PAD', [solid])])).toEqual([['SOLID', 2]]);
    expect(kinds([], [block('PAD', [solid])])).toEqual([]);
  });
});

/** A strict reader opens the drawings of the examples and those that we write; and it sees what is wrong. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readDrawing } from '../src/drawing/read/read-drawing.ts';
import type { Drawn, WriteUnit } from '../src/drawing/write/drawn.ts';
import { writeDxf } from '../src/drawing/write/dxf.ts';
import { path } from '../src/geometry/contour.ts';
import { disc, star } from '../src/geometry/example-shapes.fixture.ts';
import { arc, line } from '../src/geometry/segment.ts';
import { strictFaults } from './strict-dxf/strict-faults.ts';

const drawings = (readdirSync('examples', { recursive: true, encoding: 'utf8' }) as string[])
  .filter((f) => f.endsWith('.dxf'))
  .map((f) => join('examples', f))
  .sort();

/** One of each kind of entity, on layers with all that a name may hold. */
const drawn: readonly Drawn[] = [
  { chain: star([9, 12, 10, 13, 11], [0.1, 0]), layer: 'Stempel Ü 42' },
  { chain: disc(30, 0, 4), layer: '図面 1' },
  { chain: path([line({ x: 0, y: 40 }, { x: 20, y: 40 })]) },
  { chain: path([arc({ x: 5, y: 60 }, { x: 0, y: 65 }, { x: 0, y: 60 }, Math.PI / 2)]), layer: 'a/b:c' },
  { chain: path([line({ x: 0, y: 80 }, { x: 20, y: 80 }), line({ x: 20, y: 80 }, { x: 20, y: 90 })]) },
];
const written = (unit: WriteUnit): string => writeDxf(drawn, unit, [{ x: 1, y: 2 }]);

describe('a strict reader of DXF', () => {
  it.each(drawings)('opens %s', (path) => {
    expect(strictFaults(readFileSync(path, 'latin1'))).toEqual([]);
  });

  it('opens what we write, of every kind and in either unit, and an empty drawing', () => {
    for (const unit of ['mm', 'inch'] as const) {
      expect(strictFaults(written(unit))).toEqual([]);
      expect(strictFaults(writeDxf([], unit))).toEqual([]);
    }
    for (const kind of ['LWPOLYLINE', 'CIRCLE', 'LINE', 'ARC', 'POINT']) expect(written('mm')).toContain(`  0\n${kind}\n`);
  });

  it('meets layers by the names that our own reader has for them', () => {
    const { layers } = readDrawing(new TextEncoder().encode(written('mm')), 'names.dxf', {});
    expect(layers.map((l) => l.name)).toEqual(expect.arrayContaining(['Stempel Ü 42', '図面 1', 'a_b_c']));
  });
});

/** Faults to plant: what is replaced in a good file, by what, and what is to be said of it. */
const FAULTS: readonly (readonly [name: string, good: string | RegExp, bad: string, says: RegExp])[] = [
  ['a release that has other records', 'AC1015', 'AC1009', /release AC1015/],
  ['no next free handle', / {2}9\n\$HANDSEED\n {2}5\n.*\n/, '', /next free handle/],
  ['a next free handle that is taken', /(\$HANDSEED\n {2}5\n).*\n/, '$1100\n', /not below the next free/],
  ['a handle that is borne twice', /(\n {2}0\nCIRCLE\n {2}5\n).*\n/, '$1100\n', /borne twice/],
  ['an owner that is not there', /(\n {2}0\nCIRCLE\n {2}5\n.*\n330\n).*\n/, '$1ABC\n', /ABC, which nothing bears/],
  ['an entity that belongs to paper', /(\n {2}0\nCIRCLE\n {2}5\n.*\n330\n).*\n/, '$11B\n', /CIRCLE does not belong to the model space/],
  ['no marker of the entity', /(\n {2}0\nCIRCLE\n {2}5\n.*\n330\n.*\n)100\nAcDbEntity\n/, '$1', /CIRCLE does not begin with/],
  [
    'no marker of the circle',
    '100\nAcDbCircle\n 10\n30\n',
    ' 10\n30\n',
    /CIRCLE has the subclass markers AcDbEntity instead of AcDbEntity, AcDbCircle/,
  ],
  ['a marker of something else', '100\nAcDbPolyline', '100\nAcDb2dPolyline', /AcDb2dPolyline instead of/],
  ['a group where it has no meaning', '100\nAcDbLine\n', '100\nAcDbLine\n 50\n0\n', /group 50 has no meaning in AcDbLine/],
  ['a circle without a radius', /(AcDbCircle\n(?: .0\n.*\n){3}) 40\n.*\n/, '$1', /AcDbCircle of CIRCLE has no group 40/],
  ['a circle without a size', /(AcDbCircle\n(?: .0\n.*\n){3}) 40\n.*\n/, '$1 40\n0\n', /has the size 0/],
  ['a vertex too few', /(AcDbPolyline\n) 90\n5\n/, '$1 90\n6\n', /a polyline of 6 vertices has 5/],
  ['half a vertex', /(AcDbPolyline\n(?: .*\n.*\n){3} 10\n.*\n) 20\n.*\n/, '$1', /not x followed by y/],
  ['an entity that nobody knows', '\n  0\nCIRCLE\n', '\n  0\nROUND\n', /an entity ROUND/],
  ['a layer that is in no table', /(AcDbEntity\n {2}8\n)a_b_c\n/, '$1a_b\n', /unknown layer 'a_b'/],
  ['a name with a sign that it may not have', /a_b_c/g, 'a:b', /'a:b' is no name/],
  ['a line type that is in no table', '  6\nContinuous', '  6\nDashed', /unknown line type Dashed/],
  ['a layer that belongs elsewhere', /(\n {2}0\nLAYER\n {2}5\n.*\n330\n).*\n/, '$15\n', /LAYER 0 does not belong to its table/],
  ['a table without a marker', /(TABLE\n {2}2\nLTYPE\n {2}5\n5\n330\n0\n)100\nAcDbSymbolTable\n/, '$1', /head of the table LTYPE/],
  ['no view', /\n {2}0\nVPORT\n[\s\S]*?(\n {2}0\nENDTAB)/, '$1', /no \*ACTIVE in the table VPORT/],
  ['no style of dimensions', /\n {2}0\nDIMSTYLE\n[\s\S]*?(\n {2}0\nENDTAB)/, '$1', /no STANDARD in the table DIMSTYLE/],
  ['no table of line types', / {2}0\nTABLE\n {2}2\nLTYPE\n[\s\S]*? {2}0\nENDTAB\n/, '', /no table LTYPE/],
  [
    'line types after layers',
    /( {2}0\nTABLE\n {2}2\nLTYPE\n[\s\S]*? {2}0\nENDTAB\n)( {2}0\nTABLE\n {2}2\nLAYER\n[\s\S]*? {2}0\nENDTAB\n)/,
    '$2$1',
    /LTYPE does not come before/,
  ],
  ['no blocks', / {2}0\nSECTION\n {2}2\nBLOCKS\n[\s\S]*? {2}0\nENDSEC\n/, '', /the sections are/],
  ['no objects', / {2}0\nSECTION\n {2}2\nOBJECTS\n[\s\S]*? {2}0\nENDSEC\n/, '', /do not begin with the root dictionary/],
  ['a block of another name', /(AcDbBlockBegin\n {2}2\n)\*Paper_Space/, '$1*Sheet', /does not belong to its record/],
  ['a block without an end', / {2}0\nENDBLK\n[\s\S]*?AcDbBlockEnd\n/, '', /is not ended/],
  [
    'a class that is not declared',
    / {2}0\nCLASS\n {2}1\nACDBPLACEHOLDER\n[\s\S]*?281\n0\n/,
    '',
    /class of ACDBPLACEHOLDER is not declared/,
  ],
  ['an object that its owner does not hold', '  3\nACAD_PLOTSTYLENAME\n350\nE\n', '', /not in the dictionary that owns it/],
  ['a number that is none', /(AcDbArc\n 50\n).*\n/, '$1right\n', /group 50 cannot hold 'right'/],
  ['a sign beyond the code page', '\\U+00DC', 'Ü', /cannot hold 'Stempel Ü 42'/],
  ['a code without a value', /EOF\n$/, 'EOF\n  0\n', /without a value/],
  ['no end', / {2}0\nEOF\n$/, '', /no EOF/],
];

describe('the strict reader', () => {
  it.each(FAULTS)('sees %s', (_, good, bad, says) => {
    const whole = written('mm');
    const spoilt = whole.replace(good, bad);
    expect(spoilt).not.toBe(whole);
    expect(strictFaults(spoilt).map((f) => f.what)).toContainEqual(expect.stringMatching(says));
  });
});

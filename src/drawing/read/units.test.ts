/** Which unit a drawing is read in, and when that is doubted. */

import { describe, expect, it } from 'vitest';
import { doneTextOf, sentenceOf } from '../../text/finding.fixture.ts';
import { decideUnits, unitNamed } from './units.ts';

const box = (wide: number, high = wide) => ({ minX: 0, minY: 0, maxX: wide, maxY: high });
const inch = { name: 'inch', millimetres: 25.4, basis: 'header' } as const;
const file = { format: 'dxf', unitless: false } as const;

describe('units of a drawing', () => {
  it('are what the user says, before what the file says', () => {
    const { units, findings } = decideUnits({ ...file, units: inch }, 'MM', box(50));
    expect(units).toEqual({ name: 'mm', millimetres: 1, basis: 'user' });
    expect(findings.map((f) => f.code)).toEqual(['units-overruled']);
  });

  it('are what the file says when nobody else does', () => {
    expect(decideUnits({ ...file, units: inch }, undefined, box(5))).toEqual({ units: inch, findings: [] });
  });

  it('are assumed to be millimetres, and asked about, when nobody says', () => {
    const { units, findings } = decideUnits(file, undefined, box(3, 2));
    expect(units).toEqual({ name: 'mm', millimetres: 1, basis: 'assumed' });
    expect(findings.map((f) => [f.code, f.severity, doneTextOf(f)])).toEqual([['units-missing', 'doubt', 'Millimetres were assumed.']]);
    expect(sentenceOf(findings[0])).toContain('Read as mm it measures 3 mm by 2 mm; read as inches it would be 76.2 mm by 50.8 mm.');
    expect(sentenceOf(decideUnits({ ...file, unitless: true }, undefined, box(3)).findings[0])).toContain('gives its unit as none');
  });

  it('are doubted when the drawing would be larger than any machine or smaller than a wire', () => {
    expect(decideUnits({ ...file, units: inch }, undefined, box(270, 108)).findings.map((f) => f.code)).toEqual(['units-implausible']);
    expect(sentenceOf(decideUnits(file, 'µm', box(100)).findings[0])).toContain('measures 0.1 mm by 0.1 mm, less than');
    expect(decideUnits(file, 'mm', box(1999)).findings).toEqual([]);
  });

  it('are asked for again when the word is unknown', () => {
    const { units, findings } = decideUnits({ ...file, units: inch }, 'furlong', box(5));
    expect(units).toEqual(inch);
    expect(findings.map((f) => [f.code, f.place])).toEqual([['units-unknown', { kind: 'field', path: 'units' }]]);
  });

  it('say nothing of the size of an empty drawing', () => {
    const nothing = { minX: Infinity, minY: Infinity, maxX: -Infinity, maxY: -Infinity };
    expect(decideUnits({ ...file, units: inch }, undefined, nothing).findings).toEqual([]);
    expect(sentenceOf(decideUnits(file, undefined, nothing).findings[0])).toBe('The file does not specify the unit of the drawing.');
  });

  it('are known by the words people write', () => {
    expect(['mm', ' Inches ', '"', 'thou', 'Micron', 'ft', 'm'].map((w) => unitNamed(w)?.millimetres)).toEqual([
      1, 25.4, 25.4, 0.0254, 0.001, 304.8, 1000,
    ]);
    expect(unitNamed('__proto__')).toBeUndefined();
  });
});

/** Dimensions that say another length than is drawn are one question, and those that agree within their digits are none. */
import { describe, expect, it } from 'vitest';
import { asciiDxf, dxfTags, entity, lightPolyline, section, type Tag } from '../../../test/dxf-writer.ts';
import { doneTextOf, sentenceOf } from '../../text/finding.fixture.ts';
import type { Finding } from '../../text/finding.ts';
import { readDrawing } from './read-drawing.ts';

const plate = lightPolyline([
  [0, 0],
  [40, 0],
  [40, 25],
  [0, 25],
]);
const aligned = (long: number, more: Readonly<Record<number, string | number>> = {}): readonly Tag[] =>
  entity('DIMENSION', { 70: 33, 10: 0, 20: 30, 13: 0, 23: 0, 14: long, 24: 0, ...more });
const asked = (
  dimensions: readonly (readonly Tag[])[],
  units = 4,
  options: { units?: string } = {},
  before: readonly Tag[] = [],
): readonly Finding[] =>
  readDrawing(asciiDxf([...before, ...dxfTags({ units, entities: [plate, ...dimensions] })]), 'a.dxf', options).findings.filter(
    (f) => f.code === 'dimensions-disagree',
  );

describe('dimensions that say another length', () => {
  it.each([
    ['measured in inches', [aligned(1, { 42: 25.4 }), aligned(2, { 42: 50.8 })], 'inch'],
    ['typed over', [aligned(1, { 1: '25.4' }), aligned(2, { 1: '%%c50.8 H7' })], 'inch'],
    ['in centimetres', [aligned(2, { 42: 20 })], 'cm'],
    ['at half scale', [aligned(20, { 42: 40 }), aligned(10, { 1: '2x 20' })], undefined],
    ['with a unit of their own', [aligned(1, { 1: '1.000"' })], 'inch'],
    ['one of many', [aligned(25, { 1: '25.4' }), aligned(40, { 42: 40 })], undefined],
    ['of a radius', [entity('DIMENSION', { 70: 4, 10: 0, 20: 0, 15: 3, 25: 4, 1: 'R10' })], undefined],
    ['along x alone', [entity('DIMENSION', { 70: 0, 10: 0, 20: 0, 13: 0, 23: 0, 14: 30, 24: 40, 1: '50' })], undefined],
  ])('are one question: %s', (_, dimensions, unit) => {
    const [told, ...more] = asked(dimensions);
    expect(more).toEqual([]);
    expect([told?.severity, told?.remedy?.value]).toEqual(['doubt', unit]);
    expect(doneTextOf(told)).toContain('cut as drawn, in mm, unless you say otherwise');
  });

  it('are quoted', () => {
    const [told] = asked([aligned(1, { 1: '25.4' }), aligned(2, { 42: 50.8 }), aligned(40, { 42: 40 })]);
    const quoted = '(2 of 3): "25.4" where 1 is drawn and "50.8" where 2 is drawn. Each says 25.4 times what is drawn.';
    expect(sentenceOf(told)).toContain(quoted);
  });

  it('are multiplied by their style', () => {
    const style = (called: string, factor: number): readonly Tag[] => [
      [0, 'DIMSTYLE'],
      [2, called],
      [70, 0],
      [144, factor],
    ];
    const styles = section('TABLES', [
      [0, 'TABLE'],
      [2, 'DIMSTYLE'],
      [70, 2],
      ...style('half', 2),
      ...style('building', 100),
      [0, 'ENDTAB'],
    ]);
    expect(asked([aligned(20, { 3: 'building', 42: 20 })], 4, {}, styles)).toEqual([]);
    expect(asked([aligned(20, { 3: 'half', 42: 20 })], 4, {}, styles)).toHaveLength(1);
    expect(asked([aligned(20, { 3: 'other', 42: 20 })], 4, {}, styles)).toEqual([]);
  });

  it('are settled by the unit that is given', () => {
    const dimensions = [aligned(1, { 42: 25.4 })];
    expect([asked(dimensions, 4, { units: 'inch' }), asked(dimensions, 4, { units: 'mm' })]).toEqual([[], []]);
  });

  it.each([
    ['as drawn', [aligned(40, { 42: 40 }), aligned(25)]],
    ['rounded', [aligned(12.345, { 1: '12.3' }), aligned(12.345, { 1: '12,35' })]],
    ['with limits, fits and counts', [aligned(25, { 1: '25.1 24.9' }), aligned(8, { 1: '4x Ø8 H7' }), aligned(25, { 1: '25±0.1' })]],
    ['in both systems', [aligned(25.4, { 1: '25.4 [1.00]' }), aligned(25.4, { 1: '1"' })]],
    ['as threads, angles and words', [aligned(8.5, { 1: 'M10' }), aligned(3, { 1: '2x45%%d' }), aligned(9, { 1: 'SEE NOTE' })]],
    ['as measured with something added', [aligned(25, { 1: '<> THRU', 42: 25 })]],
  ])('are none: %s', (_, dimensions) => {
    expect(asked(dimensions)).toEqual([]);
  });
});

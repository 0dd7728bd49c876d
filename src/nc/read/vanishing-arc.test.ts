/** An inside arc as wide as the offset has a path of no radius; how much tighter it may be is counted in last digits. */
import { describe, expect, it } from 'vitest';
import { standardDialect } from '../dialect/dialect.ts';
import { readProgram } from './read.ts';

/** Round an inside arc of 0.155 mm in a program of three decimals, with a register that many last digits above it. */
const around = (more: number): string => {
  const dialect = { ...standardDialect, percent: false };
  const text = [
    'G71 G90 G00 X0. Y5.',
    'G42 D1 G01 X0. Y1.',
    'G01 X-2. Y1.',
    'G02 X-2. Y1.31 I0. J0.155',
    'G01 X0. Y1.31',
    'G40 G01 X0. Y5.',
    'M02',
  ];
  const read = readProgram(text.join('\n'), dialect, new Map([[1, 0.155 + more * 0.001]]));
  return read.state === 'read' ? 'read' : (read.findings.at(-1)?.code ?? '');
};

describe('an inside arc', () => {
  it('may be tighter than the offset by one and a half last digits, and no more', () => {
    expect([0, 1.4, 1.6].map(around)).toEqual(['read', 'read', 'arc-tighter-than-offset']);
  });
});

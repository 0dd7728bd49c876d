/** Whatever the text: the reader answers, every number is a number, and what it answers holds together. */
import { describe, expect, it } from 'vitest';
import { programCases } from '../../../test/fuzz/programs.ts';
import { unsound } from '../../../test/nc/compare.ts';
import { readProgram } from './read.ts';

describe('the reader on damaged programs', () => {
  it('ends in a sound reading or a located refusal', () => {
    const faults: string[] = [];
    const states = { read: 0, refused: 0 };
    const codes = new Set<string>();
    for (const { name, text, dialect, registers } of programCases(4000, 11)) {
      const program = readProgram(text, dialect, registers);
      states[program.state] += 1;
      for (const finding of program.findings) codes.add(finding.code);
      const moves = program.actions.filter((action) => action.kind === 'move');
      if (/null|NaN|Infinity/.test(JSON.stringify(moves))) faults.push(`${name}: not a number`);
      for (const wrong of unsound(moves)) faults.push(`${name}: ${wrong}`);
      const severities = program.findings.map((finding) => finding.severity);
      if ((program.state === 'refused') !== severities.includes('refusal')) faults.push(`${name}: ${program.state} with ${severities}`);
      const last = program.blocks.length;
      if (program.actions.some((action) => action.block < 0 || action.block >= last)) faults.push(`${name}: a block that is not there`);
    }
    expect(faults.slice(0, 5)).toEqual([]);
    expect(states.read).toBeGreaterThan(300);
    expect(states.refused).toBeGreaterThan(1500);
    expect(codes.size).toBeGreaterThan(30);
  });
});

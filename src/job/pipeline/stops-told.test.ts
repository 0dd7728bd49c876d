/** Stops of a program that is read back say what was written there, as data; of another comment nothing is made up. */
import { describe, expect, it } from 'vitest';
import { standardDialect } from '../../nc/dialect/dialect.ts';
import { readProgram } from '../../nc/read/read.ts';
import { writeProgram } from '../../nc/write/write.ts';
import { mm } from '../../text/part.ts';
import { print, printPlain } from '../../text/print/print.ts';
import { tellingFor } from '../../text/print/reader.ts';
import { say } from '../../text/say.ts';
import { withStopsTold } from './stops-told.ts';

const text = say`the slug hangs on a tab of ${{ tab: mm(1.6) }}. Fix it, then run on; the tab is cut next.`;
const stop = { kind: 'stop', purpose: 'secure slug', loop: 'L3', text } as const;

const read = (change: (text: string) => string = (same) => same) => {
  const written = writeProgram({ steps: [stop, { ...stop, loop: 'L4' }], passes: [] }, standardDialect, { name: '', date: '', notes: [] });
  if (written.kind === 'refused') throw new Error('no program');
  const program = readProgram(change(written.text), standardDialect, new Map());
  return withStopsTold(program, written.stops).actions.flatMap((a) => (a.kind === 'stop' ? [a.said] : []));
};

describe('stops of our own program', () => {
  it('are told in the units and marks of whoever reads them', () => {
    const reader = tellingFor({ lengthUnit: 'inch', finishUnit: 'µin', locale: 'de-DE' });
    expect(read().map((said) => said && print(said, reader))).toEqual([
      'L3 the slug hangs on a tab of 0,063 in. Fix it, then run on; the tab is cut next.',
      'L4 the slug hangs on a tab of 0,063 in. Fix it, then run on; the tab is cut next.',
    ]);
  });

  it('keep what stands before them on lines of its own', () => {
    const heavy = { ...stop, details: [say`Held by a tab of ${{ tab: mm(1.6) }}`] };
    const written = writeProgram({ steps: [heavy, stop], passes: [] }, standardDialect, { name: '', date: '', notes: [] });
    if (written.kind === 'refused') throw new Error('no program');
    const { actions } = withStopsTold(readProgram(written.text, standardDialect, new Map()), written.stops);
    expect(actions.flatMap((a) => (a.kind === 'stop' ? [a.details?.map(printPlain)] : []))).toEqual([
      ['Held by a tab of 1.6 mm'],
      undefined,
    ]);
  });

  it('keep their comment alone where it is not ours', () => {
    const said = read((program) => program.replace('L3 THE SLUG', 'L3 THE CORE'));
    expect(said.map((s) => s && printPlain(s).length > 0)).toEqual([undefined, true]);
  });
});

/** Papers say what the person who holds them needs, in the unit of the control that it is typed into. */
import { describe, expect, it } from 'vitest';
import { readFonts, readText } from '../cli/files.ts';
import { jobRun } from '../cli/inputs.ts';
import { readDialectFile } from './dialects.ts';
import { goldenFiles } from './papers.ts';
import { type JobRun, runJob } from './run.ts';

const gear: JobRun = jobRun('examples/thick-gear/thick-gear.dxf', { height: '20', finish: '2' }, '2026-11-25');

const papersOf = async (run: JobRun): Promise<Readonly<Record<string, string>>> =>
  goldenFiles(runJob(run), { ...run, stem: 'job', fonts: readFonts() });

describe('papers', () => {
  it('give the registers, holes and stops of an inch program in inches', async () => {
    const inch = readDialectFile(readText('dialects/inch.json'));
    if (inch.kind === 'bad') throw new Error(inch.findings[0]?.sentence);
    const sheet = (await papersOf({ ...gear, dialect: inch.dialect }))['job.set-up-sheet.txt'] ?? '';
    const millimetres = (await papersOf(gear))['job.set-up-sheet.txt'] ?? '';
    const registers = (text: string): readonly number[] => [...text.matchAll(/D\d = ([\d.]+)/g)].map((m) => Number(m[1]));
    expect(sheet).toMatch(/Set the registers before the start: D1 = 0\.0\d{4}.* inch\./);
    expect(millimetres).toMatch(/Set the registers before the start: D1 = 0\.\d{4}.* mm\./);
    for (const [i, mm] of registers(millimetres).entries()) expect((registers(sheet)[i] as number) * 25.4).toBeCloseTo(mm, 3);
    expect(sheet).toContain('X, Y and Ø in inch');
  });
});

/** Files that are broken off while they are written, and folders that were left half filled. */
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { jobsIn } from './jobs.ts';
import { turns } from './turns.ts';
import { writeWhole } from './whole-file.ts';

const base = mkdtempSync(join(tmpdir(), 'kerfwright-keep-'));
afterAll(() => rmSync(base, { recursive: true, force: true }));

let made = 0;
const folderOfJobs = () => {
  made += 1;
  const folder = join(base, `folder-${made}`);
  mkdirSync(join(folder, 'jobs'), { recursive: true });
  let next = 0;
  const jobs = jobsIn(folder, { now: () => '2026-11-25T08:00:00.000Z', newId: () => `abcdefgh${next++}` });
  return { folder, jobs };
};
const plate = { name: 'plate', drawingName: 'plate.dxf', drawing: new Uint8Array([48]), input: { drawing: 'plate.dxf' } };

describe('a file that is written whole', () => {
  it('is the old one until the new one is on the disk, and then the new one', async () => {
    const path = join(base, 'a.json');
    await writeWhole(path, 'old');
    const killed = writeWhole(path, 'new', async () => {
      expect([readFileSync(path, 'utf8'), readFileSync(`${path}.coming`, 'utf8')]).toEqual(['old', 'new']);
      throw new Error('killed here');
    });
    await expect(killed).rejects.toThrow('killed here');
    expect(readFileSync(path, 'utf8')).toBe('old');
    await writeWhole(path, 'newer');
    expect(readFileSync(path, 'utf8')).toBe('newer');
    expect(readdirSync(base).filter((f) => f.startsWith('a.json'))).toEqual(['a.json']);
  });
});

describe('a folder of jobs after a crash', () => {
  it('has the record that was in force, whatever half of a new one lies beside it', async () => {
    const { folder, jobs } = folderOfJobs();
    const record = await jobs.bringIn(plate);
    writeFileSync(join(folder, 'jobs', record.id, 'record.json.coming'), '{"id": "abcd');
    expect(await jobs.open(record.id)).toEqual(record);
    const saved = await jobs.save(record.id, { revision: 0, name: 'again', steps: record.steps, cursor: 0 });
    expect(await jobs.open(record.id)).toEqual(saved);
    expect(readdirSync(join(folder, 'jobs', record.id)).sort()).toEqual(['drawing.dxf', 'record.json']);
  });

  it('does not list a job that was only half brought in', async () => {
    const { folder, jobs } = folderOfJobs();
    mkdirSync(join(folder, 'jobs', '.coming-abcdefgh9'));
    await jobs.bringIn(plate);
    expect((await jobs.list()).map((r) => r.id)).toEqual(['abcdefgh0']);
  });

  it('says which drawing is missing', async () => {
    const { folder, jobs } = folderOfJobs();
    const { id } = await jobs.bringIn(plate);
    rmSync(join(folder, 'jobs', id, 'drawing.dxf'));
    await expect(jobs.drawing(id)).rejects.toThrow(`The drawing plate.dxf of this job is missing in the folder jobs/${id}.`);
  });
});

describe('turns', () => {
  it('come one after the other for one thing, also after one that failed, and side by side for different ones', async () => {
    const inTurn = turns();
    const seen: string[] = [];
    const step = (key: string, name: string, ms: number, fails = false) =>
      inTurn(key, async () => {
        await new Promise((done) => setTimeout(done, ms));
        seen.push(name);
        if (fails) throw new Error(name);
      }).catch(() => seen.push(`${name} failed`));
    await Promise.all([step('a', 'a1', 30, true), step('a', 'a2', 0), step('b', 'b1', 5)]);
    expect(seen).toEqual(['b1', 'a1', 'a1 failed', 'a2']);
  });
});

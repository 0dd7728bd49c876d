/** How the papers of a job and its answer in the terminal tell numbers: by the job, else by the shop, else in mm, µm and with a point. */
import { materials } from '../physics/material/materials.ts';
import { AS_WRITTEN, type Telling } from '../text/print/restate.ts';
import type { JobRun } from './job-run.ts';

/** Key by key: what the job leaves out is the shop's. What is typed into the control keeps the unit of the program. */
export const tellingOf = (run: Pick<JobRun, 'job' | 'shop' | 'drawingName'>): Telling => {
  const { lengths = 'mm', finish = 'µm', decimals = 'point' } = { ...run.shop.papers, ...run.job.papers };
  const marks = decimals === 'comma' ? { decimalMark: ',', groupMark: '.' } : {};
  return { ...AS_WRITTEN, ...marks, length: lengths, finish, names: namesOf(run) };
};

/** What shop and customer named, numbers and units in it and all: wires, materials, the job, its drawing. */
export const namesOf = ({ shop, job, drawingName }: Pick<JobRun, 'shop' | 'job' | 'drawingName'>): readonly string[] =>
  [
    ...shop.wires.map((w) => w.name),
    ...[...materials, ...shop.materials].map((m) => m.name),
    job.name ?? '',
    job.customer ?? '',
    shop.name,
    drawingName,
  ].filter((name) => name !== '');

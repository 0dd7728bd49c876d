/** Where things lie in the folder. An id comes from outside: it is held against its pattern, and the path against the folder. */
import { extname, join, resolve, sep } from 'node:path';
import { say } from '../../text/say.ts';
import { notFound } from '../answer/refusal.ts';
import { recordSchema } from '../message/job-record.ts';

export const RECORD = 'record.json';

/** Kinds of drawing that are taken; the name a customer gave the file never reaches the disk, only its kind does. */
export const KINDS = ['dxf', 'svg'] as const;
export type Kind = (typeof KINDS)[number];

export const kindOf = (name: string): Kind | undefined => KINDS.find((k) => extname(name).toLowerCase() === `.${k}`);

export const jobsFolder = (folder: string): string => join(folder, 'jobs');
export const binFolder = (folder: string): string => join(folder, 'bin');
export const shopFileIn = (folder: string): string => join(folder, 'shop.json');

export const isId = (id: string): boolean => recordSchema.shape.id.safeParse(id).success;

export const noSuchJob = say('server-job.none')`No such job.`;

/** Throws a refusal for anything that is not the id of a job or leads out of the folder. */
export const jobFolder = (folder: string, id: string): string => {
  const jobs = resolve(jobsFolder(folder));
  const path = resolve(jobs, id);
  if (!isId(id) || !path.startsWith(jobs + sep)) throw notFound(noSuchJob);
  return path;
};

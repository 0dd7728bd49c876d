/** Routes of the jobs that are kept: list, open, save, throw away. */
import { z } from 'zod';
import { binnedSchema, paths, savedSchema, savingSchema, summarySchema } from '../message/answers.ts';
import { recordSchema } from '../message/job-record.ts';
import { errors, idParams, MB, type Room, type Server } from './room.ts';

export const jobRoutes = (server: Server, { jobs }: Room): void => {
  const job = paths.job(':id');
  server.get(
    paths.jobs,
    { schema: { summary: 'All jobs, the latest change first', response: { 200: z.array(summarySchema), ...errors() } } },
    () => jobs.list(),
  );
  server.get(
    job,
    { schema: { summary: 'One job as it is kept', params: idParams, response: { 200: recordSchema, ...errors(404) } } },
    ({ params }) => jobs.open(params.id),
  );
  server.put(
    job,
    {
      bodyLimit: 16 * MB,
      schema: {
        summary: 'Saves a job; a save that started from another revision than the current one is refused and answered with the current one',
        params: idParams,
        body: savingSchema,
        response: { 200: savedSchema, ...errors(400, 404, 409, 413) },
      },
    },
    async ({ params, body }) => {
      const { revision, changed } = await jobs.save(params.id, body);
      return { revision, changed };
    },
  );
  server.delete(
    job,
    {
      schema: {
        summary: 'Moves a job to the bin, from which it can be restored; answers with its name there',
        params: idParams,
        response: { 200: binnedSchema, ...errors(404) },
      },
    },
    ({ params }) => jobs.bin.throwAway(params.id),
  );
};

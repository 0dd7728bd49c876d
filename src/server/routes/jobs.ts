/** Routes of the jobs that are kept: list, open, save, throw away, the drawing, the log. */
import { z } from 'zod';
import { entrySchema, paths, savedSchema, savingSchema, summarySchema } from '../message/answers.ts';
import { recordSchema } from '../message/job-record.ts';
import { errors, idParams, KB, MB, type Room, type Server } from './room.ts';

export const jobRoutes = (server: Server, { jobs }: Room): void => {
  const job = paths.job(':id');
  server.get(
    paths.jobs,
    { schema: { summary: 'All jobs, the one that changed last first', response: { 200: z.array(summarySchema), ...errors() } } },
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
        summary: 'Saves a job; whoever began from another revision than the one in force is refused and told what is in force',
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
    { schema: { summary: 'Moves a job into the bin folder', params: idParams, response: { 204: z.undefined(), ...errors(404) } } },
    async ({ params }, reply) => {
      await jobs.throwAway(params.id);
      return reply.code(204).send();
    },
  );
  server.get(
    paths.drawing(':id'),
    {
      schema: {
        summary: 'The drawing, byte for byte as it came',
        params: idParams,
        produces: ['application/octet-stream'],
        response: { 200: z.any().describe('The bytes'), ...errors(404) },
      },
    },
    async ({ params }, reply) => {
      const bytes = await jobs.drawing(params.id);
      // Never as what the customer says it is: a drawing may hold script, and no browser is to read it as a page.
      return reply.type('application/octet-stream').header('content-disposition', 'attachment; filename="drawing"').send(bytes);
    },
  );
  server.post(
    paths.log(':id'),
    {
      bodyLimit: 32 * KB,
      schema: {
        summary: 'Adds an entry to the log of a job; the server says when, unless the entry does',
        params: idParams,
        body: entrySchema,
        response: { 200: recordSchema, ...errors(400, 404, 409) },
      },
    },
    ({ params, body }) => jobs.write(params.id, body),
  );
};

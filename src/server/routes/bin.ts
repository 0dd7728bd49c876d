/** Routes of the bin: what was thrown away, and the way back. */
import { z } from 'zod';
import { binFolder } from '../keep/places.ts';
import { binnedSchema, binSchema, paths, summarySchema } from '../message/answers.ts';
import { errors, type Room, type Server } from './room.ts';

export const binRoutes = (server: Server, { jobs, folder }: Room): void => {
  server.get(
    paths.bin,
    {
      schema: {
        summary: 'The jobs in the bin, the latest first, and the folder they are in; nothing is deleted',
        response: { 200: binSchema, ...errors() },
      },
    },
    async () => ({ folder: binFolder(folder), jobs: await jobs.bin.list() }),
  );
  server.post(
    paths.jobBack(':bin'),
    {
      schema: {
        summary: 'Restores a job from the bin, as it was; answers with its row in the job list',
        params: z.strictObject({ bin: binnedSchema.shape.bin }),
        response: { 200: summarySchema, ...errors(404, 409) },
      },
    },
    ({ params }) => jobs.bin.putBack(params.bin),
  );
};

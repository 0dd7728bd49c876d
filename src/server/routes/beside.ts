/** Routes of what lies beside a record: the drawing and the log. */
import { entrySchema, paths } from '../message/answers.ts';
import { recordSchema } from '../message/job-record.ts';
import { asBytes, bytesAnswer } from './bytes.ts';
import { errors, idParams, KB, type Room, type Server } from './room.ts';

export const besideRoutes = (server: Server, room: Room): void => {
  drawingRoute(server, room);
  logRoute(server, room);
};

const drawingRoute = (server: Server, { jobs }: Room): void => {
  server.get(
    paths.drawing(':id'),
    {
      schema: {
        summary: 'The drawing, byte for byte as it came',
        params: idParams,
        produces: ['application/octet-stream'],
        response: { 200: bytesAnswer, ...errors(404) },
      },
    },
    async ({ params }, reply) => asBytes(reply, 'drawing', await jobs.drawing(params.id)),
  );
};

const logRoute = (server: Server, { jobs }: Room): void => {
  server.post(
    paths.log(':id'),
    {
      bodyLimit: 32 * KB,
      schema: {
        summary: 'Adds an entry to the log of a job; the server says when, unless the entry does',
        params: idParams,
        body: entrySchema,
        response: { 200: recordSchema, ...errors(400, 404, 409, 413) },
      },
    },
    ({ params, body }) => jobs.write(params.id, body),
  );
};

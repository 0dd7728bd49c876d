/** Routes of what lies beside a record: the drawing, programs from elsewhere, the log. */
import type { FastifyReply } from 'fastify';
import { z } from 'zod';
import { entrySchema, paths } from '../message/answers.ts';
import { recordSchema } from '../message/job-record.ts';
import { badField } from '../refusal.ts';
import { filesBody, LARGEST_UPLOAD, partsOf } from './parts.ts';
import { errors, idParams, KB, type Room, type Server } from './room.ts';

const bytesAnswer = z.any().describe('The bytes');

export const besideRoutes = (server: Server, room: Room): void => {
  drawingRoute(server, room);
  programRoutes(server, room);
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

const programRoutes = (server: Server, { jobs }: Room): void => {
  const { validatorCompiler: _, ...form } = filesBody;
  server.post(
    paths.programs(':id'),
    {
      bodyLimit: LARGEST_UPLOAD,
      schema: {
        summary: 'Keeps programs from elsewhere with the job',
        params: idParams,
        ...form,
        response: { 201: recordSchema, ...errors(400, 404, 409, 413, 415) },
      },
      validatorCompiler: filesBody.validatorCompiler,
    },
    async (request, reply) => {
      const { id } = request.params;
      await jobs.open(id);
      const parts = await partsOf(request);
      if (parts.length === 0) throw badField('files', 'No file came.');
      for (const { name, bytes } of parts) await jobs.keepProgram(id, name, bytes);
      return reply.code(201).send(await jobs.open(id));
    },
  );
  server.get(
    paths.program(':id', ':number'),
    {
      schema: {
        summary: 'A program from elsewhere, byte for byte as it came; the first one is number 1',
        params: idParams.extend({ number: z.coerce.number().int().min(1).max(1000) }),
        produces: ['application/octet-stream'],
        response: { 200: bytesAnswer, ...errors(404) },
      },
    },
    async ({ params }, reply) => asBytes(reply, 'program.nc', await jobs.program(params.id, params.number)),
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

/** Never as what the sender says it is: a drawing may hold script, and no browser is to read it as a page. */
const asBytes = (reply: FastifyReply, name: string, bytes: Buffer): Buffer => {
  reply.type('application/octet-stream').header('content-disposition', `attachment; filename="${name}"`);
  return bytes;
};

/** Routes of programs from elsewhere: kept with a job, handed out, taken away, put back. */
import { z } from 'zod';
import { badField } from '../answer/refusal.ts';
import { paths } from '../message/answers.ts';
import { recordSchema } from '../message/job-record.ts';
import { asBytes, bytesAnswer } from './bytes.ts';
import { filesBody, LARGEST_UPLOAD, noFile, partsOf } from './parts.ts';
import { errors, idParams, type Room, type Server } from './room.ts';

const oneOf = idParams.extend({ number: z.coerce.number().int().min(1).max(1000) });

export const programRoutes = (server: Server, room: Room): void => {
  keepRoute(server, room);
  const { programs } = room.jobs;
  server.get(
    paths.program(':id', ':number'),
    {
      schema: {
        summary: 'A program from another source, byte for byte as it came; the first one is number 1',
        params: oneOf,
        produces: ['application/octet-stream'],
        response: { 200: bytesAnswer, ...errors(404) },
      },
    },
    async ({ params }, reply) => {
      const { name, content } = await programs.open(params.id, params.number);
      return asBytes(reply, name, content);
    },
  );
  server.delete(
    paths.program(':id', ':number'),
    {
      schema: {
        summary: 'Removes a program from another source from the job; its file stays, and it can be restored',
        params: oneOf,
        response: { 200: recordSchema, ...errors(404) },
      },
    },
    ({ params }) => programs.takeAway(params.id, params.number),
  );
  server.post(
    paths.programBack(':id', ':number'),
    {
      schema: {
        summary: 'Restores a program that was removed from the job',
        params: oneOf,
        response: { 200: recordSchema, ...errors(404, 409) },
      },
    },
    ({ params }) => programs.putBack(params.id, params.number),
  );
};

const keepRoute = (server: Server, { jobs }: Room): void => {
  const { validatorCompiler, ...form } = filesBody;
  server.post(
    paths.programs(':id'),
    {
      bodyLimit: LARGEST_UPLOAD,
      schema: {
        summary: 'Saves programs from other sources with the job',
        params: idParams,
        ...form,
        response: { 201: recordSchema, ...errors(400, 404, 409, 413, 415) },
      },
      validatorCompiler,
    },
    async (request, reply) => {
      const { id } = request.params;
      await jobs.open(id);
      const parts = await partsOf(request);
      if (parts.length === 0) throw badField('files', noFile);
      for (const { name, bytes } of parts) await jobs.programs.keep(id, name, bytes);
      return reply.code(201).send(await jobs.open(id));
    },
  );
};

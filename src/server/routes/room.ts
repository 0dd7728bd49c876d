/** What the routes are given: the server they belong to, what it keeps, and the day. */

import type { IncomingMessage, ServerResponse } from 'node:http';
import type { FastifyBaseLogger, FastifyInstance, RawServerDefault } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { z } from 'zod';
import type { Jobs } from '../keep/jobs.ts';
import type { ShopKeeper } from '../keep/shop.ts';
import { errorSchema } from '../message/answers.ts';
import { recordSchema } from '../message/job-record.ts';
import type { Papers } from '../paper/thread.ts';

export type Server = FastifyInstance<RawServerDefault, IncomingMessage, ServerResponse, FastifyBaseLogger, ZodTypeProvider>;

export interface Room {
  readonly jobs: Jobs;
  readonly shop: ShopKeeper;
  readonly papers: Papers;
  /** Day of an answer, ISO 8601, by the clock of the shop. */
  readonly today: () => string;
  readonly version: string;
  readonly folder: string;
  readonly appFolder: string;
}

export const idParams = z.strictObject({ id: recordSchema.shape.id });

/** The errors a route answers with, as its description lists them. */
export const errors = (...codes: readonly number[]): Record<number, typeof errorSchema> =>
  Object.fromEntries([...codes, 403, 429, 500].map((code) => [code, errorSchema]));

/** bytes */
export const KB = 1024;
export const MB = 1024 * KB;

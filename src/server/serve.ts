/** The server of the worksheet: everything it answers, ready to listen. */
import { randomBytes } from 'node:crypto';
import { resolve } from 'node:path';
import helmet from '@fastify/helmet';
import multipart from '@fastify/multipart';
import rateLimit from '@fastify/rate-limit';
import swagger from '@fastify/swagger';
import Fastify, { type FastifyReply } from 'fastify';
import { jsonSchemaTransform, validatorCompiler, type ZodTypeProvider } from 'fastify-type-provider-zod';
import { phrases, say } from '../text/say.ts';
import { mustBeKnown } from './answer/door.ts';
import { errorAnswer, errorHandler } from './answer/error-answer.ts';
import { mustBePlain } from './answer/plain.ts';
import { Refusal } from './answer/refusal.ts';
import { type FirstStart, firstStart } from './keep/first-start.ts';
import { jobsIn } from './keep/jobs.ts';
import { shopIn } from './keep/shop.ts';
import { paths } from './message/answers.ts';
import type { Papers } from './paper/thread.ts';
import { besideRoutes } from './routes/beside.ts';
import { binRoutes } from './routes/bin.ts';
import { descriptionRoutes } from './routes/description.ts';
import { fileRoutes } from './routes/files.ts';
import { jobRoutes } from './routes/jobs.ts';
import { pageRoutes } from './routes/page.ts';
import { LARGEST_FILE, MOST_FILES } from './routes/parts.ts';
import { programRoutes } from './routes/programs.ts';
import type { Room, Server } from './routes/room.ts';
import { shopRoutes } from './routes/shop.ts';
import { uploadRoutes } from './routes/upload.ts';

export interface ServeOptions extends FirstStart {
  /** Where jobs and shop are kept; made and filled with the example when it is not there. */
  readonly folder: string;
  /** The built page. */
  readonly appFolder: string;
  /** The address it will listen on; besides it, only the names of this computer for itself are known. */
  readonly host: string;
  readonly papers: Papers;
  readonly clock: () => Date;
  /** Day of an answer, ISO 8601; that of the clock, where the clock hangs, when left out. */
  readonly today?: () => string;
  readonly version?: string;
  readonly newId?: () => string;
  /** Hears of errors that are our mistake. */
  readonly tell?: (line: string) => void;
  /** Requests a minute; for tests. */
  readonly most?: number;
}

/** Requests a minute from one address: a page that scrubs a job for a minute asks far less, a runaway loop more. */
const MOST_REQUESTS = 6000;
const PATIENCE_MS = 120_000;
const KEEP_ALIVE_MS = 10_000;

/** Throws a refusal where the folder or its first files cannot be used. The server listens once its `listen` is called. */
export const serve = async (options: ServeOptions): Promise<Server> => {
  const { clock, papers, tell = () => undefined } = options;
  const folder = resolve(options.folder);
  const jobs = jobsIn(folder, { now: () => clock().toISOString(), newId: options.newId ?? randomId });
  await firstStart(folder, jobs, options);
  const server = bare(tell);
  const room: Room = {
    jobs,
    shop: shopIn(folder),
    papers,
    today: options.today ?? (() => dayOf(clock())),
    version: options.version ?? 'unknown',
    folder,
    appFolder: resolve(options.appFolder),
  };
  await guard(server, options);
  await describe(server, room.version);
  await server.register(multipart, {
    limits: { fileSize: LARGEST_FILE, files: MOST_FILES, fields: 5, parts: MOST_FILES + 5, headerPairs: 40 },
  });
  for (const add of [jobRoutes, binRoutes, besideRoutes, programRoutes, uploadRoutes, fileRoutes, shopRoutes, descriptionRoutes])
    add(server, room);
  await pageRoutes(server, room);
  server.addHook('onClose', () => papers.close());
  await server.ready();
  return server;
};

const bare = (tell: (line: string) => void): Server => {
  const server = Fastify({
    forceCloseConnections: 'idle',
    requestTimeout: PATIENCE_MS,
    keepAliveTimeout: KEEP_ALIVE_MS,
    routerOptions: { maxParamLength: 100 },
    frameworkErrors: (error, _request, reply) => {
      const { status, answer } = errorAnswer(error);
      void (reply as FastifyReply).code(status).type('application/json; charset=utf-8').send(JSON.stringify(answer));
    },
  }).withTypeProvider<ZodTypeProvider>();
  // Pages send JSON or files; a form of another site can send text without asking first, so that is not even read.
  server.removeContentTypeParser('text/plain');
  server.setValidatorCompiler(validatorCompiler);
  // What goes out was checked when it was read; checking it again would take longer than all the rest.
  server.setSerializerCompiler(() => (data) => JSON.stringify(data));
  server.setErrorHandler(errorHandler(tell));
  hangUpAtTheEnd(server);
  return server;
};

/** Browsers keep connections open for the next request; a server that stops would wait for one that never comes. */
const hangUpAtTheEnd = (server: Server): void => {
  let stopping = false;
  server.addHook('preClose', async () => {
    stopping = true;
  });
  server.addHook('onSend', async (_request, reply) => {
    if (stopping) reply.header('connection', 'close');
  });
};

const NOTHING_FROM_ELSEWHERE = {
  defaultSrc: ["'self'"],
  scriptSrc: ["'self'"],
  scriptSrcAttr: ["'none'"],
  styleSrc: ["'self'"],
  workerSrc: ["'self'"],
  imgSrc: ["'self'", 'blob:', 'data:'],
  fontSrc: ["'self'"],
  connectSrc: ["'self'"],
  formAction: ["'self'"],
  objectSrc: ["'none'"],
  baseUri: ["'none'"],
  frameAncestors: ["'none'"],
  // The server speaks plain HTTP on this computer; asked to upgrade, a browser would find nobody.
  upgradeInsecureRequests: null,
};

const guard = async (server: Server, { host, most = MOST_REQUESTS }: ServeOptions): Promise<void> => {
  await server.register(helmet, {
    contentSecurityPolicy: { useDefaults: false, directives: NOTHING_FROM_ELSEWHERE },
    strictTransportSecurity: false,
    xFrameOptions: { action: 'deny' },
  });
  server.addHook('onRequest', async (request, reply) => {
    const data = request.url.startsWith(paths.page);
    if (data) reply.header('cache-control', 'no-store');
    const { origin, 'sec-fetch-site': site } = request.headers;
    mustBeKnown({ host: request.headers.host, origin, site: typeof site === 'string' ? site : undefined }, host, data);
  });
  await server.register(rateLimit, {
    max: most,
    timeWindow: 60_000,
    addHeaders: { 'x-ratelimit-limit': false, 'x-ratelimit-remaining': false, 'x-ratelimit-reset': false },
    errorResponseBuilder: () => new Refusal(429, 'too-many', words.tooMany),
  });
  server.addHook('preValidation', async (request) => {
    if (typeof request.body === 'object') mustBePlain(request.body, words.sent);
  });
};

const words = phrases('server', {
  tooMany: say`Too many requests within a minute; wait a moment.`,
  sent: say`The request`,
});

const describe = async (server: Server, version: string): Promise<void> => {
  await server.register(swagger, {
    openapi: {
      openapi: '3.1.0',
      info: { title: 'Kerfwright', description: 'The server of the worksheet: jobs, their papers, the shop.', version },
    },
    transform: jsonSchemaTransform,
  });
};

const randomId = (): string => randomBytes(10).toString('hex');

const dayOf = (now: Date): string => {
  const two = (n: number): string => String(n).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
};

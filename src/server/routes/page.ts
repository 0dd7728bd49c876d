/** The worksheet itself: its built files, and its first page under every address that belongs to the page. */
import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { extname, join, sep } from 'node:path';
import fastifyStatic from '@fastify/static';
import { name, term } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import { notFound, Refusal } from '../answer/refusal.ts';
import { paths } from '../message/answers.ts';
import type { Room, Server } from './room.ts';

const FIRST_PAGE = 'index.html';

const words = phrases('server-page', {
  nothing: (method: string, path: string) => say`The server answers nothing under ${{ method: term(method) }} ${{ path: name(path) }}.`,
  onlyRead: say`Pages can only be read.`,
  noFile: say`There is no such file.`,
  notBuilt: say`The page is not built yet: npm run build makes it.`,
});

export const pageRoutes = async (server: Server, { appFolder }: Room): Promise<void> => {
  const built = existsSync(join(appFolder, FIRST_PAGE));
  if (built)
    await server.register(fastifyStatic, {
      root: appFolder,
      cacheControl: false,
      preCompressed: true,
      dotfiles: 'ignore',
      schemaHide: true,
      setHeaders: (reply, path) => {
        // The builder puts a hash of their content into the names of these: what has the name never changes.
        const hashed = path.startsWith(join(appFolder, 'assets') + sep);
        reply.setHeader('vary', 'accept-encoding');
        reply.setHeader('cache-control', hashed ? 'public, max-age=31536000, immutable' : 'no-cache');
      },
    });
  server.setNotFoundHandler(async (request, reply) => {
    const path = request.url.split('?')[0] ?? '/';
    if (path === paths.page || path.startsWith(`${paths.page}/`)) throw notFound(words.nothing(request.method, path.slice(0, 200)));
    if (!['GET', 'HEAD'].includes(request.method)) throw new Refusal(405, 'not-allowed', words.onlyRead);
    if (extname(path) !== '' || path.includes('%')) throw notFound(words.noFile);
    if (!built) throw new Refusal(503, 'not-built', words.notBuilt);
    reply.type('text/html; charset=utf-8').header('cache-control', 'no-cache');
    return readFile(join(appFolder, FIRST_PAGE));
  });
};

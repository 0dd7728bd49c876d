/** The server on a real port: asked over the wire, stopped while it answers, started where a port is taken. */

import { createServer, request } from 'node:http';
import { connect } from 'node:net';
import { dirname, join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { printPlain } from '../text/print/print.ts';
import { say } from '../text/say.ts';
import { startFrom } from './arguments.ts';
import { runningOn, sayRunning, sayStopped } from './keep/running.ts';
import { listen, USUAL_PORT } from './listen.ts';
import type { Made } from './paper/make.ts';
import { closeAll, square, testServer } from './serve.fixture.ts';

afterAll(closeAll);

const statusUnder = (address: string, host: string): Promise<number | undefined> =>
  new Promise((done, failed) => {
    request(new URL('/api/health', address), { headers: { host } }, (answer) => {
      answer.resume();
      done(answer.statusCode);
    })
      .on('error', failed)
      .end();
  });

/** A promise that somebody else fulfils. */
const later = <T>(): { readonly promise: Promise<T>; readonly resolve: (value: T) => void } => {
  let resolve: (value: T) => void = () => undefined;
  const promise = new Promise<T>((done) => {
    resolve = done;
  });
  return { promise, resolve };
};

/** Sends bytes as they are, and gives all that comes back. */
const raw = (address: string, text: string): Promise<string> =>
  new Promise((done, failed) => {
    let heard = '';
    const socket = connect(Number(new URL(address).port), '127.0.0.1', () => socket.end(text));
    socket.on('data', (d) => {
      heard += d;
    });
    socket.on('close', () => done(heard)).on('error', failed);
  });

describe('a server that listens', () => {
  it('answers on this computer only, and under no foreign name', async () => {
    const { server } = await testServer();
    const address = await listen(server, '127.0.0.1', 0);
    expect(server.addresses().map((a) => (typeof a === 'string' ? a : a.address))).toEqual(['127.0.0.1']);
    expect((await fetch(new URL('/api/jobs', address))).status).toBe(200);
    expect(await statusUnder(address, 'evil.example')).toBe(403);
    expect(await raw(address, 'GET /api/jobs HTTP/1.1\r\n\r\n')).toMatch(/^HTTP\/1\.1 400 /);
    expect(await raw(address, 'GET /../../etc/passwd HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n')).not.toContain('root:');
    expect(await raw(address, 'nonsense\r\n\r\n')).toMatch(/^HTTP\/1\.1 400 /);
  });

  it('finishes what it began when it is stopped, and takes nothing new', async () => {
    const began = later<void>();
    const paper = later<Made>();
    const order: string[] = [];
    const papers = {
      make: () => {
        began.resolve();
        return paper.promise;
      },
      close: async () => void order.push('papers closed'),
    };
    const { server } = await testServer({ papers });
    const { id } = await square(server);
    const address = await listen(server, '127.0.0.1', 0);
    const asked = fetch(new URL(`/api/jobs/${id}/files/program`, address)).then(async (answer) => {
      order.push('answered');
      return [answer.status, await answer.text()];
    });
    await began.promise;
    const stopped = server.close().then(() => order.push('stopped'));
    await new Promise((done) => setTimeout(done, 50));
    await expect(fetch(new URL('/api/jobs', address))).rejects.toThrow();
    order.push('paper made');
    paper.resolve({ kind: 'made', files: { program: { fileName: 'square.nc', content: 'M02\n' } }, sentence: say('test.answer')`Yes.` });
    expect(await asked).toEqual([200, 'M02\n']);
    await stopped;
    expect(order.filter((o) => o !== 'answered')).toEqual(['paper made', 'papers closed', 'stopped']);
  }, 3000);

  it('takes the next port where the usual one is taken, but not where a port was asked for', async () => {
    const other = createServer();
    const taken = await new Promise<number>((done) => other.listen(0, '127.0.0.1', () => done((other.address() as { port: number }).port)));
    const { server } = await testServer();
    await expect(listen(server, '127.0.0.1', taken)).rejects.toThrow('EADDRINUSE');
    other.close();
    const [first, second] = [(await testServer()).server, (await testServer()).server];
    const ports = [await listen(first, '127.0.0.1'), await listen(second, '127.0.0.1')].map((a) => Number(new URL(a).port));
    expect(ports[0]).toBeGreaterThanOrEqual(USUAL_PORT);
    expect(ports[1]).toBeGreaterThan(ports[0] as number);
  });

  it('is found by another one that is started on the same folder, until it stops', async () => {
    const { server, folder } = await testServer();
    expect(await runningOn(folder)).toBeUndefined();
    const address = await listen(server, '127.0.0.1', 0);
    await sayRunning(folder, address);
    expect(await runningOn(folder)).toBe(address);
    expect(await runningOn(dirname(folder))).toBeUndefined();
    await server.close();
    expect(await runningOn(folder)).toBeUndefined();
    await sayStopped(folder);
  });
});

describe('what the server is started with', () => {
  it('is the command line, else the environment, else the usual', () => {
    const usual = startFrom([], {}, '/home/me');
    expect(usual).toEqual({ kind: 'start', start: { folder: join('/home/me', '.kerfwright'), host: '127.0.0.1' } });
    const asked = startFrom(
      ['--port', '8080', '--folder', '/a', '--host=0.0.0.0', '--shop', '/s.json'],
      { KERFWRIGHT_FOLDER: '/b' },
      '/home/me',
    );
    expect(asked).toEqual({ kind: 'start', start: { folder: '/a', host: '0.0.0.0', port: 8080, shopFile: '/s.json' } });
    expect(startFrom([], { KERFWRIGHT_FOLDER: '/b' }, '/home/me')).toMatchObject({ start: { folder: '/b' } });
    for (const bad of [['--port', 'x'], ['--port', '70000'], ['--colour'], ['stray']]) expect(startFrom(bad, {}, '/').kind).toBe('bad');
    const help = startFrom(['--help'], {}, '/');
    expect(help.kind === 'help' && help.lines.map(printPlain)).toContainEqual(expect.stringMatching(/^ {2}--folder <path> {4}where jobs/));
  });
});

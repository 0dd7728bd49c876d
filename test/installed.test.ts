/** What `npm ci` brings runs on the oldest Node that the README names, with the one package whose version we overrule. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import fastify from 'fastify';
import { describe, expect, it } from 'vitest';

const require = createRequire(import.meta.url);
/** npm's own reader of version ranges, which brings no types. */
const { minVersion, satisfies } = require('semver') as {
  minVersion(range: string): { readonly version: string } | null;
  satisfies(version: string, range: string): boolean;
};

interface Installed {
  readonly version?: string;
  readonly engines?: { readonly node?: string };
  readonly deprecated?: string;
}

const own = JSON.parse(readFileSync('package.json', 'utf8')) as { readonly engines: { readonly node: string } };
const lock = JSON.parse(readFileSync('package-lock.json', 'utf8')) as { readonly packages: Readonly<Record<string, Installed>> };
const oldest = minVersion(own.engines.node)?.version ?? '';

/** What npm would warn of when it installs these packages with a Node of this version. */
const warnings = (packages: Readonly<Record<string, Installed>>, node: string): readonly string[] =>
  Object.entries(packages).flatMap(([path, { version, engines, deprecated }]) => [
    ...(engines?.node === undefined || satisfies(node, engines.node) ? [] : [`${path} ${version} wants Node ${engines.node}`]),
    ...(deprecated === undefined ? [] : [`${path} ${version} is deprecated: ${deprecated}`]),
  ]);

describe('the packages that npm ci installs', () => {
  it('run on the oldest Node that README and package.json name', () => {
    const [, inReadme] = /Node ([\d.]+) or newer/.exec(readFileSync('README.md', 'utf8')) ?? [];
    expect(`${inReadme}.0`).toBe(oldest);
    expect(Object.keys(lock.packages).length).toBeGreaterThan(200);
    expect(warnings(lock.packages, oldest)).toEqual([]);
  });

  it('are seen where one wants a newer Node or is deprecated', () => {
    const packages = {
      'node_modules/young': { version: '1.0.0', engines: { node: '>=22' } },
      'node_modules/old': { deprecated: 'use another' },
    };
    expect(warnings(packages, oldest)).toHaveLength(2);
    expect(warnings(packages, '22.0.0')).toHaveLength(1);
  });
});

describe('the package of cookies that is held at an older version', () => {
  it('writes and reads cookies as the server asks for them', async () => {
    const server = fastify();
    server.get('/', (request, reply) =>
      reply.header('set-cookie', 'a=1; Path=/; HttpOnly').header('set-cookie', 'b=two%20words').send(request.headers.cookie),
    );
    const sent = await server.inject({ url: '/', headers: { cookie: 'first=0' }, cookies: { plain: 'yes', accented: 'à b' } });
    expect(sent.body).toBe('first=0; plain=yes; accented=%C3%A0%20b');
    expect(sent.cookies).toMatchObject([
      { name: 'a', value: '1', path: '/', httpOnly: true },
      { name: 'b', value: 'two words' },
    ]);
    await server.close();
  });
});

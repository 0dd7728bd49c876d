/** Builds the command line and our own tools for Node, and says how the tests run. */
import { readdirSync } from 'node:fs';
import { defineConfig } from 'vite';
import { PATIENCE } from './test/browser/patience.ts';
import { LONG, LongestFirst } from './test/order.ts';

const tools = readdirSync('tools').filter((f) => f.endsWith('.ts') && !f.endsWith('.test.ts'));
const entries = {
  'cli/main': 'src/cli/main.ts',
  'server/main': 'src/server/main.ts',
  'server/paper-worker': 'src/server/paper/paper-worker.ts',
  ...Object.fromEntries(tools.map((f) => [`tools/${f.slice(0, -3)}`, `tools/${f}`])),
};

/** Tests in the browser: the files of one process share its browser, each has a server of its own. */
const BROWSER = ['test/browser/**/*.test.ts'];

/** Tests that start servers, threads or the built program: each file has a process of its own. All others share theirs, and what they import. */
const SERVER = ['src/server/**/*.test.ts', 'test/cli.test.ts'];

/** Node's own imports instead of the bundler's runner, see there. */
const NATIVELY = { execArgv: ['--import', './test/natively.mjs'], experimental: { viteModuleRunner: false, nodeLoader: false } };

/** `npm run quick`: what tells most within a minute, for everyday work. */
const QUICK = process.env['npm_lifecycle_event'] === 'quick' ? LONG : [];

const PATIENTLY = { expect: { poll: { timeout: PATIENCE } }, testTimeout: 4 * PATIENCE, hookTimeout: 4 * PATIENCE };

/** Bundled with ours, and only what is used of them: the loader takes longer for the hundred files of `zod` than for all of ours. The server's schemas go by the same `zod`. */
const BUNDLED = [
  'clipper2-ts',
  'commander',
  'fastify-type-provider-zod',
  'flatbush',
  'flatqueue',
  'pure-rand',
  'robust-predicates',
  'saxes',
  'svg-pathdata',
  'zod',
];

export default defineConfig({
  ssr: { noExternal: BUNDLED },
  build: {
    ssr: true,
    target: 'node20',
    outDir: 'dist',
    emptyOutDir: true,
    sourcemap: false,
    rolldownOptions: {
      input: entries,
      output: { entryFileNames: '[name].js', chunkFileNames: 'chunks/[name]-[hash].js' },
      // On a busy machine it would warn that the build was slow.
      checks: { pluginTimings: false },
    },
  },
  test: {
    pool: 'forks',
    // One more than the cores usual here: a test in the browser waits at times; with four the browsers are in each other's way.
    maxWorkers: 3,
    sequence: { sequencer: LongestFirst },
    projects: [
      {
        extends: true,
        test: {
          name: 'pure',
          include: ['src/**/*.test.ts', 'tools/**/*.test.ts', 'test/**/*.test.ts'],
          exclude: [...BROWSER, ...SERVER, ...QUICK],
          isolate: false,
          ...NATIVELY,
        },
      },
      // How fast the machine is decides nothing here: a test that waits in vain names what it waits for before its own time is over.
      { extends: true, test: { name: 'server', include: SERVER, ...PATIENTLY, ...NATIVELY } },
      {
        extends: true,
        test: { name: 'apart', include: BROWSER, globalSetup: ['test/browser/unpack.ts'], isolate: false, ...PATIENTLY },
      },
    ],
    testTimeout: 120_000,
    hookTimeout: 60_000,
  },
} as never);

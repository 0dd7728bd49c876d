/** Builds the command line and our own tools for Node. */
import { readdirSync } from 'node:fs';
import { defineConfig } from 'vite';

const tools = readdirSync('tools').filter((f) => f.endsWith('.ts') && !f.endsWith('.test.ts'));
const entries = {
  'cli/main': 'src/cli/main.ts',
  'server/main': 'src/server/main.ts',
  'server/paper-worker': 'src/server/paper/paper-worker.ts',
  ...Object.fromEntries(tools.map((f) => [`tools/${f.slice(0, -3)}`, `tools/${f}`])),
};

export default defineConfig({
  build: {
    ssr: true,
    target: 'node20',
    outDir: 'dist',
    emptyOutDir: true,
    sourcemap: false,
    rolldownOptions: { input: entries, output: { entryFileNames: '[name].js', chunkFileNames: 'chunks/[name]-[hash].js' } },
  },
  test: {
    // More than the cores: half of the time of a test in the browser is waiting, and two cores idle with three of them.
    maxWorkers: 5,
    globalSetup: ['test/browser/unpack.ts'],
    testTimeout: 120_000,
    hookTimeout: 60_000,
    pool: 'forks',
    projects: [
      // A browser, a server and their folders: each file has a process of its own. They wait most, so they begin first.
      { extends: true, test: { name: 'browser', include: ['test/browser/**/*.test.ts'], isolate: true } },
      // Everything else is functions of data: files share what was loaded, which spares half of the time.
      {
        extends: true,
        test: {
          name: 'house',
          include: ['src/**/*.test.ts', 'tools/**/*.test.ts', 'test/**/*.test.ts'],
          exclude: ['test/browser/**', 'node_modules/**'],
          isolate: false,
        },
      },
    ],
  },
} as never);

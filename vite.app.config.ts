/** Builds the worksheet for the browser into dist/app, where the server finds it. */
import { readFileSync } from 'node:fs';
import react from '@vitejs/plugin-react';
import { defineConfig, type Plugin, type Rolldown } from 'vite';
import { MAKE_TEXTS } from './tools/make-texts.ts';
import { packedAssets } from './tools/packed-assets.ts';
import { withoutHelp } from './tools/without-help.ts';

/** Help for a field is shown by the page, which has its own copy: the worker checks what was typed, and would carry it in vain. */
const noHelp: Rolldown.Plugin = {
  name: 'no-help',
  transform: {
    filter: { code: /\.(describe|meta)\(/ },
    handler(code) {
      return { code: withoutHelp(code, this.parse(code)), map: null };
    },
  },
};

/** The worker checks by schemas and never prints one: what does so stands empty in it. */
const noSchemaPrinting: Rolldown.Plugin = {
  name: 'no-schema-printing',
  transform: {
    filter: { id: /zod\/v4\/core\/(to-json-schema|json-schema-processors)\.js$/ },
    handler(code) {
      const names = [...code.matchAll(/^export (?:const|function) (\w+)/gm)].map(([, name]) => name);
      return { code: `const none = () => undefined;\nexport { ${names.map((name) => `none as ${name}`).join(', ')} };`, map: null };
    },
  },
};

/** Formulas and tables of texts that nobody in the page reads are left out, and so is what they say. */
const treeshake = { manualPureFunctions: [...MAKE_TEXTS], propertyReadSideEffects: false as const };

const { version } = JSON.parse(readFileSync('package.json', 'utf8')) as { readonly version: string };

/** An answer is kept with the version that worked it out: that of the page, whatever a server says or does not say. */
const versionInPage: Rolldown.Plugin & Pick<Plugin, 'transformIndexHtml'> = {
  name: 'version-in-page',
  transformIndexHtml: () => [{ tag: 'meta', attrs: { name: 'version', content: version }, injectTo: 'head' }],
};

export default defineConfig({
  root: 'src/app',
  base: '/',
  plugins: [react(), versionInPage, packedAssets],
  // The worker's notes for bundlers are of no use once it is bundled; licences stay.
  worker: {
    format: 'es',
    plugins: () => [noHelp, noSchemaPrinting],
    rolldownOptions: { treeshake, output: { comments: { annotation: false, jsdoc: false, legal: true } } },
  },
  build: {
    target: 'es2022',
    outDir: '../../dist/app',
    emptyOutDir: true,
    chunkSizeWarningLimit: 1500,
    assetsInlineLimit: 0,
    // On a busy machine it would warn that the build was slow.
    rolldownOptions: { treeshake, checks: { pluginTimings: false } },
  },
});

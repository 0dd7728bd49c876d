/**
 * Lets Node run our TypeScript as it stands: types are taken out file by file, style sheets are empty. Tests in one process load the whole
 * house in a second so, and what they call is called directly, not through the table of modules that the bundler's own runner keeps.
 */
import { readFileSync } from 'node:fs';
import { register } from 'node:module';
import { fileURLToPath } from 'node:url';
import { isMainThread } from 'node:worker_threads';
import { transformSync } from 'rolldown/utils';

const OPTIONS = {
  sourcemap: true,
  target: 'node20',
  tsconfig: false,
  typescript: { onlyRemoveTypeImports: true },
  jsx: { runtime: 'automatic' },
};

/** Node asks this for the text of every module, in a thread of its own. */
export const load = async (url, context, next) => {
  const place = url.replace(/\?.*/, '');
  if (place.endsWith('.css')) return { format: 'module', source: '', shortCircuit: true };
  if (!/^file:.*\.tsx?$/.test(place)) return next(url, context);
  const path = fileURLToPath(place);
  return runnable(path, readFileSync(path, 'utf8'));
};

/** The module that a text of ours makes. */
export const runnable = (path, text) => {
  const { code, map, errors } = transformSync(path, text, OPTIONS);
  if (errors.length > 0) throw errors[0];
  // The text itself need not go with it: whoever shows a line reads the file.
  const lines = Buffer.from(JSON.stringify({ ...map, sourcesContent: undefined })).toString('base64');
  return { format: 'module', source: `${code}\n//# sourceMappingURL=data:application/json;base64,${lines}`, shortCircuit: true };
};

if (isMainThread) register(import.meta.url);

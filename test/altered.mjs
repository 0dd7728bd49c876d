/**
 * Loads our modules with one of them altered, beside the ones as they are: 'x.ts?altered=…' and whatever it imports are modules of their own.
 * What is altered stands in the address, so that nothing has to be told to the thread that Node loads with.
 */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { runnable } from './natively.mjs';

const MARK = '?altered=';

const markOf = (url) => (url?.includes(MARK) ? url.slice(url.indexOf(MARK)) : '');

export const resolve = async (specifier, context, next) => {
  const found = await next(specifier, context);
  const mark = markOf(context.parentURL);
  return mark !== '' && /^file:.*\.tsx?$/.test(found.url) && !found.url.includes('node_modules')
    ? { ...found, url: found.url + mark }
    : found;
};

export const load = async (url, context, next) => {
  const mark = markOf(url);
  if (mark === '') return next(url, context);
  const place = url.slice(0, url.indexOf(MARK));
  const { file, from, to, text } = JSON.parse(decodeURIComponent(mark.slice(MARK.length)));
  if (!place.endsWith(`/${file}`)) return next(url, context);
  const path = fileURLToPath(place);
  const whole = readFileSync(path, 'utf8');
  return runnable(path, whole.slice(0, from) + text + whole.slice(to));
};

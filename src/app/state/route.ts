/** Which page an address means, and going to another one without loading everything anew. */
import { useEffect, useState } from 'react';

export type Route =
  | { readonly kind: 'jobs'; readonly first: boolean }
  | { readonly kind: 'job' | 'run'; readonly id: string }
  | { readonly kind: 'shop' }
  | { readonly kind: 'unknown' };

export const routeOf = (path: string): Route => {
  const [page = '', id = '', ...more] = path.split('/').filter((part) => part !== '');
  if (page === '') return { kind: 'jobs', first: true };
  if (page === 'jobs' && id === '') return { kind: 'jobs', first: false };
  if (page === 'shop') return { kind: 'shop' };
  if ((page === 'job' || page === 'run') && /^[a-z0-9]{8,40}$/.test(id) && more.length === 0) return { kind: page, id };
  return { kind: 'unknown' };
};

const MOVED = 'page-moved';

export const goTo = (path: string, replacing = false): void => {
  if (replacing) history.replaceState(null, '', path);
  else history.pushState(null, '', path);
  dispatchEvent(new Event(MOVED));
  if (!replacing) scrollTo({ top: 0, behavior: 'instant' });
};

export const useRoute = (): Route => {
  const [path, setPath] = useState(location.pathname);
  useEffect(() => {
    const stop = new AbortController();
    const { signal } = stop;
    const moved = (): void => setPath(location.pathname);
    addEventListener('popstate', moved, { signal });
    addEventListener(MOVED, moved, { signal });
    document.addEventListener('click', follow, { signal });
    return () => stop.abort();
  }, []);
  return routeOf(path);
};

/** Links to our own pages change the page in place; everything else is the browser's. */
const follow = (event: MouseEvent): void => {
  if (event.defaultPrevented || event.button !== 0 || event.ctrlKey || event.metaKey || event.shiftKey || event.altKey) return;
  const link = event.target instanceof Element ? event.target.closest('a') : null;
  if (link === null || link.origin !== location.origin || link.target !== '' || link.hasAttribute('download')) return;
  if (link.hash !== '' || routeOf(link.pathname).kind === 'unknown') return;
  event.preventDefault();
  goTo(link.pathname);
};

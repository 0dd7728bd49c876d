/** The version of the page itself, with whose worker an answer is worked out: it was written into the page when it was built. */

/** Every page that was built has one. */
export const pageVersion = (): string => {
  const version = document.querySelector('meta[name="version"]')?.getAttribute('content');
  if (typeof version !== 'string' || version === '') throw new Error('The page was built without its version.');
  return version;
};

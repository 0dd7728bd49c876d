/** Names of the cuts that come with the house. */
export const FACES = ['sans', 'sans-bold', 'condensed', 'condensed-bold', 'serif', 'serif-bold', 'mono', 'mono-bold'] as const;

export type FaceName = (typeof FACES)[number];

/** Names of the cuts that come with the house. */
export const FACES = ['sans', 'sans-bold', 'condensed', 'condensed-bold', 'serif', 'serif-bold', 'mono', 'mono-bold'] as const;

/** Bold letters are the wider openings: taken where none is named. */
export const USUAL_FACE: FaceName = 'sans-bold';

export type FaceName = (typeof FACES)[number];

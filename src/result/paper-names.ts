/** The papers of a job by name, in the order in which they are handed out. */
export const PAPERS = ['set-up-sheet', 'hole-table', 'inspection-sheet', 'quotation', 'annex'] as const;
export type PaperName = (typeof PAPERS)[number];

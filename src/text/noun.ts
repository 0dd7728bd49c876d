/** The things that are counted in sentences, each with its English forms; another language has forms of its own under the same key. */

/** By the plural category of English: one and other. */
export const nouns = {
  contour: ['contour', 'contours'],
  loop: ['loop', 'loops'],
  line: ['line', 'lines'],
  'open line': ['open line', 'open lines'],
  piece: ['piece', 'pieces'],
  pass: ['pass', 'passes'],
  skim: ['skim', 'skims'],
  opening: ['opening', 'openings'],
  hole: ['hole', 'holes'],
  entity: ['entity', 'entities'],
  place: ['place', 'places'],
  corner: ['corner', 'corners'],
  stop: ['stop', 'stops'],
  block: ['block', 'blocks'],
  sheet: ['sheet', 'sheets'],
  stack: ['stack', 'stacks'],
  row: ['row', 'rows'],
  end: ['end', 'ends'],
  curve: ['curve', 'curves'],
  arc: ['arc', 'arcs'],
  'open chain': ['open chain', 'open chains'],
  'other place': ['other place', 'other places'],
  byte: ['byte', 'bytes'],
  step: ['step', 'steps'],
  tooth: ['tooth', 'teeth'],
  lobe: ['lobe', 'lobes'],
  pin: ['pin', 'pins'],
  side: ['side', 'sides'],
  spline: ['spline', 'splines'],
  middle: ['middle', 'middles'],
  job: ['job', 'jobs'],
} as const satisfies Readonly<Record<string, readonly [one: string, other: string]>>;

export type Noun = keyof typeof nouns;

/** What the picture, its legend, the list of contours and the form for setting by hand say. */
import type { ContourView, LayerView } from '../work/views.ts';

type Role = LayerView['role'];
type Kept = ContourView['kept'];

const ORDINALS = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth', 'seventh', 'eighth', 'ninth', 'tenth'];

/** 'third'; '11th' from eleven on. */
const ordinal = (n: number): string => {
  const last = n % 100 > 10 && n % 100 < 14 ? 'th' : (['th', 'st', 'nd', 'rd'][n % 10] ?? 'th');
  return ORDINALS[n - 1] ?? `${n}${last}`;
};

const LINES: Readonly<Record<Exclude<Role, 'pass'>, string>> = {
  block: 'block, tinted',
  drawing: 'drawing, full line',
  'open line': 'open line, long and short dashes',
  clamp: 'clamps, slanted: no cut may enter',
  'start hole': 'start hole with its number',
  lead: 'way in, short dashes',
  tab: 'tab, thick line',
  'comes out': 'core piece that comes out, dots',
  core: 'core burnt away, dots',
  slug: 'slug or part that comes loose, broken edge',
  'metal left': 'where metal is gone, thin edge',
};

const PASS_LINES = ['full line, strongest', 'long dashes', 'dashes', 'short dashes, fainter', 'dots, faintest'];

const KEPT: Readonly<Record<Kept, string>> = {
  die: 'opening',
  punch: 'part',
  leave: 'not cut',
  left: 'open cut, metal left of it kept',
  right: 'open cut, metal right of it kept',
  slit: 'slit',
};

const KEPT_CHOICES: Readonly<Record<Kept, string>> = {
  die: 'around it: an opening',
  punch: 'inside it: a part',
  leave: 'not cut',
  left: 'left of the line',
  right: 'right of the line',
  slit: 'both sides: a slit',
};

/** Open lines are counted by themselves. */
const turnOf = ({ kept, number }: Pick<ContourView, 'kept' | 'number'>): string =>
  kept === 'die' || kept === 'punch' ? `cut ${ordinal(number)}` : `${ordinal(number)} of the open lines`;

export const pictureWords = {
  canvas: 'Picture of the job',
  help:
    'Drag to move, wheel or two fingers to zoom. Keys: arrows move, plus and minus zoom, 0 shows all, M measures, Escape ends. ' +
    'While you measure or pick a place, arrows move the cross (with Shift by single pixels) and Enter takes the place.',
  fit: 'Show all',
  closer: 'Closer',
  farther: 'Farther',
  measure: 'Measure',
  endMeasure: 'End measuring',
  measureFirst: 'Take the first point.',
  measureSecond: 'Take the second point.',
  pickPlace: (what: string) => `${what}: take its place here, or press Escape.`,
  pickCorner: (n: 1 | 2) => (n === 1 ? 'Take the first corner of the clamp.' : 'Take the opposite corner.'),
  stopPicking: 'Stop',
  measuredText: (dx: string, dy: string, distance: string) => `ΔX ${dx}, ΔY ${dy}, distance ${distance}`,
  coordinates: (x: string, y: string) => `X ${x}  Y ${y}`,
  snapNames: {
    end: 'end',
    middle: 'middle',
    centre: 'centre',
    quadrant: 'quadrant',
    'on the line': 'on the line',
    free: 'free place',
  },
  empty: 'There is nothing to draw yet.',
  legend: 'What the lines mean',
  line: (role: Role, pass?: number) =>
    role === 'pass' ? `pass ${pass ?? 1}: ${PASS_LINES[Math.min(pass ?? 1, PASS_LINES.length) - 1]}` : LINES[role],
  passOver: (n: number) => `way of the wire, pass ${n}`,
  datumRow: 'datum, zero of the program',
  findingRow: 'finding, as numbered in the margin',
  overRow: 'cut so far, as wide as the kerf',
  deviationTitle: (factor: string) => `Deviation from the drawing, drawn ${factor} times larger than it is.`,
  deviationUnit: (unit: string) => `In ${unit}:`,
  deviationStep: (from: string, to: string) => `${from} to ${to}`,
  deviationLeft: 'metal left on, outwards →',
  deviationDeep: '← cut too deep, into the metal',
  deviationBeyond: 'What is beyond it, as in corners that the wire rounds, is cut off at one and a half times that.',
  toleranceRow: (tolerance: string) => `Allowed on either side: ${tolerance}, dotted.`,
  toleranceFar: (tolerance: string, times: string) =>
    `Allowed on either side: ${tolerance}, ${times} times the largest deviation and outside the picture.`,
  noDeviation: 'No deviation can be told here.',
  datum: 'datum',
  contour: (c: Pick<ContourView, 'id' | 'kept' | 'number'>) => `${c.id}, ${KEPT[c.kept]}${c.number > 0 ? `, ${turnOf(c)}` : ''}`,
  hole: (diameter: string, x: string, y: string) => `start hole Ø\u00a0${diameter} at X\u00a0${x}, Y\u00a0${y}`,
  beginsAtEdge: (x: string, y: string) => `begun from the edge at X\u00a0${x}, Y\u00a0${y}`,
  length: (length: string) => `length ${length}`,
  thing: (role: Role, owner: string | undefined, pass?: number) =>
    `${role === 'pass' ? `way of the wire, pass ${pass ?? 1}` : ROLE_NAMES[role]}${owner === undefined ? '' : ` of ${owner}`}`,
  contours: 'Contours',
  noContours: 'The drawing holds no contour.',
  chooseNone: 'Choose none',
  setByHand: 'set by hand',
  byPlanner: 'by the planner',
  giveBack: 'Give back to the planner',
  giveBackOf: (what: string) => `Give ${what} back to the planner`,
  byHandTitle: (contour: string) => `${contour}: set by hand`,
  byHandHint: 'Choose a contour in the picture or in the list to set how it is cut.',
  kept: 'Metal kept',
  keptChoice: (kept: Kept) => KEPT_CHOICES[kept],
  start: 'Begun from',
  startChoices: { hole: 'a start hole', edge: 'the edge of the block' },
  core: 'What is cut out',
  coreChoices: { slug: 'comes out as a slug', burn: 'is burnt away' },
  planner: 'as the planner chooses',
  planned: (what: string) => `${what}, as the planner chose`,
  tab: 'Tab',
  tabWidth: 'width, 0 for none',
  entry: 'Entry on the contour',
  startHole: 'Start hole',
  diameter: 'Ø',
  pick: 'Pick in the picture',
  pickOf: (what: string) => `Pick in the picture: ${what}`,
  set: 'Set',
  setOf: (what: string) => `Set ${what}`,
  order: 'Turn in the order of cutting',
  orderNow: (n: number, of: number) => `${ordinal(n)} of ${of}`,
  notCut: 'not cut',
  earlier: 'Earlier',
  later: 'Later',
  setUp: 'Block, holes and clamps',
  holes: 'Start holes that are there already',
  clamps: 'Clamps',
  clamp: (n: number) => `Clamp ${n}`,
  existingHole: (n: number) => `Hole ${n}`,
  none: 'none',
  remove: 'Take away',
  removeOf: (what: string) => `Take away ${what}`,
  addHole: 'Add hole',
  addClamp: 'Add clamp',
  drawClamp: 'Draw in the picture',
  lowCorner: 'lower left',
  highCorner: 'upper right',
  datumPlace: 'Datum: zero of the program in the drawing',
  stock: 'Lower left corner of the block in the drawing',
  stockNeedsSize: 'The drawing shows the block, or its size is not given; only a block of given size can be placed.',
  step: {
    kept: (id: string) => `Kept side of ${id}`,
    start: (id: string) => `Where ${id} begins`,
    core: (id: string) => `Slug or burn of ${id}`,
    tab: (id: string) => `Tab of ${id}`,
    entry: (id: string) => `Entry of ${id}`,
    hole: (id: string) => `Start hole of ${id}`,
    order: (id: string) => `Turn of ${id}`,
    orderBack: 'Order back to the planner',
    giveBack: (what: string) => `${what} back to the planner`,
    addHole: 'Add a start hole',
    removeHole: 'Take a start hole away',
    addClamp: 'Add a clamp',
    removeClamp: 'Take a clamp away',
    stock: 'Place of the block',
    datum: 'Datum',
  },
  typed: {
    wrong: (reason: string) => `Not a length: ${reason}.`,
    ambiguous: (readings: string) => `This can be read in two ways: ${readings}. Write it so that only one is left.`,
    positive: 'It must be more than 0.',
    notNegative: 'It must not be less than 0.',
    cornersApart: 'The upper right corner must lie right of and above the lower left one.',
  },
} as const;

const ROLE_NAMES: Readonly<Record<Exclude<Role, 'pass'>, string>> = {
  block: 'edge of the block',
  drawing: 'contour',
  'open line': 'open line',
  clamp: 'clamp',
  'start hole': 'start hole',
  lead: 'way in',
  tab: 'tab',
  'comes out': 'piece that comes out',
  core: 'core that is burnt away',
  slug: 'slug',
  'metal left': 'edge of the metal left',
};

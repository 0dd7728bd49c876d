/** What the picture, its legend, the list of contours and the form for setting by hand say. */
import { contour, count } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import type { ContourView, LayerView } from '../work/views.ts';
import { ready } from './ready.ts';

type Role = LayerView['role'];
type Kept = ContourView['kept'];

const ordinals = phrases('page.ordinal', {
  first: say`first`,
  second: say`second`,
  third: say`third`,
  fourth: say`fourth`,
  fifth: say`fifth`,
  sixth: say`sixth`,
  seventh: say`seventh`,
  eighth: say`eighth`,
  ninth: say`ninth`,
  tenth: say`tenth`,
  st: (n: number) => say`${{ n: count(n) }}st`,
  nd: (n: number) => say`${{ n: count(n) }}nd`,
  rd: (n: number) => say`${{ n: count(n) }}rd`,
  th: (n: number) => say`${{ n: count(n) }}th`,
});

const { st, nd, rd, th, ...toTen } = ordinals;
const FIRST_TEN: readonly Text[] = Object.values(toTen);

/** 'third'; '11th' from eleven on. */
const ordinal = (n: number): Text => {
  const later = n % 100 > 10 && n % 100 < 14 ? th : ([th, st, nd, rd][n % 10] ?? th);
  return FIRST_TEN[n - 1] ?? later(n);
};

const LINES: Readonly<Record<Exclude<Role, 'pass'>, Text>> = phrases('page.line', {
  block: say`block, tinted`,
  drawing: say`drawing, full line`,
  'open line': say`open line, long and short dashes`,
  clamp: say`clamps, slanted: no cut may enter`,
  'start hole': say`start hole with its number`,
  lead: say`way in, short dashes`,
  tab: say`tab, thick line`,
  'comes out': say`core piece that comes out, dots`,
  core: say`core burnt away, dots`,
  slug: say`slug or part that comes loose, broken edge`,
  'metal left': say`where metal is gone, thin edge`,
});

const passLines = phrases('page.pass-line', {
  first: say`full line, strongest`,
  second: say`long dashes`,
  third: say`dashes`,
  fourth: say`short dashes, fainter`,
  fifth: say`dots, faintest`,
  of: (pass: number, line: Text) => say`pass ${{ pass: count(pass) }}: ${{ line }}`,
});
const PASS_LINES: readonly Text[] = [passLines.first, passLines.second, passLines.third, passLines.fourth];

const lineOf = (role: Role, pass = 1): Text =>
  role === 'pass' ? passLines.of(pass, PASS_LINES[pass - 1] ?? passLines.fifth) : LINES[role];

const KEPT: Readonly<Record<Kept, Text>> = phrases('page.metal', {
  die: say`opening`,
  punch: say`part`,
  leave: say`not cut`,
  left: say`open cut, metal left of it kept`,
  right: say`open cut, metal right of it kept`,
  slit: say`slit`,
});

const KEPT_CHOICES: Readonly<Record<Kept, Text>> = phrases('page.metal-kept', {
  die: say`around it: an opening`,
  punch: say`inside it: a part`,
  leave: say`not cut`,
  left: say`left of the line`,
  right: say`right of the line`,
  slit: say`both sides: a slit`,
});

const contours = phrases('page.contour', {
  uncut: (id: string, kept: Text) => say`${{ loop: contour(id) }}, ${{ kept }}`,
  cut: (id: string, kept: Text, turn: Text) => say`${{ loop: contour(id) }}, ${{ kept }}, cut ${{ turn }}`,
  open: (id: string, kept: Text, turn: Text) => say`${{ loop: contour(id) }}, ${{ kept }}, ${{ turn }} of the open lines`,
});

/** Open lines are counted by themselves. */
const contourOf = ({ id, kept, number }: Pick<ContourView, 'id' | 'kept' | 'number'>): Text => {
  if (number <= 0) return contours.uncut(id, KEPT[kept]);
  return (kept === 'die' || kept === 'punch' ? contours.cut : contours.open)(id, KEPT[kept], ordinal(number));
};

const ROLE_NAMES: Readonly<Record<Exclude<Role, 'pass'>, Text>> = phrases('page.thing', {
  block: say`edge of the block`,
  drawing: say`contour`,
  'open line': say`open line`,
  clamp: say`clamp`,
  'start hole': say`start hole`,
  lead: say`way in`,
  tab: say`tab`,
  'comes out': say`piece that comes out`,
  core: say`core that is burnt away`,
  slug: say`slug`,
  'metal left': say`edge of the metal left`,
});

const things = phrases('page.thing', {
  pass: (pass: number) => say`way of the wire, pass ${{ pass: count(pass) }}`,
  of: (thing: Text, owner: string) => say`${{ thing }} of ${{ owner: contour(owner) }}`,
});

const thingOf = (role: Role, owner: string | undefined, pass = 1): Text => {
  const thing = role === 'pass' ? things.pass(pass) : ROLE_NAMES[role];
  return owner === undefined ? thing : things.of(thing, owner);
};

const corners = phrases('page.clamp-corner', {
  first: say`Take the first corner of the clamp.`,
  opposite: say`Take the opposite corner.`,
});

const picture = phrases('page.picture', {
  canvas: say`Picture of the job`,
  help: say`Drag to move, wheel or two fingers to zoom. Keys: arrows move, plus and minus zoom, 0 shows all, M measures, Escape ends. While you measure or pick a place, arrows move the cross (with Shift by single pixels) and Enter takes the place.`,
  fit: say`Show all`,
  closer: say`Closer`,
  farther: say`Farther`,
  measure: say`Measure`,
  endMeasure: say`End measuring`,
  measureFirst: say`Take the first point.`,
  measureSecond: say`Take the second point.`,
  pickPlace: (what: string) => say`${{ what: ready(what) }}: take its place here, or press Escape.`,
  pickCorner: (n: 1 | 2) => (n === 1 ? corners.first : corners.opposite),
  stopPicking: say`Stop`,
  measuredText: (dx: string, dy: string, distance: string) =>
    say`ΔX ${{ dx: ready(dx) }}, ΔY ${{ dy: ready(dy) }}, distance ${{ distance: ready(distance) }}`,
  coordinates: (x: string, y: string) => say`X ${{ x: ready(x) }}  Y ${{ y: ready(y) }}`,
  empty: say`There is nothing to draw yet.`,
  legend: say`What the lines mean`,
  line: lineOf,
  passOver: (n: number) => say`way of the wire, pass ${{ n: count(n) }}`,
  datumRow: say`datum, zero of the program`,
  findingRow: say`finding, as numbered in the margin`,
  overRow: say`cut so far, as wide as the kerf`,
  deviationTitle: (factor: string) => say`Deviation from the drawing, drawn ${{ factor: ready(factor) }} times larger than it is.`,
  deviationUnit: (unit: string) => say`In ${{ unit: ready(unit) }}:`,
  deviationStep: (from: string, to: string) => say`${{ from: ready(from) }} to ${{ to: ready(to) }}`,
  deviationLeft: say`metal left on, outwards →`,
  deviationDeep: say`← cut too deep, into the metal`,
  deviationBeyond: say`What is beyond it, as in corners that the wire rounds, is cut off at one and a half times that.`,
  toleranceRow: (tolerance: string) => say`Allowed on either side: ${{ tolerance: ready(tolerance) }}, dotted.`,
  toleranceFar: (tolerance: string, times: string) =>
    say`Allowed on either side: ${{ tolerance: ready(tolerance) }}, ${{ times: ready(times) }} times the largest deviation and outside the picture.`,
  noDeviation: say`No deviation can be told here.`,
  datum: say`datum`,
  contour: contourOf,
  hole: (diameter: string, x: string, y: string) =>
    say`start hole Ø\u00a0${{ diameter: ready(diameter) }} at X\u00a0${{ x: ready(x) }}, Y\u00a0${{ y: ready(y) }}`,
  beginsAtEdge: (x: string, y: string) => say`begun from the edge at X\u00a0${{ x: ready(x) }}, Y\u00a0${{ y: ready(y) }}`,
  length: (length: string) => say`length ${{ length: ready(length) }}`,
  thing: thingOf,
  contours: say`Contours`,
  noContours: say`The drawing holds no contour.`,
  chooseNone: say`Choose none`,
  setByHand: say`set by hand`,
  byPlanner: say`by the planner`,
  giveBack: say`Give back to the planner`,
  giveBackOf: (what: string) => say`Give ${{ what: ready(what) }} back to the planner`,
  byHandTitle: (contour: string) => say`${{ contour: ready(contour) }}: set by hand`,
  byHandHint: say`Choose a contour in the picture or in the list to set how it is cut.`,
  kept: say`Metal kept`,
  keptChoice: (kept: Kept) => KEPT_CHOICES[kept],
  start: say`Begun from`,
  core: say`What is cut out`,
  planner: say`as the planner chooses`,
  planned: (what: string) => say`${{ what: ready(what) }}, as the planner chose`,
  tab: say`Tab`,
  tabWidth: say`width, 0 for none`,
  entry: say`Entry on the contour`,
  startHole: say`Start hole`,
  diameter: say`Ø`,
  pick: say`Pick in the picture`,
  pickOf: (what: string) => say`Pick in the picture: ${{ what: ready(what) }}`,
  set: say`Set`,
  setOf: (what: string) => say`Set ${{ what: ready(what) }}`,
  order: say`Turn in the order of cutting`,
  orderNow: (n: number, of: number) => say`${{ turn: ordinal(n) }} of ${{ of: count(of) }}`,
  notCut: say`not cut`,
  earlier: say`Earlier`,
  later: say`Later`,
  setUp: say`Block, holes and clamps`,
  holes: say`Start holes that are there already`,
  clamps: say`Clamps`,
  clamp: (n: number) => say`Clamp ${{ n: count(n) }}`,
  existingHole: (n: number) => say`Hole ${{ n: count(n) }}`,
  none: say`none`,
  remove: say`Take away`,
  removeOf: (what: string) => say`Take away ${{ what: ready(what) }}`,
  addHole: say`Add hole`,
  addClamp: say`Add clamp`,
  drawClamp: say`Draw in the picture`,
  lowCorner: say`lower left`,
  highCorner: say`upper right`,
  datumPlace: say`Datum: zero of the program in the drawing`,
  stock: say`Lower left corner of the block in the drawing`,
  stockNeedsSize: say`The drawing shows the block, or its size is not given; only a block of given size can be placed.`,
});

export const pictureWords = {
  ...picture,
  snapNames: phrases('page.snap', {
    end: say`end`,
    middle: say`middle`,
    centre: say`centre`,
    quadrant: say`quadrant`,
    'on the line': say`on the line`,
    free: say`free place`,
  }),
  startChoices: phrases('page.start', { hole: say`a start hole`, edge: say`the edge of the block` }),
  coreChoices: phrases('page.core', { slug: say`comes out as a slug`, burn: say`is burnt away` }),
  step: phrases('page.picture-step', {
    kept: (id: string) => say`Kept side of ${{ loop: contour(id) }}`,
    start: (id: string) => say`Where ${{ loop: contour(id) }} begins`,
    core: (id: string) => say`Slug or burn of ${{ loop: contour(id) }}`,
    tab: (id: string) => say`Tab of ${{ loop: contour(id) }}`,
    entry: (id: string) => say`Entry of ${{ loop: contour(id) }}`,
    hole: (id: string) => say`Start hole of ${{ loop: contour(id) }}`,
    order: (id: string) => say`Turn of ${{ loop: contour(id) }}`,
    orderBack: say`Order back to the planner`,
    giveBack: (what: string) => say`${{ what: ready(what) }} back to the planner`,
    addHole: say`Add a start hole`,
    removeHole: say`Take a start hole away`,
    addClamp: say`Add a clamp`,
    removeClamp: say`Take a clamp away`,
    stock: say`Place of the block`,
    datum: say`Datum`,
  }),
  typed: phrases('page.picture-typed', {
    wrong: (reason: Text) => say`Not a length: ${{ reason }}.`,
    ambiguous: (readings: string) =>
      say`This can be read in two ways: ${{ readings: ready(readings) }}. Write it so that only one is left.`,
    positive: say`It must be more than 0.`,
    notNegative: say`It must not be less than 0.`,
    cornersApart: say`The upper right corner must lie right of and above the lower left one.`,
  }),
};

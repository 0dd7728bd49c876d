/** What the picture, its legend, the list of contours and the form for setting by hand say. */
import { contour, count } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import type { ContourView, LayerView } from '../work/views.ts';
import { ordinal, passOf } from './pass.ts';
import { ready } from './ready.ts';

type Role = LayerView['role'];
type Kept = ContourView['kept'];

const LINES: Readonly<Record<Exclude<Role, 'pass'>, Text>> = phrases('page.line', {
  block: say`block, tinted`,
  drawing: say`drawing, full line`,
  'open line': say`open line, long and short dashes`,
  clamp: say`clamps, slanted: no cut may enter`,
  'start hole': say`start hole with its contour`,
  lead: say`lead-in, short dashes`,
  tab: say`tab, thick line`,
  'comes out': say`slug that drops out, dots`,
  core: say`cut away, no core, dots`,
  slug: say`slug or part cut free, broken edge`,
  'metal left': say`metal cut away, thin edge`,
});

const passLines = phrases('page.pass-line', {
  first: say`full line, strongest`,
  second: say`long dashes`,
  third: say`dashes`,
  fourth: say`short dashes, fainter`,
  fifth: say`dots, faintest`,
  of: (pass: number, line: Text) => say`${{ pass: passOf(pass) }}: ${{ line }}`,
});
const PASS_LINES: readonly Text[] = [passLines.first, passLines.second, passLines.third, passLines.fourth];

const lineOf = (role: Role, pass = 1): Text =>
  role === 'pass' ? passLines.of(pass, PASS_LINES[pass - 1] ?? passLines.fifth) : LINES[role];

const KEPT: Readonly<Record<Kept, Text>> = phrases('page.metal', {
  die: say`opening`,
  punch: say`part`,
  leave: say`not cut`,
  left: say`open cut, left side kept`,
  right: say`open cut, right side kept`,
  slit: say`slit`,
});

const KEPT_CHOICES: Readonly<Record<Kept, Text>> = phrases('page.metal-kept', {
  die: say`outside: die opening`,
  punch: say`inside: punch or part`,
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
  block: say`block edge`,
  drawing: say`contour`,
  'open line': say`open line`,
  clamp: say`clamp`,
  'start hole': say`start hole`,
  lead: say`lead-in`,
  tab: say`tab`,
  'comes out': say`slug that drops out`,
  core: say`core cut away`,
  slug: say`slug`,
  'metal left': say`edge of the metal cut away`,
});

const things = phrases('page.thing', {
  pass: (pass: number) => say`wire path, ${{ pass: passOf(pass) }}`,
  passOf: (owner: string, pass: number) => say`wire path of ${{ owner: contour(owner) }}, ${{ pass: passOf(pass) }}`,
  of: (thing: Text, owner: string) => say`${{ thing }} of ${{ owner: contour(owner) }}`,
});

const thingOf = (role: Role, owner: string | undefined, pass = 1): Text => {
  if (role === 'pass') return owner === undefined ? things.pass(pass) : things.passOf(owner, pass);
  return owner === undefined ? ROLE_NAMES[role] : things.of(ROLE_NAMES[role], owner);
};

const corners = phrases('page.clamp-corner', {
  first: say`Pick the first corner of the clamp.`,
  opposite: say`Pick the opposite corner.`,
});

const picture = phrases('page.picture', {
  canvas: say`Picture of the job`,
  help: say`Drag to pan, wheel or two fingers to zoom. Keys: arrows pan, plus and minus zoom, 0 fits, M measures, Escape ends. While you measure or pick a point, arrows move the cross (with Shift by one pixel) and Enter picks the point.`,
  fit: say`Fit`,
  closer: say`Zoom in`,
  farther: say`Zoom out`,
  measure: say`Measure`,
  endMeasure: say`End measuring`,
  measureFirst: say`Pick the first point.`,
  measureSecond: say`Pick the second point.`,
  pickPlace: (what: string) => say`${{ what: ready(what) }}: pick the point here, or press Escape.`,
  pickCorner: (n: 1 | 2) => (n === 1 ? corners.first : corners.opposite),
  stopPicking: say`Cancel`,
  measuredText: (dx: string, dy: string, distance: string) =>
    say`ΔX ${{ dx: ready(dx) }}, ΔY ${{ dy: ready(dy) }}, distance ${{ distance: ready(distance) }}`,
  coordinates: (x: string, y: string) => say`X ${{ x: ready(x) }}  Y ${{ y: ready(y) }}`,
  empty: say`Nothing to draw yet.`,
  legend: say`Legend`,
  line: lineOf,
  datumRow: say`datum, program zero`,
  findingRow: say`note, as numbered beside the text`,
  overRow: say`cut so far, at kerf width`,
  deviationTitle: (factor: string) => say`Deviation from the drawing: deviation scale ${{ factor: ready(factor) }} × length scale.`,
  deviationUnit: (unit: string) => say`In ${{ unit: ready(unit) }}:`,
  deviationStep: (from: string, to: string) => say`${{ from: ready(from) }} to ${{ to: ready(to) }}`,
  deviationLeft: say`stock left, outwards →`,
  deviationDeep: say`← overcut, into the part`,
  deviationBeyond: say`Beyond that, as in corners the wire rounds, it is clipped at one and a half times the scale.`,
  toleranceRow: (tolerance: string) => say`Tolerance either side: ${{ tolerance: ready(tolerance) }}, dotted.`,
  toleranceFar: (tolerance: string, times: string) =>
    say`Tolerance either side: ${{ tolerance: ready(tolerance) }}, ${{ times: ready(times) }} times the largest deviation and outside the picture.`,
  noDeviation: say`No deviation measured here.`,
  datum: say`datum`,
  contour: contourOf,
  hole: (diameter: string, x: string, y: string) =>
    say`start hole Ø\u00a0${{ diameter: ready(diameter) }} at X\u00a0${{ x: ready(x) }}, Y\u00a0${{ y: ready(y) }}`,
  beginsAtEdge: (x: string, y: string) => say`started from the edge at X\u00a0${{ x: ready(x) }}, Y\u00a0${{ y: ready(y) }}`,
  length: (length: string) => say`length ${{ length: ready(length) }}`,
  thing: thingOf,
  contours: say`Contours`,
  noContours: say`The drawing has no contour.`,
  chooseNone: say`Clear selection`,
  setByHand: say`set by hand`,
  byPlanner: say`automatic`,
  giveBack: say`Reset to automatic`,
  giveBackOf: (what: string) => say`Reset to automatic: ${{ what: ready(what) }}`,
  byHandTitle: (contour: string) => say`${{ contour: ready(contour) }}: set by hand`,
  handList: say`Set by hand`,
  handOf: (contour: string, what: string) => say`${{ contour: ready(contour) }}, ${{ what: ready(what) }}`,
  byHandHint: say`Select a contour in the picture or the list to set how it is cut.`,
  kept: say`Kept side`,
  keptChoice: (kept: Kept) => KEPT_CHOICES[kept],
  start: say`Start from`,
  core: say`Core`,
  planner: say`automatic`,
  planned: (what: string) => say`${{ what: ready(what) }} (automatic)`,
  tab: say`Tab`,
  tabWidth: say`width, 0 for no tab`,
  entry: say`Entry point`,
  startHole: say`Start hole`,
  diameter: say`Ø`,
  pick: say`Pick in the picture`,
  pickOf: (what: string) => say`Pick in the picture: ${{ what: ready(what) }}`,
  set: say`Set`,
  setOf: (what: string) => say`Set ${{ what: ready(what) }}`,
  order: say`Place in the cutting order`,
  orderNow: (n: number, of: number) => say`${{ turn: ordinal(n) }} of ${{ of: count(of) }}`,
  notCut: say`not cut`,
  earlier: say`Earlier`,
  later: say`Later`,
  setUp: say`Block, holes and clamps`,
  holes: say`Existing start holes`,
  clamps: say`Clamps`,
  clamp: (n: number) => say`Clamp ${{ n: count(n) }}`,
  existingHole: (n: number) => say`Hole ${{ n: count(n) }}`,
  none: say`none`,
  remove: say`Remove`,
  removeOf: (what: string) => say`Remove ${{ what: ready(what) }}`,
  addHole: say`Add hole`,
  addClamp: say`Add clamp`,
  drawClamp: say`Draw in the picture`,
  lowCorner: say`lower left`,
  highCorner: say`upper right`,
  datumPlace: say`Program zero (datum), drawing coordinates`,
  stock: say`Lower left corner of the block, drawing coordinates`,
  stockNeedsSize: say`The drawing shows the block, or no block size is given; only a block of given size can be positioned.`,
});

export const pictureWords = {
  ...picture,
  snapNames: phrases('page.snap', {
    end: say`end`,
    midpoint: say`midpoint`,
    centre: say`centre`,
    top: say`top of circle`,
    bottom: say`bottom of circle`,
    left: say`left of circle`,
    right: say`right of circle`,
    'on the line': say`on line`,
    free: say`free point`,
  }),
  handWhat: phrases('page.hand-setting', {
    kept: say`kept side`,
    start: say`start from`,
    core: say`core`,
    tab: say`tab`,
    entry: say`entry point`,
    hole: say`start hole`,
    order: say`cutting order`,
  }),
  startChoices: phrases('page.start', { hole: say`a start hole`, edge: say`the edge of the block` }),
  coreChoices: phrases('page.core', { slug: say`drops out as a slug`, 'no-core': say`cut away, no core` }),
  step: phrases('page.picture-step', {
    kept: (id: string) => say`Kept side of ${{ loop: contour(id) }}`,
    start: (id: string) => say`Start of ${{ loop: contour(id) }}`,
    core: (id: string) => say`Core of ${{ loop: contour(id) }}`,
    tab: (id: string) => say`Tab of ${{ loop: contour(id) }}`,
    entry: (id: string) => say`Entry point of ${{ loop: contour(id) }}`,
    hole: (id: string) => say`Start hole of ${{ loop: contour(id) }}`,
    order: (id: string) => say`Cutting order of ${{ loop: contour(id) }}`,
    orderBack: say`Cutting order reset`,
    giveBack: (what: string) => say`${{ what: ready(what) }} reset to automatic`,
    addHole: say`Add a start hole`,
    removeHole: say`Remove a start hole`,
    addClamp: say`Add a clamp`,
    removeClamp: say`Remove a clamp`,
    stock: say`Block position`,
    datum: say`Program zero`,
  }),
  typed: phrases('page.picture-typed', {
    wrong: (reason: Text) => say`Not a length: ${{ reason }}.`,
    ambiguous: (readings: string) =>
      say`This can be read in two ways: ${{ readings: ready(readings) }}. Enter it so that only one is possible.`,
    positive: say`Must be more than 0.`,
    notNegative: say`Must not be less than 0.`,
    cornersApart: say`The upper right corner must be right of and above the lower left one.`,
  }),
};

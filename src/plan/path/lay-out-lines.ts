/** Lays out every open line with the wire that was chosen: its ends, its passes, and the piece that it parts off. */

import type { Contour } from '../../geometry/contour.ts';
import { pointAt } from '../../geometry/measure.ts';
import { distanceTo } from '../../geometry/near/distance.ts';
import { windingOf } from '../../geometry/near/inside.ts';
import { lookupOf, lookupOfSegments } from '../../geometry/near/lookup.ts';
import { distanceBetween, type Line, line as lineOf, type Point, type Segment } from '../../geometry/segment.ts';
import { massOf, pieceOf as pieceWords } from '../../physics/material/piece-mass.ts';
import { workHeight } from '../../physics/work-height.ts';
import { filled, itemAt, lastOf } from '../../sequence/sequence.ts';
import { type Finding, remedy } from '../../text/finding.ts';
import { contour, count, fixed, mm, term, um } from '../../text/part.ts';
import { phrases, say, sentences } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { edgesOfClamp } from '../clamp.ts';
import { find } from '../findings.ts';
import type { KeptLoop } from '../kept-side.ts';
import { saidMass } from '../loose-piece-mass.ts';
import { type OpenCutPlan, type OpenEnd, type WantedLine, wireSide } from '../open-line.ts';
import type { GivenHole, PlanQuestion } from '../question.ts';
import { kerfOf, reachOf } from '../rough-cut.ts';
import { spot, thousandths } from '../said.ts';
import { measuresOf } from '../start/lead-lengths.ts';
import { tabFor } from '../start/tab.ts';
import type { WireWithPasses } from '../wire/choose-wire.ts';
import { familyOf } from '../wire/families.ts';
import { roomInLine } from '../wire/open-fit.ts';
import { openedPath } from '../wire/open-path.ts';
import { type Visit, visitInFamily } from './contour-layout.ts';
import { centreAlong, lapOf, programmedAlong } from './lap.ts';
import { leadsLongEnough } from './lead-check.ts';
import type { PassLap } from './leads.ts';
import { type Ends, endsOf, extendedTo, ON_EDGE } from './open-ends.ts';
import { type Parted, partedBy, type Taken } from './open-pieces.ts';
import { type Loosened, lineVisits, slitVisits } from './open-steps.ts';

export interface LinesAsked {
  readonly question: PlanQuestion;
  readonly best: WireWithPasses;
  readonly block: Contour;
  /** The drawing shows the block. */
  readonly blockDrawn: boolean;
  readonly cut: readonly KeptLoop[];
  readonly holes: readonly GivenHole[];
}

export interface LaidLine {
  readonly plan: OpenCutPlan;
  readonly visits: readonly Visit[];
  /** Lines in a contour are cut before it, all others after every contour. */
  readonly depth: number;
}

export interface LaidLines {
  readonly lines: readonly LaidLine[];
  readonly findings: readonly Finding[];
}

export const layLines = (asked: LinesAsked): LaidLines => {
  const laid = (asked.question.open ?? []).map((line) => {
    const { rows, base } = familyOf(asked.best, line.id);
    const own = layLine(line, { ...asked, best: { ...asked.best, rows } });
    return base === 0 ? own : { ...own, lines: own.lines.map((l) => lineInFamily(l, base)) };
  });
  return { lines: laid.flatMap((l) => l.lines), findings: laid.flatMap((l) => l.findings) };
};

const lineInFamily = ({ plan, visits, depth }: LaidLine, base: number): LaidLine => ({
  plan: { ...plan, courses: plan.courses.map((c) => ({ ...c, pass: c.pass + base })) },
  visits: visits.map((v) => visitInFamily(v, base)),
  depth,
});

const layLine = (line: WantedLine, asked: LinesAsked): LaidLines => {
  const ends = endsFor(line, asked);
  if (ends.kind === 'no hole') return { lines: [], findings: [noHole(line, ends)] };
  const extended = extendedTo(line.path, ends.from, ends.to);
  const through = ends.from.kind === 'edge' && ends.to.kind === 'edge';
  const reach = takenBy(line, asked);
  const parted = through ? partedBy(extended.path, asked.block, asked.cut, reach) : undefined;
  const piece = parted === undefined ? undefined : pieceOf(line, parted, asked);
  const loose: Loosened | undefined = piece && { role: piece.role, mass: piece.mass.value, tab: piece.tab };
  // The tab ends where the kerf, not only its middle, comes to the edge of the block.
  const early = parted === undefined ? 0 : Math.max(reach.left, reach.right) * parted.slant;
  const led = { ...extended, after: parted === undefined ? extended.after : parted.beyond + early };
  const made = line.kept === 'slit' ? slitMade(led, ends, loose, asked) : lineMade({ ...line, kept: line.kept }, led, ends, loose, asked);
  if (made === undefined) return { lines: [], findings: [noRoom(line)] };
  const plan: OpenCutPlan = {
    chain: line.id,
    kept: line.kept,
    path: line.path,
    from: ends.from,
    to: ends.to,
    leads: line.kept === 'slit' ? leadsOf(line, ends, asked.block) : [],
    courses: made.courses,
    piece,
  };
  return { lines: [{ plan, visits: made.visits, depth: depthOf(line, asked.cut) }], findings: said(plan, asked) };
};

/** The cut lies on the side that is not kept; a slit's to either side. */
const takenBy = ({ kept }: WantedLine, { best }: LinesAsked): Taken => {
  const [halfKerf, far] = [kerfOf(best) / 2, reachOf(best)];
  return kept === 'slit' ? { left: halfKerf, right: halfKerf } : { left: kept === 'left' ? 0 : far, right: kept === 'left' ? far : 0 };
};

const endsFor = (line: WantedLine, { question, best, block, blockDrawn, cut, holes }: LinesAsked): Ends => {
  const others: readonly Segment[] = [...cut.flatMap((c) => c.loop.contour.segments), ...(question.clamps ?? []).flatMap(edgesOfClamp)];
  const start = question.start ?? {};
  return endsOf({
    line,
    edge: lookupOf(block),
    others: others.length === 0 ? undefined : lookupOfSegments(others),
    holes,
    rules: { diameter: question.startHole, roughOffset: best.rows[0].offset.value, height: question.height },
    halfKerf: kerfOf(best) / 2,
    start: Object.hasOwn(start, line.id) ? start[line.id] : undefined,
    blockDrawn,
  });
};

type Found = Extract<Ends, { readonly kind: 'found' }>;
type Extended = ReturnType<typeof extendedTo>;

interface MadeLine {
  readonly visits: readonly Visit[];
  readonly courses: OpenCutPlan['courses'];
}

const slitMade = ({ path, before, after }: Extended, { from, to }: Found, loose: Loosened | undefined, asked: LinesAsked): MadeLine => {
  const { overlap } = measuresOf(asked.best.rows, asked.best.wire.diameter);
  const attended = asked.question.run === 'attended';
  const visits = slitVisits({ path, from, to, before, after, overlap, attended, loose });
  return { visits, courses: [{ pass: 1, programmed: path, centre: path }] };
};

const lineMade = (
  line: WantedLine & { readonly kept: 'left' | 'right' },
  extended: Extended,
  { from, to }: Found,
  loose: Loosened | undefined,
  { question, best }: LinesAsked,
): MadeLine | undefined => {
  const side = wireSide(line.kept);
  const room = roomInLine(line, best.rows, best.wire, question);
  const laps: PassLap[] = [];
  for (const [i, row] of best.rows.entries()) {
    const opened = openedPath(extended.path, side, row.offset.value + room);
    if (opened.kind !== 'whole') return undefined;
    laps.push({ lap: lapOf(opened.path, { side, offset: row.offset.value, outsideCorners: question.outsideCorners }), pass: i + 1 });
  }
  const measures = measuresOf(best.rows, best.wire.diameter);
  const attended = question.run === 'attended';
  const visits = lineVisits({
    laps: filled(laps, 'a line is cut in one pass at least'),
    from,
    to,
    after: extended.after,
    measures,
    attended,
    loose,
  });
  if (!visits.every((v) => leadsLongEnough(v.steps, measures.offsets))) return undefined;
  return {
    visits,
    courses: laps.map(({ lap, pass }) => ({ pass, programmed: programmedAlong(lap), centre: centreAlong(lap) })),
  };
};

/** What comes off is the smaller piece: the part where its side is kept, as both sides of a slit are. */
const pieceOf = (line: WantedLine, { smaller, area, perimeter }: Parted, { question }: LinesAsked): NonNullable<OpenCutPlan['piece']> => {
  const role = line.kept === 'slit' || line.kept === smaller ? 'part' : 'waste';
  const mass = massOf({
    key: `contour.${line.id}`,
    what: pieceWords[role === 'part' ? 'part' : 'slug'](line.id),
    area,
    height: workHeight(question.height),
    density: question.material.density,
  });
  return { role, area, mass, tab: tabFor({ mass: mass.value, area, perimeter }).length };
};

/** A slit's ways in and out besides the drawn line stay in the block as well. */
const leadsOf = ({ path }: WantedLine, { from, to }: Found, block: Contour): readonly Line[] => {
  const way = (end: OpenEnd, tip: Point): Line[] => {
    const none = end.kind === 'blind' || distanceBetween(end.at, tip) < 1e-6;
    const beside = end.kind === 'edge' && (windingOf(block, tip) === 0 || distanceTo(block, tip) <= ON_EDGE);
    return none || beside ? [] : [lineOf(end.at, tip)];
  };
  return [...way(from, path.segments[0].from), ...way(to, lastOf(path.segments).to)];
};

const depthOf = ({ path }: WantedLine, cut: readonly KeptLoop[]): number => {
  const middle = pointAt(itemAt(path.segments, path.segments.length >> 1), 0.5);
  const around = cut.filter((c) => windingOf(c.loop.contour, middle) !== 0).map((c) => c.loop.depth);
  return around.length === 0 ? -1 : Math.max(...around) + 1;
};

const noHole = ({ id }: WantedLine, { at, room, needed }: Extract<Ends, { kind: 'no hole' }>): Finding =>
  find(
    'hole-does-not-fit/line',
    say`At the end of line ${{ line: contour(id) }}, at ${{ at: spot(at) }}, there is no room for a start hole: it needs ${{ needed: mm(needed, fixed(2)) }} from its centre to the next contour, and has ${{ room: mm(room, fixed(2)) }}.`,
    {
      place: { kind: 'spot', x: at.x, y: at.y, reach: needed, loop: id },
      remedy: remedy(say`Give an existing hole, or extend the line to the block edge (${{ change: term(`start.${id}: edge`) }}).`, {
        field: `start.${id}`,
        value: 'edge',
      }),
    },
  );

const noRoom = ({ id, path }: WantedLine): Finding => {
  const { x, y } = path.segments[0].from;
  return find('no-room-for-lead/line', say`The wire has no room to lead in to line ${{ line: contour(id) }} or out of it.`, {
    place: { kind: 'spot', x, y, reach: 2, loop: id },
    remedy: remedy(say`Extend the line to the block edge, or set ${{ field: term(`open.${id}`) }} to slit.`, {
      field: `open.${id}`,
      value: 'slit',
    }),
  });
};

const said = (plan: OpenCutPlan, { best }: LinesAsked): readonly Finding[] => {
  const { chain, kept, from, to, piece } = plan;
  const start = plan.path.segments[0].from;
  const passes = best.rows.length;
  const how =
    kept === 'slit'
      ? words.slit(kerfOf(best), best.rows[0].ra.value)
      : words.line(passes === 1 ? words.onePass : words.passes(passes), words[kept]);
  const parted = piece === undefined ? undefined : (piece.role === 'waste' ? words.waste : words.kept)(piece.mass.value);
  const place = { kind: 'spot', x: start.x, y: start.y, reach: 2, loop: chain } as const;
  const cut = find('open-line-cut', sentences([words.cut(chain, how, [saidEnd(from), saidEnd(to)]), parted]), { place });
  if (piece?.role !== 'part' || kept === 'slit') return [cut];
  const comesOff = passes > 1 ? words.comesOffFinished : words.comesOff;
  return [
    cut,
    find('kept-side-comes-off', comesOff(chain, piece.mass.value), {
      place,
      remedy: say`Clamp the block on the kept side, so that the waste comes off instead.`,
    }),
  ];
};

const saidEnd = (end: OpenEnd): Text => {
  if (end.kind === 'edge') return words.edge(end.at);
  return end.kind === 'hole' ? words.hole(end.diameter, end.at) : words.blind(end.at);
};

const words = phrases('open-line', {
  slit: (kerf: number, ra: number) =>
    say`as a slit ${{ slit: thousandths(kerf) }} wide in one pass, with rough faces (Ra ${{ ra: um(ra, fixed(1)) }})`,
  line: (passes: Text, side: Text) => say`as a line in ${{ passes }}, its ${{ side }} side kept`,
  onePass: say`one pass`,
  passes: (passes: number) => say`${{ passes: count(passes, 'pass') }}`,
  left: say`left`,
  right: say`right`,
  cut: (line: string, how: Text, [from, to]: readonly [Text, Text]) =>
    say`${{ line: contour(line) }} is cut ${{ how }}, from ${{ from }} to ${{ to }}.`,
  waste: (mass: number) => say`It parts the block; the smaller piece, ${{ mass: saidMass(mass) }}, is waste.`,
  kept: (mass: number) => say`It parts the block; the smaller piece, ${{ mass: saidMass(mass) }}, is kept.`,
  comesOff: (line: string, mass: number) =>
    say`The kept side of ${{ line: contour(line) }} is the smaller piece (${{ mass: saidMass(mass) }}): it comes off the clamped block.`,
  comesOffFinished: (line: string, mass: number) =>
    say`The kept side of ${{ line: contour(line) }} is the smaller piece (${{ mass: saidMass(mass) }}): it comes off the clamped block and is skimmed while it is only secured by hand.`,
  edge: (at: Point) => say`beside the block at ${{ at: spot(at) }}`,
  hole: (diameter: number, at: Point) => say`a hole of ${{ hole: mm(diameter, fixed(1)) }} at ${{ at: spot(at) }}`,
  blind: (at: Point) => say`its blind end at ${{ at: spot(at) }}`,
});

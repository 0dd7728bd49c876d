/** Lays out every open line with the wire that was chosen: its ends, its passes, and the piece that it parts off. */

import type { Contour } from '../../geometry/contour.ts';
import { pointAt } from '../../geometry/measure.ts';
import { distanceTo } from '../../geometry/near/distance.ts';
import { windingOf } from '../../geometry/near/inside.ts';
import { lookupOf, lookupOfSegments } from '../../geometry/near/lookup.ts';
import { distanceBetween, type Line, line as lineOf, type Point, type Segment } from '../../geometry/segment.ts';
import { workHeight } from '../../physics/cut/cut-figures.ts';
import { massOf, pieceOf as pieceWords } from '../../physics/material/piece-mass.ts';
import type { Finding } from '../../text/finding.ts';
import { edgesOfClamp } from '../clamp.ts';
import { find } from '../findings.ts';
import type { KeptLoop } from '../kept-side.ts';
import { spokenMass } from '../loose-piece-mass.ts';
import { type OpenCutPlan, type OpenEnd, type WantedLine, wireSide } from '../open-line.ts';
import type { GivenHole, PlanQuestion } from '../question.ts';
import { kerfOf, reachOf } from '../rough-cut.ts';
import { measuresOf } from '../start/lead-lengths.ts';
import { tabFor } from '../start/tab.ts';
import type { WireWithPasses } from '../wire/choose-wire.ts';
import { marginOf } from '../wire/fit-of-shape.ts';
import { openedPath } from '../wire/open-path.ts';
import type { Visit } from './contour-layout.ts';
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
  const laid = (asked.question.open ?? []).map((line) => layLine(line, asked));
  return { lines: laid.flatMap((l) => l.lines), findings: laid.flatMap((l) => l.findings) };
};

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
  const made = line.kept === 'slit' ? slitMade(led, ends, loose, asked) : lineMade(line.kept, led, ends, loose, asked);
  if (made === undefined) return { lines: [], findings: [noRoom(line)] };
  const plan: OpenCutPlan = {
    chain: line.id,
    kept: line.kept,
    path: line.path,
    from: ends.from,
    to: ends.to,
    leads: line.kept === 'slit' ? leadsOf(line, ends, asked.block) : [],
    courses: made.courses,
    ...(piece === undefined ? {} : { piece }),
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
    ...(others.length === 0 ? {} : { others: lookupOfSegments(others) }),
    holes,
    rules: { diameter: question.startHole, roughOffset: best.rows[0]!.offset.value, height: question.height },
    halfKerf: kerfOf(best) / 2,
    ...(Object.hasOwn(start, line.id) ? { start: start[line.id]! } : {}),
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
  const visits = slitVisits({ path, from, to, before, after, overlap, attended, ...(loose === undefined ? {} : { loose }) });
  return { visits, courses: [{ pass: 1, programmed: path, centre: path }] };
};

const lineMade = (
  kept: 'left' | 'right',
  extended: Extended,
  { from, to }: Found,
  loose: Loosened | undefined,
  { question, best }: LinesAsked,
): MadeLine | undefined => {
  const side = wireSide(kept);
  const laps: PassLap[] = [];
  for (const [i, row] of best.rows.entries()) {
    const opened = openedPath(extended.path, side, row.offset.value + marginOf(question));
    if (opened.kind !== 'whole') return undefined;
    laps.push({ lap: lapOf(opened.path, { side, offset: row.offset.value, outsideCorners: question.outsideCorners }), pass: i + 1 });
  }
  const measures = measuresOf(best.rows, best.wire.diameter);
  const attended = question.run === 'attended';
  const visits = lineVisits({ laps, from, to, after: extended.after, measures, attended, ...(loose === undefined ? {} : { loose }) });
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
  return [...way(from, path.segments[0]!.from), ...way(to, path.segments.at(-1)!.to)];
};

const depthOf = ({ path }: WantedLine, cut: readonly KeptLoop[]): number => {
  const middle = pointAt(path.segments[path.segments.length >> 1]!, 0.5);
  const around = cut.filter((c) => windingOf(c.loop.contour, middle) !== 0).map((c) => c.loop.depth);
  return around.length === 0 ? -1 : Math.max(...around) + 1;
};

const noHole = ({ id }: WantedLine, { at, room, needed }: Extract<Ends, { kind: 'no hole' }>): Finding =>
  find(
    'hole-does-not-fit',
    `At the end of the line ${id}, at (${at.x.toFixed(3)}, ${at.y.toFixed(3)}), there is no room for a start hole: it needs ${needed.toFixed(2)} mm from its middle to the next contour, and has ${room.toFixed(2)} mm.`,
    {
      place: { kind: 'spot', x: at.x, y: at.y, reach: needed, loop: id },
      remedy: `Give a hole that is there, or run the line on to the edge of the block (start.${id}: edge).`,
    },
  );

const noRoom = ({ id, path }: WantedLine): Finding => {
  const { x, y } = path.segments[0]!.from;
  return find('no-room-for-lead', `The wire has no room to come in to the line ${id} or to leave it.`, {
    place: { kind: 'spot', x, y, reach: 2, loop: id },
    remedy: `Lengthen the line to the edge of the block, or set open.${id} to slit.`,
  });
};

const said = (plan: OpenCutPlan, { best }: LinesAsked): readonly Finding[] => {
  const { chain, kept, from, to, piece } = plan;
  const start = plan.path.segments[0]!.from;
  const how =
    kept === 'slit'
      ? `as a slit ${kerfOf(best).toFixed(3)} mm wide in one pass, with the faces of a rough cut (Ra ${best.rows[0]!.ra.value.toFixed(1)} µm)`
      : `as a line in ${best.rows.length === 1 ? 'one pass' : `${best.rows.length} passes`}, the metal on its ${kept} is kept`;
  const off =
    piece === undefined
      ? ''
      : ` It parts the block; the smaller piece of ${spokenMass(piece.mass.value)} ${piece.role === 'waste' ? 'is waste' : 'is kept'}.`;
  const place = { kind: 'spot', x: start.x, y: start.y, reach: 2, loop: chain } as const;
  const findings = [find('open-line-cut', `${chain} is cut ${how}, from ${spoken(from)} to ${spoken(to)}.${off}`, { place })];
  if (piece?.role === 'part' && kept !== 'slit')
    findings.push(
      find(
        'kept-side-comes-off',
        `The kept side of ${chain} is the smaller piece (${spokenMass(piece.mass.value)}): it comes off the clamped block${best.rows.length > 1 ? ' and is finished while it is held by hand' : ''}.`,
        {
          place,
          remedy: 'Clamp the block on the kept side, so that the waste comes off instead.',
        },
      ),
    );
  return findings;
};

const spoken = (end: OpenEnd): string => {
  const at = `(${end.at.x.toFixed(3)}, ${end.at.y.toFixed(3)})`;
  if (end.kind === 'edge') return `beside the block at ${at}`;
  return end.kind === 'hole' ? `a hole of ${end.diameter.toFixed(1)} mm at ${at}` : `its blind end at ${at}`;
};

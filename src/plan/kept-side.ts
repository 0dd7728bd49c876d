/** Which loops are cut and which side of each is kept: what the nesting suggests, unless the user says otherwise. */

import { boundsOfChain, centroidOf, perimeterOf } from '../geometry/area.ts';
import type { Contour } from '../geometry/contour.ts';
import type { Point } from '../geometry/segment.ts';
import type { Finding } from '../text/finding.ts';
import { find } from './findings.ts';
import type { Kept } from './plan.ts';
import type { GivenHole, PlanQuestion, WantedLoop } from './question.ts';

/** A loop that will be cut, with the side that is kept and why. */
export interface KeptLoop {
  readonly loop: WantedLoop;
  readonly kept: Kept;
  readonly reason: string;
}

export interface Sorted {
  readonly cut: readonly KeptLoop[];
  /** Loops that are the edge of the block. */
  readonly block: readonly WantedLoop[];
  /** Start holes that the drawing shows as small circles. */
  readonly drawnHoles: readonly GivenHole[];
  readonly findings: readonly Finding[];
}

/** What of the question decides it. */
export type KeptQuestion = Pick<PlanQuestion, 'loops' | 'outline' | 'kept' | 'keptByShape' | 'startHole'>;

type Decision = { readonly kind: Kept | 'block' | 'hole' | 'leave'; readonly reason: string };

/** Every loop gets its place: cut as die or punch, edge of the block, start hole, or left alone. */
export const sortLoops = (question: KeptQuestion): Sorted => {
  const cut: KeptLoop[] = [];
  const block: WantedLoop[] = [];
  const drawnHoles: GivenHole[] = [];
  const decided = new Map<string, Decided>();
  for (const loop of question.loops) {
    const { kind, reason } = decide(loop, question);
    if (kind === 'block') block.push(loop);
    else if (kind === 'hole') drawnHoles.push({ at: centroidOf(loop.contour), diameter: diameterOf(loop.contour) });
    else if (kind !== 'leave') cut.push({ loop, kept: kind, reason });
    const alike = decided.get(`${kind} ${reason}`) ?? { kind, reason, loops: [] };
    alike.loops.push(loop);
    decided.set(`${kind} ${reason}`, alike);
  }
  const findings = [...[...decided.values()].map(statement), ...unknownOverrides(question), ...openingsInSlugs(cut, question.loops)];
  return { cut, block: block.toSorted((a, b) => extent(b) - extent(a)), drawnHoles, findings };
};

const decide = (loop: WantedLoop, question: KeptQuestion): Decision => {
  const asked = Object.hasOwn(question.kept, loop.id) ? question.kept[loop.id] : undefined;
  if (asked !== undefined)
    return { kind: asked, reason: question.keptByShape?.includes(loop.id) === true ? 'the shape says so' : 'you said so' };
  // With the outline as the block every loop is one step nearer to being a part.
  const level = question.outline === 'block' ? loop.depth - 1 : loop.depth;
  if (level < 0) return { kind: 'block', reason: 'the outermost loops are the edge of the block in this job' };
  const insideOpening = question.outline === 'block' ? level === 1 : level === 2;
  if (insideOpening && fitsStartHole(loop.contour, question.startHole))
    return { kind: 'hole', reason: 'a small circle inside an opening is where the wire is threaded' };
  const die = question.outline === 'block' ? level % 2 === 0 : level % 2 === 1;
  if (die) return { kind: 'die', reason: 'an opening in a part or block leaves the metal around it standing' };
  return {
    kind: 'punch',
    reason: loop.depth === 0 ? 'an outermost loop is the outside of a part' : 'an island in an opening is a part of its own',
  };
};

/** A circle of just 3 mm is one as well in a drawing scaled for temperature, which moves sizes by less than this factor. */
const GROWN = 1.002;

/** A circle of 0.3 mm up to half as large again as the start hole asked for. */
const fitsStartHole = (contour: Contour, asked: number): boolean => {
  if (!isCircle(contour)) return false;
  const diameter = diameterOf(contour);
  return diameter >= 0.3 / GROWN && diameter <= Math.max(asked * 1.5, 3) * GROWN;
};

/** All arcs about one centre with one radius. */
const isCircle = (contour: Contour): boolean => {
  const first = contour.segments[0]!;
  if (first.kind !== 'arc') return false;
  return contour.segments.every((s) => s.kind === 'arc' && near(s.centre, first.centre) && Math.abs(s.radius - first.radius) < 1e-6);
};

const near = (p: Point, q: Point): boolean => Math.hypot(p.x - q.x, p.y - q.y) < 1e-6;

const diameterOf = (contour: Contour): number => perimeterOf(contour) / Math.PI;

interface Decided {
  readonly kind: Decision['kind'];
  readonly reason: string;
  readonly loops: WantedLoop[];
}

/** As many loops are called by name in one sentence. */
const NAMED = 12;

const namesOf = (loops: readonly WantedLoop[]): string => {
  const ids = loops.slice(0, NAMED).map((l) => l.id);
  if (loops.length > NAMED) return `${ids.join(', ')} and ${loops.length - NAMED} more`;
  return ids.length === 1 ? ids[0]! : `${ids.slice(0, -1).join(', ')} and ${ids.at(-1)}`;
};

/** All loops decided alike in one sentence. */
const statement = ({ kind, reason, loops }: Decided): Finding => {
  const one = loops.length === 1;
  const [who, is] = [namesOf(loops), one ? 'is' : 'are'];
  const what: Record<Decision['kind'], string> = {
    die: `${who} ${is} cut as ${one ? 'an opening' : 'openings'} (die type): the block is kept, the piece inside is the slug`,
    punch: `${who} ${is} cut as ${one ? 'a part' : 'parts'} (punch type): the piece inside is kept`,
    block: `${who} ${is} taken as the edge of the block and not cut`,
    hole: `${who} ${is} taken as ${one ? 'a start hole' : 'start holes'} already there`,
    leave: `${who} ${is} not cut`,
  };
  const first = loops[0]!;
  const b = boundsOfChain(first.contour);
  const place = { kind: 'spot', x: (b.minX + b.maxX) / 2, y: (b.minY + b.maxY) / 2, reach: (b.maxX - b.minX) / 2, loop: first.id } as const;
  const remedy = `If that is not meant, set kept.${first.id}${one ? '' : ' and the like'} to die, punch or leave.`;
  return find('kept-side', `${what[kind]}. Reason: ${reason}.`, one ? { place, remedy } : { remedy });
};

const extent = (loop: WantedLoop): number => {
  const b = boundsOfChain(loop.contour);
  return (b.maxX - b.minX) * (b.maxY - b.minY);
};

const unknownOverrides = (question: KeptQuestion): Finding[] => {
  const known = new Set(question.loops.map((l) => l.id));
  return Object.keys(question.kept)
    .filter((id) => !known.has(id))
    .map((id) =>
      find('kept-of-unknown-loop', `A kept side is given for ${id}, but no loop of the drawing that is to be cut has that name.`, {
        place: { kind: 'field', path: `kept.${id}` },
      }),
    );
};

/** An opening whose metal around it is itself a slug: nothing of it would stay. Loops that are not cut lie between without meaning. */
const openingsInSlugs = (cut: readonly KeptLoop[], loops: readonly WantedLoop[]): readonly Finding[] => {
  const kept = new Map(cut.map((c) => [c.loop.id, c.kept]));
  const parents = new Map(loops.map((l) => [l.id, l.parent]));
  const cutAround = (id: string): string | undefined => {
    const parent = parents.get(id);
    return parent === undefined || kept.has(parent) ? parent : cutAround(parent);
  };
  const bySlug = new Map<string, WantedLoop[]>();
  for (const { loop, kept: side } of cut) {
    const around = side === 'die' ? cutAround(loop.id) : undefined;
    if (around !== undefined && kept.get(around) === 'die') bySlug.set(around, [...(bySlug.get(around) ?? []), loop]);
  }
  return [...bySlug].map(([slug, within]) => {
    const one = within.length === 1;
    const sentence = `${namesOf(within)} ${one ? 'is to be an opening' : 'are to be openings'} in the slug of ${slug}: the metal round ${one ? 'it' : 'them'} falls out with that slug.`;
    return find('opening-in-slug', sentence, {
      place: { kind: 'field', path: `kept.${slug}` },
      remedy: `If the piece inside ${slug} is the part, set kept.${slug} to punch; if it is waste, set kept.${within[0]!.id}${one ? '' : ' and the like'} to leave, or to punch where the inside is a part.`,
    });
  });
};

/** Which loops are cut and which side of each is kept: what the nesting suggests, unless the user says otherwise. */

import { boundsOfChain, centroidOf, perimeterOf } from '../geometry/area.ts';
import type { Contour } from '../geometry/contour.ts';
import type { Point } from '../geometry/segment.ts';
import { firstItem } from '../sequence/sequence.ts';
import { type Finding, type Remedy, remedy } from '../text/finding.ts';
import { contour as loopNamed, name, type Part, term } from '../text/part.ts';
import { phrases, say } from '../text/say.ts';
import type { Text } from '../text/text.ts';
import { find } from './findings.ts';
import type { Kept } from './plan.ts';
import type { GivenHole, PlanQuestion, WantedLoop } from './question.ts';
import { someLoops } from './said.ts';

/** A loop that will be cut, with the side that is kept. */
export interface KeptLoop {
  readonly loop: WantedLoop;
  readonly kept: Kept;
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

type Decision = { readonly kind: Kept | 'block' | 'hole' | 'leave'; readonly reason: keyof typeof reasons };

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
    else if (kind !== 'leave') cut.push({ loop, kept: kind });
    const alike = decided.get(`${kind} ${reason}`) ?? { kind, reason, loops: [] };
    alike.loops.push(loop);
    decided.set(`${kind} ${reason}`, alike);
  }
  const findings = [...[...decided.values()].map(statement), ...unknownOverrides(question), ...openingsInSlugs(cut, question.loops)];
  return { cut, block: block.toSorted((a, b) => extent(b) - extent(a)), drawnHoles, findings };
};

const decide = (loop: WantedLoop, question: KeptQuestion): Decision => {
  const asked = Object.hasOwn(question.kept, loop.id) ? question.kept[loop.id] : undefined;
  if (asked !== undefined) return { kind: asked, reason: question.keptByShape?.includes(loop.id) === true ? 'shape' : 'asked' };
  // With the outline as the block every loop is one step nearer to being a part.
  const level = question.outline === 'block' ? loop.depth - 1 : loop.depth;
  if (level < 0) return { kind: 'block', reason: 'edge' };
  const insideOpening = question.outline === 'block' ? level === 1 : level === 2;
  if (insideOpening && fitsStartHole(loop.contour, question.startHole)) return { kind: 'hole', reason: 'circle' };
  const die = question.outline === 'block' ? level % 2 === 0 : level % 2 === 1;
  if (die) return { kind: 'die', reason: 'opening' };
  return { kind: 'punch', reason: loop.depth === 0 ? 'outside' : 'island' };
};

/** Why a loop is taken for what it is taken for. */
const reasons = phrases('kept-reason', {
  shape: say`the shape defines it`,
  asked: say`you specified it`,
  edge: say`in this job the outermost contours are the block edge`,
  circle: say`a small circle inside an opening is where the wire is threaded`,
  opening: say`an opening in a part or block`,
  outside: say`an outermost contour is the outside of a part`,
  island: say`an island in an opening is a separate part`,
});

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
  const first = contour.segments[0];
  if (first.kind !== 'arc') return false;
  return contour.segments.every((s) => s.kind === 'arc' && near(s.centre, first.centre) && Math.abs(s.radius - first.radius) < 1e-6);
};

const near = (p: Point, q: Point): boolean => Math.hypot(p.x - q.x, p.y - q.y) < 1e-6;

const diameterOf = (contour: Contour): number => perimeterOf(contour) / Math.PI;

interface Decided extends Decision {
  readonly loops: WantedLoop[];
}

const namesOf = (loops: readonly WantedLoop[]): Part | Text =>
  someLoops(
    loops.map((l) => l.id),
    'and',
  );

/** All loops decided alike in one sentence. */
const statement = ({ kind, reason, loops }: Decided): Finding => {
  const first = firstItem(loops);
  const one = loops.length === 1;
  const field = `kept.${first.id}`;
  return find('kept-side', say`${{ decision: (one ? single : several)[kind](namesOf(loops)) }}: ${{ reason: reasons[reason] }}.`, {
    place: one ? around(first) : undefined,
    remedy: remedy((one ? otherwise.one : otherwise.many)(field), { field }),
  });
};

const around = ({ id, contour }: WantedLoop): Finding['place'] => {
  const b = boundsOfChain(contour);
  return { kind: 'spot', x: (b.minX + b.maxX) / 2, y: (b.minY + b.maxY) / 2, reach: (b.maxX - b.minX) / 2, loop: id };
};

const otherwise = phrases('kept-otherwise', {
  one: (field: string) => say`If wrong, set ${{ field: term(field) }} to die, punch or leave.`,
  many: (field: string) => say`If wrong, set ${{ field: term(field) }} (and the others likewise) to die, punch or leave.`,
});

const single = phrases('kept-one', {
  die: (loop: Part | Text) => say`${{ loop }} is an opening (die type): the block is kept, the slug is waste`,
  punch: (loop: Part | Text) => say`${{ loop }} is a part (punch type): the piece inside is kept`,
  block: (loop: Part | Text) => say`${{ loop }} is the block edge and not cut`,
  hole: (loop: Part | Text) => say`${{ loop }} is an existing start hole`,
  leave: (loop: Part | Text) => say`${{ loop }} is not cut`,
});

const several = phrases('kept-many', {
  die: (loops: Part | Text) => say`${{ loops }} are openings (die type): the block is kept, the slugs are waste`,
  punch: (loops: Part | Text) => say`${{ loops }} are parts (punch type): the pieces inside are kept`,
  block: (loops: Part | Text) => say`${{ loops }} are block edges and not cut`,
  hole: (loops: Part | Text) => say`${{ loops }} are existing start holes`,
  leave: (loops: Part | Text) => say`${{ loops }} are not cut`,
});

const extent = (loop: WantedLoop): number => {
  const b = boundsOfChain(loop.contour);
  return (b.maxX - b.minX) * (b.maxY - b.minY);
};

const unknownOverrides = (question: KeptQuestion): Finding[] => {
  const known = new Set(question.loops.map((l) => l.id));
  return Object.keys(question.kept)
    .filter((id) => !known.has(id))
    .map((id) =>
      find('kept-of-unknown-loop', say`A kept side is given for ${{ loop: name(id) }}, but no contour of that name is to be cut.`, {
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
  return [...bySlug].map(([slug, within]) => inSlug(slug, within));
};

const inSlug = (slug: string, within: readonly WantedLoop[]): Finding => {
  const place = { kind: 'field', path: `kept.${slug}` } as const;
  const [openings, first] = [namesOf(within), `kept.${firstItem(within).id}`];
  const asPunch = (text: Text): Remedy => remedy(text, { field: place.path, value: 'punch' });
  if (within.length === 1)
    return find(
      'opening-in-slug/one',
      say`${{ opening: openings }} would be an opening in the slug of ${{ slug: loopNamed(slug) }}: the metal around it comes out with that slug.`,
      {
        place,
        remedy: asPunch(
          say`If the piece inside ${{ slug: loopNamed(slug) }} is the part, set ${{ field: term(place.path) }} to punch; if it is waste, set ${{ opening: term(first) }} to leave, or to punch where the inside is a part.`,
        ),
      },
    );
  return find(
    'opening-in-slug/many',
    say`${{ openings }} would be openings in the slug of ${{ slug: loopNamed(slug) }}: the metal around them comes out with that slug.`,
    {
      place,
      remedy: asPunch(
        say`If the piece inside ${{ slug: loopNamed(slug) }} is the part, set ${{ field: term(place.path) }} to punch; if it is waste, set ${{ opening: term(first) }} (and the others likewise) to leave, or to punch where the inside is a part.`,
      ),
    },
  );
};

/** What is said about entry, hole and tab of a contour. */

import { meanWidth, widthOf } from '../../geometry/width.ts';
import { type Finding, remedy } from '../../text/finding.ts';
import { fixed, mm, type Part, term } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { find } from '../findings.ts';
import { saidMass } from '../loose-piece-mass.ts';
import { TACKLE } from '../path/loose-piece.ts';
import type { GivenHole, WayAsked } from '../question.ts';
import { spot as spotOf } from '../said.ts';
import { type LikeLoops, shapeName } from '../same-shape.ts';
import { type Candidate, type Candidates, cornerNeed } from '../start/entry.ts';
import type { Measures } from '../start/lead-lengths.ts';
import type { PlacedOverride } from '../start/override.ts';

export interface Laid {
  readonly tab: number;
  readonly piece: { readonly mass: number; readonly area: number };
  /** Even the longest tab that the contour allows would bend. */
  readonly weak?: boolean;
  readonly measures: Measures;
  /** Without a core: nothing comes loose. */
  readonly noCore?: boolean | undefined;
  /** What of it the user set: that is not for want of a better place. */
  readonly override?: PlacedOverride | undefined;
}

/** A slug that could fall between table and nozzle, mm across. */
const TINY = 5;

export const entryFindings = (shape: LikeLoops, candidate: Candidate, laid: Laid): Finding[] => {
  const { spot, hole } = candidate;
  const name = shapeName(shape);
  const place = { kind: 'spot', x: spot.at.x, y: spot.at.y, reach: 2, loop: shape.first.loop.loop.id } as const;
  const findings: Finding[] = [];
  findings.push(...cornerFindings(name, candidate, laid, place));
  if (candidate.splits)
    findings.push(
      find(
        'slug-splits/hole',
        say`The start hole of ${{ hole: mm(hole.diameter, fixed(2)) }} in ${{ shape: name }} reaches nearly across the opening: the slug comes off in two, and the program stops for each half.`,
        {
          place: { kind: 'spot', x: hole.at.x, y: hole.at.y, reach: hole.diameter, loop: shape.first.loop.loop.id },
          remedy: say`Secure both halves at the first stop. A smaller hole, or one at the end of the opening, would leave one slug.`,
        },
      ),
    );
  if (!spot.straight)
    findings.push(
      find(
        'entry-on-arc',
        say`${{ shape: name }} starts on a curve (${{ why: isEntryOverridden(laid) ? words.asSet : words.noStraight }}); the entry mark is harder to stone off.`,
        { place },
      ),
    );
  if (laid.noCore !== true) findings.push(...pieceFindings(shape, laid, place));
  return findings;
};

const isEntryOverridden = ({ override }: Laid): boolean => override?.entry !== undefined;

/** A tab that reaches round a corner, and an entry that is near one. */
const cornerFindings = (name: Part | Text, { spot }: Candidate, laid: Laid, place: Finding['place']): readonly Finding[] => {
  const short = Math.min(spot.back - laid.tab, spot.ahead);
  const need = cornerNeed(laid.measures);
  if (short >= need - 0.05) return [];
  const more = { place, remedy: words.lookThere };
  const overrides = isEntryOverridden(laid);
  return [
    short < 0
      ? find(
          'tab-round-corner',
          say`The tab of ${{ shape: name }} reaches round a corner: ${{ why: overrides ? words.entrySet : words.noStretch }}.`,
          more,
        )
      : find(
          'entry-near-corner',
          say`${{ shape: name }} starts ${{ from: mm(short, fixed(2)) }} from a corner (${{ why: overrides ? words.asSet : words.noLonger }}); ${{ better: mm(need, fixed(1)) }} is better.`,
          more,
        ),
  ];
};

const pieceFindings = (shape: LikeLoops, { piece, weak, tab, override }: Laid, place: Finding['place']): Finding[] => {
  const { kept, loop } = shape.first.loop;
  const findings: Finding[] = [];
  const across = kept === 'die' && meanWidth(loop.contour) < TINY ? widthOf(loop.contour) : TINY;
  if (across < TINY)
    findings.push(
      find(
        'slug-tiny',
        say`The slug of ${{ shape: shapeName(shape) }} is only ${{ across: mm(across, fixed(1)) }} across (${{ mass: saidMass(piece.mass) }}): it may drop into the lower nozzle when its tab is cut.`,
        { place, remedy: say`Catch it with a magnet or a plate under the work.` },
      ),
    );
  if (weak === true)
    findings.push(
      find(
        'tab-weak',
        say`The loose piece of ${{ shape: shapeName(shape) }} (${{ mass: saidMass(piece.mass) }}) would bend its tab of ${{ tab: mm(tab, fixed(1)) }}, ${{ why: override?.tab === undefined ? words.noLongerTab : words.tabSet }}: it sags while cutting goes on.`,
        { place, remedy: say`Support it from below before the rough cut is half way round, or start from thicker stock.` },
      ),
    );
  if (piece.mass >= TACKLE)
    findings.push(
      find('slug-heavy', say`The loose piece of ${{ shape: shapeName(shape) }} weighs ${{ mass: saidMass(piece.mass) }}.`, {
        place,
        remedy: say`Have lifting tackle ready before the tab is cut.`,
      }),
    );
  return findings;
};

export const holeFinding = (shape: LikeLoops, none: Extract<Candidates, { readonly kind: 'no hole' }>, question: WayAsked): Finding => {
  const { id } = shape.first.loop.loop;
  const short = none.needed - none.room;
  const field = `kept.${id}`;
  return find(
    'hole-does-not-fit/shape',
    say`${{ shape: shapeName(shape) }} has no room for a start hole: the smallest, ${{ hole: mm(Math.min(1, question.startHole), fixed(1)) }}, needs ${{ needed: mm(none.needed, fixed(2)) }} from its centre to the contour; the roomiest place has ${{ room: mm(none.room, fixed(2)) }}.`,
    {
      place: { kind: 'spot', x: none.at.x, y: none.at.y, reach: none.needed, loop: id },
      remedy: remedy(
        say`Widen it by ${{ wider: mm(2 * short, fixed(2)) }}, drill a finer hole (${{ option: term('--start-hole') }}), give an existing hole, or set ${{ field: term(field) }} to leave and make it another way.`,
        { field, value: 'leave' },
      ),
    },
  );
};

export const leadFinding = (shape: LikeLoops, measures: Measures): Finding => {
  const { loop } = shape.first.loop;
  const at = loop.contour.segments[0].from;
  return find(
    'no-room-for-lead/shape',
    say`In ${{ shape: shapeName(shape) }} the wire has no room for a lead-in and a turn: it needs about ${{ smooth: mm(2 * measures.runUp + measures.retreat, fixed(1)) }} of smooth contour.`,
    {
      place: { kind: 'spot', x: at.x, y: at.y, reach: 2, loop: loop.id },
      remedy: remedy(say`Give a start hole in a wider place, or set ${{ field: term(`kept.${loop.id}`) }} to leave.`, {
        field: `kept.${loop.id}`,
        value: 'leave',
      }),
    },
  );
};

/** Holes around a part that are no good for it are nobody's mistake; those in an opening were meant for it. */
export const unusableFindings = (shape: LikeLoops, holes: readonly GivenHole[]): Finding[] =>
  shape.first.loop.kept === 'punch'
    ? []
    : holes.map(({ at, diameter }) =>
        find(
          'hole-not-usable',
          say`The hole of ${{ hole: mm(diameter, fixed(2)) }} at ${{ at: spotOf(at) }} in ${{ shape: shapeName(shape) }} is too close to the contour to start from.`,
          {
            place: { kind: 'spot', x: at.x, y: at.y, reach: diameter, loop: shape.first.loop.loop.id },
            done: say`Another start hole is planned.`,
          },
        ),
      );

/** A hole that is there is used wherever the proof lets it: where it does not, it is said why. */
export const passedOverFindings = (shape: LikeLoops, holes: readonly GivenHole[]): readonly Finding[] =>
  holes.map(({ at, diameter }) =>
    find(
      'hole-not-usable/splits',
      say`From the hole of ${{ hole: mm(diameter, fixed(2)) }} at ${{ at: spotOf(at) }} the slug of ${{ shape: shapeName(shape) }} would come apart where it cannot be held.`,
      {
        place: { kind: 'spot', x: at.x, y: at.y, reach: diameter, loop: shape.first.loop.loop.id },
        done: say`Another start hole is planned.`,
      },
    ),
  );

const words = phrases('design', {
  lookThere: say`Check the entry mark there, or set another entry by hand.`,
  entrySet: say`its entry is set by hand`,
  noStretch: say`no stretch is long enough`,
  asSet: say`set by hand`,
  noLonger: say`no stretch is longer`,
  noStraight: say`no straight is long enough`,
  noLongerTab: say`the contour allows no longer one`,
  tabSet: say`set by hand`,
});

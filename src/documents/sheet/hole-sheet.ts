/** The hole table as a paper of its own: what is drilled into the block before it comes to the machine. */

import { controlUnit, type JobFacts, programOf } from '../../result/facts.ts';
import type { CutFacts } from '../../result/outcome-facts.ts';
import type { ControlUnit } from '../../text/control-unit.ts';
import { bare, contour, count, list, name, type Part, term, unitName, upTo } from '../../text/part.ts';
import { only, phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { column, footOf, type Said, subtitleOf, type WrittenBlock, type WrittenPaper } from '../paper.ts';
import { placesOf } from '../part/job-tables.ts';
import { length, onBlock } from '../part/numbers.ts';
import { openTable } from '../part/open-table.ts';
import { planPicture } from '../part/plan-picture.ts';

export const holeSheet = (facts: JobFacts, cut: CutFacts): WrittenPaper => ({
  title: words.title,
  subtitle: subtitleOf(facts),
  foot: footOf(facts, words.foot),
  blocks: [
    ...(facts.outcome.answer === 'yes' ? [] : [{ kind: 'text', text: words.notYet(facts.sentence), large: true } as const]),
    { kind: 'pairs', rows: pairs(facts, cut) },
    ...picture(facts),
    ...tables(facts, cut),
    { kind: 'list', items: Object.values(ADVICE), marker: 'dash' },
  ],
});

/** Common practice, no source. */
const ADVICE = phrases('hole-sheet-advice', {
  soft: say`Drill before hardening where the material allows; in hardened material start holes are EDM-drilled.`,
  clean: say`Right through, clean, free of burrs and chips: a chip in the hole shorts the wire during threading.`,
  wandered: say`If a drill wanders, report the hole and by how much, so that the lead-in can be replanned.`,
});

interface Hole {
  readonly at: { readonly x: number; readonly y: number };
  readonly diameter: number;
  readonly origin: 'placed' | 'drawing';
  /** The contours and open lines that are begun from it: it is called by them here as in the picture. */
  readonly for: readonly Part[];
}

/** Each hole once, in the order in which it is first threaded, with all that are begun from it. */
const holesOf = ({ plan, contours }: CutFacts): readonly Hole[] => {
  const holes = new Map<string, Hole>();
  const add = (at: Hole['at'], diameter: number, origin: Hole['origin'], who: string): void => {
    const key = `${at.x} ${at.y}`;
    const before = holes.get(key);
    holes.set(key, {
      at,
      diameter,
      origin: before?.origin ?? origin,
      for: [...(before?.for ?? []), contour(who)],
    });
  };
  for (const c of contours)
    if (c.hole.origin !== 'block edge') add(c.hole.at, c.hole.diameter, c.hole.origin === 'placed' ? 'placed' : 'drawing', c.loop);
  for (const line of plan.openCuts ?? [])
    for (const end of [line.from, line.to])
      if (end.kind === 'hole') add(end.at, end.diameter, end.origin === 'placed' ? 'placed' : 'drawing', line.chain);
  return [...holes.values()];
};

const pairs = (facts: JobFacts, cut: CutFacts): readonly (readonly [Said, Said])[] => {
  const { datum, material } = facts.asked;
  const holes = holesOf(cut);
  return [
    [words.drawing, name(facts.head.drawingName)],
    [words.material, name(material.name)],
    [words.depth, words.through(cut.plan.height)],
    [words.holes, words.toDrill(holes.length, holes.filter((h) => h.origin === 'placed').length)],
    [words.from, datum === undefined ? words.zero : words.datum(datum)],
    ...(programOf(facts)?.scaled === undefined ? [] : [[words.temperature, words.scaled] as const]),
  ];
};

const picture = (facts: JobFacts): readonly WrittenBlock[] => {
  const drawn = planPicture(facts);
  return drawn === undefined ? [] : [{ kind: 'picture', picture: drawn, caption: words.caption }];
};

const tables = (facts: JobFacts, cut: CutFacts): readonly WrittenBlock[] => {
  const unit = controlUnit(facts);
  const { datum } = facts.asked;
  const holes = holesOf(cut);
  const lines = cut.plan.openCuts;
  const table: WrittenBlock = {
    kind: 'table',
    columns: [
      column(words.for, 2),
      column(term('X'), 1, 'right'),
      column(term('Y'), 1, 'right'),
      column(term('Ø'), 0.8, 'right'),
      column(words.hole, 1.4),
      column(words.done, 1),
    ],
    rows: holes.map((h) => [
      only(list(h.for)),
      ...placesOf(h.at, unit, datum),
      onBlock(h.diameter, unit),
      h.origin === 'placed' ? words.drill : words.drawn,
      term('________'),
    ]),
    note: words.units(unit),
  };
  return [
    { kind: 'heading', text: words.startHoles },
    ...(holes.length === 0 ? [{ kind: 'text', text: words.none } as const] : [table]),
    ...(lines === undefined ? [] : [{ kind: 'heading', text: words.openLines } as const, openTable(lines, unit, datum)]),
  ];
};

const words = phrases('hole-sheet', {
  title: say`Hole table`,
  foot: say`hole table`,
  notYet: (why: Text) => say`Do not drill yet. ${{ why }}`,
  drawing: say`Drawing`,
  material: say`Material`,
  depth: say`Depth`,
  through: (height: number) => say`through, ${{ depth: length(height) }}`,
  holes: say`Holes`,
  toDrill: (all: number, drilled: number) => say`${{ holes: count(all, 'hole') }}, ${{ drilled: count(drilled) }} to be drilled`,
  from: say`X and Y from`,
  zero: say`the drawing origin`,
  datum: ({ x, y }: Hole['at']) => say`the program zero, X ${{ x: bare(x, 'mm', upTo(3)) }}, Y ${{ y: length(y) }} of the drawing`,
  temperature: say`Temperature`,
  scaled: say`the program is scaled for temperature; holes by this table are close enough`,
  caption: say`Plan view, ${{ unit: unitName('mm') }}. Ring with cross: program zero, if in view. Start holes bear the names of the contours started from them.`,
  hole: say`Hole`,
  for: say`For`,
  done: say`Done`,
  drill: say`to be drilled`,
  drawn: say`as drawn`,
  units: ({ name: unit }: ControlUnit) => say`X, Y and Ø in ${{ unit: term(unit) }}.`,
  startHoles: say`Start holes`,
  none: say`No hole is needed: every contour starts from the block edge.`,
  openLines: say`Open lines`,
});

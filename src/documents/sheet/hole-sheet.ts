/** The hole table as a paper of its own: what is drilled into the block before it comes to the machine. */

import { controlUnit, type JobFacts, programOf } from '../../result/facts.ts';
import type { CutFacts } from '../../result/outcome-facts.ts';
import { counted, place } from '../../text/print/phrases.ts';
import { column, controlColumn, type Paper, type PaperBlock, subtitleOf } from '../paper.ts';
import { placesOf } from '../part/job-tables.ts';
import { openTable } from '../part/open-table.ts';
import { planPicture } from '../part/plan-picture.ts';

export const holeSheet = (facts: JobFacts, cut: CutFacts): Paper => ({
  title: 'Hole table',
  subtitle: subtitleOf(facts),
  foot: `${facts.head.name} · hole table · Kerfwright`,
  blocks: [
    ...(facts.outcome.answer === 'yes' ? [] : [{ kind: 'text', text: `Not to be drilled yet. ${facts.sentence}`, large: true } as const]),
    { kind: 'pairs', rows: pairs(facts, cut) },
    ...picture(facts),
    ...tables(facts, cut),
    { kind: 'list', items: ADVICE, marker: 'dash' },
  ],
});

/** Common practice, no source. */
const ADVICE: readonly string[] = [
  'Drill before the block is hardened, where the material allows it; in hard metal start holes are eroded.',
  'Through from face to face, clean and free of burrs and chips: a chip in the hole shorts the wire while it is threaded.',
  'Where the drill wanders, tell the number of the hole and by how much, so that the way in can be planned anew.',
];

interface Hole {
  readonly at: { readonly x: number; readonly y: number };
  readonly diameter: number;
  readonly origin: 'placed' | 'drawing';
  /** Numbers of the contours, or names of the open lines, as the picture has them. */
  readonly marks: readonly string[];
  readonly for: readonly string[];
}

/** Each hole once, in the order in which it is first threaded, with all that are begun from it. */
const holesOf = ({ plan, contours }: CutFacts): readonly Hole[] => {
  const holes = new Map<string, Hole>();
  const add = (at: Hole['at'], diameter: number, origin: Hole['origin'], who: string, mark: string): void => {
    const key = `${at.x} ${at.y}`;
    const before = holes.get(key);
    holes.set(key, {
      at,
      diameter,
      origin: before?.origin ?? origin,
      marks: [...(before?.marks ?? []), mark],
      for: [...(before?.for ?? []), who],
    });
  };
  for (const c of contours)
    if (c.hole.origin !== 'block edge')
      add(c.hole.at, c.hole.diameter, c.hole.origin === 'placed' ? 'placed' : 'drawing', c.loop, String(c.number));
  for (const line of plan.openCuts ?? [])
    for (const end of [line.from, line.to])
      if (end.kind === 'hole') add(end.at, end.diameter, end.origin === 'placed' ? 'placed' : 'drawing', line.chain, line.chain);
  return [...holes.values()];
};

const pairs = (facts: JobFacts, cut: CutFacts): readonly (readonly [string, string])[] => {
  const { datum, material } = facts.asked;
  const holes = holesOf(cut);
  const drilled = holes.filter((h) => h.origin === 'placed').length;
  return [
    ['Drawing', facts.head.drawingName],
    ['Material', material.name],
    ['Depth', `through, ${place(cut.plan.height)} mm`],
    ['Holes', `${counted(holes.length, 'hole')}, ${drilled} to be drilled`],
    [
      'X and Y from',
      datum === undefined ? 'the zero of the drawing' : `the datum, X ${place(datum.x)}, Y ${place(datum.y)} mm of the drawing`,
    ],
    ...(programOf(facts)?.scaled === undefined
      ? []
      : [['Temperature', 'the program is scaled for warmth; holes by this table are near enough'] as const]),
  ];
};

const picture = (facts: JobFacts): readonly PaperBlock[] => {
  const drawn = planPicture(facts);
  return drawn === undefined
    ? []
    : [
        {
          kind: 'picture',
          picture: drawn,
          caption: 'Plan view, mm. Ring with cross: datum, where it lies in view. Numbered: start holes.',
        },
      ];
};

const tables = (facts: JobFacts, cut: CutFacts): readonly PaperBlock[] => {
  const unit = controlUnit(facts);
  const { datum } = facts.asked;
  const holes = holesOf(cut);
  const lines = cut.plan.openCuts;
  const table: PaperBlock = {
    kind: 'table',
    columns: [
      column('No.', 0.6),
      controlColumn('X', 1),
      controlColumn('Y', 1),
      controlColumn('Ø', 0.8),
      column('Hole', 1.4),
      column('For', 2),
      column('Done', 1),
    ],
    rows: holes.map((h) => [
      h.marks.join(', '),
      ...placesOf(h.at, unit, datum),
      place(h.diameter, unit),
      h.origin === 'placed' ? 'to be drilled' : 'as drawn',
      h.for.join(', '),
      '________',
    ]),
    note: `X, Y and Ø in ${unit.name}.`,
  };
  return [
    { kind: 'heading', text: 'Start holes' },
    ...(holes.length === 0
      ? [{ kind: 'text', text: 'No hole is needed: everything is begun from the edge of the block.' } as const]
      : [table]),
    ...(lines === undefined ? [] : [{ kind: 'heading', text: 'Open lines' } as const, openTable(lines, unit, datum)]),
  ];
};

/** One quantity is one leaf: in no example does the same thing go into a figure under two keys, or as two leaves whose ranges add up. */

import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { jobRun } from '../src/cli/inputs.ts';
import { answered } from '../src/job/answered.fixture.ts';
import { builtInShop } from '../src/job/built-in-shop.ts';
import { type Figure, given } from '../src/quantity/figure.ts';
import { saidBy, saidOf } from '../src/quantity/source.ts';
import { printSource } from '../src/text/print/explain.ts';
import { printPlain } from '../src/text/print/print.ts';
import { layNest } from '../tools/goldens/examples.ts';

const JOBS = (readdirSync('examples', { recursive: true, encoding: 'utf8' }) as string[])
  .filter((f) => /^[\w-]+\/[\w-]+\.job\.json$/.test(f))
  .map((f) => `examples/${f}`)
  .toSorted();

/** All leaves of figures: what nothing was put into, and what moves them. */
const leavesOf = (figures: Iterable<Figure>): ReadonlySet<Figure> => {
  const leaves = new Set<Figure>();
  const seen = new Set<Figure>();
  const visit = (figure: Figure): void => {
    if (seen.has(figure)) return;
    seen.add(figure);
    if (figure.from.length === 0) leaves.add(figure);
    for (const leaf of figure.shares.keys()) leaves.add(leaf);
    figure.from.forEach(visit);
  };
  for (const figure of figures) visit(figure);
  return leaves;
};

/** What a leaf is about, by its key; wires and machines are named by its source. */
const subjectOf = ({ key }: Figure): string => /^(contour|correct|nest\.piece|other|job\.quantity)\.[^.]+/.exec(key)?.[0] ?? 'job';

const quantityOf = (leaf: Figure): string => `${subjectOf(leaf)}: ${printPlain(leaf.name)}, ${leaf.unit}, ${printSource(leaf.source)}`;

/** Quantities under several keys, and those that come as several leaves although they are not exact. */
const doubles = (figures: Iterable<Figure>): readonly string[] => {
  const groups = new Map<string, Figure[]>();
  for (const leaf of leavesOf(figures)) groups.set(quantityOf(leaf), [...(groups.get(quantityOf(leaf)) ?? []), leaf]);
  return [...groups].flatMap(([quantity, leaves]) => {
    const keys = [...new Set(leaves.map((leaf) => leaf.key))];
    const uncertain = leaves.filter((leaf) => leaf.shares.size > 0);
    if (keys.length > 1) return [`${quantity}: ${keys.join(', ')}`];
    return uncertain.length > 1 ? [`${quantity}: ${uncertain.length} leaves`] : [];
  });
};

/** Who may stand behind each basis; files in sources/ by what their pages say. */
const BEHIND: Readonly<Record<string, RegExp>> = {
  drawing: /^(the drawing|the outlines of )/,
  job: /^(the job|the requirements)$/,
  counted: /^the (plan|program|program as read back|pass planner)$/,
  assumed: /^(starting model|common practice|material-handbooks|zeng-kim|invented rates, not set|.*built in.*)$/,
  'common practice': /^common practice$/,
  published: /^[a-z0-9-]+$/,
};

/** Leaves whose basis and source do not go together, and what is said to be of the shop. */
const basesOf = (figures: Iterable<Figure>): { readonly untrue: readonly string[]; readonly shop: readonly string[] } => {
  const leaves = [...leavesOf(figures)].filter((leaf) => leaf.basis !== 'computed');
  const said = leaves.map((leaf) => ({ basis: leaf.basis, by: printSource(leaf.source), key: leaf.key }));
  return {
    untrue: said
      .filter(({ basis, by }) => basis !== 'shop' && BEHIND[basis]?.test(by) !== true)
      .map((s) => `${s.key}: ${s.basis}, ${s.by}`),
    shop: said.filter(({ basis }) => basis === 'shop').map((s) => `${s.key}: ${s.by}`),
  };
};

describe('the basis of a leaf', () => {
  it.each(JOBS)('is true in %s', (path) => {
    const run = jobRun(path, {}, '2026-11-25');
    const { untrue, shop } = basesOf(answered(run).figures.values());
    expect(untrue).toEqual([]);
    expect(shop.filter((line) => line.includes('built in'))).toEqual([]);
  });

  it('is no shop where nobody set one, and the height is asked for once', () => {
    const run = { ...jobRun('examples/die-plate/die-plate.job.json', {}, '2026-11-25'), shop: builtInShop };
    const figures = [...answered(run).figures.values()];
    expect(basesOf(figures)).toEqual({ untrue: [], shop: [] });
    const heights = [...leavesOf(figures)].filter((leaf) => /height of the work/.test(printPlain(leaf.name)));
    expect([...new Set(heights.map((h) => `${h.key} ${h.basis} ${printSource(h.source)}`))]).toEqual(['job.height job the job']);
  });
});

describe('leaves', () => {
  it.each(JOBS)('of %s are one for each quantity', (path) => {
    expect(doubles(answered(jobRun(path, {}, '2026-11-25')).figures.values())).toEqual([]);
  });

  it('of what was laid on a plate are one for each quantity', () => {
    const { answer } = layNest('examples/mixed-plate/mixed-plate.nest.json');
    const { plateMass, piecesMass, scrapMass, rows } = answer.facts;
    const shares = rows.flatMap(({ mass, share }) => (share === undefined ? [mass] : [mass, share]));
    expect(doubles([plateMass, piecesMass, scrapMass, ...shares])).toEqual([]);
  });

  it('that are the same twice are found: under another key, and as another leaf of the same', () => {
    const speed = { name: saidOf('speed'), value: 8, unit: 'm/min', deviation: 0.8, basis: 'shop', source: saidBy.shopFile } as const;
    const [one, again, other] = ['wire.speed', 'wire.speed', 'cut.speed'].map((key) => given({ key, ...speed })) as [
      Figure,
      Figure,
      Figure,
    ];
    expect(doubles([one, one])).toEqual([]);
    expect(doubles([one, again])).toEqual(['job: speed, m/min, the shop file: 2 leaves']);
    expect(doubles([one, other])).toEqual(['job: speed, m/min, the shop file: wire.speed, cut.speed']);
  });
});

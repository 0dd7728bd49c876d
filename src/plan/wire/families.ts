/**
 * Families of passes: contours that are asked different things get registers and energy settings of their own, D1 to D4 and D11 to D14.
 * Requirements that the same passes meet share a family.
 */

import type { LadderRow } from '../../physics/cut/pass-rows.ts';
import type { Figure } from '../../quantity/figure.ts';
import { firstItem, isFilled, itemAt, mapFilled, type NonEmpty } from '../../sequence/sequence.ts';
import type { Finding } from '../../text/finding.ts';
import { term } from '../../text/part.ts';
import { say } from '../../text/say.ts';
import { find } from '../findings.ts';
import type { PlanQuestion, Requirement } from '../question.ts';
import { kerfOf, type RoughCut, reachOf } from '../rough-cut.ts';

/** Loops and lines that are asked the same. */
export interface AskedClass {
  readonly loops: readonly string[];
  readonly asked: Requirement;
  /** None of them is asked anything of its own: it is what the whole job asks. */
  readonly ofJob: boolean;
}

/** Passes that run on the contours of one or more classes. */
export interface Family {
  readonly classes: NonEmpty<AskedClass>;
  /** Numbered within the whole plan. */
  readonly rows: NonEmpty<LadderRow>;
  /** What is added to the number of a pass within its family: 0 for the first, 10 for the second. */
  readonly base: number;
  readonly minutes: number;
  readonly short?: number | undefined;
  /** mm by which a last register set by hand moves the finished face. */
  readonly shift?: Figure | undefined;
}

/** What of the question a contour, or line, is judged by. */
export const askedOf = (question: PlanQuestion, id: string): PlanQuestion => {
  const own = requirementOf(question, id);
  return own === undefined ? question : { ...question, ...own };
};

/** Only own keys of the record say something. */
export const requirementOf = ({ requirements = {} }: Pick<PlanQuestion, 'requirements'>, id: string): Requirement | undefined =>
  Object.hasOwn(requirements, id) ? requirements[id] : undefined;

/** What the job asks of contours that are asked nothing of their own first, then by the first contour of each; with no contour at all what the job asks. */
export const classesOf = (question: PlanQuestion, ids: readonly string[]): NonEmpty<AskedClass> => {
  const { finish, tolerance, passes, offsets } = question;
  const ofJob = { asked: { finish, tolerance, passes, offsets }, ofJob: true };
  const classes = new Map<string, { loops: string[]; asked: Requirement; ofJob: boolean }>();
  for (const id of ids) {
    const own = requirementOf(question, id);
    const key = own === undefined ? '' : requirementKey(own);
    const known = classes.get(key);
    if (known !== undefined) known.loops.push(id);
    else classes.set(key, { loops: [id], ...(own === undefined ? ofJob : { asked: own, ofJob: false }) });
  }
  const sorted = [...classes.values()].toSorted((a, b) => Number(b.ofJob) - Number(a.ofJob));
  return isFilled(sorted) ? sorted : [{ loops: [], ...ofJob }];
};

/** Equal for loops that are asked the same; empty where nothing of its own is asked. */
export const requirementKey = ({ finish, tolerance, recast, passes, offsets }: Requirement): string =>
  JSON.stringify([finish, tolerance, recast ?? 0, passes ?? 0, offsets ?? []]);

type Laddered = Omit<Family, 'classes' | 'base'> & { readonly of: AskedClass };

/** One family for all classes whose passes are the same; numbers of their own from the second on. */
export const familiesOf = (laddered: NonEmpty<Laddered>): NonEmpty<Family> => {
  const alike = new Map<string, { classes: [AskedClass, ...AskedClass[]]; first: Laddered }>();
  for (const one of laddered) {
    const key = JSON.stringify(one.rows.map((r) => [r.energy.value, r.gap.value, r.offset.value, r.feed.value]));
    const known = alike.get(key);
    if (known === undefined) alike.set(key, { classes: [one.of], first: one });
    else known.classes.push(one.of);
  }
  const all = [...alike.values()];
  const step = Math.max(...all.map(({ first }) => first.rows.length)) >= STEP ? 2 * STEP : STEP;
  const families = all.map(
    ({ classes, first: { of: _, ...first } }, i): Family => ({ ...inFamily(first, i * step), classes, base: i * step }),
  );
  return families as unknown as NonEmpty<Family>;
};

/** From the first register of one family to that of the next. */
const STEP = 10;

/** Numbers of registers and energy settings have three digits at most. */
const LARGEST = 999;

/** Where there are more families than a program can name registers for. */
export const familyFindings = (families: readonly Family[]): readonly Finding[] => {
  const largest = Math.max(...families.flatMap((f) => f.rows.map((r) => r.number)));
  if (largest <= LARGEST) return [];
  return [
    find(
      'families-too-many',
      say`The contours ask so many different things that register ${{ register: term(`D${largest}`) }} would be needed; ${{ last: term(`D${LARGEST}`) }} is the last there is.`,
      { remedy: say`Ask the same of contours that can have the same.` },
    ),
  ];
};

/** The same passes under other numbers, and their figures under other keys. */
const inFamily = <T extends Pick<Family, 'rows' | 'shift'>>(passes: T, base: number): T => {
  if (base === 0) return passes;
  const { rows, shift } = passes;
  const known = new Map<Figure, Figure>();
  const renamed = (figure: Figure): Figure => {
    const done = known.get(figure);
    if (done !== undefined) return done;
    const from = figure.from.map(renamed);
    const number = /^pass\.(\d+)\./.exec(figure.key)?.[1];
    const isChanged = number !== undefined || from.some((f, i) => f !== figure.from[i]);
    const key = number === undefined ? `${figure.key}.${base + 1}` : figure.key.replace(number, String(Number(number) + base));
    const name = say('family.figure')`${{ figure: figure.name }}, registers from ${{ first: term(`D${base + 1}`) }}`;
    const shares = new Map<Figure, number>();
    const made: Figure = isChanged ? { ...figure, key, name, from, shares } : figure;
    known.set(figure, made);
    if (isChanged) for (const [leaf, share] of figure.shares) shares.set(renamed(leaf), share);
    return made;
  };
  const renumbered = mapFilled(rows, (row) => ({
    number: row.number + base,
    energy: renamed(row.energy),
    gap: renamed(row.gap),
    taken: renamed(row.taken),
    stock: renamed(row.stock),
    offset: renamed(row.offset),
    feed: renamed(row.feed),
    areaRate: renamed(row.areaRate),
    ra: renamed(row.ra),
    damage: renamed(row.damage),
    recast: renamed(row.recast),
    formError: renamed(row.formError),
  }));
  return { ...passes, rows: renumbered, shift: shift && renamed(shift) };
};

/** What all families of a wire are kept in. */
export interface WithFamilies {
  readonly families: NonEmpty<Family>;
}

/** The family that cuts a contour or line. */
export const familyOf = ({ families }: WithFamilies, id: string): Family =>
  families.length === 1 ? families[0] : (families.find((f) => f.classes.some((c) => c.loops.includes(id))) ?? firstItem(families));

/** The row of a pass by its number in the plan. */
export const rowOf = ({ families }: WithFamilies, number: number): LadderRow =>
  itemAt(
    families.flatMap((f) => f.rows.filter((r) => r.number === number)),
    0,
  );

/** Of the rough cuts of all families what reaches furthest: what keeps clear of it keeps clear of all. */
export const widestOf = <T extends WithFamilies & Pick<RoughCut, 'wire'>>({
  wire,
  families,
}: T): { readonly kerf: number; readonly reach: number } => ({
  kerf: Math.max(...families.map(({ rows }) => kerfOf({ wire, rows }))),
  reach: Math.max(...families.map(({ rows }) => reachOf({ wire, rows }))),
});

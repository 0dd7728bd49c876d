/** What a job says of single contours, for the loops of this drawing: the more exact key overrules, and what was put on a contour finds it again. */
import type { Drawing, Loop } from '../../drawing/drawing.ts';
import type { Requirement } from '../../plan/question.ts';
import { atField, type Finding, remedy } from '../../text/finding.ts';
import { contour, count, name, quantity, term, upTo } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import type { ContourInput } from '../contour-schema.ts';
import { find } from '../findings.ts';
import type { Job } from '../job.ts';
import { fingerprintOf, foundAgain } from './contour-shape.ts';
import { type Aim, aimOf, limitsOfSize } from './contour-size.ts';

export interface ContoursAsked {
  /** With what is set of single contours where the planner looks for it. */
  readonly job: Job;
  /** Complete, by id of loop or line; only of those that are asked something else than the job asks. */
  readonly requirements?: Readonly<Record<string, Requirement>> | undefined;
  /** Sizes by loop id, and where their middle lies. */
  readonly aims: ReadonlyMap<string, Aim>;
  readonly findings: readonly Finding[];
}

export const contoursAsked = (job: Job, drawing: Drawing): ContoursAsked => {
  const { contours } = job;
  if (contours === undefined || Object.keys(contours).length === 0) return { job, aims: new Map(), findings: [] };
  const { own, findings } = byContour(contours, drawing);
  const aims = new Map<string, Aim>();
  const sizeFindings: Finding[] = [];
  const requirements: Record<string, Requirement> = {};
  for (const [id, { input, key }] of own) {
    const sized = sizedOf(input, id, key, drawing);
    if (sized.aim !== undefined) aims.set(id, sized.aim);
    sizeFindings.push(...sized.findings);
    const asked = requirementOf(input, sized.aim, job);
    if (asked !== undefined) requirements[id] = asked;
  }
  return {
    job: withSettings(job, own),
    requirements: Object.keys(requirements).length === 0 ? undefined : requirements,
    aims,
    findings: [...findings, ...sizeFindings],
  };
};

interface Own {
  readonly input: ContourInput;
  /** The most exact key that says something of it. */
  readonly key: string;
}

const LAYER = 'layer:';
const LIKE = 'like:';

/** Layers first, then shapes, then ids, so that the more exact overrules field by field. */
const byContour = (
  contours: NonNullable<Job['contours']>,
  drawing: Drawing,
): { readonly own: ReadonlyMap<string, Own>; readonly findings: readonly Finding[] } => {
  const rank = (key: string): number => (key.startsWith(LAYER) ? 0 : key.startsWith(LIKE) ? 1 : 2);
  const own = new Map<string, Own>();
  const findings: Finding[] = [];
  for (const [key, input] of Object.entries(contours).toSorted(([a], [b]) => rank(a) - rank(b))) {
    const meant = meantBy(key, input, drawing);
    findings.push(...meant.findings);
    for (const id of meant.ids) own.set(id, { input: overruled(own.get(id)?.input, input), key });
  }
  return { own, findings };
};

/** A size and a tolerance say the same thing: the more exact key has it, whichever of the two it gives. Passes and registers go together likewise. */
const overruled = (wider: ContourInput = {}, exact: ContourInput): ContourInput => {
  const { size, tolerance, passes, offsets, ...rest } = wider;
  const limits = exact.size !== undefined || exact.tolerance !== undefined ? {} : { size, tolerance };
  const run = exact.passes !== undefined || exact.offsets !== undefined ? {} : { passes, offsets };
  return { ...rest, ...limits, ...run, ...exact };
};

interface Meant {
  readonly ids: readonly string[];
  readonly findings: readonly Finding[];
}

const meantBy = (key: string, input: ContourInput, drawing: Drawing): Meant => {
  if (key.startsWith(LAYER)) {
    const layer = key.slice(LAYER.length);
    const on = [...drawing.loops, ...drawing.openChains].filter((l) => l.layer === layer && !l.hidden);
    return on.length === 0 ? { ids: [], findings: [notFound(key, words.noLayer(layer))] } : { ids: on.map((l) => l.id), findings: [] };
  }
  const id = key.startsWith(LIKE) ? key.slice(LIKE.length) : key;
  if (key === id && drawing.openChains.some((c) => c.id === id)) return { ids: [id], findings: [] };
  const found = foundAgain(id, input.on, drawing.loops);
  if (found.kind === 'lost')
    return { ids: [], findings: [notFound(key, input.on === undefined ? words.noLoop(id) : words.notAgain(id, found.alike))] };
  const again = found.kind === 'again' ? [foundNote(key, id, found.id)] : [];
  return { ids: key === id ? [found.id] : likeOf(found.id, drawing), findings: again };
};

const likeOf = (id: string, { loops }: Drawing): readonly string[] => {
  const first = loops.find((l) => l.id === id);
  if (first === undefined) return [];
  const print = fingerprintOf(first.contour);
  return loops.filter((l) => fingerprintOf(l.contour) === print).map((l) => l.id);
};

const notFound = (key: string, why: Text): Finding =>
  find(
    'contour-not-found',
    say`What ${{ field: term(`contours.${key}`) }} requires applies to no contour of this drawing: ${{ why }}. Should it still be held, and on which?`,
    {
      place: atField(`contours.${key}`),
      remedy: remedy(say`Put it on the contour that it is meant for, or take it out.`, { field: `contours.${key}` }),
    },
  );

const foundNote = (key: string, was: string, now: string): Finding =>
  find(
    'contour-found-again',
    say`What ${{ field: term(`contours.${key}`) }} requires was put on a contour named ${{ was: contour(was) }} then; by its shape it is ${{ now: contour(now) }} now, and applies there.`,
    { place: atField(`contours.${key}`) },
  );

const sizedOf = (
  { size }: ContourInput,
  id: string,
  key: string,
  drawing: Drawing,
): { readonly aim?: Aim | undefined; readonly findings: readonly Finding[] } => {
  if (size === undefined) return { findings: [] };
  const place = atField(`contours.${key}.size`);
  const unusable = (why: Text): Finding =>
    find('contour-size-unusable', say`${{ loop: contour(id) }}: ${{ why }}.`, {
      place,
      remedy: remedy(say`Correct the size or the drawing.`, { field: `contours.${key}.size` }),
    });
  const limits = limitsOfSize(size);
  if (limits.kind === 'unknown') return { findings: [unusable(words.zone(limits.reason))] };
  const loop = drawing.loops.find((l) => l.id === id);
  if (loop === undefined) return { findings: [unusable(words.openLine(limits.limits.called))] };
  const { aim, nearest } = aimOf(limits.limits, loop.contour);
  if (aim === undefined) return { findings: [unusable(words.unlike(limits.limits.called, nearest))] };
  return { aim, findings: [aimNote(loop, aim, key)] };
};

const aimNote = ({ id }: Loop, { called, nominal, lower, upper, aimed, moved }: Aim, key: string): Finding => {
  const limits = words.limits(nominal + lower, nominal + upper);
  const way = moved === 0 ? words.asDrawn : (moved > 0 ? words.outward : words.inward)(Math.abs(moved) * 1000);
  return find(
    'contour-aimed',
    say`${{ loop: contour(id) }}: ${{ size: name(called) }} is ${{ limits }}; aimed at ${{ aimed: quantity(aimed, 'mm', EXACT) }}, ${{ way }}.`,
    { place: atField(`contours.${key}.size`) },
  );
};

const EXACT = upTo(4);
const HUNDREDTHS = upTo(2);

/** None where it asks just what the job asks. */
const requirementOf = (input: ContourInput, aim: Aim | undefined, job: Job): Requirement | undefined => {
  const ownRun = input.passes !== undefined || input.offsets !== undefined;
  const offsets = ownRun ? input.offsets : job.offsets;
  const asked: Requirement = {
    finish: input.finish ?? job.finish,
    tolerance: aim?.tolerance ?? input.tolerance ?? job.tolerance,
    recast: input.recast,
    passes: ownRun ? input.passes : job.passes,
    offsets: offsets === undefined || offsets.length === 0 ? undefined : offsets,
  };
  const same =
    asked.finish === job.finish && asked.tolerance === job.tolerance && asked.recast === undefined && (!ownRun || isJobs(asked, job));
  return same ? undefined : asked;
};

const isJobs = ({ passes, offsets = [] }: Requirement, job: Job): boolean =>
  passes === job.passes && JSON.stringify(offsets) === JSON.stringify(job.offsets ?? []);

const withSettings = (job: Job, own: ReadonlyMap<string, Own>): Job => {
  const pick = <K extends 'kept' | 'start' | 'core'>(key: K): Job[K] =>
    Object.fromEntries([
      ...[...own].flatMap(([id, { input }]) => (input[key] === undefined ? [] : [[id, input[key]]])),
      ...Object.entries(job[key]),
    ]) as Job[K];
  const set = [...own].filter(([, { input: i }]) => i.entry !== undefined || i.hole !== undefined || i.tab !== undefined);
  const overrides = set.map(
    ([
      id,
      {
        input: { entry, hole, tab },
      },
    ]) => {
      const before = Object.hasOwn(job.overrides, id) ? job.overrides[id] : undefined;
      return [id, { entry: entry ?? before?.entry, hole: hole ?? before?.hole, tab: tab ?? before?.tab }] as const;
    },
  );
  return {
    ...job,
    kept: pick('kept'),
    start: pick('start'),
    core: pick('core'),
    overrides: { ...job.overrides, ...Object.fromEntries(overrides) },
  };
};

const words = phrases('contours', {
  noLayer: (layer: string) => say`nothing is drawn on layer ${{ layer: name(layer) }}`,
  noLoop: (id: string) => say`it has no ${{ loop: contour(id) }}`,
  notAgain: (id: string, alike: number) =>
    alike === 0
      ? say('contours.gone')`the shape that was ${{ loop: contour(id) }} is not in it`
      : say(
          'contours.several',
        )`the shape that was ${{ loop: contour(id) }} is in it ${{ alike: count(alike) }} times, and none where it was`,
  zone: (reason: string) => say`${{ reason: name(reason) }}`,
  openLine: (size: string) => say`${{ size: name(size) }} is asked of an open line, which has no size across it`,
  unlike: (size: string, nearest: number) =>
    say`${{ size: name(size) }} is required, and the nearest size across it is ${{ nearest: quantity(nearest, 'mm', EXACT) }}`,
  limits: (low: number, high: number) => say`${{ low: quantity(low, 'mm', EXACT) }} to ${{ high: quantity(high, 'mm', EXACT) }}`,
  asDrawn: say`as it is drawn`,
  outward: (by: number) => say`the contour moved ${{ by: quantity(by, 'µm', HUNDREDTHS) }} a side outward`,
  inward: (by: number) => say`the contour moved ${{ by: quantity(by, 'µm', HUNDREDTHS) }} a side inward`,
});

/** What-ifs about the wire path, for a job that is planned: slugs cut away or left whole, outside corners without their loops. */
import type { ContourPlan, CutPlan } from '../../plan/plan.ts';
import { contour, count, list, type Part } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import type { Job } from '../job.ts';
import type { WhatIf } from './what-if.ts';

/** Slugs larger than this, mm², are not cut without a core: it takes many times the way round them. Our own rule. */
const SMALL = 100;
/** Openings that are named one by one. */
const NAMED = 3;

export const pathChanges = (job: Job, plan: CutPlan): readonly WhatIf[] => [...cores(job, plan), ...outside(job)];

const cores = (job: Job, { contours }: CutPlan): readonly WhatIf[] => {
  const openings = contours.filter((c) => c.kept === 'die');
  const noCore = openings.filter((c) => c.core !== undefined);
  const small = openings.filter((c) => c.core === undefined && c.hole.origin !== 'block edge' && c.piece.area < SMALL);
  return [...changed(job, noCore, 'slug', words.slug), ...changed(job, small, 'no-core', words.noCore)];
};

const changed = (
  job: Job,
  which: readonly ContourPlan[],
  choice: Job['core'][string],
  sentence: (loops: Part) => Text,
): readonly WhatIf[] =>
  which.length === 0
    ? []
    : [
        {
          kind: 'core',
          sentence: sentence(namesOf(which)),
          job: { core: { ...job.core, ...Object.fromEntries(which.map((c) => [c.loop, choice])) } },
        },
      ];

const namesOf = (which: readonly ContourPlan[]): Part => {
  const names = which.slice(0, NAMED).map((c) => contour(c.loop));
  const more = which.length - names.length;
  return list(more > 0 ? [...names, words.more(more)] : names, 'and');
};

const words = phrases('what-if-path', {
  slug: (loops: Part) => say`Slugs of ${{ loops }} cut whole and taken out, instead of a no-core cut`,
  noCore: (loops: Part) => say`No-core cut of ${{ loops }}, with no slug to take out`,
  more: (more: number) => say`${{ more: count(more) }} more`,
  control: say`Sharp outside corners as the control rounds them, instead of a loop at each`,
});

const outside = ({ outsideCorners }: Job): readonly WhatIf[] =>
  outsideCorners === 'control'
    ? []
    : [
        {
          kind: 'outside corners',
          sentence: words.control,
          job: { outsideCorners: 'control' },
        },
      ];

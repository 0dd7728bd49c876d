/** What-ifs about the way of the wire, for a job that is planned: slugs burnt away or left whole, outside corners without their loops. */
import type { ContourPlan, CutPlan } from '../../plan/plan.ts';
import type { Job } from '../job.ts';
import type { WhatIf } from './what-if.ts';

/** Slugs larger than this, mm², are not burnt out: it takes many times the way round them. Our own rule. */
const SMALL = 100;
/** Openings that are named one by one. */
const NAMED = 3;

export const pathChanges = (job: Job, plan: CutPlan): readonly WhatIf[] => [...cores(job, plan), ...outside(job)];

const cores = (job: Job, { contours }: CutPlan): readonly WhatIf[] => {
  const openings = contours.filter((c) => c.kept === 'die');
  const burnt = openings.filter((c) => c.core !== undefined);
  const small = openings.filter((c) => c.core === undefined && c.hole.origin !== 'block edge' && c.piece.area < SMALL);
  return [
    ...changed(job, burnt, 'slug', (names) => `The slugs of ${names} left whole and taken out, instead of burnt away`),
    ...changed(job, small, 'burn', (names) => `${names} burnt out whole, with no slug that somebody must take out`),
  ];
};

const changed = (
  job: Job,
  which: readonly ContourPlan[],
  choice: Job['core'][string],
  sentence: (names: string) => string,
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

const namesOf = (which: readonly ContourPlan[]): string => {
  const names = which.slice(0, NAMED).map((c) => c.loop);
  const more = which.length - names.length;
  const all = more > 0 ? [...names, `${more} more`] : names;
  return all.length === 1 ? String(all[0]) : `${all.slice(0, -1).join(', ')} and ${all.at(-1)}`;
};

const outside = ({ outsideCorners }: Job): readonly WhatIf[] =>
  outsideCorners === 'control'
    ? []
    : [
        {
          kind: 'outside corners',
          sentence: 'Sharp outside corners as the control goes round them, instead of a loop at each',
          job: { outsideCorners: 'control' },
        },
      ];

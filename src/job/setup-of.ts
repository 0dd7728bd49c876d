/** The set-up file of a program that has just been written. */
import type { Material } from '../physics/material.ts';
import { slitOf } from '../plan/block-edge.ts';
import type { Plan } from '../plan/plan.ts';
import type { JobRun, Written } from './run.ts';
import { cornersOf, recordOf, type SetupFile } from './setup-file.ts';
import type { Wish } from './wish.ts';

export const setupOf = (run: JobRun, wish: Wish, plan: Plan, material: Material, written: Written): SetupFile => ({
  wireDiameter: plan.wire.diameter,
  registers: recordOf(written.registers),
  gaps: recordOf(written.gaps),
  ...(wish.blockLoop === undefined ? { block: cornersOf(plan.block) } : { blockLoop: wish.blockLoop.id }),
  holes: holesOf(plan),
  kept: Object.fromEntries(wish.wanted.map((w) => [w.loop, w.kept])),
  ...(wish.lines.length === 0 ? {} : { open: Object.fromEntries(wish.lines.map((l) => [l.id, l.kept])) }),
  ...leadsOf(plan),
  ease: run.job.ease,
  height: plan.height,
  density: material.density.value,
  tolerance: run.job.tolerance,
  insideCorner: run.job.insideCorner,
  ...(run.job.units === undefined ? {} : { units: run.job.units }),
  join: run.job.join,
  dialect: run.dialect,
});

/** Slits besides the lines themselves: of openings begun from the edge of the block, and of slits that begin away from their line. */
const leadsOf = (plan: Plan): Pick<SetupFile, 'leads'> => {
  const leads = [...plan.contours.map(slitOf), ...(plan.openCuts ?? []).flatMap((o) => o.leads)].filter((l) => l !== undefined);
  return leads.length === 0 ? {} : { leads: leads.map(({ from, to }) => ({ from: { x: from.x, y: from.y }, to: { x: to.x, y: to.y } })) };
};

/** Each hole once, also where two contours share it; a start from the block's edge needs none. */
const holesOf = (plan: Plan): SetupFile['holes'] => {
  const holes = new Map<string, SetupFile['holes'][number]>();
  const ends = (plan.openCuts ?? []).flatMap((o) => [o.from, o.to].filter((e) => e.kind === 'hole'));
  for (const { at, diameter } of [...plan.contours.map((c) => c.hole).filter((h) => h.origin !== 'block edge'), ...ends])
    holes.set(`${at.x} ${at.y}`, { at: { x: at.x, y: at.y }, diameter });
  return [...holes.values()];
};

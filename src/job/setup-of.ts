/** The set-up file of a program that has just been written. */
import type { Material } from '../physics/material.ts';
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
  ease: run.job.ease,
  height: plan.height,
  density: material.density.value,
  tolerance: run.job.tolerance,
  insideCorner: run.job.insideCorner,
  dialect: run.dialect,
});

/** Each hole once, also where two contours share it; a start from the block's edge needs none. */
const holesOf = (plan: Plan): SetupFile['holes'] => {
  const holes = new Map<string, SetupFile['holes'][number]>();
  for (const { hole } of plan.contours) {
    if (hole.origin !== 'block edge')
      holes.set(`${hole.at.x} ${hole.at.y}`, { at: { x: hole.at.x, y: hole.at.y }, diameter: hole.diameter });
  }
  return [...holes.values()];
};

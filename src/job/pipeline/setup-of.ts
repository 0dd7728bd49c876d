/** The set-up file of a program that has just been written. */
import type { Point } from '../../geometry/segment.ts';
import { scaling, transformPoint } from '../../geometry/transform.ts';
import type { Material } from '../../physics/material/material.ts';
import type { CutPlan } from '../../plan/plan.ts';
import { slitOf } from '../../plan/start/block-edge.ts';
import { strengthOf } from '../../plan/start/tab.ts';
import { cornersOf, recordOf, type SetupFile } from '../files/setup-file.ts';
import type { JobRun } from '../job-run.ts';
import type { CutRequest } from '../request/request.ts';
import { asDrawn, type Scaled } from '../request/scale.ts';
import type { Written } from './outcomes.ts';

export const setupOf = (run: JobRun, request: CutRequest, plan: CutPlan, material: Material, written: Written): SetupFile => ({
  wireDiameter: plan.wire.diameter,
  registers: recordOf(written.registers),
  gaps: recordOf(written.gaps),
  passes: [...written.gaps.keys()],
  ...(request.blockLoop === undefined ? { block: cornersOf(asDrawn(plan.block, request.scaled)) } : { blockLoop: request.blockLoop.id }),
  holes: holesOf(plan, request.scaled),
  kept: Object.fromEntries(request.wanted.map((w) => [w.loop, w.kept])),
  open: request.lines.length === 0 ? undefined : Object.fromEntries(request.lines.map((l) => [l.id, l.kept])),
  contours: contoursOf(plan, request),
  ...leadsOf(plan, request.scaled),
  ease: run.job.ease,
  scaled: request.scaled === undefined ? undefined : scaledTold(request.scaled),
  datum: request.datum,
  height: plan.height,
  density: material.density.value,
  strength: strengthOf(material.family),
  tolerance: run.job.tolerance,
  programShare: run.job.programShare,
  insideCorner: run.job.insideCorner,
  units: run.job.units,
  join: run.job.join,
  dialect: run.dialect,
});

/** What of single contours is not as the file says of all of them; left out where all are alike. */
const contoursOf = ({ classes }: CutPlan, { aims }: CutRequest): SetupFile['contours'] => {
  const own = (classes ?? []).flatMap(({ loops, asked, passes }) =>
    loops.map((id) => [id, { tolerance: asked.tolerance, passes: passes.map((p) => p.condition), moved: aims?.get(id)?.moved }] as const),
  );
  const alone = [...(aims ?? [])].filter(([id]) => !own.some(([known]) => known === id)).map(([id, { moved }]) => [id, { moved }] as const);
  return own.length + alone.length === 0 ? undefined : Object.fromEntries([...own, ...alone]);
};

/** Slits besides the lines themselves: of openings begun from the edge of the block, and of slits that begin away from their line. */
const leadsOf = (plan: CutPlan, scaled: Scaled | undefined): Pick<SetupFile, 'leads'> => {
  const leads = [...plan.contours.map(slitOf), ...(plan.openCuts ?? []).flatMap((o) => o.leads)].filter((l) => l !== undefined);
  return leads.length === 0 ? {} : { leads: leads.map(({ from, to }) => ({ from: drawnAt(from, scaled), to: drawnAt(to, scaled) })) };
};

/** Each hole once, also where two contours share it; a start from the block's edge needs none. */
const holesOf = (plan: CutPlan, scaled: Scaled | undefined): SetupFile['holes'] => {
  const holes = new Map<string, SetupFile['holes'][number]>();
  const ends = (plan.openCuts ?? []).flatMap((o) => [o.from, o.to].filter((e) => e.kind === 'hole'));
  for (const { at, diameter } of [...plan.contours.map((c) => c.hole).filter((h) => h.origin !== 'block edge'), ...ends])
    holes.set(`${at.x} ${at.y}`, { at: drawnAt(at, scaled), diameter });
  return [...holes.values()];
};

/** Places of the plan are those of the warm block; the file tells them as they are drawn and drilled, at 20 °C. */
const drawnAt = ({ x, y }: Point, scaled: Scaled | undefined): { x: number; y: number } =>
  scaled === undefined ? { x, y } : transformPoint(scaling(1 / scaled.factor, scaled.about), { x, y });

const scaledTold = ({ factor, expansion, temperature }: Scaled) => ({ factor, expansion, temperature });

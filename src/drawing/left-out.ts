/** What of a drawing is taken as the work: without what is no part of it, by layer, by name, or because it was proposed and nobody objected. */
import { distanceTo } from '../geometry/near/distance.ts';
import type { Finding } from '../text/finding.ts';
import { contoursIn } from '../text/within.ts';
import type { Drawing, Loop } from './drawing.ts';

/** What was said of the loops of a drawing. */
export interface SaidOfLoops {
  /** Only these are taken. */
  readonly layers?: readonly string[] | undefined;
  /** Ids of loops that are no part of the work. */
  readonly without?: readonly string[] | undefined;
  /** What the outermost loops are. */
  readonly outline?: 'cut' | 'block' | undefined;
  /** Loops whose kept side was named are work, whatever they look like. */
  readonly kept?: Readonly<Record<string, unknown>> | undefined;
}

type Judged = Pick<Drawing, 'loops' | 'findings' | 'units'>;

/**
 * The drawing as though nothing else had been drawn: what is left out is marked so and lies around nothing, and what was asked about it
 * is not asked again once it is settled.
 */
export const takenOf = <D extends Judged>(drawing: D, said: SaidOfLoops): D => {
  const out = new Set(drawing.loops.filter((loop) => !loop.hidden && isLeftOut(loop, said)).map((loop) => loop.id));
  const asked = drawing.findings.filter(
    (finding) => !isSettled(finding, drawing, said) && !isOf(finding, out) && !isBranchOf(finding, drawing, out),
  );
  const marked = drawing.loops.some((loop) => loop.aside !== undefined);
  if (out.size === 0 && !marked) return asked.length === drawing.findings.length ? drawing : { ...drawing, findings: asked };
  return { ...drawing, loops: nestedWithout(drawing.loops, out), findings: asked };
};

const isLeftOut = (loop: Loop, said: SaidOfLoops): boolean =>
  (loop.aside !== undefined && !isNamed(loop, said)) ||
  said.without?.includes(loop.id) === true ||
  (said.layers !== undefined && !said.layers.includes(loop.layer));

const isNamed = ({ id, aside, layer }: Loop, { kept = {}, outline, layers }: SaidOfLoops): boolean =>
  Object.hasOwn(kept, id) || (aside === 'edge' && outline === 'block') || (aside === 'layer' && layers?.includes(layer) === true);

/** A question that is answered: each of its loops was left out or named as work, or the layers to be cut were named. */
const isSettled = ({ remedy }: Finding, { loops }: Judged, said: SaidOfLoops): boolean => {
  if (remedy?.field === 'layers') return said.layers !== undefined;
  if (remedy?.field !== 'without' || !Array.isArray(remedy.value)) return false;
  const ids: readonly unknown[] = remedy.value;
  const settled = (loop: Loop): boolean => isNamed(loop, said) || isLeftOut({ ...loop, aside: undefined }, said);
  return loops.filter((loop) => ids.includes(loop.id)).every(settled);
};

/** Loops that are not cut cannot stand in the way of those that are. */
const isOf = ({ code, text }: Finding, out: ReadonlySet<string>): boolean =>
  OF_LOOPS.has(code) && contoursIn(text).some((id) => out.has(id));

/** Ends that meet on nothing but what is left out. */
const isBranchOf = ({ code, place }: Finding, { loops, units }: Judged, out: ReadonlySet<string>): boolean => {
  if (code !== 'branched' || place?.kind !== 'spot' || out.size === 0) return false;
  const at = { x: place.x * units.millimetres, y: place.y * units.millimetres };
  const through = loops.filter((loop) => distanceTo(loop.contour, at) <= MEETING);
  return through.length > 0 && through.every((loop) => out.has(loop.id));
};

/** mm */
const MEETING = 0.01;

const OF_LOOPS: ReadonlySet<string> = new Set([
  'loop-crosses-itself',
  'loop-touches-itself',
  'loop-sliver',
  'loops-cross',
  'loops-touch',
  'loops-share-edge',
]);

const nestedWithout = (loops: readonly Loop[], out: ReadonlySet<string>): readonly Loop[] => {
  const byId = new Map(loops.map((loop) => [loop.id, loop]));
  const around = ({ parent }: Loop): Loop | undefined => {
    const next = parent === undefined ? undefined : byId.get(parent);
    return next !== undefined && out.has(next.id) ? around(next) : next;
  };
  const depthOf = (loop: Loop): number => {
    const parent = around(loop);
    return parent === undefined ? 0 : depthOf(parent) + 1;
  };
  return loops.map((loop) =>
    loop.hidden
      ? loop
      : { ...loop, parent: around(loop)?.id, depth: depthOf(loop), aside: out.has(loop.id) ? (loop.aside ?? 'said') : undefined },
  );
};

/**
 * What a profile has to be on a blank with straight walls, so that the groove comes out true. The blank is tilted by the clearance
 * angle; its top is ground to the rake angle, the tip at the height of the axis. Lengths in mm, angles in rad.
 */

import { fitArcs } from '../../geometry/make/fit-arcs.ts';
import { pointAt, tangentAt } from '../../geometry/measure.ts';
import { line, type Point, point, type Segment } from '../../geometry/segment.ts';
import type { Formula } from '../../quantity/formula.ts';
import { say, symbols } from '../../text/say.ts';

export interface Setting {
  readonly tilt: number;
  readonly rake: number;
  /** Of the work at the root of the groove; only rake asks for it. */
  readonly workRadius: number;
}

/**
 * A place that has to cut at a depth lies on the rake face where that radius of the work is reached; seen along the walls its way is
 * foreshortened by rake and tilt together.
 */
export const blankDepth: Formula<'depth' | 'workRadius' | 'tilt' | 'rake'> = {
  name: say('tool.blank-depth')`depth on the blank`,
  text: say('tool.blank-depth.by')`T = [√((r + t)² - (r sin γ)²) - r cos γ] cos(α + γ), without rake t cos α`,
  source: 'plane-geometry',
  unit: 'mm',
  inputs: {
    depth: { unit: 'mm', name: 'depth of the groove' },
    workRadius: { unit: 'mm', name: 'radius of the work at the root' },
    tilt: { unit: 'rad', name: 'clearance angle' },
    rake: { unit: 'rad', name: 'rake angle' },
  },
  compute: ({ depth, workRadius, tilt, rake }) => alongFace(depth, workRadius, rake) * Math.cos(tilt + rake),
};

const alongFace = (depth: number, radius: number, rake: number): number =>
  rake === 0 ? depth : Math.sqrt((radius + depth) ** 2 - (radius * Math.sin(rake)) ** 2) - radius * Math.cos(rake);

/** How far round the work a place of the edge lies below the axis, rad. */
export const belowAxis = (depth: number, { rake, workRadius }: Setting): number =>
  rake === 0 ? 0 : Math.asin((alongFace(depth, workRadius, rake) * Math.sin(rake)) / (workRadius + depth));

/** What a straight wall leaves free beside a flank, before the thread's lead takes its part. */
export const sideClearance: Formula<'tilt' | 'flank'> = {
  name: say('tool.side-clearance')`side clearance`,
  text: symbols`tan α_s = tan α sin φ`,
  source: 'plane-geometry',
  unit: '°',
  inputs: { tilt: { unit: 'rad', name: 'clearance angle' }, flank: { unit: 'rad', name: 'flank angle' } },
  compute: ({ tilt, flank }) => (Math.atan(Math.tan(tilt) * Math.sin(flank)) * 180) / Math.PI,
};

export type Corrected =
  | { readonly kind: 'corrected'; readonly segments: readonly Segment[]; readonly deviation: number }
  | { readonly kind: 'not fitted' };

/** A profile whose tip lies on the X axis and whose depth goes down, as the blank has to have it. */
export const corrected = (segments: readonly Segment[], setting: Setting, within: number): Corrected => {
  if (setting.tilt === 0 && setting.rake === 0) return { kind: 'corrected', segments, deviation: 0 };
  const out: Segment[] = [];
  let deviation = 0;
  for (const s of segments) {
    if (s.kind === 'line' && (setting.rake === 0 || s.from.y === s.to.y)) {
      out.push(line(onBlank(s.from, setting), onBlank(s.to, setting)));
      continue;
    }
    const fitted = fitArcs(
      {
        start: 0,
        end: 1,
        pointAt: (share) => onBlank(pointAt(s, share), setting),
        tangentAt: (share) => {
          const d = tangentAt(s, share);
          return point(d.x, d.y * steepness(pointAt(s, share), setting));
        },
      },
      within,
    );
    if (fitted.kind !== 'fitted') return { kind: 'not fitted' };
    out.push(...fitted.segments);
    deviation = Math.max(deviation, fitted.deviation);
  }
  return { kind: 'corrected', segments: out, deviation };
};

export const onBlank = ({ x, y }: Point, setting: Setting): Point => point(x, -blankDepth.compute({ depth: -y, ...setting }) || 0);

/** Depth on the blank gained for each mm of the groove's. */
const steepness = ({ y }: Point, { tilt, rake, workRadius }: Setting): number => {
  const radius = workRadius - y;
  return (rake === 0 ? 1 : radius / Math.sqrt(radius ** 2 - (workRadius * Math.sin(rake)) ** 2)) * Math.cos(tilt + rake);
};

/** The bore of a gear or a sprocket, with a keyway if one is wanted, and the wall it leaves below the teeth. mm. */

import { contour } from '../../geometry/contour.ts';
import { circle, point } from '../../geometry/segment.ts';
import type { Finding } from '../../text/finding.ts';
import { found } from '../figures.ts';
import { refusedWith } from '../refused.ts';
import type { MadeShape, Outline, ShapeSize } from '../shape.ts';
import { find } from './findings.ts';
import { type KeyStandard, keyOf, limitsOf, middle } from './key.ts';
import { boreWith, type KeywayForm, reachOf, roomFor } from './keyway-contour.ts';
import { boreFigure, cornerDoubt, keywaySizes } from './keyway-sizes.ts';

export interface WheelBoreAsked {
  readonly bore?: number | undefined;
  readonly boreZone: string;
  readonly keyway: 'none' | KeyStandard;
  readonly flatKey?: boolean | undefined;
  readonly keyClass: '1' | '2';
  readonly widthZone: string;
  readonly keywayRadius?: number | undefined;
}

export interface WheelBore {
  readonly kind: 'bore';
  readonly outlines: readonly Outline[];
  readonly sizes: readonly ShapeSize[];
  readonly findings: readonly Finding[];
}

type Bored = WheelBore | Extract<MadeShape, { kind: 'refused' }>;

const NO_BORE: WheelBore = { kind: 'bore', outlines: [], sizes: [], findings: [] };

/** `root` is the radius of the root circle, `depth` that of the teeth. The keyway points along X. */
export const wheelBore = (asked: WheelBoreAsked, { root, depth }: { readonly root: number; readonly depth: number }): Bored => {
  const { bore, keyway } = asked;
  if (bore === undefined)
    return keyway === 'none'
      ? NO_BORE
      : refusedWith(find('keyway-impossible', 'A keyway needs a bore: give its diameter.', { place: { kind: 'field', path: 'bore' } }));
  return keyway === 'none' ? plainBore(bore, asked, root, depth) : keyedBore(bore, keyway, asked, root, depth);
};

const plainBore = (bore: number, { boreZone }: WheelBoreAsked, root: number, depth: number): Bored => {
  const limits = limitsOf(boreZone, bore);
  const radius = middle(limits) / 2;
  if (radius >= root) return eatenUp(`A bore of ${bore} mm`, root);
  const size: ShapeSize = {
    figure: boreFigure(2 * radius, limits),
    ...(limits.low === limits.high ? {} : { limits }),
    taking: { kind: 'circle', centre: point(0, 0), radius },
  };
  return {
    kind: 'bore',
    outlines: [{ contour: contour([circle(point(0, 0), radius)]), metal: 'outside', layer: 'bore' }],
    sizes: [size],
    findings: thinWall(root - radius, depth, 'the bore'),
  };
};

const keyedBore = (bore: number, standard: KeyStandard, asked: WheelBoreAsked, root: number, depth: number): Bored => {
  const key = keyOf({ ...asked, shaft: bore, field: 'bore', standard, flatKey: asked.flatKey });
  if (key.kind === 'refused') return key;
  const bored = limitsOf(asked.boreZone, bore);
  const across = { low: key.across.value, high: key.across.value + key.larger };
  const form: KeywayForm = {
    radius: middle(bored) / 2,
    half: middle(key.width) / 2,
    top: middle(across) - middle(bored) / 2,
    corner: asked.keywayRadius ?? key.corner[1],
  };
  if (!roomFor(form))
    return refusedWith(
      find('keyway-impossible', `A corner radius of ${form.corner} mm has no room in the keyway.`, {
        place: { kind: 'field', path: 'keywayRadius' },
      }),
    );
  const reach = reachOf(form);
  if (reach >= root) return eatenUp(`The keyway for a shaft of ${bore} mm, which reaches ${reach.toFixed(3)} mm from the middle,`, root);
  const wall = found('keyway-wall', 'wall between keyway and root circle', root - reach, 'd_f / 2 - reach of the keyway', {
    from: [key.across],
  });
  return {
    kind: 'bore',
    outlines: [{ contour: boreWith(form, [0]), metal: 'outside', layer: 'bore' }],
    sizes: [...keywaySizes(key, { bore: bored, across, cornerRadius: asked.keywayRadius }, form), { figure: wall }],
    findings: [...key.findings, ...cornerDoubt(form.corner, key, 'keywayRadius'), ...thinWall(root - reach, depth, 'the keyway')],
  };
};

const eatenUp = (what: string, root: number): Bored =>
  refusedWith(
    find('keyway-impossible', `${what} leaves nothing below the root circle of ${(2 * root).toFixed(3)} mm.`, {
      place: { kind: 'field', path: 'bore' },
    }),
  );

/** Gear rating takes a rim of less than this part of the depth of the teeth for one that bends with them. */
const RIM = 1.2;

const thinWall = (wall: number, depth: number, what: string): readonly Finding[] =>
  wall >= RIM * depth
    ? []
    : [
        find(
          'bore-wall-thin',
          `Between ${what} and the roots of the teeth there are ${wall.toFixed(3)} mm; a rim bends with its teeth below ${(RIM * depth).toFixed(3)} mm, ${RIM} times their depth.`,
          { place: { kind: 'field', path: 'bore' }, remedy: 'A smaller bore, a flatter key, or more teeth.' },
        ),
      ];

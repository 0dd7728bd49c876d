/** The bore of a gear or a sprocket, with a keyway if one is wanted, and the wall it leaves below the teeth. mm. */

import { contour } from '../../geometry/contour.ts';
import { circle, point } from '../../geometry/segment.ts';
import { atField, type Finding, remedy } from '../../text/finding.ts';
import { fixed, mm, number } from '../../text/part.ts';
import { say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
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
      : refusedWith(find('keyway-impossible/no-bore', say`A keyway needs a bore: give its diameter.`, { place: atField('bore') }));
  return keyway === 'none' ? plainBore(bore, asked, root, depth) : keyedBore(bore, keyway, asked, root, depth);
};

const plainBore = (bore: number, { boreZone }: WheelBoreAsked, root: number, depth: number): Bored => {
  const limits = limitsOf(boreZone, bore);
  const radius = middle(limits) / 2;
  if (radius >= root)
    return eatenUp(
      say(
        'keyway-impossible/bore-too-large',
      )`A bore of ${{ bore: mm(bore) }} leaves nothing below the root circle of ${{ root: mm(2 * root, fixed(3)) }}.`,
    );
  const size: ShapeSize = {
    figure: boreFigure(2 * radius, limits),
    limits: limits.low === limits.high ? undefined : limits,
    taking: { kind: 'circle', centre: point(0, 0), radius },
  };
  return {
    kind: 'bore',
    outlines: [{ contour: contour([circle(point(0, 0), radius)]), metal: 'outside', layer: 'bore' }],
    sizes: [size],
    findings: thinWall(root - radius, depth, 'bore'),
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
  if (!roomFor(form)) return refusedWith(find('keyway-impossible', cornerWithoutRoom(form.corner), { place: atField('keywayRadius') }));
  const reach = reachOf(form);
  if (reach >= root)
    return eatenUp(
      say(
        'keyway-impossible/keyway-too-deep',
      )`The keyway for a shaft of ${{ shaft: mm(bore) }}, which reaches ${{ reach: mm(reach, fixed(3)) }} from the middle, leaves nothing below the root circle of ${{ root: mm(2 * root, fixed(3)) }}.`,
    );
  const wall = found(
    'keyway-wall',
    say('keyway.wall')`wall between keyway and root circle`,
    root - reach,
    say('keyway.wall.by')`d_f / 2 - reach of the keyway`,
    {
      from: [key.across],
    },
  );
  return {
    kind: 'bore',
    outlines: [{ contour: boreWith(form, [0]), metal: 'outside', layer: 'bore' }],
    sizes: [...keywaySizes(key, { bore: bored, across, cornerRadius: asked.keywayRadius }, form), { figure: wall }],
    findings: [...key.findings, ...cornerDoubt(form.corner, key, 'keywayRadius'), ...thinWall(root - reach, depth, 'keyway')],
  };
};

const eatenUp = (text: Text): Bored => refusedWith(find('keyway-impossible', text, { place: atField('bore') }));

export const cornerWithoutRoom = (corner: number): Text =>
  say('keyway-impossible/corner')`A corner radius of ${{ radius: mm(corner) }} has no room in the keyway.`;

/** Gear rating takes a rim of less than this part of the depth of the teeth for one that bends with them. */
const RIM = 1.2;

const thinWall = (wall: number, depth: number, of: 'bore' | 'keyway'): readonly Finding[] => {
  if (wall >= RIM * depth) return [];
  const [there, least, times] = [mm(wall, fixed(3)), mm(RIM * depth, fixed(3)), number(RIM)];
  const text = {
    bore: say(
      'bore-wall-thin/bore',
    )`Between the bore and the roots of the teeth there are ${{ wall: there }}; a rim bends with its teeth below ${{ least }}, ${{ times }} times their depth.`,
    keyway: say(
      'bore-wall-thin/keyway',
    )`Between the keyway and the roots of the teeth there are ${{ wall: there }}; a rim bends with its teeth below ${{ least }}, ${{ times }} times their depth.`,
  };
  return [
    find('bore-wall-thin', text[of], {
      place: atField('bore'),
      remedy: remedy(say`A smaller bore, a flatter key, or more teeth.`, { field: 'bore' }),
    }),
  ];
};

/** How each kind of shape is made, by the word that asks for it. */
import { cycloidRotor } from '../curve/cycloid-rotor.ts';
import { spiral } from '../curve/spiral.ts';
import { gear } from '../gear/gear.ts';
import { internalGear } from '../gear/internal-gear.ts';
import { rack } from '../gear/rack.ts';
import { keywayHub } from '../keyway/hub.ts';
import { lettering } from '../lettering/lettering.ts';
import { polygon } from '../plain/polygon.ts';
import { slot } from '../plain/slot.ts';
import { serration } from '../spline/serration.ts';
import { spline } from '../spline/spline.ts';
import { straightSpline } from '../spline/straight-spline.ts';
import { formTool } from '../tool/form-tool.ts';
import { ratchet } from '../wheel/ratchet.ts';
import { sprocket } from '../wheel/sprocket.ts';
import type { KindName } from './questions.ts';

export const KINDS = {
  gear,
  'internal-gear': internalGear,
  rack,
  spline,
  'straight-spline': straightSpline,
  serration,
  'keyway-hub': keywayHub,
  polygon,
  slot,
  sprocket,
  ratchet,
  'cycloid-rotor': cycloidRotor,
  spiral,
  'form-tool': formTool,
  lettering,
} satisfies Readonly<Record<KindName, unknown>>;

/** What may be asked of every kind of shape, by the word that asks for it; how each is made stands apart, and a form does without. */
import { z } from 'zod';
import { cycloidRotorQuestion } from '../curve/rotor-request.ts';
import { spiralQuestion } from '../curve/spiral-request.ts';
import { gearQuestion } from '../gear/gear-keys.ts';
import { internalGearQuestion } from '../gear/internal-gear-request.ts';
import { rackQuestion } from '../gear/rack-request.ts';
import { keywayHubQuestion } from '../keyway/hub-request.ts';
import { letteringQuestion } from '../lettering/request.ts';
import { polygonQuestion } from '../plain/polygon-request.ts';
import { slotQuestion } from '../plain/slot-request.ts';
import { serrationQuestion } from '../spline/serration-request.ts';
import { splineQuestion } from '../spline/spline-request.ts';
import { straightSplineQuestion } from '../spline/straight-request.ts';
import { formToolQuestion } from '../tool/tool-request.ts';
import { ratchetQuestion } from '../wheel/ratchet-request.ts';
import { sprocketQuestion } from '../wheel/sprocket-request.ts';

export const QUESTIONS = {
  gear: gearQuestion,
  'internal-gear': internalGearQuestion,
  rack: rackQuestion,
  spline: splineQuestion,
  'straight-spline': straightSplineQuestion,
  serration: serrationQuestion,
  'keyway-hub': keywayHubQuestion,
  polygon: polygonQuestion,
  slot: slotQuestion,
  sprocket: sprocketQuestion,
  ratchet: ratchetQuestion,
  'cycloid-rotor': cycloidRotorQuestion,
  spiral: spiralQuestion,
  'form-tool': formToolQuestion,
  lettering: letteringQuestion,
};

export type KindName = keyof typeof QUESTIONS;

type Schemas = { [K in KindName]: (typeof QUESTIONS)[K]['schema'] }[KindName];

/** Every kind with its keys; `kind` tells which. */
export const shapeSchema = z.discriminatedUnion('kind', Object.values(QUESTIONS).map((k) => k.schema) as [Schemas, ...Schemas[]]);

export type ShapeRequest = z.output<typeof shapeSchema>;
export type ShapeInput = z.input<typeof shapeSchema>;

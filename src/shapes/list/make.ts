/** A shape by numbers: what may be asked, and what comes of it. */
import { z } from 'zod';
import type { ShapeKind, ShapeMeans } from '../kind.ts';
import type { LetteringMeans } from '../lettering/request.ts';
import type { MadeShape } from '../shape.ts';
import { KINDS, type KindName } from './kinds.ts';

type Schemas = { [K in KindName]: (typeof KINDS)[K]['schema'] }[KindName];

/** Every kind with its keys; `kind` tells which. */
export const shapeSchema = z.discriminatedUnion('kind', Object.values(KINDS).map((k) => k.schema) as [Schemas, ...Schemas[]]);

export type ShapeRequest = z.output<typeof shapeSchema>;
export type ShapeInput = z.input<typeof shapeSchema>;

/** What the kinds need, all together. */
export type Means = ShapeMeans & LetteringMeans;

/** Makes the shape of a request that the schema has passed. */
export const makeShape = (request: ShapeRequest, means: Means): MadeShape =>
  (KINDS[request.kind] as unknown as ShapeKind).make(request, means);

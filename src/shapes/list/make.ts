/** A shape by numbers: what comes of what was asked. */
import type { ShapeKind, ShapeMeans } from '../kind.ts';
import type { LetteringMeans } from '../lettering/request.ts';
import type { MadeShape } from '../shape.ts';
import { KINDS } from './kinds.ts';
import type { ShapeRequest } from './questions.ts';

/** What the kinds need, all together. */
export type Means = ShapeMeans & LetteringMeans;

/** Makes the shape of a request that the schema has passed. */
export const makeShape = (request: ShapeRequest, means: Means): MadeShape =>
  (KINDS[request.kind] as unknown as ShapeKind).make(request, means);

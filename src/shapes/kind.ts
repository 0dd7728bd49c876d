/** One kind of shape as the rest of the house sees it: its word, its numbers and how it is made. */
import type { z } from 'zod';
import type { Text } from '../text/text.ts';
import type { LetteringRequest } from './lettering/request.ts';
import type { MadeShape } from './shape.ts';

/** What a shape may need besides its numbers; read by whoever has a disk or a network. */
export interface ShapeMeans {
  /** Makes lettering, whose fonts and geometry only those load who are asked for a text. */
  readonly letters?: (request: LetteringRequest) => MadeShape;
}

export interface ShapeKind<S extends z.ZodObject = z.ZodObject> {
  /** As the user sees it in a list: 'Spur gear'. */
  readonly title: Text;
  /** One line on what it is for. */
  readonly what: Text;
  /** Has the literal key `kind`, all of `commonKeys`, and a describe() with its unit on every key. */
  readonly schema: S;
  /** A request that a shop could have had, to begin with; `kind` is left out. */
  readonly example: Omit<z.input<S>, 'kind'>;
  readonly make: (request: z.output<S>, means: ShapeMeans) => MadeShape;
}

/** Keeps the schema and the making of one kind in agreement. */
export const shapeKind = <S extends z.ZodObject>(kind: ShapeKind<S>): ShapeKind<S> => kind;

/** One kind of shape as the rest of the house sees it: its word, its numbers and how it is made. */
import type { z } from 'zod';
import type { Text } from '../text/text.ts';
import type { MadeShape } from './shape.ts';

/** What every shape is made with besides its numbers. */
export interface ShapeMeans {
  /** Diameter of the finest wire there is, mm. */
  readonly finestWire: number;
}

/** What is asked of a kind, without how it is made: a form to fill in needs no more. */
export interface ShapeQuestion<S extends z.ZodObject = z.ZodObject> {
  /** As the user sees it in a list: 'Spur gear'. */
  readonly title: Text;
  /** One line on what it is for. */
  readonly what: Text;
  /** Has the literal key `kind`, all of `commonKeys`, and a description with its unit on every key; what is in mm says so in its `unit` too. */
  readonly schema: S;
  /** A request that a shop could have had, to begin with; `kind` is left out. */
  readonly example: Omit<z.input<S>, 'kind'>;
}

export interface ShapeKind<S extends z.ZodObject = z.ZodObject, Means = ShapeMeans> extends ShapeQuestion<S> {
  readonly make: (request: z.output<S>, means: Means) => MadeShape;
}

/** Keeps the schema and the example of one kind in agreement. */
export const shapeQuestion = <S extends z.ZodObject>(question: ShapeQuestion<S>): ShapeQuestion<S> => question;

/** Keeps the schema and the making of one kind in agreement. */
export const shapeKind = <S extends z.ZodObject, Means = ShapeMeans>(kind: ShapeKind<S, Means>): ShapeKind<S, Means> => kind;

/** The numbers that each kind of shape asks for, as data: for the options of the command and the form of the page. */
import { z } from 'zod';
import { commonKeys } from '../../shapes/common-keys.ts';
import type { ShapeQuestion } from '../../shapes/kind.ts';
import { type KindName, QUESTIONS, type ShapeInput } from '../../shapes/list/questions.ts';
import { described } from '../../text/described.ts';
import type { Text } from '../../text/text.ts';

export type { KindName } from '../../shapes/list/questions.ts';

export interface ShapeKey {
  /** Key of the request: 'pressureAngle'. */
  readonly key: string;
  /** What it means. */
  readonly about: Text;
  /** `length` is in mm; `choice` is one of `choices`; `data` is written as JSON. */
  readonly takes: 'length' | 'number' | 'whole number' | 'choice' | 'text' | 'yes or no' | 'data';
  readonly choices?: readonly string[] | undefined;
  readonly usual?: unknown | undefined;
  readonly needed: boolean;
}

export interface ShapeForm {
  readonly kind: KindName;
  readonly title: Text;
  readonly what: Text;
  readonly keys: readonly ShapeKey[];
}

export const shapeForms = (): readonly ShapeForm[] => (Object.keys(QUESTIONS) as KindName[]).map(shapeForm);

export const isShapeKind = (word: string): word is KindName => Object.hasOwn(QUESTIONS, word);

/** Numbers to begin with. */
export const shapeExample = (kind: KindName): ShapeInput => ({ ...(QUESTIONS[kind] as ShapeQuestion).example, kind }) as ShapeInput;

export const shapeForm = (kind: KindName): ShapeForm => {
  const { title, what, schema } = QUESTIONS[kind] as ShapeQuestion;
  const { properties = {}, required = [] } = z.toJSONSchema(schema, { io: 'input' });
  const keys = Object.entries(properties).filter(([key]) => key !== 'kind');
  return { kind, title, what, keys: keys.map(([key, about]) => keyOf(kind, key, about as Property, required.includes(key))) };
};

interface Property {
  readonly type?: string;
  readonly description?: string;
  readonly unit?: string;
  readonly enum?: readonly unknown[];
  readonly default?: unknown;
}

const keyOf = (kind: KindName, key: string, property: Property, needed: boolean): ShapeKey => {
  const takes = takenBy(property);
  return {
    key,
    about: described(placeOf(kind, key), property.description ?? ''),
    takes,
    needed,
    choices: takes === 'choice' ? (property.enum as readonly unknown[]).map((choice) => String(choice)) : undefined,
    usual: property.default,
  };
};

/** What every shape understands is described once for all of them. */
const placeOf = (kind: KindName, key: string): string => (Object.hasOwn(commonKeys, key) ? `shape.${key}` : `shape.${kind}.${key}`);

const takenBy = ({ type, unit, enum: choices }: Property): ShapeKey['takes'] => {
  if (choices !== undefined) return 'choice';
  if (type === 'integer') return 'whole number';
  if (type === 'number') return unit === 'mm' ? 'length' : 'number';
  if (type === 'boolean') return 'yes or no';
  return type === 'string' ? 'text' : 'data';
};

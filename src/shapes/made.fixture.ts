/** Shapes made and asked about, for tests only. */
import { wires } from '../physics/wire/wires.ts';
import { makeShape } from './list/make.ts';
import { type ShapeInput, shapeSchema } from './list/questions.ts';
import type { MadeShape, Shape, ShapeSize } from './shape.ts';

/** Without fonts. */
export const MEANS = { finestWire: Math.min(...wires.map((w) => w.diameter)) };

export const make = (input: ShapeInput): MadeShape => makeShape(shapeSchema.parse(input), MEANS);

/** The shape; what is refused breaks the test. */
export const shaped = (input: ShapeInput): Shape => {
  const made = make(input);
  if (made.kind === 'refused') throw new Error(made.findings[0]?.code);
  return made.shape;
};

/** Code of the refusal and the field it concerns; 'made' and nothing where there is none. */
export const refusal = (input: ShapeInput): readonly [code: string, field: string] => {
  const made = make(input);
  if (made.kind === 'made') return ['made', ''];
  const [finding] = made.findings;
  return [finding?.code ?? '', finding?.place?.kind === 'field' ? finding.place.path : ''];
};

export const refusedField = (input: ShapeInput): string => refusal(input)[1] || 'made';

export const sizeOf = ({ sizes }: Shape, key: string): ShapeSize | undefined => sizes.find((s) => s.figure.key === key);
export const sizeIn = (shape: Shape, key: string): number => sizeOf(shape, key)?.figure.value ?? Number.NaN;
export const codesOf = ({ findings }: Shape): readonly string[] => findings.map((f) => f.code);

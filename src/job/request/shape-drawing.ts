/** A part by numbers as the drawing that everything else works on, and as files for whoever wants to have it drawn. */
import type { Loop } from '../../drawing/drawing.ts';
import type { Drawn, WriteUnit } from '../../drawing/write/drawn.ts';
import { writeDxf } from '../../drawing/write/dxf.ts';
import { writeSvg } from '../../drawing/write/svg.ts';
import { wires } from '../../physics/wire/wires.ts';
import type { Figure } from '../../quantity/figure.ts';
import { type Means, makeShape } from '../../shapes/list/make.ts';
import type { ShapeRequest } from '../../shapes/list/questions.ts';
import type { Outline, Shape } from '../../shapes/shape.ts';
import type { Finding } from '../../text/finding.ts';
import type { JobRun } from '../job-run.ts';

export { type ShapeRequest, shapeSchema } from '../../shapes/list/questions.ts';

/** What a shape may need besides its numbers; read by whoever has a disk or a network. */
export type ShapeMeans = Omit<Means, 'finestWire'>;

export type ShapedRun = { readonly kind: 'run'; readonly run: JobRun } | { readonly kind: 'bad'; readonly findings: readonly Finding[] };

/** The run with its shape drawn, where the job is by numbers; the run itself where it has a drawing. `means` is asked only then. */
export const withShape = (run: JobRun, means: () => ShapeMeans): ShapedRun => {
  const { shape: request } = run.job;
  if (request === undefined) return { kind: 'run', run };
  const drawn = drawShape(request, means());
  if (drawn.kind === 'refused') return { kind: 'bad', findings: drawn.findings };
  const { shape } = drawn;
  return { kind: 'run', run: { ...run, shape, drawing: new TextEncoder().encode(shapeDxf(shape, 'mm')), drawingName: shapeFile(request) } };
};

export const shapeFile = ({ kind }: Pick<ShapeRequest, 'kind'>): string => `${kind}.dxf`;

export type DrawnShape =
  | { readonly kind: 'drawn'; readonly shape: Shape }
  | { readonly kind: 'refused'; readonly findings: readonly Finding[] };

/** Diameter, mm. */
const FINEST_WIRE = Math.min(...wires.map((w) => w.diameter));

/** The shape as the job speaks of it: its fields and figures are those of the job, 'shape.teeth', 'shape.span'. */
export const drawShape = (request: ShapeRequest, means: ShapeMeans): DrawnShape => {
  const made = makeShape(request, { ...means, finestWire: FINEST_WIRE });
  if (made.kind === 'refused') return { kind: 'refused', findings: made.findings.map(inJob) };
  const named = namer();
  const sizes = made.shape.sizes.map((s) => ({ ...s, figure: named(s.figure) }));
  return { kind: 'drawn', shape: { ...made.shape, sizes, findings: made.shape.findings.map(inJob) } };
};

const inJob = ({ place, remedy, ...finding }: Finding): Finding => ({
  ...finding,
  place: place?.kind === 'field' ? { kind: 'field', path: `shape.${place.path}` } : place,
  remedy: remedy?.field === undefined ? remedy : { ...remedy, field: `shape.${remedy.field}` },
});

/** Renames a figure and all it is made of, each only once, so that leaves stay the same leaves. */
const namer = (): ((figure: Figure) => Figure) => {
  const done = new Map<Figure, Figure>();
  const named = (figure: Figure): Figure => {
    const before = done.get(figure);
    if (before !== undefined) return before;
    const shares = new Map<Figure, number>();
    const after: Figure = { ...figure, key: `shape.${figure.key}`, from: figure.from.map(named), shares };
    done.set(figure, after);
    for (const [leaf, share] of figure.shares) shares.set(named(leaf), share);
    return after;
  };
  return named;
};

export const shapeDxf = (shape: Shape, unit: WriteUnit): string => writeDxf(shape.outlines.map(drawn), unit, shape.starts);

export const shapeSvg = (shape: Shape, unit: WriteUnit): string => writeSvg(shape.outlines.map(drawn), unit);

/** Piece and opening are drawn on layers of their own, so that whoever reads the drawing knows which side is metal. */
const drawn = ({ contour, metal, layer }: Outline): Drawn => ({
  chain: contour,
  layer: `${layer === undefined ? '' : `${layer} `}${metal === 'inside' ? PIECE : OPENING}`,
});

const PIECE = 'piece';
const OPENING = 'opening';

export const isOpening = ({ layer }: Pick<Loop, 'layer'>): boolean => layer.endsWith(OPENING);

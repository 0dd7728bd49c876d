/** Spirals of some width: a slot that winds, or a strip that stands, as a flat spring or the wall of a scroll. */
import { counterClockwise } from '../../geometry/chain.ts';
import { mirroring, transformChain, transformPoint } from '../../geometry/transform.ts';
import type { Finding } from '../../text/finding.ts';
import { standBack } from '../common-keys.ts';
import { insideRadiusOf } from '../inside-radius.ts';
import { shapeKind } from '../kind.ts';
import { refusedWith } from '../refused.ts';
import type { MadeShape, Outline } from '../shape.ts';
import { find } from './findings.ts';
import { type SpiralMade, spiralContour } from './spiral-contour.ts';
import { archimedean, involuteSpiral, logarithmic, type SpiralLine } from './spiral-lines.ts';
import { spiralFindings, spiralSizes } from './spiral-report.ts';
import { type SpiralRequest, spiralSchema } from './spiral-request.ts';

export const spiral = shapeKind({
  title: 'Spiral',
  what: 'Slot or standing strip along a spiral, as a flat spring or a scroll',
  schema: spiralSchema,
  example: { innerRadius: 6, pitch: 4, turns: 3, width: 1.2, eyeDiameter: 3 },
  make: (request): MadeShape => {
    const incomplete = missing(request);
    if (incomplete !== undefined) return refusedWith(incomplete);
    const grown = (request.metal === 'inside' ? -1 : 1) * standBack(request);
    const half = request.width / 2 + grown;
    const plain = lineOf(request);
    const line = request.ends === 'square' ? longer(plain, grown) : plain;
    const fault = faultOf(request, line, half);
    if (fault !== undefined) return refusedWith(fault);
    const eye = request.metal === 'inside' || request.eyeDiameter === undefined ? undefined : request.eyeDiameter / 2 + grown;
    if (eye !== undefined && eye <= half) return refusedWith(noEye(`An eye of ${request.eyeDiameter} mm is not wider than the slot.`));
    const made = spiralContour(line, { half, ends: request.ends, ...(eye === undefined ? {} : { eye }) }, request.fit);
    return made.kind === 'drawn' ? drawn(request, plain, half, made) : refusedWith(notDrawn(request, made));
  },
});

const at = (path: keyof SpiralRequest) => ({ place: { kind: 'field', path } }) as const;

const missing = ({ form, pitch, growth }: SpiralRequest): Finding | undefined => {
  if (form === 'logarithmic' && growth === undefined)
    return find('spiral-impossible', 'A logarithmic spiral needs its growth for each turn.', at('growth'));
  if (form !== 'logarithmic' && pitch === undefined)
    return find('spiral-impossible', 'The spiral needs its pitch, from turn to turn.', at('pitch'));
  return undefined;
};

/** Both `pitch` and `growth` were looked for before. */
const lineOf = ({ form, innerRadius, pitch = 1, growth = 2, turns }: SpiralRequest): SpiralLine => {
  if (form === 'logarithmic') return logarithmic(innerRadius, growth, turns);
  return form === 'involute' ? involuteSpiral(innerRadius, pitch, turns) : archimedean(innerRadius, pitch, turns);
};

/** Square ends stand back with the sides: the line is carried on, or cut short, by so much. */
const longer = (line: SpiralLine, by: number): SpiralLine =>
  by === 0 ? line : { ...line, start: line.start - by / line.speedAt(line.start), end: line.end + by / line.speedAt(line.end) };

const faultOf = (request: SpiralRequest, line: SpiralLine, half: number): Finding | undefined => {
  const { form, innerRadius, pitch = 0, width, clearance } = request;
  if (!(half > 0)) return find('spiral-impossible', 'The clearance is more than the strip is wide.', at('clearance'));
  if (!(line.end > line.start)) return find('spiral-impossible', 'The clearance is more than the strip is long.', at('clearance'));
  if (form === 'logarithmic' && innerRadius === 0)
    return find('spiral-impossible', 'A logarithmic spiral never comes to the middle: it has to begin at some radius.', at('innerRadius'));
  const base = pitch / (2 * Math.PI);
  if (form === 'involute' && innerRadius < base)
    return find(
      'spiral-impossible',
      `An involute with a pitch of ${pitch} mm begins on its base circle, ${base.toFixed(3)} mm from the middle.`,
      at('innerRadius'),
    );
  if (form !== 'logarithmic' && request.turns > 1 && 2 * half >= pitch)
    return touching(request, `with a pitch of ${pitch} mm and a width of ${(2 * half).toFixed(3)} mm nothing is left between them`);
  const bend = line.bendAt(line.start);
  if (!(bend > half) || !(line.start >= 0 || form !== 'involute'))
    return find(
      'spiral-impossible',
      `Where it begins the middle line bends with R ${bend.toFixed(3)} mm, less than half the width of ${width} mm${clearance === 0 ? '' : ' with its play'}: the inner side would run back on itself.`,
      { ...at('innerRadius'), remedy: 'A larger radius to begin with, or less width.' },
    );
  return undefined;
};

const touching = ({ metal, form }: SpiralRequest, why: string): Finding =>
  find('spiral-turns-touch', `Neighbouring turns of the ${metal === 'inside' ? 'strip' : 'slot'} run into each other: ${why}.`, {
    ...at('width'),
    remedy: form === 'logarithmic' ? 'Less width, more growth or a larger radius to begin with.' : 'Less width or more pitch.',
  });

const noEye = (sentence: string): Finding => find('spiral-impossible', sentence, at('eyeDiameter'));

const notDrawn = (request: SpiralRequest, made: Exclude<SpiralMade, { kind: 'drawn' }>): Finding => {
  if (made.kind === 'all eye') return noEye(`The whole slot lies within its eye of ${request.eyeDiameter} mm.`);
  return made.kind === 'turns touch'
    ? touching(request, `they meet ${Math.hypot(made.at.x, made.at.y).toFixed(3)} mm from the middle`)
    : find('spiral-impossible', 'It would take more than 10,000 arcs to draw within the fit asked for.', at('fit'));
};

const drawn = (request: SpiralRequest, line: SpiralLine, half: number, made: Extract<SpiralMade, { kind: 'drawn' }>): MadeShape => {
  const over = mirroring(0);
  const placed = request.turning === 'clockwise' ? counterClockwise(transformChain(over, made.contour)) : made.contour;
  const outlines: readonly Outline[] = [{ contour: placed, metal: request.metal }];
  const inside = insideRadiusOf(outlines);
  const told = {
    line,
    half,
    inside,
    place: request.turning === 'clockwise' ? (p: Parameters<typeof transformPoint>[1]) => transformPoint(over, p) : undefined,
    ...(made.nearest === undefined ? {} : { nearest: made.nearest }),
  };
  return {
    kind: 'made',
    shape: {
      name: `${NAMES[request.form]} ${request.metal === 'inside' ? 'strip' : 'slot'}, ${request.turns} turns, ${request.width} mm wide`,
      outlines,
      starts: [],
      sizes: spiralSizes(request, told),
      fitDeviation: made.deviation,
      ...(inside === undefined ? {} : { insideRadius: inside }),
      findings: spiralFindings(request, told),
    },
  };
};

const NAMES: Readonly<Record<SpiralRequest['form'], string>> = {
  archimedean: 'Archimedean spiral',
  logarithmic: 'Logarithmic spiral',
  involute: 'Involute spiral',
};

/** Spirals of some width: a slot that winds, or a strip that stands, as a flat spring or the wall of a scroll. */
import { counterClockwise } from '../../geometry/chain.ts';
import { mirroring, transformChain, transformPoint } from '../../geometry/transform.ts';
import { type Finding, remedy } from '../../text/finding.ts';
import { fixed, grouped, mm, number } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { standBack } from '../common-keys.ts';
import { insideRadiusOf } from '../inside-radius.ts';
import { shapeKind } from '../kind.ts';
import { refusedWith } from '../refused.ts';
import type { MadeShape, Outline } from '../shape.ts';
import { find } from './findings.ts';
import { type SpiralMade, spiralContour } from './spiral-contour.ts';
import { archimedean, involuteSpiral, logarithmic, type SpiralLine } from './spiral-lines.ts';
import { spiralFindings, spiralSizes } from './spiral-report.ts';
import { type SpiralRequest, spiralQuestion } from './spiral-request.ts';

const words = phrases('spiral', {
  slot: (form: Text, turns: number, width: number) =>
    say`${{ form }} slot, ${{ turns: number(turns) }} turns, ${{ width: mm(width) }} wide`,
  strip: (form: Text, turns: number, width: number) =>
    say`${{ form }} strip, ${{ turns: number(turns) }} turns, ${{ width: mm(width) }} wide`,
  archimedean: say`Archimedean spiral`,
  logarithmic: say`Logarithmic spiral`,
  involute: say`Involute spiral`,
});

export const spiral = shapeKind({
  ...spiralQuestion,
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
    if (eye !== undefined && eye <= half) return refusedWith(noEye.tooNarrow(request.eyeDiameter ?? 0));
    const made = spiralContour(line, { half, ends: request.ends, eye }, request.fit);
    return made.kind === 'drawn' ? drawn(request, plain, half, made) : refusedWith(notDrawn(request, made));
  },
});

const at = (path: keyof SpiralRequest) => ({ place: { kind: 'field', path } }) as const;

const missing = ({ form, pitch, growth }: SpiralRequest): Finding | undefined => {
  if (form === 'logarithmic' && growth === undefined)
    return find('spiral-impossible/growth', say`A logarithmic spiral needs its growth for each turn.`, at('growth'));
  if (form !== 'logarithmic' && pitch === undefined)
    return find('spiral-impossible/pitch', say`The spiral needs its pitch, from turn to turn.`, at('pitch'));
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
  if (!(half > 0)) return find('spiral-impossible/width', say`The clearance is more than the strip is wide.`, at('clearance'));
  if (!(line.end > line.start))
    return find('spiral-impossible/length', say`The clearance is more than the strip is long.`, at('clearance'));
  if (form === 'logarithmic' && innerRadius === 0)
    return find(
      'spiral-impossible/middle',
      say`A logarithmic spiral never comes to the middle: it has to begin at some radius.`,
      at('innerRadius'),
    );
  const base = pitch / (2 * Math.PI);
  if (form === 'involute' && innerRadius < base)
    return find(
      'spiral-impossible/base',
      say`An involute with a pitch of ${{ pitch: mm(pitch) }} begins on its base circle, ${{ base: mm(base, fixed(3)) }} from the middle.`,
      at('innerRadius'),
    );
  if (form !== 'logarithmic' && request.turns > 1 && 2 * half >= pitch) return touching(request, why.narrow(pitch, 2 * half));
  const bend = line.bendAt(line.start);
  if (!(bend > half) || !(line.start >= 0 || form !== 'involute'))
    return find('spiral-impossible', (clearance === 0 ? tight.plain : tight.withPlay)(bend, width), {
      ...at('innerRadius'),
      remedy: remedy(say('spiral-impossible/tight.remedy')`A larger radius to begin with, or less width.`, { field: 'innerRadius' }),
    });
  return undefined;
};

const tight = phrases('spiral-tight', {
  plain: (bend: number, width: number) =>
    say`Where it begins the middle line bends with R ${{ bend: mm(bend, fixed(3)) }}, less than half the width of ${{ width: mm(width) }}: the inner side would run back on itself.`,
  withPlay: (bend: number, width: number) =>
    say`Where it begins the middle line bends with R ${{ bend: mm(bend, fixed(3)) }}, less than half the width of ${{ width: mm(width) }} with its play: the inner side would run back on itself.`,
});

const touching = ({ metal, form }: SpiralRequest, because: Text): Finding =>
  find(
    'spiral-turns-touch',
    metal === 'inside'
      ? say('spiral-turns-touch/strip')`Neighbouring turns of the strip run into each other: ${{ because }}.`
      : say('spiral-turns-touch/slot')`Neighbouring turns of the slot run into each other: ${{ because }}.`,
    {
      ...at('width'),
      remedy: remedy(
        form === 'logarithmic'
          ? say('spiral-turns-touch/logarithmic.remedy')`Less width, more growth or a larger radius to begin with.`
          : say('spiral-turns-touch.remedy')`Less width or more pitch.`,
        { field: 'width' },
      ),
    },
  );

const why = phrases('spiral-turns', {
  narrow: (pitch: number, width: number) =>
    say`with a pitch of ${{ pitch: mm(pitch) }} and a width of ${{ width: mm(width, fixed(3)) }} nothing is left between them`,
  meet: (out: number) => say`they meet ${{ out: mm(out, fixed(3)) }} from the middle`,
});

const noEye = {
  tooNarrow: (eye: number): Finding =>
    find('spiral-impossible/eye', say`An eye of ${{ eye: mm(eye) }} is not wider than the slot.`, at('eyeDiameter')),
  allEye: (eye: number): Finding =>
    find('spiral-impossible/all-eye', say`The whole slot lies within its eye of ${{ eye: mm(eye) }}.`, at('eyeDiameter')),
};

const notDrawn = (request: SpiralRequest, made: Exclude<SpiralMade, { kind: 'drawn' }>): Finding => {
  if (made.kind === 'all eye') return noEye.allEye(request.eyeDiameter ?? 0);
  return made.kind === 'turns touch'
    ? touching(request, why.meet(Math.hypot(made.at.x, made.at.y)))
    : find(
        'spiral-impossible/arcs',
        say`It would take more than ${{ most: grouped(10_000) }} arcs to draw within the fit asked for.`,
        at('fit'),
      );
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
    nearest: made.nearest,
  };
  return {
    kind: 'made',
    shape: {
      name: (request.metal === 'inside' ? words.strip : words.slot)(words[request.form], request.turns, request.width),
      outlines,
      starts: [],
      sizes: spiralSizes(request, told),
      fitDeviation: made.deviation,
      insideRadius: inside,
      findings: spiralFindings(request, told),
    },
  };
};

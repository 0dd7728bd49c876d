/** The sizes a gear is measured by, with how each is taken. The first tooth (of an internal gear its first space) lies on the X axis. */

import { type Point, point } from '../../geometry/segment.ts';
import type { Figure } from '../../quantity/figure.ts';
import { apply } from '../../quantity/formula.ts';
import { count, fixed, mm, quantities } from '../../text/part.ts';
import { phrases, say, symbols } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { askedOrFound, found } from '../figures.ts';
import type { ShapeSize } from '../shape.ts';
import { chordalHeight, chordalThickness, spanContact, spanSize, thicknessAt } from './formulas.ts';
import type { ToothFigures } from './tooth-figures.ts';

const MIDDLE = point(0, 0);

export interface Radii {
  readonly tip: number;
  readonly root: number;
  /** Where the involute ends towards the root. */
  readonly form: number;
}

/** Circles of any gear; `tip` of an internal gear is the inner one. */
export const circleSizes = (
  figures: ToothFigures,
  { form }: Pick<Radii, 'form'>,
  told: { readonly tip: Figure; readonly root: Figure; readonly form?: Figure },
): readonly ShapeSize[] => [
  ring(told.tip),
  ring(told.root),
  ring(figures.reference, true),
  ring(figures.base, true),
  ring(
    told.form ??
      found(
        'form-diameter',
        say('teeth.form-diameter')`form diameter, where the involute ends`,
        2 * form,
        say('teeth.form-diameter.by')`where flank and root meet`,
        { from: [figures.base] },
      ),
    true,
  ),
];

const ring = (figure: Figure, drawn = false): ShapeSize => ({
  figure,
  taking: { kind: 'circle', centre: MIDDLE, radius: figure.value / 2, drawn: drawn ? true : undefined },
});

export type Spanned =
  /** None where no number of teeth brings both anvils on the flanks. */
  { readonly kind: 'spanned'; readonly teeth: number | undefined } | { readonly kind: 'off the flank'; readonly text: Text };

/** The teeth that are asked for, where their span touches the flanks; else the best. */
export const spanned = (figures: ToothFigures, radii: Pick<Radii, 'tip' | 'form'>, asked: number | undefined): Spanned => {
  const best = bestSpan(figures, radii);
  if (asked === undefined) return { kind: 'spanned', teeth: best };
  const contact = contactOver(figures, asked);
  const [low, high] = [2 * radii.form, 2 * radii.tip];
  if (asked < figures.teeth.value && contact > low && contact < high) return { kind: 'spanned', teeth: asked };
  const off: OffFlank = { asked, contact, flanks: [low, high] };
  return { kind: 'off the flank', text: best === undefined ? words.noneDoes(off) : words.othersDo(off, best) };
};

interface OffFlank {
  readonly asked: number;
  /** Diameter at which the anvils would touch, and those between which there is flank. */
  readonly contact: number;
  readonly flanks: readonly [number, number];
}

const words = phrases('span-off-flank', {
  noneDoes: ({ asked, contact, flanks }: OffFlank) =>
    say`Over ${{ teeth: count(asked, 'tooth') }} the anvils would touch at a diameter of ${{ contact: mm(contact, fixed(3)) }}, but the flanks reach from ${{ flanks: quantities(flanks, 'to', 'mm', fixed(3)) }}: no number of teeth does; take the size over pins.`,
  othersDo: ({ asked, contact, flanks }: OffFlank, best: number) =>
    say`Over ${{ teeth: count(asked, 'tooth') }} the anvils would touch at a diameter of ${{ contact: mm(contact, fixed(3)) }}, but the flanks reach from ${{ flanks: quantities(flanks, 'to', 'mm', fixed(3)) }}: ${{ best: count(best, 'tooth') }} do.`,
});

/** Diameter at which anvils over so many teeth touch both flanks alike. */
const contactOver = ({ base, basePitch, baseThickness }: ToothFigures, teeth: number): number =>
  Math.hypot(base.value, (teeth - 1) * basePitch.value + baseThickness.value);

/** The teeth to span: those whose contact lies nearest to the middle of the flank, and on the involute; none where no number does. */
const bestSpan = (figures: ToothFigures, { tip, form }: Pick<Radii, 'tip' | 'form'>): number | undefined => {
  const wanted = tip + form;
  const most = Math.floor(figures.teeth.value / 2);
  let best: { readonly k: number; readonly off: number } | undefined;
  for (let k = 2; k <= most; k += 1) {
    const contact = contactOver(figures, k);
    if (contact >= 2 * tip) break;
    if (contact <= 2 * form) continue;
    const off = Math.abs(contact - wanted);
    if (best === undefined || off < best.off) best = { k, off };
  }
  return best?.k;
};

/** `wanted` is the number of teeth that the request names. */
export const spanSizes = (figures: ToothFigures, over: number, wanted: number | undefined): readonly ShapeSize[] => {
  const { base, basePitch, baseThickness, teeth } = figures;
  const k = askedOrFound(
    wanted,
    'teeth-spanned',
    say('teeth.spanned')`teeth spanned`,
    over,
    say('teeth.spanned.by')`the anvils touch nearest to the middle of the flanks`,
    {
      unit: '1',
    },
  );
  const span = apply(
    spanSize,
    { basePitch, baseThickness, spanned: k },
    { key: 'span', name: say('teeth.span-over')`span over ${{ teeth: count(over, 'tooth') }}` },
  );
  const middle = ((over - 1) * Math.PI) / teeth.value;
  const off = base.value / 2;
  const foot = point(off * Math.cos(middle), off * Math.sin(middle));
  const half = span.value / 2;
  const at = (side: 1 | -1): Point => point(foot.x - side * half * Math.sin(middle), foot.y + side * half * Math.cos(middle));
  return [
    { figure: span, taking: { kind: 'distance', from: at(-1), to: at(1) } },
    { figure: apply(spanContact, { base, span }, { key: 'span-contact' }) },
  ];
};

/** Of an external tooth; `tip` is the radius it ends at. */
export const chordSizes = (figures: ToothFigures, tip: number): readonly ShapeSize[] => {
  const { module, teeth, thickness, reference } = figures;
  const above = tip - reference.value / 2;
  const addendum = found('addendum', say('teeth.addendum')`tip above the reference circle`, above, symbols`h_a = (d_a - d) / 2`, {
    source: { file: 'definition' },
    from: [reference],
  });
  const chord = apply(chordalThickness, { module, teeth, thickness }, { key: 'chordal-thickness' });
  const half = thickness.value / reference.value;
  const [x, y] = [(reference.value / 2) * Math.cos(half), (reference.value / 2) * Math.sin(half)];
  return [
    { figure: chord, taking: { kind: 'distance', from: point(x, -y), to: point(x, y) } },
    {
      figure: apply(chordalHeight, { module, teeth, thickness, addendum }, { key: 'chordal-height' }),
      taking: { kind: 'distance', from: point(x, 0), to: point(tip, 0) },
    },
  ];
};

export const tipThickness = ({ base, baseThickness }: ToothFigures, tip: number): ShapeSize => ({
  figure: apply(
    thicknessAt,
    {
      radius: found('tip-radius', say('teeth.tip-radius')`tip radius`, tip, say('teeth.tip-radius.by')`half the tip diameter`, {
        source: { file: 'definition' },
      }),
      base,
      baseThickness,
    },
    { key: 'tip-thickness', name: say('teeth.tip-thickness')`tooth thickness at the tip, before chamfer or relief` },
  ),
});

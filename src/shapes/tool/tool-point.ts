/** The point that a request asks for: by the form of a thread, or by its own numbers. Lengths in mm, angles in rad. */

import { type Figure, given } from '../../quantity/figure.ts';
import { apply } from '../../quantity/formula.ts';
import { basisOf, type Citation, type Source } from '../../quantity/source.ts';
import type { Finding } from '../../text/finding.ts';
import { mm, number } from '../../text/part.ts';
import { phrases, say, symbols } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { asked, found } from '../figures.ts';
import { find } from './findings.ts';
import { grooveDepth, pointFlat, roundFlat, THREAD_FORMS, type ThreadForm } from './thread-forms.ts';
import type { ToolPoint } from './tool-profile.ts';
import type { ToolRequest } from './tool-request.ts';

export interface AskedPoint {
  /** 'Acme, 5 threads per inch'. */
  readonly name: Text;
  readonly tool: ToolPoint;
  readonly depth: number;
  readonly figures: { readonly depth: Figure; readonly flat: Figure; readonly nose?: Figure | undefined };
  /** Of the thread; a v may have none. */
  readonly pitch?: Figure | undefined;
  /** From the tip to the pitch line, where the groove is half a pitch wide. */
  readonly pitchLine?: number;
  /** The roundest nose that the standard allows. */
  readonly mostNose?: number | undefined;
}

type Refused = { readonly finding: Finding };

const RAD = Math.PI / 180;
const at = (path: keyof ToolRequest) => ({ place: { kind: 'field', path } }) as const;
/** Of a standard form, or of a v that was asked for. */
const angle = (side: 'left' | 'right', value: number, source?: Citation): Figure =>
  source === undefined
    ? found(`flank-${side}`, words[side], value, words.half, { unit: 'rad', source: { file: 'definition' } })
    : given({ key: `flank-${side}`, name: words[side], value, unit: 'rad', basis: basisOf(source), source });

export const askedPoint = (request: ToolRequest): AskedPoint | Refused => {
  const pitch = pitchOf(request);
  if (pitch !== undefined && 'finding' in pitch) return pitch;
  if (request.form === 'v') return plainV(request, pitch);
  if (pitch === undefined)
    return { finding: find('form-tool-incomplete/pitch', say`The thread needs its pitch or its threads per inch.`, at('pitch')) };
  const form = THREAD_FORMS[request.form];
  const { threadsPerInch } = request;
  const name = threadsPerInch === undefined ? words.byPitch(form.title, pitch.value) : words.byCount(form.title, threadsPerInch);
  const named = { name, pitch };
  return { ...named, ...(form.root === 'flat' ? flatPoint(request, form, pitch) : roundPoint(request, form, pitch)) };
};

const words = phrases('form-tool-point', {
  left: say`left flank angle`,
  right: say`right flank angle`,
  half: say`half of the angle between the flanks`,
  byPitch: (form: Text, pitch: number) => say`${{ form }}, pitch ${{ pitch: mm(pitch) }}`,
  byCount: (form: Text, perInch: number) => say`${{ form }}, ${{ count: number(perInch) }} threads per inch`,
  v: (angle: number, depth: number) => say`v of ${{ angle: number(angle) }}°, ${{ depth: mm(depth) }} deep`,
});

const pitchOf = ({ pitch, threadsPerInch }: ToolRequest): Figure | Refused | undefined => {
  if (pitch !== undefined && threadsPerInch !== undefined)
    return {
      finding: find(
        'form-tool-incomplete/twice',
        say`Pitch and threads per inch are both given; one of them is enough.`,
        at('threadsPerInch'),
      ),
    };
  if (pitch !== undefined) return asked('pitch', say('tool.pitch')`pitch`, pitch);
  if (threadsPerInch === undefined) return undefined;
  const count = asked('threads-per-inch', say('tool.threads-per-inch')`threads per inch`, threadsPerInch, '1');
  return found('pitch', say('tool.pitch')`pitch`, 25.4 / threadsPerInch, say('tool.pitch.by')`${{ inch: mm(25.4) }} / n`, {
    source: { file: 'inch' },
    from: [count],
  });
};

const published = (key: string, name: Text, value: number, source: Source): Figure =>
  given({ key, name, value, unit: 'mm', basis: basisOf(source), source });

const own = (key: string, name: Text, value: number | undefined): Figure | undefined =>
  value === undefined ? undefined : asked(key, name, value);

const flatPoint = (request: ToolRequest, form: Extract<ThreadForm, { root: 'flat' }>, pitch: Figure): Omit<AskedPoint, 'name'> => {
  const [left, right] = form.flanks.map((degrees) => degrees * RAD) as [number, number];
  const height = found(
    'basic-height',
    say('tool.basic-height')`basic height of the thread`,
    form.height * pitch.value,
    symbols`${form.height} P`,
    {
      source: form.source,
      from: [pitch],
    },
  );
  const clearance =
    own('crest-clearance', say('tool.crest-clearance')`clearance at the root`, request.crestClearance) ??
    published('crest-clearance', say('tool.crest-clearance')`clearance at the root`, form.clearance(pitch.value), form.source);
  const depth =
    own('depth', say('tool.depth')`depth of the groove`, request.depth) ?? apply(grooveDepth, { height, clearance }, { key: 'depth' });
  const ruled = apply(
    pointFlat,
    {
      pitch,
      height,
      clearance: found('below', say('tool.below')`clearance at the root`, depth.value - height.value, symbols`t - h`, {
        from: [depth, height],
      }),
      left: angle('left', left, form.source),
      right: angle('right', right, form.source),
    },
    { key: 'point-width' },
  );
  const flat = own('point-width', say('tool.point-width')`width of the point`, request.pointWidth) ?? ruled;
  const lean = request.form === 'square' ? -request.sideRelief * RAD : 0;
  const nose = request.noseRadius ?? 0;
  return {
    tool: { left: left + lean, right: right + lean, flat: flat.value, nose },
    depth: depth.value,
    pitch,
    pitchLine: depth.value - height.value / 2,
    figures: { depth, flat, nose: nose > 0 ? asked('nose-radius', say('tool.nose-radius')`radius of the nose`, nose) : undefined },
    mostNose: form.mostNose?.(pitch.value),
  };
};

const roundPoint = (request: ToolRequest, form: Extract<ThreadForm, { root: 'round' }>, pitch: Figure): Omit<AskedPoint, 'name'> => {
  const [steep, slant] = form.flanks.map((degrees) => degrees * RAD) as [number, number];
  const [left, right] = request.loadFlank === 'left' ? [steep, slant] : [slant, steep];
  const by = { source: form.source, from: [pitch] };
  const nose =
    own('nose-radius', say('tool.nose-radius')`radius of the nose`, request.noseRadius) ??
    found('nose-radius', say('tool.nose-radius')`radius of the nose`, form.radius * pitch.value, symbols`${form.radius} P`, by);
  const depth =
    own('depth', say('tool.depth')`depth of the groove`, request.depth) ??
    found('depth', say('tool.depth')`depth of the groove`, form.depth * pitch.value, symbols`${form.depth} P`, by);
  const flat =
    own('point-width', say('tool.point-width')`width of the point`, request.pointWidth) ??
    apply(
      roundFlat,
      { radius: nose, left: angle('left', left, form.source), right: angle('right', right, form.source) },
      { key: 'point-width' },
    );
  return {
    tool: { left, right, flat: flat.value, nose: nose.value },
    depth: depth.value,
    pitch,
    pitchLine: depth.value - form.pitchLine * pitch.value,
    figures: { depth, flat, nose },
  };
};

const plainV = (request: ToolRequest, pitch: Figure | undefined): AskedPoint | Refused => {
  const { includedAngle, depth } = request;
  if (includedAngle === undefined)
    return { finding: find('form-tool-incomplete/angle', say`A v needs the angle between its flanks.`, at('includedAngle')) };
  if (depth === undefined) return { finding: find('form-tool-incomplete/depth', say`A v needs its depth.`, at('depth')) };
  const half = (includedAngle / 2) * RAD;
  const nose = asked('nose-radius', say('tool.nose-radius')`radius of the nose`, request.noseRadius ?? 0);
  const flat =
    own('point-width', say('tool.point-width')`width of the point`, request.pointWidth) ??
    apply(roundFlat, { radius: nose, left: angle('left', half), right: angle('right', half) }, { key: 'point-width' });
  return {
    name: words.v(includedAngle, depth),
    tool: { left: half, right: half, flat: flat.value, nose: nose.value },
    depth,
    figures: { depth: asked('depth', say('tool.depth')`depth of the groove`, depth), flat, nose: nose.value > 0 ? nose : undefined },
    pitch,
  };
};

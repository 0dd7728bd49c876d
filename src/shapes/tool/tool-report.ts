/** The sizes a blank is measured by, and what its straight walls mean for the groove. Lengths in mm, angles in rad. */

import { type Point, point } from '../../geometry/segment.ts';
import type { Figure } from '../../quantity/figure.ts';
import { apply } from '../../quantity/formula.ts';
import { type Finding, remedy } from '../../text/finding.ts';
import { fixed, mm, number, um } from '../../text/part.ts';
import { phrases, say, symbols } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { asked, found } from '../figures.ts';
import { insideSizes } from '../refused.ts';
import type { ShapeSize } from '../shape.ts';
import { find } from './findings.ts';
import { belowAxis, blankDepth, onBlank, type Setting, sideClearance } from './tool-correction.ts';
import type { AskedPoint } from './tool-point.ts';
import { edges, type ToolPoint } from './tool-profile.ts';
import type { ToolRequest } from './tool-request.ts';

export interface ToolMade {
  readonly point: AskedPoint;
  /** As it is cut, with what its walls stand back. */
  readonly tool: ToolPoint;
  readonly setting: Setting;
  readonly reach: number;
}

const DEGREES = 180 / Math.PI;

export const toolSizes = (request: ToolRequest, made: ToolMade, inside: number | undefined): readonly ShapeSize[] => {
  const { point: asksFor, tool, reach } = made;
  const { depth, pitchLine, figures, pitch } = asksFor;
  const off =
    tool.flat === asksFor.tool.flat ? [] : [asked('back', say('tool.back')`what the walls stand back`, request.clearance * request.share)];
  const flat =
    off.length === 0
      ? figures.flat
      : found(
          'point-width',
          say('tool.point-width')`width of the point`,
          tool.flat,
          say('tool.point-width.by')`F less what the flanks stand back`,
          { from: [figures.flat, ...off] },
        );
  return [
    angleSize(made),
    {
      figure: flat,
      taking: tool.flat > 1e-9 ? ({ kind: 'distance', from: point(-tool.flat / 2, 0), to: point(tool.flat / 2, 0) } as const) : undefined,
    },
    ...(figures.nose === undefined ? [] : [{ figure: figures.nose }]),
    ...depthSizes(made),
    ...(pitchLine === undefined || pitchLine <= tool.nose
      ? []
      : [
          widthSize(made, pitchLine, 'width-at-pitch-line', sizes.atPitchLine),
          {
            figure: found(
              'pitch-line',
              say('tool.pitch-line')`from the tip to the pitch line`,
              -placed(made, 0, pitchLine).y,
              isCorrected(made) ? sizes.pitchLine : symbols`t - h/2`,
            ),
            taking: down(made, pitchLine),
          },
        ]),
    widthSize(made, depth, 'width-at-depth', sizes.atDepth),
    ...(pitch === undefined ? [] : [{ figure: pitch }]),
    ...clearanceSizes(made),
    {
      figure: found(
        'reach',
        say('tool.reach')`from the tip to the end of the flanks`,
        -placed(made, 0, reach).y,
        say('tool.reach.by')`where the flanks end`,
      ),
      taking: { kind: 'distance', from: point(0, 0), to: placed(made, 0, reach) },
    },
    { figure: asked('shank-width', say('tool.shank-width')`width of the shank`, request.shankWidth) },
    {
      figure: asked('length', say('tool.length')`from the tip to the end`, request.length),
      taking: { kind: 'distance', from: point(0, 0), to: point(0, -request.length) },
    },
    ...insideSizes(inside),
  ];
};

const placed = ({ setting }: ToolMade, x: number, depth: number): Point => onBlank(point(x, -depth), setting);

const isCorrected = ({ setting }: ToolMade): boolean => setting.tilt !== 0 || setting.rake !== 0;

/** Between the flanks as drawn; a flank that rake has bent counts from the tip to the depth of the groove. */
const angleSize = (made: ToolMade): ShapeSize => {
  const { tool, point: asksFor } = made;
  const low = -placed(made, 0, asksFor.depth).y;
  const drawn = [tool.left, tool.right].reduce((sum, flank) => sum + Math.atan((Math.tan(flank) * asksFor.depth) / low), 0);
  return {
    figure: found(
      'included-angle',
      say('tool.included-angle')`angle between the flanks`,
      drawn * DEGREES,
      isCorrected(made) ? sizes.blank : symbols`α₁ + α₂`,
      {
        unit: '°',
      },
    ),
  };
};

const depthSizes = (made: ToolMade): readonly ShapeSize[] => {
  const { depth } = made.point.figures;
  if (!isCorrected(made)) return [{ figure: depth, taking: down(made, made.point.depth) }];
  const { tilt, rake, workRadius } = made.setting;
  const figure = apply(
    blankDepth,
    {
      depth,
      workRadius: asked('work-radius', say('tool.work-radius')`radius of the work at the root`, workRadius),
      tilt: asked('clearance-angle', say('tool.clearance-angle')`clearance angle`, tilt, 'rad'),
      rake: asked('rake-angle', say('tool.rake-angle')`rake angle`, rake, 'rad'),
    },
    { key: 'blank-depth', name: say('tool.depth-on-blank')`depth of the form on the blank` },
  );
  return [{ figure, taking: down(made, made.point.depth) }, { figure: depth }];
};

const down = (made: ToolMade, depth: number) => ({ kind: 'distance', from: point(0, 0), to: placed(made, 0, depth) }) as const;

const widthSize = (made: ToolMade, depth: number, key: string, name: Text): ShapeSize => {
  const { left, right, width } = edges(made.tool, depth);
  const from = placed(made, left, depth);
  return {
    figure: found(key, name, width, symbols`F + t (tan α₁ + tan α₂)`),
    taking: { kind: 'distance', from, to: placed(made, right, depth) },
  };
};

interface Beside {
  readonly side: 'left' | 'right';
  readonly flank: number;
  /** By the tilt alone. */
  readonly figure: Figure;
  /** Less what the lead takes where this side goes ahead, rad. */
  readonly least: number;
}

const besideFlanks = ({ setting, tool }: ToolMade, lead: number): readonly Beside[] => {
  if (setting.tilt === 0) return [];
  const tilt = asked('clearance-angle', say('tool.clearance-angle')`clearance angle`, setting.tilt, 'rad');
  return (['left', 'right'] as const).map((side) => {
    const flank = Math.max(0, tool[side]);
    const figure = apply(
      sideClearance,
      { tilt, flank: asked('flank', say('tool.flank')`flank angle`, flank, 'rad') },
      { key: `side-clearance-${side}`, name: sizes[side] },
    );
    return { side, flank, figure, least: Math.atan(Math.tan(figure.value / DEGREES) - Math.tan(lead) * Math.cos(flank)) };
  });
};

const clearanceSizes = (made: ToolMade): readonly ShapeSize[] => besideFlanks(made, 0).map(({ figure }) => ({ figure }));

/** Of the thread at its root, where it is steepest; 0 where that is not told. */
const leadAngle = ({ minorDiameter, starts }: ToolRequest, { point: asksFor }: ToolMade): number =>
  minorDiameter === undefined || asksFor.pitch === undefined ? 0 : Math.atan((starts * asksFor.pitch.value) / (Math.PI * minorDiameter));

const field = (path: keyof ToolRequest) => ({ place: { kind: 'field', path } }) as const;

export const toolFindings = (request: ToolRequest, made: ToolMade): readonly Finding[] => [
  frontClearance(request, made),
  ...sidesThatRub(request, made),
  ...skewed(request, made),
  ...tooRound(request, made),
];

/** Common practice, no source: a tilt that most holders and steels stand. */
const USUAL_TILT = 10;

const frontClearance = (request: ToolRequest, made: ToolMade): Finding => {
  const { clearanceAngle, rakeAngle } = request;
  const { depth, tool } = made.point;
  if (isCorrected(made))
    return find(
      'form-tool-front-clearance/tilted',
      say`The profile is drawn for a blank tilted by ${{ tilt: number(clearanceAngle) }}° with its top ${{ top: rakeAngle === 0 ? tops.level : tops.raked(rakeAngle) }}, the tip at the height of the axis: the groove of ${{ groove: mm(depth, fixed(3)) }} is ${{ blank: mm(-placed(made, 0, depth).y, fixed(3)) }} deep on the blank. Set up otherwise it cuts another form.`,
      field(clearanceAngle === 0 ? 'rakeAngle' : 'clearanceAngle'),
    );
  const flank = Math.max(tool.left, tool.right);
  const tilted = Math.atan(Math.tan(flank) * Math.cos(USUAL_TILT / DEGREES));
  return find(
    'form-tool-front-clearance',
    flank > 0
      ? say(
          'form-tool-front-clearance/flanks',
        )`The wire leaves walls square to the plate, without clearance: the profile is true for a blank that lies level and has its clearance ground. Tilted by ${{ tilt: number(USUAL_TILT) }}° it would cut a flank of ${{ cut: number(tilted * DEGREES, fixed(2)) }}° for ${{ flank: number(flank * DEGREES, fixed(2)) }}°.`
      : say`The wire leaves walls square to the plate, without clearance: the profile is true for a blank that lies level and has its clearance ground.`,
    {
      ...field('clearanceAngle'),
      remedy: remedy(
        say`Grind the clearance below the edge, or give the clearance angle of the tilted blank: the profile is corrected for it.`,
        { field: 'clearanceAngle' },
      ),
    },
  );
};

const tops = phrases('form-tool-top', {
  level: say`ground level`,
  raked: (rake: number) => say`ground to a rake of ${{ rake: number(rake) }}°`,
});

/** Common practice, no source: below this a flank rubs and burns. */
const LEAST_SIDE = 1 / DEGREES;

const sidesThatRub = (request: ToolRequest, made: ToolMade): readonly Finding[] => {
  const lead = leadAngle(request, made);
  const worst = besideFlanks(made, lead).toSorted((a, b) => a.least - b.least)[0];
  if (worst === undefined || worst.least >= LEAST_SIDE) return [];
  const told = rubs.leaves(request.clearanceAngle, worst.figure.value, worst.flank * DEGREES);
  return [
    find('form-tool-side-rubs', lead > 0 ? rubs.withLead(told, lead * DEGREES, worst.least * DEGREES) : rubs.beforeLead(told), {
      ...field('clearanceAngle'),
      remedy: remedy(say`Turn the tool in its holder by the lead angle, tilt it more, or grind the sides.`, { field: 'clearanceAngle' }),
    }),
  ];
};

const parts = phrases('form-tool-lead', {
  more: say`more than that`,
  allBut: (left: number) => say`all but ${{ left: number(left, fixed(2)) }}° of it`,
});

const rubs = phrases('form-tool-side-rubs', {
  leaves: (tilt: number, clearance: number, flank: number) =>
    say`A tilt of ${{ tilt: number(tilt) }}° leaves ${{ clearance: number(clearance, fixed(2)) }}° of clearance beside a flank of ${{ flank: number(flank, fixed(1)) }}°`,
  withLead: (told: Text, lead: number, left: number) =>
    say`${{ told }}, and the lead of the thread, ${{ lead: number(lead, fixed(2)) }}° at the root, takes ${{ part: left < 0 ? parts.more : parts.allBut(left) }} on the side that goes ahead.`,
  beforeLead: (told: Text) => say`${{ told }}, before the lead of the thread takes its part.`,
});

/** With rake the edge leaves the plane through the axis, and a thread has gone on a little by there. */
const skewed = (request: ToolRequest, made: ToolMade): readonly Finding[] => {
  const { pitch, depth } = made.point;
  if (made.setting.rake === 0 || pitch === undefined) return [];
  const shift = ((request.starts * pitch.value) / (2 * Math.PI)) * Math.abs(belowAxis(depth, made.setting));
  return [
    find(
      'form-tool-rake-skews',
      say`With a rake of ${{ rake: number(request.rakeAngle) }}° the edge meets the crest of the thread ${{ off: number(Math.abs(belowAxis(depth, made.setting)) * DEGREES, fixed(2)) }}° off the axis: both flanks come out shifted to the same side by up to ${{ shift: um(shift * 1000, fixed(0)) }} there. The profile is not corrected for that.`,
      { ...field('rakeAngle'), remedy: remedy(say`No rake for threads that have to be true.`, { field: 'rakeAngle', value: 0 }) },
    ),
  ];
};

const tooRound = (request: ToolRequest, { point: asksFor }: ToolMade): readonly Finding[] =>
  asksFor.mostNose === undefined || (request.noseRadius ?? 0) <= asksFor.mostNose + 1e-9
    ? []
    : [
        find(
          'form-tool-nose-round',
          say`The standard lets the root of this thread have R ${{ most: mm(asksFor.mostNose) }} at most; the nose has R ${{ nose: mm(request.noseRadius ?? 0) }}.`,
          field('noseRadius'),
        ),
      ];

const sizes = phrases('form-tool-size', {
  pitchLine: say`the depth of the pitch line on the blank`,
  blank: say`of the blank, from the tip to its depth`,
  left: say`clearance beside the left flank`,
  right: say`clearance beside the right flank`,
  atPitchLine: say`width at the pitch line`,
  atDepth: say`width where the groove ends`,
});

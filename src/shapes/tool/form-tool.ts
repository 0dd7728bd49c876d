/** Blanks of form tools for threads and grooves: the point that the form asks for, on a shank. */
import type { Segment } from '../../geometry/segment.ts';
import { type Finding, remedy } from '../../text/finding.ts';
import { mm, number, type Part, upTo } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { standBack } from '../common-keys.ts';
import { insideRadiusOf } from '../inside-radius.ts';
import { shapeKind } from '../kind.ts';
import { refusedWith } from '../refused.ts';
import type { MadeShape, Outline } from '../shape.ts';
import { find } from './findings.ts';
import { corrected, type Setting } from './tool-correction.ts';
import { type AskedPoint, askedPoint } from './tool-point.ts';
import { edges, flatLeft, pointProfile, type Tool, type ToolPoint, toolContour } from './tool-profile.ts';
import { type ToolMade, toolFindings, toolSizes } from './tool-report.ts';
import { formToolQuestion, type ToolRequest } from './tool-request.ts';

const words = phrases('form-tool', {
  name: (point: Text) => say`Form tool, ${{ point }}`,
});

export const formTool = shapeKind({
  ...formToolQuestion,
  make: (request): MadeShape => {
    const point = askedPoint(request);
    if ('finding' in point) return refusedWith(point.finding);
    const tool = stoodBack(point.tool, standBack(request));
    const setting = settingOf(request);
    if ('finding' in setting) return refusedWith(setting.finding);
    const fault = faultOf(request, point, tool);
    if (fault !== undefined) return refusedWith(fault);
    const reach = reachOf(request, point, tool);
    if (typeof reach !== 'number') return refusedWith(reach.finding);
    return drawn(request, { point, tool, setting, reach });
  },
});

const at = (path: keyof ToolRequest) => ({ place: { kind: 'field', path } }) as const;
const tidy = (value: number): Part => mm(value, upTo(3));
const RAD = Math.PI / 180;

/** Every wall a little further in: narrower by what both flanks give, the tip further back. */
const stoodBack = (tool: ToolPoint, back: number): ToolPoint => ({
  ...tool,
  flat: [tool.left, tool.right].reduce((flat, flank) => flat + (back * (Math.sin(flank) - 1)) / Math.cos(flank), tool.flat),
  nose: tool.nose > 0 ? Math.max(0, tool.nose - back) : 0,
});

const settingOf = (request: ToolRequest): Setting | { readonly finding: Finding } => {
  const { clearanceAngle, rakeAngle, minorDiameter } = request;
  if (rakeAngle !== 0 && minorDiameter === undefined)
    return {
      finding: find(
        'form-tool-incomplete/rake',
        say`With a rake of ${{ rake: number(rakeAngle) }}° the edge lies off the axis of the work: what that changes depends on the work’s diameter at the root.`,
        { ...at('minorDiameter'), remedy: remedy(say`Give the minor diameter, or no rake.`, { field: 'minorDiameter' }) },
      ),
    };
  return { tilt: clearanceAngle * RAD, rake: rakeAngle * RAD, workRadius: (minorDiameter ?? 0) / 2 };
};

const faultOf = (request: ToolRequest, { depth }: AskedPoint, tool: ToolPoint): Finding | undefined => {
  const widest = tool.left + tool.right < 0 ? edges(tool, depth).width : tool.flat;
  if (tool.flat < -1e-9 || widest <= 0)
    return find(
      'form-tool-impossible',
      tool.left + tool.right < 0 && tool.flat > 0
        ? say(
            'form-tool-impossible/sides',
          )`Sides that lean inwards by ${{ relief: number(request.sideRelief) }}° meet before the depth of ${{ depth: tidy(depth) }}.`
        : say(
            'form-tool-impossible/flanks',
          )`The flanks meet ${{ before: tidy(-tool.flat / (Math.tan(tool.left) + Math.tan(tool.right) || 1)) }} before the tip: nothing is left of the point.`,
      at(tool.flat > 0 ? 'sideRelief' : request.clearance * request.share > 0 ? 'clearance' : 'depth'),
    );
  if (flatLeft(tool) < -1e-9)
    return find(
      'form-tool-impossible/noses',
      say`Noses of R ${{ nose: tidy(tool.nose) }} have no room on a point ${{ point: tidy(tool.flat) }} wide; R ${{ most: tidy((tool.nose * tool.flat) / (tool.flat - flatLeft(tool))) }} is one full round.`,
      at(request.noseRadius === undefined ? 'pointWidth' : 'noseRadius'),
    );
  if (tool.nose > depth)
    return find(
      'form-tool-impossible/nose',
      say`A nose of R ${{ nose: tidy(tool.nose) }} is deeper than the groove of ${{ depth: tidy(depth) }}.`,
      at('noseRadius'),
    );
  return undefined;
};

/** How far the flanks go on behind the tip before the shoulders, or the sides of the shank, end them. */
const reachOf = (request: ToolRequest, { depth }: AskedPoint, tool: ToolPoint): number | { readonly finding: Finding } => {
  const widening = Math.tan(tool.left) + Math.tan(tool.right);
  const inShank =
    widening > 1e-9 ? (request.shankWidth - tool.flat) / widening : tool.flat < request.shankWidth ? Number.POSITIVE_INFINITY : 0;
  if (inShank < depth)
    return {
      finding: find(
        'form-tool-impossible/shank',
        say`The point is ${{ width: tidy(edges(tool, depth).width) }} wide at a depth of ${{ depth: tidy(depth) }}, more than the shank of ${{ shank: tidy(request.shankWidth) }}.`,
        at('shankWidth'),
      ),
    };
  if (request.reach !== undefined && request.reach < depth)
    return {
      finding: find(
        'form-tool-impossible/reach',
        say`Shoulders ${{ reach: tidy(request.reach) }} behind the tip are in the way of a groove ${{ depth: tidy(depth) }} deep.`,
        at('reach'),
      ),
    };
  return Math.min(request.reach ?? 1.25 * depth, inShank);
};

const drawn = (request: ToolRequest, made: ToolMade): MadeShape => {
  const profile = corrected(pointProfile(made.tool, made.reach), made.setting, request.fit);
  if (profile.kind === 'not fitted')
    return refusedWith(find('form-tool-impossible/arcs', say`The corrected profile cannot be drawn with arcs.`, at('rakeAngle')));
  const tool = onShank(request, profile.segments);
  if (tool.kind === 'no room')
    return refusedWith(
      find(
        'form-tool-impossible/shoulders',
        say`A radius of ${{ radius: tidy(request.shoulderRadius ?? 0) }} between point and shoulders has no room on a shank of ${{ shank: tidy(request.shankWidth) }}.`,
        at('shoulderRadius'),
      ),
    );
  if (tool.kind === 'short')
    return refusedWith(
      find(
        'form-tool-impossible/length',
        say`The shoulders lie ${{ shoulders: tidy(tool.least) }} behind the tip; nothing is left of the shank.`,
        at('length'),
      ),
    );
  const outlines: readonly Outline[] = [{ contour: tool.contour, metal: 'inside' }];
  const inside = insideRadiusOf(outlines);
  return {
    kind: 'made',
    shape: {
      name: words.name(made.point.name),
      outlines,
      starts: [],
      sizes: toolSizes(request, made, inside),
      fitDeviation: profile.deviation,
      insideRadius: inside,
      findings: toolFindings(request, made),
    },
  };
};

/** Radii between point and shoulders that are tried, mm: the first is common practice, no source. */
const ROUNDS = [1, 0.8, 0.6, 0.4, 0.3, 0.2, 0.1, 0];

const onShank = (request: ToolRequest, profile: readonly Segment[]): Tool => {
  const tries = request.shoulderRadius === undefined ? ROUNDS : [request.shoulderRadius];
  let tool: Tool = { kind: 'no room' };
  for (const round of tries) {
    tool = toolContour(profile, { width: request.shankWidth, length: request.length, round });
    if (tool.kind !== 'no room') return tool;
  }
  return tool;
};

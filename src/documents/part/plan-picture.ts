/** The plan view of a job: block, contours, start holes with the contours begun from them, tabs and the datum. */
import { besideMiddle, extentOf } from '../../picture/extent.ts';
import { circleData, lineData, pathData, polygonData, type Stroke, stretchData } from '../../picture/strokes.ts';
import { type Asked, cutOf, type JobFacts, plannedOf } from '../../result/facts.ts';
import type { Contour, ContourPlan, CutPlan, NumberedContour, OpenCutPlan, Point } from '../../result/shown.ts';
import { contour as contourNamed, list, type Part } from '../../text/part.ts';
import type { WrittenLabel, WrittenPicture } from '../paper.ts';

export interface Pictured extends Pick<JobFacts, 'findings' | 'outcome'> {
  readonly drawing: Pick<JobFacts['drawing'], 'loops' | 'units'>;
  readonly asked: Pick<Asked, 'datum'>;
}

/** None when there is no plan and no loop to show. */
export const planPicture = (facts: Pictured): WrittenPicture | undefined => {
  const { drawing } = facts;
  const plan = plannedOf(facts)?.plan;
  const cut = cutOf(facts);
  const loops = drawing.loops.filter((l) => !l.hidden && l.aside === undefined).map((l) => l.contour);
  const outline = plan === undefined ? loops : [plan.block, ...loops];
  if (outline.length === 0) return undefined;
  const { low, high } = boxRound(outline, plan?.clamps ?? []);
  const size = Math.hypot(high.x - low.x, high.y - low.y);
  const strokes: Stroke[] = loops.map((c) => ({ data: pathData(c), width: 0.3, grey: 0.08 }));
  if (plan !== undefined) strokes.unshift({ data: pathData(plan.block), width: 0.5, grey: 0.35, fill: 0.95 });
  if (plan !== undefined) strokes.push(...(plan.clamps ?? []).flatMap(clampStrokes));
  const cuts = cut?.contours ?? [];
  const lines = cut?.plan.openCuts ?? [];
  const margin = size * 0.025;
  return {
    low: { x: low.x - margin, y: low.y - margin },
    high: { x: high.x + margin, y: high.y + margin },
    strokes: [
      ...strokes,
      ...(cut === undefined ? [] : wayStrokes(cut.plan)),
      ...cuts.flatMap(holeStrokes),
      ...lines.flatMap(lineStrokes),
      ...refusedPlaces(facts, size * 0.03),
      ...datum(facts.asked.datum ?? { x: 0, y: 0 }, low, high, size * 0.02),
    ],
    labels: [...holeLabels(cuts), ...lines.map(lineLabel)],
  };
};

type Box = NonNullable<CutPlan['clamps']>[number];

const boxRound = (outline: readonly Contour[], boxes: readonly Box[]): Box => {
  const { minX, minY, maxX, maxY } = extentOf(outline);
  const [lows, highs] = [boxes.map((b) => b.low), boxes.map((b) => b.high)];
  return {
    low: { x: Math.min(minX, ...lows.map((p) => p.x)), y: Math.min(minY, ...lows.map((p) => p.y)) },
    high: { x: Math.max(maxX, ...highs.map((p) => p.x)), y: Math.max(maxY, ...highs.map((p) => p.y)) },
  };
};

/** A grey box with its diagonals: nothing may be cut there. */
const clampStrokes = ({ low, high }: Box): readonly Stroke[] => {
  const [right, left] = [
    { x: high.x, y: low.y },
    { x: low.x, y: high.y },
  ];
  return [
    { data: polygonData([low, right, high, left]), width: 0.4, grey: 0.2, fill: 0.75 },
    { data: lineData(low, high), width: 0.2, grey: 0.2 },
    { data: lineData(right, left), width: 0.2, grey: 0.2 },
  ];
};

/** One label a hole: contours that are begun from the same one are named together. */
const holeLabels = (cuts: readonly NumberedContour[]): readonly WrittenLabel[] => {
  const byHole = new Map<string, WrittenLabel & { readonly text: Part }>();
  for (const { hole, loop } of cuts) {
    const { x, y } = hole.at;
    const before = byHole.get(`${x} ${y}`);
    const text = before === undefined ? contourNamed(loop) : list([before.text, contourNamed(loop)]);
    byHole.set(`${x} ${y}`, { at: { x: x + hole.diameter / 2, y }, text, side: 'right', ring: true });
  }
  return [...byHole.values()];
};

/** An open line drawn as heavily as a contour, with its ways in and out broken, and its holes. */
const lineStrokes = ({ path: line, from, to }: OpenCutPlan): readonly Stroke[] => {
  const tips = [line.segments[0]?.from, line.segments.at(-1)?.to];
  return [
    { data: pathData(line), width: 0.3, grey: 0.08 },
    ...[from, to].flatMap((end, i): Stroke[] => {
      const tip = tips[i];
      if (end.kind === 'blind' || tip === undefined) return [];
      const way: Stroke = { data: lineData(end.at, tip), width: 0.18, grey: 0.45, dash: [1, 0.7] };
      return end.kind === 'hole' ? [{ data: circleData(end.at, end.diameter / 2), width: 0.25, grey: 0.08 }, way] : [way];
    }),
  ];
};

/** In the middle of the line, beside it: at its end the name would stand on the edge of the block. */
export const lineLabel = ({ chain, path: { segments }, from }: OpenCutPlan): WrittenLabel => {
  const middle = segments[segments.length >> 1];
  if (middle === undefined) return { at: from.at, text: contourNamed(chain), side: 'right', ring: false };
  return { ...besideMiddle(middle), text: contourNamed(chain), ring: false };
};

/** Plans with more steps are drawn without: there neither rings nor loops could be told apart. */
const MOST_STEPS = 20_000;

/** Loops at corners are smaller than this radius, mm. */
const LARGEST_LOOP = 2;

/** Way of the wire that no contour shows: the rings in openings that are cut without a core, and the loops out and back at outside corners. */
const wayStrokes = ({ steps }: Pick<CutPlan, 'steps'>): readonly Stroke[] => {
  if (steps.length > MOST_STEPS) return [];
  const first = steps.find((s) => s.kind === 'cut')?.pass;
  return steps.flatMap((step): Stroke[] => {
    if (step.kind !== 'cut' || step.pass !== first) return [];
    const { part, centre, programmed } = step;
    if (part === 'core' && centre !== undefined) return [{ data: stretchData(centre), width: 0.1, grey: 0.45 }];
    // A contour's own arc of that kind is drawn over itself.
    const loop =
      part === 'contour' && programmed?.kind === 'arc' && Math.abs(programmed.sweep) > Math.PI && programmed.radius < LARGEST_LOOP;
    return loop ? [{ data: stretchData(programmed), width: 0.2, grey: 0.08 }] : [];
  });
};

/** A ring round every place that stands in the way. Findings point at the drawing in its own unit. */
export const refusedPlaces = ({ findings, drawing }: Pictured, radius: number): readonly Stroke[] =>
  findings.flatMap(({ severity, place }) => {
    if (severity !== 'refusal' || place?.kind !== 'spot') return [];
    const { millimetres } = drawing.units;
    return [{ data: circleData({ x: place.x * millimetres, y: place.y * millimetres }, radius), width: 0.7, grey: 0.08 }];
  });

/** The hole as a ring with a cross, and the tab as a heavy bar on its contour. */
const holeStrokes = (cut: ContourPlan): readonly Stroke[] => {
  const { at, diameter } = cut.hole;
  const arm = diameter;
  const cross = `M${at.x - arm} ${at.y}H${at.x + arm}M${at.x} ${at.y - arm}V${at.y + arm}`;
  const lead = lineData(at, cut.entry.at);
  // Begun from the edge of the block there is no hole, only the lead.
  const hole: readonly Stroke[] =
    diameter === 0
      ? []
      : [
          { data: circleData(at, diameter / 2), width: 0.25, grey: 0.08 },
          { data: cross, width: 0.12, grey: 0.35 },
        ];
  const strokes: Stroke[] = [...hole, { data: lead, width: 0.18, grey: 0.45, dash: [1, 0.7] }];
  if (cut.tab !== undefined) strokes.push({ data: lineData(cut.tab.from, cut.entry.at), width: 0.9, grey: 0.08 });
  return strokes;
};

/** The zero of the program, where it lies in the picture. */
const datum = (zero: Point, low: Point, high: Point, size: number): readonly Stroke[] => {
  const inside = zero.x >= low.x - size && zero.x <= high.x + size && zero.y >= low.y - size && zero.y <= high.y + size;
  if (!inside) return [];
  return [
    { data: circleData(zero, size / 2), width: 0.35, grey: 0.08 },
    { data: `M${zero.x - size} ${zero.y}H${zero.x + size}M${zero.x} ${zero.y - size}V${zero.y + size}`, width: 0.25, grey: 0.08 },
  ];
};

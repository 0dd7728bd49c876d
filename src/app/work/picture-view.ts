/** Everything the picture can show of a job, layer by layer, in mm. */

import { boundsOfChain, mergedBounds } from '../../geometry/area.ts';
import { cutOf, type JobFacts, plannedOf, programOf } from '../../result/facts.ts';
import type { CutFacts, ProgramFacts } from '../../result/outcome-facts.ts';
import type { Text } from '../../text/text.ts';
import { chainView, circleView, polygonView } from './chain-view.ts';
import { contourViews } from './contour-view.ts';
import type { ChainView, LayerView, PictureView } from './views.ts';

/** A drawing alone can be shown, and what is known of its cut besides. None where the drawing holds nothing that could be shown. */
export const pictureView = (drawing: JobFacts['drawing'], facts?: JobFacts): PictureView<Text> | undefined => {
  const plan = facts && plannedOf(facts)?.plan;
  const cut = facts && cutOf(facts);
  const loops = drawing.loops.filter((l) => !l.hidden);
  const open = drawing.openChains.filter((o) => !o.hidden);
  const bounded = [...(plan === undefined ? [] : [plan.block]), ...loops.map((l) => l.contour), ...open.map((o) => o.path)];
  if (bounded.length === 0) return undefined;
  const { minX, minY, maxX, maxY } = mergedBounds(bounded.map(boundsOfChain));
  const shown = [...loops.map((l) => l.contour), ...open.map((o) => o.path)];
  const drawn = shown.length === 0 ? undefined : mergedBounds(shown.map(boundsOfChain));
  const layers: LayerView[] = [
    { role: 'drawing', chains: loops.map((l) => chainView(l.contour, l.id)) },
    { role: 'open line', chains: open.map((o) => chainView(o.path, o.id)) },
    ...(plan === undefined ? [] : blockLayers(plan)),
    ...(cut === undefined ? [] : cutLayers(cut.plan)),
    ...proofLayers(facts && programOf(facts)?.proof),
  ];
  return {
    low: { x: minX, y: minY },
    high: { x: maxX, y: maxY },
    drawn: drawn === undefined ? undefined : { width: drawn.maxX - drawn.minX, depth: drawn.maxY - drawn.minY },
    layers: layers.filter((l) => l.chains.length > 0),
    contours: contourViews(drawing, facts),
    startHoles: cut === undefined ? [] : startHolesOf(cut.plan),
    datum: facts?.asked.datum ?? { x: 0, y: 0 },
    millimetres: drawing.units.millimetres,
  };
};

type CutPlan = CutFacts['plan'];

const blockLayers = ({ block, clamps = [] }: Pick<CutPlan, 'block' | 'clamps'>): readonly LayerView[] => [
  { role: 'block', chains: [chainView(block)] },
  {
    role: 'clamp',
    chains: clamps.map(({ low, high }) => polygonView([low, { x: high.x, y: low.y }, high, { x: low.x, y: high.y }], true)),
  },
];

const cutLayers = (plan: CutPlan): readonly LayerView[] => {
  const { contours, openCuts = [] } = plan;
  return [
    {
      role: 'start hole',
      chains: contours.filter((c) => c.hole.diameter > 0).map((c) => circleView(c.hole.at.x, c.hole.at.y, c.hole.diameter / 2, c.loop)),
    },
    { role: 'lead', chains: [...contours.map((c) => polygonView([c.hole.at, c.entry.at], false, c.loop)), ...openCuts.flatMap(openLeads)] },
    { role: 'tab', chains: contours.flatMap((c) => (c.tab === undefined ? [] : [polygonView([c.tab.from, c.entry.at], false, c.loop)])) },
    { role: 'comes out', chains: contours.flatMap((c) => c.comesOut.map((chain) => chainView(chain, c.loop))) },
    ...passLayers(plan),
  ];
};

const openLeads = ({ chain, path, from, to }: NonNullable<CutPlan['openCuts']>[number]): readonly ChainView[] => {
  const tips = [path.segments[0]?.from, path.segments.at(-1)?.to];
  return [from, to].flatMap((end, i) => {
    const tip = tips[i];
    return end.kind === 'blind' || tip === undefined ? [] : [polygonView([end.at, tip], false, chain)];
  });
};

/** The way of the wire's centre, pass by pass. */
const passLayers = (plan: CutPlan): readonly LayerView[] => {
  const courses = plan.contours.map((c) => ({ loop: c.loop, courses: c.courses }));
  return plan.passes.map((pass, i) => ({
    role: 'pass',
    pass: pass.number,
    chains: courses.flatMap(({ loop, courses: all }) => {
      const course = all[i];
      return course === undefined ? [] : [chainView(course.centre, loop)];
    }),
  }));
};

const proofLayers = (proof: ProgramFacts['proof'] | undefined): readonly LayerView[] =>
  proof === undefined
    ? []
    : [
        { role: 'metal left', chains: proof.openings.map(({ origin, points }) => polygonView(moved(points, origin), true)) },
        { role: 'slug', chains: proof.loose.map((l) => polygonView(moved(l.outline.points, l.outline.origin), true, l.loop)) },
      ];

const moved = (points: readonly { readonly x: number; readonly y: number }[], by: { readonly x: number; readonly y: number }) =>
  points.map((p) => ({ x: p.x + by.x, y: p.y + by.y }));

const startHolesOf = ({ contours }: CutFacts['plan']): PictureView['startHoles'] =>
  contours.flatMap(({ loop, hole }) => (hole.diameter > 0 ? [{ owner: loop, ...hole.at }] : []));

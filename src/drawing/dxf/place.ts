/** Draws the records out: blocks into their inserts, everything into the world, seen from above. */
import type { Budget } from '../budget.ts';
import { brokenType } from '../curve/construction.ts';
import type { Curve, DrawnCurve, DrawnFile } from '../curve/curve.ts';
import { withinReach } from '../curve/reach.ts';
import { flattened, type Lie, lieOf } from './flatten.ts';
import { COPY_STEPS } from './forecast.ts';
import type { LayerTable } from './layers.ts';
import type { Block, DrawnEntity, EntityRecord, Insert, PointEntity } from './records.ts';
import type { Report } from './report-dxf.ts';
import { IN_PLACE, lifted, movedInSpace, type Placement, placed, point3, type SpaceCurve, within } from './space.ts';

export interface Drawn {
  readonly curves: DrawnCurve[];
  readonly marks: DrawnFile['marks'][number][];
}

interface Site {
  readonly placement: Placement;
  /** True at the top, where nothing has to be moved. */
  readonly inPlace: boolean;
  /** What entities on layer 0 take over from their insert; none at the top. */
  readonly layer: string | undefined;
  readonly hidden: boolean;
  /** What entities take over that have the line type of their block. */
  readonly lineType: string;
  /** The blocks around, so that one within itself is seen. */
  readonly blocks: readonly string[];
}

interface Hall {
  readonly blocks: ReadonlyMap<string, Block>;
  readonly layers: LayerTable;
  readonly budget: Budget;
  readonly report: Report;
  /** Blocks of which it was counted what is not drawn: once, however often they are inserted. */
  readonly counted: Set<string>;
}

export const drawnOut = (records: readonly EntityRecord[], given: Omit<Hall, 'counted'>): Drawn => {
  const hall: Hall = { ...given, counted: new Set() };
  const drawn: Drawn = { curves: [], marks: [] };
  const entity = { number: 0 };
  const top: Site = { placement: IN_PLACE, inPlace: true, layer: undefined, hidden: false, lineType: '', blocks: [] };
  drawRecords(records, top, hall, drawn, entity);
  return drawn;
};

const drawRecords = (records: readonly EntityRecord[], site: Site, hall: Hall, drawn: Drawn, entity: { number: number }): void => {
  for (const record of records) {
    if (hall.budget.spent()) return;
    if (record.kind === 'insert') drawInsert(record, site, hall, drawn, entity);
    else {
      const layer = hall.layers.named(layerAt(record, site));
      const hidden = site.hidden || record.invisible || layer.off || layer.frozen;
      layer.entities++;
      if (record.kind === 'spot') drawSpot(record, site, layer.name, hidden, drawn, hall);
      else {
        const curves = curvesAt(record, site, hall.report);
        if (!hall.budget.work(1 + curves.length)) return;
        const number = entity.number++;
        const lineType = brokenType(lineTypeAt(record, layer.lineType, site));
        for (const curve of curves) {
          if (!withinReach(curve)) hall.report.tooFar(record);
          else if (!hall.budget.entity()) return;
          else drawn.curves.push(drawnCurve(record, curve, { layer: layer.name, hidden, lineType, entity: number }));
        }
      }
    }
  }
};

const drawnCurve = (
  { closes, turnless, place: line }: DrawnEntity,
  curve: Curve,
  where: Pick<DrawnCurve, 'layer' | 'hidden' | 'lineType' | 'entity'>,
): DrawnCurve => ({ curve, ...where, closes, turnless, line });

const lineTypeAt = ({ lineType = 'bylayer' }: Pick<EntityRecord, 'lineType'>, ofLayer: string, site: Site): string => {
  const named = lineType.toLowerCase();
  if (named === 'byblock') return site.lineType;
  return named === 'bylayer' ? ofLayer : lineType;
};

const layerAt = (record: EntityRecord, site: Site): string =>
  record.layer === '0' && site.layer !== undefined ? site.layer : record.layer;

const drawSpot = (spot: PointEntity, site: Site, layer: string, hidden: boolean, drawn: Drawn, { budget, report }: Hall): void => {
  if (!budget.work(1) || !budget.entity()) return;
  const { x, y } = placed(site.placement, spot.at);
  if (withinReach({ kind: 'line', from: { x, y }, to: { x, y } })) drawn.marks.push({ at: { x, y }, layer, hidden });
  else report.tooFar(spot);
};

/** The curves of a shape in the world; at the top and lying flat they are there already. */
const curvesAt = (shape: DrawnEntity, site: Site, report: Report): readonly Curve[] => {
  if (site.inPlace && shape.space.length === 0) return shape.flat;
  const inSpace: readonly SpaceCurve[] = shape.space.length > 0 ? shape.space : shape.flat.map((c) => lifted(c, 0));
  const curves: Curve[] = [];
  let worst: Lie = 'level';
  for (const curve of inSpace) {
    const moved = site.inPlace ? curve : movedInSpace(curve, site.placement);
    const lie = lieOf(moved);
    if (lie === 'tilted' || worst === 'level') worst = lie;
    const seen = flattened(moved);
    if (seen === 'edge on') report.edgeOn(shape);
    else curves.push(seen);
  }
  report.lies(shape, worst);
  return curves;
};

const drawInsert = (insert: Insert, site: Site, hall: Hall, drawn: Drawn, entity: { number: number }): void => {
  const { key } = insert;
  const block = hall.blocks.get(key);
  if (isHatchBlock(key)) hall.report.tally.passOver('INSERT of a hatch or dimension block', insert.place);
  else if (ARROWHEADS.has(key)) hall.report.tally.passOver('INSERT of an arrowhead', insert.place);
  else if (block === undefined) hall.report.missing(insert);
  else if (site.blocks.includes(key)) hall.report.withinItself(insert);
  else if (hall.budget.nesting(site.blocks.length + 1)) {
    if (!hall.counted.has(key)) hall.report.tally.addAll(block.aside);
    hall.counted.add(key);
    drawCopies(insert, block, site, hall, drawn, entity);
  }
};

const drawCopies = (insert: Insert, block: Block, site: Site, hall: Hall, drawn: Drawn, entity: { number: number }): void => {
  const layer = layerAt(insert, site);
  const { frozen, lineType: ofLayer } = hall.layers.named(layer);
  const hidden = site.hidden || insert.invisible || frozen;
  const lineType = lineTypeAt(insert, ofLayer, site);
  const blocks = [...site.blocks, insert.key];
  const base = { ...IN_PLACE, origin: point3(-block.base.x, -block.base.y, -block.base.z) };
  for (let row = 0; row < insert.rows; row++)
    for (let column = 0; column < insert.columns; column++) {
      if (!hall.budget.work(COPY_STEPS)) return;
      const placement = within(site.placement, within(copyOf(insert, row, column), base));
      drawRecords(block.records, { placement, inPlace: false, layer, hidden, lineType, blocks }, hall, drawn, entity);
    }
};

/** R12 draws hatches and dimensions as blocks of their own, named '*X1' and '*D1'. */
const isHatchBlock = (key: string): boolean => /^\*[xd]\d*$/.test(key);

/** Blocks that dimensions and leaders draw their ends with, by the names of the format; exploded ones insert them by themselves. */
const ARROWHEADS: ReadonlySet<string> = new Set(
  (
    'archtick boxblank boxfilled closed closedblank closedfilled datumblank datumfilled dot dotblank dotsmall integral none oblique open ' +
    'open30 open90 origin origin2 small'
  )
    .split(' ')
    .map((name) => `_${name}`),
);

const copyOf = (insert: Insert, row: number, column: number): Placement => {
  const { placement, columnStep: c, rowStep: r } = insert;
  const { x, y, z } = placement.origin;
  return {
    ...placement,
    origin: point3(x + column * c.x + row * r.x, y + column * c.y + row * r.y, z + column * c.z + row * r.z),
  };
};

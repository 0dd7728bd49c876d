/** Reads an SVG file into curves in mm, with y turned to point up. It never throws and always ends. */
import { budget, usualLimits } from '../budget.ts';
import type { DrawnFile } from '../curve/curve.ts';
import { composed, type Matrix } from '../curve/move-curve.ts';
import type { ReadLimits } from '../drawing.ts';
import { type Ledger, ledger } from '../ledger.ts';
import { passedOverFindings } from '../passed-over.ts';
import { Drawer } from './draw.ts';
import { MILLIMETRES_IN_A_PIXEL } from './lengths.ts';
import { type Element, markupOf, svgText } from './markup.ts';
import { type Viewport, viewportOf } from './viewport.ts';

/**
 * The outlines of all shapes, in mm. SVG knows pixels, 96 to the inch, and real lengths made of them: with a width or height
 * in mm, cm or inches the scale is the file's own, without it is assumed and doubted. y points down in SVG; here it points
 * up, from the lower edge of the page, so that a part is seen as it is drawn. Source: svg-2.
 */
export const readSvg = (input: Uint8Array | string, limits: ReadLimits = usualLimits): DrawnFile => {
  const told = ledger();
  const allowance = budget(limits, told);
  if (!allowance.bytes(input.length)) return refused(told);
  const { root, byId, whole } = markupOf(typeof input === 'string' ? input : svgText(input), allowance, told);
  if (root === undefined && !whole) told.add('not-a-drawing', 'The file has no SVG element in it.', { done: 'Nothing was read.' });
  if (root === undefined) return refused(told);
  if (root.name !== 'svg') {
    told.add('not-a-drawing', `The file begins with <${root.name}>; an SVG drawing begins with <svg>.`, { done: 'Nothing was read.' });
    return refused(told);
  }
  const view = viewportOf(root, undefined);
  if (view.kind === 'unreadable') {
    told.add('length-unreadable', `The size of the page cannot be read: ${view.what}.`, { place: { kind: 'line', line: root.line } });
    return refused(told);
  }
  tellScale(view.viewport, root, told);
  const drawer = new Drawer(byId, allowance, told);
  drawer.drawRoot(root, composed(pixelsToMillimetres(view.viewport.outer.height), view.viewport.matrix), view.viewport.inner);
  if (allowance.spent()) return refused(told);
  passedOverFindings(told, drawer.passedOver, (type) => drawer.firstPlace(type));
  return {
    state: whole ? 'complete' : 'incomplete',
    format: 'svg',
    units: { name: 'mm', millimetres: 1, basis: view.viewport.real ? 'header' : 'assumed' },
    unitless: false,
    curves: drawer.curves,
    marks: [],
    layers: drawer.layers(),
    passedOver: drawer.passedOver,
    findings: told.findings(),
  };
};

/** The page's lower left corner becomes the origin. */
const pixelsToMillimetres = (height: number): Matrix => {
  const scale = MILLIMETRES_IN_A_PIXEL;
  return { a: scale, b: 0, c: 0, d: -scale, e: 0, f: height * scale };
};

const tellScale = ({ real, stretched }: Viewport, root: Element, told: Ledger): void => {
  const place = { kind: 'line' as const, line: root.line };
  if (!real)
    told.add('pixels-assumed', 'The file gives its size in pixels, or not at all, and names no length of the world.', {
      place,
      done: '96 pixels were taken as 25.4 mm, as the standard says.',
      remedy: 'Check one known length; programs have also written 72 or 90 pixels to the inch.',
    });
  if (stretched) told.add('view-stretched', 'The picture is stretched unevenly to fill its page.', { place, done: 'It was read so.' });
};

const refused = (told: Ledger): DrawnFile => ({
  state: 'refused',
  format: 'svg',
  unitless: false,
  curves: [],
  marks: [],
  layers: [],
  passedOver: new Map(),
  findings: told.findings(),
});

/** Reads an SVG file into curves in mm, with y turned to point up. It never throws and always ends. */

import { mm, name } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import { budget, usualLimits } from '../budget.ts';
import { type DrawnFile, refusedFile } from '../curve/curve.ts';
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
  if (root === undefined && !whole) told.add('not-a-drawing', words.noElement, { done: words.nothingRead });
  if (root === undefined) return refused(told);
  if (root.name !== 'svg') {
    told.add('not-a-drawing', words.otherRoot(root.name), { done: words.nothingRead });
    return refused(told);
  }
  const view = viewportOf(root, undefined);
  if (view.kind === 'unreadable') {
    told.add('length-unreadable', say('length-unreadable/page')`The size of the page cannot be read: ${{ given: name(view.what) }}.`, {
      place: { kind: 'line', line: root.line },
    });
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
    signs: drawer.signs.signs(),
    titled: drawer.signs.titled(),
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
    told.add('pixels-assumed', say`The file gives its size in pixels, or not at all, and names no length of the world.`, {
      place,
      done: say`96 pixels were taken as ${{ inch: mm(25.4) }}, as the standard says.`,
      remedy: say`Check one known length; some programs wrote 72 or 90 pixels to the inch.`,
    });
  if (stretched)
    told.add('view-stretched', say('view-stretched/page')`The picture is stretched unevenly to fill its page.`, {
      place,
      done: words.readSo,
    });
};

const refused = (told: Ledger): DrawnFile => refusedFile('svg', told.findings());

const words = phrases('reading-svg', {
  noElement: say`The file has no SVG element in it.`,
  nothingRead: say`Nothing was read.`,
  otherRoot: (root: string) => say`The file begins with <${{ root: name(root) }}>; an SVG drawing begins with <svg>.`,
  readSo: say`It was read so.`,
});

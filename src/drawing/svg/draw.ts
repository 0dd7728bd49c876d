/** Walks the tree of an SVG file and draws its shapes out: groups, nested pictures, and what `use` repeats. */

import type { Place } from '../../text/finding.ts';
import { name, type Part, term } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import type { Budget } from '../budget.ts';
import type { DrawnCurve } from '../curve/curve.ts';
import { composed, type Matrix, movedCurve, UNMOVED } from '../curve/move-curve.ts';
import { withinReach } from '../curve/reach.ts';
import type { Layer } from '../drawing.ts';
import type { DrawingCode, Ledger } from '../ledger.ts';
import { signBook } from '../unit-signs.ts';
import { isShape, type ShapeOutcome, shapeRuns } from './element-curves.ts';
import { elementsDrawn, linkOf, targetOf } from './forecast.ts';
import { NOT_DRAWN } from './kinds.ts';
import { lengthOf } from './lengths.ts';
import type { Element } from './markup.ts';
import { type Shown, shownWithin, styled } from './style.ts';
import { transformOf } from './transform.ts';
import { type Size, viewportOf } from './viewport.ts';

/** What an element finds around it. */
interface Around extends Shown {
  readonly matrix: Matrix;
  readonly size: Size;
  /** Name of the nearest group that has one; a label goes before an id. */
  readonly layer: string;
  readonly labelled: boolean;
  /** Lines are drawn dashed. */
  readonly dashed: boolean;
  /** Elements around, those of `use` counted too. */
  readonly depth: number;
  /** The elements that `use` is drawing, so that one within itself is seen. */
  readonly using: readonly Element[];
}

export class Drawer {
  readonly curves: DrawnCurve[] = [];
  readonly passedOver = new Map<string, number>();
  /** What its texts say of units. */
  readonly signs = signBook();
  readonly #byId: ReadonlyMap<string, Element>;
  readonly #budget: Budget;
  readonly #told: Ledger;
  readonly #layers = new Map<string, { hidden: boolean; entities: number }>();
  readonly #firstLine = new Map<string, number>();
  readonly #moves = new Map<Element, Matrix | undefined>();
  readonly #read = new Map<Element, ShapeOutcome>();
  #entity = 0;

  constructor(byId: ReadonlyMap<string, Element>, budget: Budget, told: Ledger) {
    this.#byId = byId;
    this.#budget = budget;
    this.#told = told;
  }

  drawRoot(root: Element, matrix: Matrix, size: Size): void {
    const elements = elementsDrawn(root, this.#byId);
    if (!this.#budget.expected(0, elements * STEPS)) return;
    // What moves the page as a whole goes by rules of its own and says nothing about a part.
    if (styled(root, 'transform') !== undefined)
      this.#leave('transform-unreadable', root, say('transform-unreadable/page')`The page as a whole has a transform.`, words.notApplied);
    const shown = shownWithin({ displayed: true, visible: true }, root);
    this.#children(root, { ...shown, matrix, size, layer: NO_GROUP, labelled: false, dashed: isDashed(root, false), depth: 1, using: [] });
  }

  /** A layer is hidden when all that lies on it is. */
  layers(): readonly Layer[] {
    return [...this.#layers].map(([name, { hidden, entities }]) => ({ name, hidden, entities }));
  }

  firstPlace(type: string): Place {
    return { kind: 'line', line: this.#firstLine.get(type) ?? 1 };
  }

  #children(element: Element, outside: Around): void {
    const around = { ...outside, depth: outside.depth + 1 };
    if (!this.#budget.nesting(around.depth)) return;
    for (const child of element.children) {
      if (!this.#budget.work(STEPS) || this.#budget.spent()) return;
      this.#element(child, around);
    }
  }

  #element(element: Element, around: Around): void {
    const { name } = element;
    if (name === 'style')
      this.#leave('style-sheet-ignored', element, say('style-sheet-ignored')`A style sheet may hide or move shapes.`, words.notApplied);
    if (NOT_DRAWN.has(name) || name.includes(':')) return;
    if (!isShape(name) && !CONTAINERS.has(name) && name !== 'use') {
      this.#passOver(element);
      return;
    }
    const inside = this.#within(around, element);
    if (inside === undefined) return;
    if (isShape(name)) this.#shape(element, inside);
    else if (name === 'use') this.#use(element, inside);
    else if (name === 'svg') this.#picture(element, inside, undefined);
    else this.#children(element, inside);
  }

  /** What the element adds for itself and all in it; none when its transform makes no sense. */
  #within(around: Around, element: Element): Around | undefined {
    const text = styled(element, 'transform');
    const move = this.#moveOf(element, text);
    if (move === undefined) {
      this.#leave('transform-unreadable', element, words.noTransform(text ?? ''), words.leftOut);
      return undefined;
    }
    for (const clip of ['clip-path', 'mask'])
      if ((styled(element, clip) ?? 'none') !== 'none')
        this.#leave('clip-ignored', element, say('clip-ignored')`A shape is clipped.`, words.drawnWhole);
    const named = element.name === 'g' || element.name === 'svg' ? this.#groupName(element, around) : {};
    return {
      ...around,
      ...shownWithin(around, element),
      ...named,
      dashed: isDashed(element, around.dashed),
      matrix: composed(around.matrix, move),
    };
  }

  /** Read once for each element, however often it is used. */
  #moveOf(element: Element, text: string | undefined): Matrix | undefined {
    if (text === undefined) return UNMOVED;
    if (!this.#moves.has(element))
      this.#moves.set(element, styled(element, 'transform-origin') === undefined ? transformOf(text) : undefined);
    return this.#moves.get(element);
  }

  #groupName(element: Element, around: Around): Partial<Around> {
    if (element.label !== undefined) return { layer: element.label, labelled: true };
    const id = element.attributes.get('id');
    return id === undefined || around.labelled ? {} : { layer: id };
  }

  #shape(element: Element, around: Around): void {
    const outcome = this.#runs(element, around.size);
    if (outcome.kind === 'unreadable') {
      this.#leave(outcome.code, element, words.notDrawn(element.name, outcome.why), words.leftOut);
      return;
    }
    const hidden = !around.displayed || !around.visible;
    for (const run of outcome.runs) {
      const entity = this.#entity++;
      this.#count(around.layer, hidden);
      for (const flat of run.curves) {
        const curve = movedCurve(around.matrix, flat);
        if (curve === 'edge on') this.#leave('entity-impossible', element, words.flat(element.name), words.leftOut);
        else if (!withinReach(curve)) this.#leave('entity-impossible', element, words.tooFar(element.name), words.leftOut);
        else if (!this.#budget.work(1) || !this.#budget.entity()) return;
        else
          this.curves.push({
            curve,
            layer: around.layer,
            hidden,
            lineType: around.dashed ? 'stroke-dasharray' : undefined,
            entity,
            closes: run.closes,
            line: element.line,
          });
      }
    }
  }

  /** Lists of points and path data are long and the same wherever they are used: they are read once. */
  #runs(element: Element, size: Size): ShapeOutcome {
    const known = this.#read.get(element);
    if (known !== undefined) return known;
    const outcome = shapeRuns(element, size);
    if (element.name === 'path' || element.name.startsWith('poly')) this.#read.set(element, outcome);
    return outcome;
  }

  #use(element: Element, around: Around): void {
    const link = linkOf(element);
    const target = targetOf(element, this.#byId);
    if (target === undefined) {
      this.#leave('reference-missing', element, words.missing(link), words.nothingDrawn);
      return;
    }
    if (around.using.includes(target)) {
      this.#leave('reference-to-itself', element, words.withinItself(link), words.innerLeftOut);
      return;
    }
    const [x, y] = ['x', 'y'].map((name) => lengthOf(element.attributes.get(name) ?? '0'));
    if (x?.kind !== 'length' || y?.kind !== 'length') {
      this.#leave('length-unreadable', element, say('length-unreadable/use')`The place of a <use> cannot be read.`, words.leftOut);
      return;
    }
    const matrix = composed(around.matrix, { ...UNMOVED, e: x.value, f: y.value });
    const inside = { ...around, matrix, depth: around.depth + 1, using: [...around.using, target] };
    if (!this.#budget.nesting(inside.depth)) return;
    if (target.name !== 'symbol' && target.name !== 'svg') {
      this.#element(target, inside);
      return;
    }
    const within = this.#within(inside, target);
    if (within !== undefined) this.#picture(target, within, element.attributes);
  }

  /** An `svg` or `symbol` with a window of its own. */
  #picture(element: Element, around: Around, given: ReadonlyMap<string, string> | undefined): void {
    const view = viewportOf(element, around.size, given);
    if (view.kind === 'unreadable') {
      this.#leave('length-unreadable', element, words.noSize(element.name, view.what), words.leftOut);
      return;
    }
    const { matrix, inner, stretched } = view.viewport;
    if (stretched) this.#leave('view-stretched', element, words.stretched(element.name), words.readSo);
    this.#children(element, { ...around, matrix: composed(around.matrix, matrix), size: inner });
  }

  #count(name: string, hidden: boolean): void {
    const layer = this.#layers.get(name) ?? { hidden: true, entities: 0 };
    layer.hidden &&= hidden;
    layer.entities++;
    this.#layers.set(name, layer);
  }

  #passOver({ name, line, words }: Element): void {
    if (words.length > 0) this.signs.text(words.join(''));
    this.passedOver.set(name, (this.passedOver.get(name) ?? 0) + 1);
    if (!this.#firstLine.has(name)) this.#firstLine.set(name, line);
  }

  #leave(code: DrawingCode, { line }: Element, text: Text, done: Text): void {
    this.#told.add(code, text, { place: { kind: 'line', line }, done });
  }
}

/** Drawing an element costs about as much as so many steps elsewhere; `use` can ask for it without end. */
const STEPS = 8;
const NO_GROUP = '(no group)';
const CONTAINERS: ReadonlySet<string> = new Set(['g', 'a', 'svg', 'switch']);

/** Dashes pass on to what is within. */
const isDashed = (element: Element, around: boolean): boolean => {
  const dashes = styled(element, 'stroke-dasharray');
  return dashes === undefined || dashes === 'inherit' ? around : /[1-9]/.test(dashes);
};

/** What was typed may be as long as a file. */
const shown = (text: string): Part => name(text.slice(0, 80));

const words = phrases('drawing-svg', {
  notApplied: say`It was not applied.`,
  leftOut: say`It was left out.`,
  drawnWhole: say`It was drawn whole.`,
  nothingDrawn: say`Nothing was drawn for it.`,
  innerLeftOut: say`The inner one was left out.`,
  readSo: say`It was read so.`,
  noTransform: (text: string) => say`The transform '${{ transform: shown(text) }}' makes no sense here.`,
  notDrawn: (element: string, why: Text) => say`A <${{ element: term(element) }}> cannot be drawn: ${{ why }}.`,
  flat: (element: string) => say`A <${{ element: term(element) }}> is pressed flat by a transform.`,
  tooFar: (element: string) => say`A <${{ element: term(element) }}> reaches too far.`,
  missing: (link: string) => say`A <use> asks for '${{ link: shown(link) }}', which is not in the file.`,
  withinItself: (link: string) => say`'${{ link: name(link) }}' is used within itself.`,
  noSize: (element: string, what: string) => say`The size of a <${{ element: term(element) }}> cannot be read: ${{ given: name(what) }}.`,
  stretched: (element: string) => say`A <${{ element: term(element) }}> is stretched unevenly.`,
});

/** Takes the entities of a file one after the other and keeps what is drawn of them; a polyline is gathered from its vertices. */

import { firstItem, lastItem, neighbours } from '../../sequence/sequence.ts';
import { count, name } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { DrawnDimension } from '../dimensions.ts';
import { isHarmless } from '../passed-over.ts';
import type { SignBook } from '../unit-signs.ts';
import { dimensionOf } from './dimension-entity.ts';
import {
  arcShape,
  circleShape,
  ellipseShape,
  lightPolylineShape,
  lineShape,
  pointOf,
  polylineShape,
  spaceShape,
  spotOf,
} from './entity-curves.ts';
import { Fields } from './fields.ts';
import { insertOf } from './insert.ts';
import type { EntityRecord, Trouble } from './records.ts';
import type { Report } from './report-dxf.ts';
import type { Point3, SpaceCurve } from './space.ts';
import { splineShape } from './spline-entity.ts';
import type { Tally } from './tally.ts';

type Maker = (f: Fields, report: Report) => EntityRecord | Trouble;

/** Kinds whose numbers are needed. Of all others only layer and paper space are looked at. */
const MAKERS: ReadonlyMap<string, Maker> = new Map<string, Maker>([
  ['LINE', lineShape],
  ['CIRCLE', circleShape],
  ['ARC', arcShape],
  ['ELLIPSE', ellipseShape],
  ['LWPOLYLINE', lightPolylineShape],
  ['SPLINE', splineShape],
  ['INSERT', insertOf],
  ['POINT', spotOf],
]);

/** Enough to see what is steady in them. */
const MOST_DIMENSIONS = 1000;

/** Whose numbers are read though it is not drawn. */
export const isMeasured = (type: string): boolean => type === 'DIMENSION';

export const needsNumbers = (type: string): boolean => MAKERS.has(type) || type === 'POLYLINE' || type === 'VERTEX';

const isEntity = (type: string): boolean => needsNumbers(type) || isHarmless(type) || type === 'SOLID' || type === '3DFACE';

interface Gathering {
  readonly head: Fields;
  readonly points: Point3[];
  readonly bulges: number[];
  readonly kind: 'flat' | 'space' | 'ignored';
  spoilt: boolean;
}

export class Entities {
  readonly #report: Report;
  #into: EntityRecord[] = [];
  #aside: Tally;
  readonly #signs: SignBook;
  /** What the dimensions say, with the name of their style by which they multiply. */
  readonly dimensions: { readonly style: string; readonly made: (factor: number) => DrawnDimension | undefined }[] = [];
  #onPaper = false;
  #polyline: Gathering | undefined;

  constructor(report: Report, signs: SignBook) {
    this.#report = report;
    this.#signs = signs;
    this.#aside = report.tally;
  }

  /** What is taken from here on goes there, and what is not drawn of it is counted there; on a layout sheet all is only counted. */
  collectInto(records: EntityRecord[], aside: Tally, onPaper = false): void {
    this.#into = records;
    this.#aside = aside;
    this.#onPaper = onPaper;
  }

  take(f: Fields): void {
    if (f.type === 'VERTEX' && this.#polyline !== undefined) this.#vertex(f, this.#polyline);
    else if (f.type === 'SEQEND') this.closePolyline('ended');
    else {
      // Behind a polyline without end mark a word that nobody knows may be a vertex with a misspelt name.
      if (!isEntity(f.type)) this.spoil();
      this.closePolyline('no end');
      // The note on the unit often stands in the title block, which is on a layout sheet.
      if (f.text !== '') this.#signs.text(f.text);
      if (f.paper || this.#onPaper) this.#inPaperSpace(f);
      else if (f.type === 'POLYLINE') this.#openPolyline(f);
      else this.#single(f);
    }
  }

  #single(f: Fields): void {
    if (isMeasured(f.type) && this.dimensions.length < MOST_DIMENSIONS) {
      const own = copyOf(f);
      this.dimensions.push({ style: f.style, made: (factor) => dimensionOf(own, factor) });
    }
    const maker = MAKERS.get(f.type);
    if (maker === undefined) this.#aside.passOver(f.type, f.place);
    else if (f.bad !== undefined) this.#badNumber(f, f.bad);
    else {
      const record = maker(f, this.#report);
      if (f.type === 'LWPOLYLINE') this.#tellWidth(f, [40, 41, 43]);
      if (record.kind === 'trouble') this.#report.leftOut(f.type, f.place, record.code, record.text);
      else this.#into.push(record);
    }
  }

  /** An entity that was met but cannot be trusted: the polyline it may belong to is lost with it. */
  spoil(): void {
    if (this.#polyline !== undefined) this.#polyline.spoilt = true;
  }

  /** `cut off`: the file ended, so that nobody knows how many vertices are missing. */
  closePolyline(how: 'ended' | 'no end' | 'cut off'): void {
    const polyline = this.#polyline;
    this.#polyline = undefined;
    if (polyline === undefined || polyline.kind === 'ignored') return;
    const { place } = polyline.head;
    if (how === 'cut off') this.#report.leftOut('POLYLINE', place, 'entity-unfinished', words.endsAmong);
    else if (polyline.spoilt) this.#report.leftOut('POLYLINE', place, 'entity-unfinished', words.vertexUnreadable);
    else {
      if (how === 'no end') this.#report.noEnd(place);
      this.#keepPolyline(polyline);
    }
  }

  #keepPolyline({ head, points, bulges, kind }: Gathering): void {
    const flat = points.map(({ x, y }) => ({ x, y }));
    const closed = head.flag(70, 1);
    const shape = kind === 'flat' ? polylineShape(head, flat, bulges, closed, head.get(30, 0)) : spacePolyline(head, points, closed);
    if (shape.kind === 'trouble') this.#report.leftOut('POLYLINE', head.place, shape.code, shape.text);
    else this.#into.push(shape);
  }

  #inPaperSpace(f: Fields): void {
    this.#report.paperSpace();
    if (f.type === 'POLYLINE') this.#polyline = { head: f, points: [], bulges: [], kind: 'ignored', spoilt: false };
  }

  #openPolyline(f: Fields): void {
    const mesh = f.flag(70, MESH);
    if (mesh) this.#aside.passOver('POLYLINE as a mesh', f.place);
    else this.#tellWidth(f, [40, 41]);
    if (f.bad !== undefined) this.#badNumber(f, f.bad);
    const ignored = mesh || f.bad !== undefined;
    this.#polyline = {
      head: copyOf(f),
      points: [],
      bulges: [],
      kind: ignored ? 'ignored' : f.flag(70, IN_SPACE) ? 'space' : 'flat',
      spoilt: false,
    };
  }

  #vertex(f: Fields, polyline: Gathering): void {
    // The frame of a spline-fit polyline stands among its vertices; the curve does not pass through it.
    if (polyline.kind === 'ignored' || f.flag(70, FRAME)) return;
    if (f.bad !== undefined) this.#badNumber(f, f.bad);
    if (f.bad !== undefined || !f.has(10) || !f.has(20)) polyline.spoilt = true;
    else {
      polyline.points.push(pointOf(f, 10));
      polyline.bulges.push(f.get(42, 0));
    }
  }

  #badNumber(f: Fields, { code, text, place }: NonNullable<Fields['bad']>): void {
    this.#report.leftOut(f.type, place, 'number-unreadable', words.noNumber(text, code));
  }

  #tellWidth(f: Fields, codes: readonly number[]): void {
    if (codes.some((code) => f.get(code, 0) !== 0)) this.#aside.width(f.place);
  }
}

const spacePolyline = (head: Fields, points: readonly Point3[], closed: boolean): EntityRecord | Trouble => {
  if (points.length < 2) return polylineShape(head, points, [], false, 0);
  const [first, last] = [firstItem(points), lastItem(points)];
  const ring = closed && (first.x !== last.x || first.y !== last.y || first.z !== last.z) ? [...points, first] : points;
  const lines = neighbours(ring).map(([from, to]): SpaceCurve => ({ kind: 'line', from, to }));
  return spaceShape(head, lines, closed);
};

/** The fields are reused for the next entity, and the head of a polyline must outlive its vertices. */
const copyOf = (f: Fields): Fields => {
  const copy = new Fields();
  copy.begin(f.type, f.place);
  copy.layer = f.layer;
  copy.lineType = f.lineType;
  copy.text = f.text;
  copy.invisible = f.invisible;
  for (let i = 0; i < f.count; i++) copy.push(f.codeAt(i), f.valueAt(i));
  return copy;
};

const IN_SPACE = 8;
const MESH = 16 | 64;
const FRAME = 16;

const words = phrases('entities', {
  endsAmong: say`The file ends among its vertices.`,
  vertexUnreadable: say`One of its vertices could not be read.`,
  noNumber: (text: string, group: number) =>
    say`'${{ text: name(text) }}' stands for group ${{ group: count(group) }} and is not a number.`,
});

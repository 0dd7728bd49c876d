/** One tooth of a ratchet wheel and the ring of them, from lines and circles that may all stand back. Lengths in mm, angles in rad. */
import { type Contour, contour } from '../../geometry/contour.ts';
import { selfCrossings } from '../../geometry/near/crossings.ts';
import { arc, line, type Point, point, type Segment } from '../../geometry/segment.ts';
import { linked, turned } from '../linked.ts';
import { polar, spun } from '../polar.ts';

/**
 * The wheel turns freely counter-clockwise: each tooth has its face on the schedulewise side and its back falls off the other way. The
 * tip of the first face lies on the X axis.
 */
export interface RatchetForm {
  readonly teeth: number;
  /** Radii of the tips and of the deepest places. */
  readonly tip: number;
  readonly root: number;
  /** How far the face leans over its space, against a radius through its tip; below 0 it leans away. */
  readonly undercut: number;
  /** Between face and back in the bottom of a space. */
  readonly rootRadius: number;
  /** Along the tip circle. */
  readonly land: number;
  readonly back: { readonly kind: 'straight' } | { readonly kind: 'curved'; readonly radius?: number | undefined };
  /** How far all walls stand back into the metal. */
  readonly standBack: number;
}

export type Ratchet =
  | {
      readonly kind: 'ratchet';
      readonly contour: Contour;
      /** Ends of the first face, as cut. */
      readonly top: Point;
      readonly foot: Point;
      readonly land: number;
      /** Between face and back at the tip, rad. */
      readonly tipAngle: number;
      readonly backRadius?: number | undefined;
    }
  | { readonly kind: 'no room'; readonly where: 'face' | 'back' | 'back radius' | 'tooth' };

export const ratchetRing = (form: RatchetForm): Ratchet => {
  const { teeth, tip } = form;
  const pitch = (2 * Math.PI) / teeth;
  const face = faceOf(form);
  if (face === undefined) return { kind: 'no room', where: 'face' };
  const from = polar(tip, form.land / tip - pitch);
  const back = backOf(form, face, from);
  if (typeof back === 'string') return { kind: 'no room', where: back };
  const own = { face, back: turnedBack(back, pitch) };
  const top = topOf(form, own.face, own.back);
  if (top === undefined) return { kind: 'no room', where: 'tooth' };
  const foot = point(face.centre.x - face.radius * face.normal.x, face.centre.y - face.radius * face.normal.y);
  const segments = toothSegments(face, own.back, top, foot, pitch);
  if (segments === undefined) return { kind: 'no room', where: 'tooth' };
  const ring = contour(linked(Array.from({ length: teeth }, (_, i) => segments.map((s) => turned(s, i * pitch))).flat()));
  if (selfCrossings(ring, 1e-9).length > 0) return { kind: 'no room', where: 'tooth' };
  return {
    kind: 'ratchet',
    contour: ring,
    top: top.face,
    foot,
    land: Math.hypot(top.back.x - top.face.x, top.back.y - top.face.y),
    tipAngle: tipAngleOf(face, own.back, top.back),
    backRadius: back.kind === 'arc' ? back.radius : undefined,
  };
};

interface Face {
  /** Square to the face, out of the tooth into the space before it. */
  readonly normal: Point;
  /** normal · place, for places on the face as it is cut. */
  readonly reach: number;
  /** Of the round at its foot, as it is cut. */
  readonly centre: Point;
  readonly radius: number;
}

/** The round touches face and root circle; standing back only makes it larger. */
const faceOf = ({ tip, root, undercut, rootRadius, standBack }: RatchetForm): Face | undefined => {
  const normal = point(-Math.sin(undercut), -Math.cos(undercut));
  const along = point(Math.cos(undercut), -Math.sin(undercut));
  const reach = tip * normal.x;
  const [aside, far] = [reach + rootRadius, root + rootRadius];
  if (far <= Math.abs(aside)) return undefined;
  const up = Math.sqrt(far * far - aside * aside);
  const centre = point(aside * normal.x + up * along.x, aside * normal.y + up * along.y);
  // The foot has to lie below the tip along the face.
  return up < tip * along.x - 1e-9 ? { normal, reach: reach - standBack, centre, radius: rootRadius + standBack } : undefined;
};

/** The back of a tooth: a line or circle through its own tip, touching the round at the foot of the next face. */
type Back =
  | { readonly kind: 'line'; readonly from: Point; readonly to: Point }
  | { readonly kind: 'arc'; readonly centre: Point; readonly radius: number; readonly to: Point };

const backOf = (form: RatchetForm, face: Face, from: Point): Back | 'back' | 'back radius' => {
  const { standBack, rootRadius, back } = form;
  const { centre } = face;
  const [x, y] = [centre.x - from.x, centre.y - from.y];
  const gap = Math.hypot(x, y);
  if (gap <= rootRadius + 1e-9 || from.x * centre.y - from.y * centre.x <= 0) return 'back';
  if (back.kind === 'curved') return curvedBack(form, face, from, gap, back.radius);
  // Seen along the back the round lies on the right, where the space is.
  const angle = Math.atan2(y, x) + Math.asin(rootRadius / gap);
  const out = point(Math.sin(angle), -Math.cos(angle));
  const length = Math.sqrt(gap * gap - rootRadius * rootRadius);
  const start = point(from.x - standBack * out.x, from.y - standBack * out.y);
  return { kind: 'line', from: start, to: point(start.x + length * Math.cos(angle), start.y + length * Math.sin(angle)) };
};

/** Without a radius the back leaves the tip circle smoothly; a larger one makes it flatter, a smaller one would rise above the tip. */
const curvedBack = (form: RatchetForm, { centre }: Face, from: Point, gap: number, asked: number | undefined): Back | 'back radius' => {
  const { tip, rootRadius, standBack } = form;
  const along = (from.x * centre.x + from.y * centre.y) / tip;
  const smooth = (gap * gap - rootRadius * rootRadius) / (2 * (tip + rootRadius - along));
  const radius = asked ?? smooth;
  if (radius < smooth - 1e-9) return 'back radius';
  const about =
    asked === undefined ? point(from.x * (1 - smooth / tip), from.y * (1 - smooth / tip)) : aboutOf(from, centre, gap, radius, rootRadius);
  const reach = Math.hypot(centre.x - about.x, centre.y - about.y);
  const cut = radius - standBack;
  return cut > 0
    ? {
        kind: 'arc',
        centre: about,
        radius: cut,
        to: point(about.x + (cut / reach) * (centre.x - about.x), about.y + (cut / reach) * (centre.y - about.y)),
      }
    : 'back radius';
};

/** Middle of the circle of this radius through `from` that touches the round about `centre` from outside, on the side of the metal. */
const aboutOf = (from: Point, centre: Point, gap: number, radius: number, round: number): Point => {
  const [x, y] = [(centre.x - from.x) / gap, (centre.y - from.y) / gap];
  const along = (radius * radius - (radius + round) ** 2 + gap * gap) / (2 * gap);
  const aside = Math.sqrt(Math.max(0, radius * radius - along * along));
  return point(from.x + along * x - aside * y, from.y + along * y + aside * x);
};

interface Top {
  readonly face: Point;
  readonly back: Point;
}

/** Where face and back end at the tip circle; both at one place where they meet before it. */
const topOf = ({ tip, standBack }: RatchetForm, face: Face, back: Back): Top | undefined => {
  const radius = tip - standBack;
  const onFace = onCircle(face, radius);
  const onBack = backOnCircle(back, radius);
  if (onFace !== undefined && onBack !== undefined && onFace.x * onBack.y - onFace.y * onBack.x > 1e-9 * radius * radius)
    return { face: onFace, back: onBack };
  const met = meeting(face, back);
  return met === undefined ? undefined : { face: met, back: met };
};

const onCircle = ({ normal, reach }: Face, radius: number): Point | undefined => {
  const square = radius * radius - reach * reach;
  if (square < 0) return undefined;
  const up = Math.sqrt(square);
  return point(reach * normal.x - up * normal.y, reach * normal.y + up * normal.x);
};

const backOnCircle = (back: Back, radius: number): Point | undefined => {
  if (back.kind === 'line') {
    const [x, y] = unit(back.from, back.to);
    const along = back.from.x * x + back.from.y * y;
    const square = along * along - (back.from.x ** 2 + back.from.y ** 2 - radius * radius);
    return square < 0 ? undefined : point(back.from.x - (along + Math.sqrt(square)) * x, back.from.y - (along + Math.sqrt(square)) * y);
  }
  const { centre } = back;
  const far = Math.hypot(centre.x, centre.y);
  // A back that leaves the tip circle smoothly touches it.
  if (far < 1e-12) return undefined;
  const along = (radius * radius - back.radius * back.radius + far * far) / (2 * far);
  const square = radius * radius - along * along;
  if (square < -1e-9 * radius * radius) return undefined;
  const aside = Math.sqrt(Math.max(0, square));
  // Round the middle of that circle it stands out of the tip circle; the back begins where it goes in again, counter-clockwise.
  return point((along * centre.x - aside * centre.y) / far, (along * centre.y + aside * centre.x) / far);
};

const meeting = ({ normal, reach }: Face, back: Back): Point | undefined => {
  if (back.kind === 'line') {
    const [x, y] = unit(back.from, back.to);
    const steep = normal.x * x + normal.y * y;
    if (Math.abs(steep) < 1e-12) return undefined;
    const along = (reach - normal.x * back.from.x - normal.y * back.from.y) / steep;
    return point(back.from.x + along * x, back.from.y + along * y);
  }
  const off = reach - normal.x * back.centre.x - normal.y * back.centre.y;
  const square = back.radius * back.radius - off * off;
  if (square < 0) return undefined;
  const up = Math.sqrt(square);
  return point(back.centre.x + off * normal.x - up * normal.y, back.centre.y + off * normal.y + up * normal.x);
};

const unit = (from: Point, to: Point): readonly [number, number] => {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  return [(to.x - from.x) / length, (to.y - from.y) / length];
};

/** Up the face, over the land, down the back and round into the foot of the next face. */
const toothSegments = (face: Face, back: Back, top: Top, foot: Point, pitch: number): readonly Segment[] | undefined => {
  const up = (top.face.x - foot.x) * -face.normal.y + (top.face.y - foot.y) * face.normal.x;
  if (up <= 1e-9 || Math.hypot(back.to.x - top.back.x, back.to.y - top.back.y) <= 1e-9) return undefined;
  const land = top.face === top.back ? 0 : angleBetween(top.face, top.back, point(0, 0));
  const centre = spun(face.centre, pitch);
  const next = spun(foot, pitch);
  const sweep = face.radius > 1e-9 ? angleBetween(back.to, next, centre) : 0;
  const down: Segment =
    back.kind === 'line' ? line(top.back, back.to) : arc(top.back, back.to, back.centre, angleBetween(top.back, back.to, back.centre));
  if ((down.kind === 'arc' && !(down.sweep > 0)) || (face.radius > 1e-9 && !(sweep < 0))) return undefined;
  return [
    line(foot, top.face),
    ...(land > 1e-12 ? [arc(top.face, top.back, point(0, 0), land)] : []),
    down,
    ...(face.radius > 1e-9 ? [arc(back.to, next, centre, sweep)] : []),
  ];
};

/** Signed, the shorter way round. */
const angleBetween = (from: Point, to: Point, about: Point): number => {
  const a = Math.atan2(from.y - about.y, from.x - about.x);
  const b = Math.atan2(to.y - about.y, to.x - about.x);
  return Math.atan2(Math.sin(b - a), Math.cos(b - a));
};

/** Between the directions in which face and back run down from the tip. */
const tipAngleOf = ({ normal }: Face, back: Back, at: Point): number => {
  const down = point(normal.y, -normal.x);
  const along = back.kind === 'line' ? point(back.to.x - at.x, back.to.y - at.y) : point(-(at.y - back.centre.y), at.x - back.centre.x);
  return Math.abs(Math.atan2(down.x * along.y - down.y * along.x, down.x * along.x + down.y * along.y));
};

const turnedBack = (back: Back, angle: number): Back =>
  back.kind === 'line'
    ? { kind: 'line', from: spun(back.from, angle), to: spun(back.to, angle) }
    : { kind: 'arc', centre: spun(back.centre, angle), radius: back.radius, to: spun(back.to, angle) };

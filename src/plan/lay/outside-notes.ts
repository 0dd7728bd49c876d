/** What is said of sharp outside corners: which way the wire goes round each. */
import { firstItem } from '../../sequence/sequence.ts';
import { type Finding, remedy } from '../../text/finding.ts';
import { count, list, type Part, term } from '../../text/part.ts';
import { NOTHING, phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { find } from '../findings.ts';
import type { OutsideCorner } from '../path/outside-corners.ts';
import type { PlanQuestion } from '../question.ts';
import { NAMED, someOf, spot, thousandths } from '../said.ts';

/** The sharp outside corners of one shape, and how many contours have that shape. */
export interface CornersOfShape {
  readonly loop: string;
  readonly name: Part | Text;
  readonly members: number;
  readonly looped: readonly OutsideCorner[];
  /** Left to the control. */
  readonly left: readonly OutsideCorner[];
}

type Asked = Pick<PlanQuestion, 'outsideCorners' | 'sharpOutside'>;

/** One sentence for all where the control does it; where loops are asked for one for each shape, with every corner's way. */
export const outsideNotes = (all: readonly CornersOfShape[], radius: number, asked: Asked): readonly Finding[] => {
  const some = all.filter((s) => s.looped.length + s.left.length > 0);
  if (some.length === 0) return [];
  return asked.sharpOutside === 'loop' ? some.map((s) => loopNote(s, radius, asked)) : [controlNote(some, asked)];
};

const controlNote = (shapes: readonly CornersOfShape[], asked: Asked): Finding => {
  const corners = shapes.reduce((sum, s) => sum + s.left.length * s.members, 0);
  const first = firstItem(firstItem(shapes).left).at;
  const where = shapesSaid(shapes);
  return find('outside-corners', (corners === 1 ? words.one : words.many)(corners, where, words[asked.outsideCorners]), {
    place: { kind: 'spot', x: first.x, y: first.y, reach: 1, loop: firstItem(shapes).loop },
    remedy: remedy(
      say`For crisper edges set ${{ field: term('outsideCorners') }} to loop: the wire then runs out past each corner and back.`,
      {
        field: 'outsideCorners',
        value: 'loop',
      },
    ),
  });
};

const shapesSaid = (shapes: readonly CornersOfShape[]): Part | Text => {
  const named = shapes.slice(0, NAMED).map((s) => words.inShape(s.left.length, s.name));
  return shapes.length > NAMED ? words.moreShapes(named, shapes.length - NAMED) : list(named);
};

const loopNote = ({ loop, name, looped, left }: CornersOfShape, radius: number, asked: Asked): Finding => {
  const at = (looped[0] ?? firstItem(left)).at;
  const round = looped.length === 0 ? undefined : (looped.length === 1 ? words.oneLooped : words.manyLooped)(looped, radius);
  const rest = left.length === 0 ? undefined : (left.length === 1 ? words.oneLeft : words.manyLeft)(left, words[asked.outsideCorners]);
  const ways = round !== undefined && rest !== undefined ? words.both(round, rest) : (round ?? rest ?? NOTHING);
  return find('outside-corners', words.ofShape(name, ways), { place: { kind: 'spot', x: at.x, y: at.y, reach: 1, loop } });
};

const placesOf = (corners: readonly OutsideCorner[]): Part | Text =>
  someOf(
    corners.map(({ at }) => spot(at)),
    'comma',
  );

type Corners = readonly OutsideCorner[];

const words = phrases('outside-corners', {
  one: (_: number, where: Part | Text, way: Text) => say`One sharp outside corner (${{ where }}): ${{ way }}.`,
  many: (corners: number, where: Part | Text, way: Text) =>
    say`${{ corners: count(corners) }} sharp outside corners (${{ where }}): ${{ way }}.`,
  inShape: (corners: number, shape: Part | Text) => say`${{ corners: count(corners) }} in ${{ shape }}`,
  moreShapes: (named: readonly Text[], more: number) => say`${{ named: list(named) }} and ${{ more: count(more) }} more shapes`,
  arc: say`the wire rounds the corner on an arc`,
  intersection: say`the wire runs on to where the sides of its path meet, and turns there`,
  ofShape: (shape: Part | Text, ways: Text) => say`Sharp outside corners of ${{ shape }}: ${{ ways }}.`,
  both: (round: Text, rest: Text) => say`${{ round }}; ${{ rest }}`,
  oneLooped: (corners: Corners, radius: number) =>
    say`1 cut with a loop out and back of R ${{ radius: thousandths(radius) }}, at ${{ places: placesOf(corners) }}`,
  manyLooped: (corners: Corners, radius: number) =>
    say`${{ corners: count(corners.length) }} cut with a loop out and back of R ${{ radius: thousandths(radius) }}, at ${{ places: placesOf(corners) }}`,
  oneLeft: (corners: Corners, way: Text) =>
    say`1 has no room for a loop or too blunt or sharp an angle, at ${{ places: placesOf(corners) }}: ${{ way }}`,
  manyLeft: (corners: Corners, way: Text) =>
    say`${{ corners: count(corners.length) }} have no room for a loop or too blunt or sharp an angle, at ${{ places: placesOf(corners) }}: ${{ way }}`,
});

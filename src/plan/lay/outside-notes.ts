/** What is said of sharp outside corners: which way the wire goes round each. */
import type { Finding } from '../../text/finding.ts';
import { find } from '../findings.ts';
import type { OutsideCorner } from '../path/outside-corners.ts';
import type { PlanQuestion } from '../question.ts';

/** The sharp outside corners of one shape, and how many contours have that shape. */
export interface CornersOfShape {
  readonly loop: string;
  readonly name: string;
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

/** As many are named in one sentence. */
const NAMED = 12;

const controlNote = (shapes: readonly CornersOfShape[], asked: Asked): Finding => {
  const corners = shapes.reduce((sum, s) => sum + s.left.length * s.members, 0);
  const listed = shapes.slice(0, NAMED).map((s) => `${s.left.length} in ${s.name}`);
  const rest = shapes.length > NAMED ? ` and ${shapes.length - NAMED} more shapes` : '';
  const first = shapes[0]!.left[0]!.at;
  return find(
    'outside-corners',
    `${corners === 1 ? 'One sharp outside corner' : `${corners} sharp outside corners`} (${listed.join(', ')}${rest}): ${wayOf(asked)}.`,
    {
      place: { kind: 'spot', x: first.x, y: first.y, reach: 1, loop: shapes[0]!.loop },
      remedy: 'For crisper edges set outsideCorners to loop: the wire then runs out beyond each and back.',
    },
  );
};

const wayOf = ({ outsideCorners }: Asked): string =>
  outsideCorners === 'arc'
    ? 'the wire rolls round on an arc about the corner'
    : 'the wire runs on to where the sides of its path meet, and turns there';

const loopNote = ({ loop, name, looped, left }: CornersOfShape, radius: number, asked: Asked): Finding => {
  const parts = [
    looped.length === 0
      ? ''
      : `${counted(looped.length)} gone round out and back by a loop of R ${radius.toFixed(3)} mm, at ${placesOf(looped)}`,
    left.length === 0
      ? ''
      : `${counted(left.length)} without room for a loop or too blunt or pointed for one, at ${placesOf(left)}: ${wayOf(asked)}`,
  ];
  const at = (looped[0] ?? left[0]!).at;
  return find('outside-corners', `Sharp outside corners of ${name}: ${parts.filter((p) => p !== '').join('; ')}.`, {
    place: { kind: 'spot', x: at.x, y: at.y, reach: 1, loop },
  });
};

const counted = (count: number): string => (count === 1 ? '1 is' : `${count} are`);

const placesOf = (corners: readonly OutsideCorner[]): string => {
  const said = corners.slice(0, NAMED).map(({ at }) => `(${at.x.toFixed(3)}, ${at.y.toFixed(3)})`);
  return corners.length > NAMED ? `${said.join(', ')} and ${corners.length - NAMED} more` : said.join(', ');
};

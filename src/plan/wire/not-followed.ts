/** Why a contour or line has no parallel that a wire could follow, in words to stand within a sentence. */
import type { Unsound } from '../../geometry/offset/offset-outcome.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';

export type NotFollowed = Unsound['what'] | 'crosses itself' | 'crosses or touches itself';

export const notFollowed: Readonly<Record<NotFollowed, Text>> = phrases('not-followed', {
  'crosses itself': say`it crosses itself`,
  'crosses or touches itself': say`it crosses or touches itself`,
  'distance is not a number': say`its offset is no number`,
  'not a number': say`it holds something that is no finite number`,
  'not joined': say`one of its pieces starts away from the end of the one before`,
  'zero-length segment': say`one of its pieces has no length`,
  'arc does not fit its ends': say`one of its arcs does not fit its ends`,
  'arc of more than a turn': say`one of its arcs goes round more than once`,
  'wrong winding': say`it runs the wrong way round`,
  'result contradicts itself': say`its offset contradicts itself`,
});

/** What the processes are called, the wire among them, and the figures of a cut by another than the wire. */
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import type { ProcessName } from './process-table.ts';

export const processWords: Readonly<Record<ProcessName | 'wire', Text>> = phrases('process', {
  wire: say`wire EDM`,
  oxyfuel: say`oxyfuel`,
  plasma: say`plasma`,
  laser: say`laser`,
  'water jet': say`water jet`,
});

export const cuts = phrases('other-cut', {
  feed: (process: Text) => say`feed of a ${{ process }} cut`,
  time: (process: Text) => say`time of a ${{ process }} cut`,
  slope: (process: Text) => say`slope of a ${{ process }} cut at most`,
  perpendicularity: (process: Text) => say`perpendicularity of a ${{ process }} cut`,
  roughness: (process: Text) => say`Rz5 of a ${{ process }} cut`,
});

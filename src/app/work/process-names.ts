/** What the processes are called that may do the job. */
import { phrases, say } from '../../text/say.ts';

export const processes = phrases('page.process', {
  wire: say`wire`,
  oxyfuel: say`oxyfuel`,
  plasma: say`plasma`,
  laser: say`laser`,
  'water jet': say`water jet`,
});

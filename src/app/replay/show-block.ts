/** A block that is chosen, in the picture or in the text, becomes the current one of both, and of the replay. */
import type { OpenSheet } from '../state/open-sheet.ts';
import { momentOfBlock, type Timeline } from './timeline.ts';

/** While a replay is shown it goes to where the block begins, so that wire, strip and text never differ. */
export const showBlock = (sheet: OpenSheet, timeline: Timeline | undefined, block: number): void => {
  if (timeline === undefined || sheet.store.getState().moment === undefined) sheet.actions.show({ block });
  else sheet.store.setState({ block, moment: momentOfBlock(timeline, block), playing: false });
};

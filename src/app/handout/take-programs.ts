/** Programs that were dropped or chosen: taken in one after the other, and the first of them shown in its place on the sheet. */
import type { OpenSheet } from '../state/open-sheet.ts';
import type { TakenIn } from '../state/programs.ts';
import { programWords as words } from '../words/replay.ts';

export const takePrograms = async (sheet: OpenSheet, files: readonly File[]): Promise<void> => {
  const keys: string[] = [];
  const programTroubles: string[] = [];
  for (const file of files) {
    const taken = await sheet.programs.take(file);
    if (taken.kind === 'taken') keys.push(taken.key);
    else programTroubles.push(sentenceOf(file.name, taken));
  }
  sheet.store.setState({ programTroubles, shownProgram: keys[0] ?? '' });
};

const sentenceOf = (name: string, taken: Exclude<TakenIn, { kind: 'taken' }>): string => {
  switch (taken.kind) {
    case 'too large':
      return words.tooLarge(name, String(taken.megabytes));
    case 'no program':
      return words.noProgram(name);
    default:
      return words.readingFailed(name);
  }
};

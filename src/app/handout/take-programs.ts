/** Programs that were dropped or chosen: taken in one after the other, and the first of them shown in its place on the sheet. */
import type { OpenSheet } from '../state/open-sheet.ts';
import type { TakenIn } from '../state/programs.ts';
import type { Words } from '../words/words-for.ts';

export const takePrograms = async (sheet: OpenSheet, files: readonly File[], words: Words['program']): Promise<void> => {
  const keys: string[] = [];
  const programTroubles: string[] = [];
  for (const file of files) {
    const taken = await sheet.programs.take(file);
    if (taken.kind === 'taken') keys.push(taken.key);
    else programTroubles.push(sentenceOf(file.name, taken, words));
  }
  sheet.store.setState({ programTroubles, shownProgram: keys[0] ?? '' });
};

const sentenceOf = (name: string, taken: Exclude<TakenIn, { kind: 'taken' }>, words: Words['program']): string => {
  switch (taken.kind) {
    case 'too large':
      return words.tooLarge(name, String(taken.megabytes));
    case 'no program':
      return words.noProgram(name);
    default:
      return words.readingFailed(name);
  }
};

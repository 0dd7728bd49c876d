/** Every example gives today what was accepted, in full; what differs is left in out/goldens for a look. */
import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { changesOf, changeText, filesIn } from '../tools/goldens/changes.ts';
import { exampleNames, expectedFolder, runExample } from '../tools/goldens/examples.ts';
import { leave, picturesToSee } from '../tools/goldens/pictures.ts';

/** Of a job that cannot be cut as asked. */
const NO = ['answer.txt', 'compare.txt', 'correct.txt', 'drawing.txt', 'edges.txt', 'quotation.txt'];
const YES = [...NO, ...['annex.txt', 'hole-table.txt', 'inspection-sheet.txt', 'nc', 'proof.txt', 'set-up-sheet.txt', 'setup.json']];
const NEST = ['nest.txt', 'plate.dxf', 'plate.job.json', 'plate.svg'];
const BY_NUMBERS = ['sizes.txt'];
/** One picture of each kind is kept whole; that of a plate comes with its nest. */
const PICTURES = ['drawing.svg', 'edges.svg', 'proof.svg'];

const of = (stem: string, ...endings: readonly (readonly string[])[]): readonly string[] => endings.flat().map((e) => `${stem}.${e}`);

/** What each example must have, no more and no less. */
const OUTPUTS: Readonly<Record<string, readonly string[]>> = {
  'die-plate': of('die-plate', YES),
  'form-insert': [...of('form-insert', NO), ...of('form-insert-eased', YES, PICTURES)],
  'mixed-plate': [...of('mixed-plate', NEST), ...of('mixed-plate.plate', YES)],
  'night-plate': of('night-plate', YES),
  'punch-set': of('punch-set', YES),
  'spline-hub': of('spline-hub', YES, BY_NUMBERS),
  'split-jaw': of('split-jaw', YES),
  'thick-gear': of('thick-gear', YES),
  // The shop and the words of its control: what they come to stands in every other example.
  workshop: [],
};

// Work is counted, not timed: a busy machine only takes longer.
describe('examples', { timeout: 600_000 }, () => {
  it('are each said to have their outputs', () => {
    expect(Object.keys(OUTPUTS).toSorted()).toEqual(exampleNames());
  });

  it.each(Object.keys(OUTPUTS))('%s gives what was accepted, file by file, and nothing else lies there', (example) => {
    const accepted = filesIn(expectedFolder(example));
    expect(Object.keys(accepted).toSorted()).toEqual(OUTPUTS[example]?.toSorted());
    const { files, pictures } = runExample(example);
    const changes = changesOf(accepted, files);
    leave({ ...Object.fromEntries(changes.map(({ file }) => [file, files[file] ?? ''])), ...picturesToSee(changes, pictures) });
    expect(changes.map(changeText).join('\n')).toBe('');
  });

  it.each([
    ['die-plate', /^Yes\. /],
    ['form-insert', /^No\. /],
    ['form-insert-eased', /^Yes\. /],
    ['mixed-plate.plate', /^Yes\. /],
    ['thick-gear', /^Yes\. /],
  ])('%s is answered as its story has it', (stem, answer) => {
    const files = Object.assign({}, ...exampleNames().map((name) => filesIn(expectedFolder(name)))) as Readonly<Record<string, string>>;
    expect(files[`${stem}.answer.txt`]).toMatch(answer);
  });

  it.each(PICTURES)('have one %s kept whole, whose hash stands in its table', (ending) => {
    const files = filesIn(expectedFolder('form-insert'));
    const hash = createHash('sha256')
      .update(files[`form-insert-eased.${ending}`] ?? '')
      .digest('hex');
    expect(files[`form-insert-eased.${ending.replace('.svg', '.txt')}`]).toContain(hash);
  });
});

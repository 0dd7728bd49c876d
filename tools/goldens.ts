/** Accepts what examples give today: `npm run goldens -- die-plate`, or all of them without a name; the diff is what a reviewer accepts or not. */
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Change, changesOf, changeText, filesIn } from './goldens/changes.ts';
import { exampleNames, expectedFolder, type Outcome, runExample } from './goldens/examples.ts';
import { leave, picturesToSee } from './goldens/pictures.ts';

/** Writes the files of an example in place of those accepted before; says what changed. */
const accept = (example: string, { files, pictures }: Outcome): readonly Change[] => {
  const folder = expectedFolder(example);
  const changes = changesOf(filesIn(folder), files);
  for (const { file, kind } of changes) {
    if (kind === 'gone') rmSync(join(folder, file), { recursive: true });
    else {
      mkdirSync(folder, { recursive: true });
      writeFileSync(join(folder, file), files[file] ?? '');
    }
  }
  leave(picturesToSee(changes, pictures));
  return changes;
};

const main = (asked: readonly string[]): number => {
  const known = exampleNames();
  const unknown = asked.filter((name) => !known.includes(name));
  if (unknown.length > 0) {
    process.stderr.write(`There is no example ${unknown.join(', ')}; there are ${known.join(', ')}.\n`);
    return 2;
  }
  for (const example of asked.length === 0 ? known : asked) {
    const changes = accept(example, runExample(example));
    process.stdout.write(
      `${[`${example}: ${changes.length === 0 ? 'nothing changed' : ''}`.trimEnd(), ...changes.map(changeText)].join('\n')}\n`,
    );
  }
  return 0;
};

process.exitCode = main(process.argv.slice(2));

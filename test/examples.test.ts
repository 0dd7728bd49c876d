/** Every example job gives today what was accepted; what differs is left in out/goldens for a look. */
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { exampleJobs, exampleNests, runExample, runNestExample, stemOf } from '../tools/example-jobs.ts';

const ANSWERS: Readonly<Record<string, RegExp>> = {
  'die-plate': /^Yes\. /,
  'form-insert': /^No\. /,
  'form-insert-eased': /^Yes\. /,
  'thick-gear': /^Yes\. /,
};

describe.each(exampleJobs())('%s', (job) => {
  const expected = join(dirname(job), 'expected');
  const stem = stemOf(job);

  it('gives what was accepted, file by file', async () => {
    const files = await runExample(job);
    const accepted = readdirSync(expected).filter((f) => f.startsWith(`${stem}.`));
    expect(Object.keys(files).toSorted()).toEqual(accepted.toSorted());
    const differing = Object.entries(files).filter(([name, text]) => readFileSync(join(expected, name), 'utf8') !== text);
    mkdirSync('out/goldens', { recursive: true });
    for (const [name, text] of differing) writeFileSync(join('out/goldens', name), text);
    expect(differing.map(([name]) => name)).toEqual([]);
  });

  it('is answered as the story of the example has it', () => {
    const answer = readFileSync(join(expected, `${stem}.answer.txt`), 'utf8');
    expect(answer).toMatch(ANSWERS[stem] ?? /^(Yes|No)\. /);
  });
});

describe.each(exampleNests())('%s', (nest) => {
  it('lays what was accepted, file by file', () => {
    const expected = join(dirname(nest), 'expected');
    const files = runNestExample(nest);
    expect(Object.keys(files).toSorted()).toEqual(readdirSync(expected).toSorted());
    const differing = Object.entries(files).filter(([name, text]) => readFileSync(join(expected, name), 'utf8') !== text);
    mkdirSync('out/goldens', { recursive: true });
    for (const [name, text] of differing) writeFileSync(join('out/goldens', name), text);
    expect(differing.map(([name]) => name)).toEqual([]);
  });
});

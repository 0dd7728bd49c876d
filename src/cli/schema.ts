/** `kerfwright schema` and `kerfwright list`: what the files may hold, and the keys they may use. */
import { materialRows, schemaOf, schemas, wireRows } from '../job/files/catalogue.ts';
import { name as asName, list as listed, term } from '../text/part.ts';
import { printPlain } from '../text/print/print.ts';
import { phrases, say } from '../text/say.ts';
import { badInput } from './files.ts';
import type { Out } from './out.ts';

const words = phrases('command-schema', {
  noSchema: (typed: string) =>
    say`There is no schema '${{ typed: asName(typed) }}'; there are ${{ known: listed(Object.keys(schemas).map(term)) }}.`,
  noList: (typed: string) => say`'${{ typed: asName(typed) }}' cannot be listed; there are materials and wires.`,
});

export const schema = (name: string | undefined, out: Out): number => {
  if (name === undefined) {
    out.print(
      Object.entries(schemas)
        .map(([key, about]) => `${key.padEnd(10)} ${printPlain(about)}`)
        .join('\n'),
    );
    return 0;
  }
  const found = schemaOf(name);
  if (found === undefined) throw badInput(words.noSchema(name), name);
  out.print(JSON.stringify(found, null, 2));
  return 0;
};

export const list = (what: string, json: boolean, out: Out): number => {
  const rows = what === 'materials' ? materialRows() : what === 'wires' ? wireRows() : undefined;
  if (rows === undefined) throw badInput(words.noList(what), what);
  if (json)
    out.print(
      JSON.stringify(
        rows.map((r) => ({ ...r, about: printPlain(r.about) })),
        null,
        2,
      ),
    );
  else {
    const width = Math.max(...rows.map((r) => r.id.length));
    out.print(rows.map((r) => `${r.id.padEnd(width)}  ${r.name}  ${printPlain(r.about)}`).join('\n'));
  }
  return 0;
};

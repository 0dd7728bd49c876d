/** Names that stay as they were given, however much they look like quantities: those of wires and materials. */
import { materialRows, wireRows } from '../../job/files/catalogue.ts';

export const namesOf = (shop: Readonly<Record<string, unknown>>): readonly string[] => [
  ...new Set([...wireRows(), ...materialRows()].map((r) => r.name).concat(namesIn(shop['wires']), namesIn(shop['materials']))),
];

const namesIn = (value: unknown): readonly string[] =>
  Array.isArray(value)
    ? value.flatMap((row: unknown) => {
        const name = typeof row === 'object' && row !== null && 'name' in row ? row.name : undefined;
        return typeof name === 'string' ? [name] : [];
      })
    : [];

/** Materials and wires to choose from: those of the house with those of the shop. */
import { materialRows, type Row, wireRows } from '../../job/files/catalogue.ts';
import type { ShopRecord } from '../../server/message/answers.ts';
import { print } from '../../text/print/print.ts';
import type { Reader } from '../../text/reader.ts';

export interface Lists {
  readonly materials: readonly Row<string>[];
  readonly wires: readonly Row<string>[];
}

/** A shop's own wires take the place of the house's; its materials come beside them. */
export const listsOf = (shop: ShopRecord['shop'] | undefined, reader: Reader): Lists => {
  const printed = (row: Row): Row<string> => ({ ...row, about: print(row.about, reader) });
  const [wires, materials] = [rowsOf(shop?.['wires']), rowsOf(shop?.['materials'])];
  const own = new Set(materials.map((m) => m.id));
  return {
    materials: [
      ...materials,
      ...materialRows()
        .filter((m) => !own.has(m.id))
        .map(printed),
    ],
    wires: wires.length === 0 ? wireRows().map(printed) : wires,
  };
};

const rowsOf = (value: unknown): readonly Row<string>[] => (Array.isArray(value) ? value.flatMap(rowOf) : []);

const rowOf = (value: unknown): readonly Row<string>[] => {
  if (typeof value !== 'object' || value === null) return [];
  const { id, name } = value as Readonly<Record<string, unknown>>;
  return typeof id === 'string' ? [{ id, name: typeof name === 'string' ? name : id, about: '' }] : [];
};

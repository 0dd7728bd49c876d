/** The layer table: which layers are off or frozen, and how many pieces lie on each. */
import type { Layer } from '../drawing.ts';
import type { Fields } from './fields.ts';

interface Entry {
  readonly name: string;
  off: boolean;
  frozen: boolean;
  lineType: string;
  entities: number;
}

export interface LayerTable {
  /** Takes a LAYER entry: a negative colour means off, bit 1 of the flags frozen. */
  readonly define: (f: Fields) => void;
  /** The layer of that name, made on first use where no table names it. Names differ in more than capitals. */
  readonly named: (name: string) => Entry;
  readonly listed: () => readonly Layer[];
}

export const layerTable = (): LayerTable => {
  const entries = new Map<string, Entry>();
  const asWritten = new Map<string, Entry>();
  const named = (name: string): Entry => {
    const known = asWritten.get(name);
    if (known !== undefined) return known;
    const key = name.toLowerCase();
    const entry = entries.get(key) ?? { name, off: false, frozen: false, lineType: '', entities: 0 };
    entries.set(key, entry);
    asWritten.set(name, entry);
    return entry;
  };
  return {
    define: (f) => {
      const entry = named(f.name);
      entry.off = f.get(62, 7) < 0;
      entry.frozen = f.flag(70, 1);
      entry.lineType = f.lineType;
    },
    named,
    listed: () => [...entries.values()].map(({ name, off, frozen, entities }) => ({ name, hidden: off || frozen, entities })),
  };
};

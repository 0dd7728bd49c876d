/** The shop of the folder with the words of its control, in one file, so that the two always fit together. */

import { readFile } from 'node:fs/promises';
import { builtInShop } from '../../job/built-in-shop.ts';
import { readDialectFile } from '../../job/files/dialects.ts';
import { type Renamed, renamedIn } from '../../job/files/old-keys.ts';
import { parseFile, parseValue } from '../../job/files/parse.ts';
import { shopSchema } from '../../job/shop.ts';
import { count } from '../../text/part.ts';
import { NOTHING, phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { notValid, Refusal, said } from '../answer/refusal.ts';
import { type ShopRecord, shopRecordSchema } from '../message/answers.ts';
import { shopFileIn } from './places.ts';
import { turns } from './turns.ts';
import { writeWhole } from './whole-file.ts';

export interface ShopKeeper {
  /** The shop of the house, with its invented rates, where none was kept yet. */
  open(): Promise<ShopRecord>;
  save(record: ShopRecord): Promise<ShopRecord>;
}

export const shopIn = (folder: string): ShopKeeper => {
  const inTurn = turns();
  const path = shopFileIn(folder);
  const open = async (): Promise<ShopRecord> => {
    const text = await readFile(path, 'utf8').catch((error: { code?: string }) => {
      if (error.code === 'ENOENT') return undefined;
      throw error;
    });
    if (text === undefined) return { revision: 0, shop: { ...builtInShop } };
    const parsed = parseFile(shopRecordSchema, text, 'shop.json', RENAMED);
    if (parsed.kind === 'parsed') return withSources(parsed.value);
    throw new Refusal(500, 'damaged', words.damaged(parsed.findings[0]?.text ?? NOTHING), said(parsed.findings));
  };
  return {
    open,
    save: (record) =>
      inTurn('shop', async () => {
        const now = await open();
        if (now.revision !== record.revision)
          throw new Refusal(409, 'changed-elsewhere', words.changed(record.revision, now.revision), { shop: now });
        mustBeShop(record);
        const next = { ...record, revision: record.revision + 1 };
        await writeWhole(path, `${JSON.stringify(next, null, 1)}\n`);
        return next;
      }),
  };
};

/** What version 0.3 called otherwise: taken over without a word, since the record is the server's own. */
const OF_SHOP = renamedIn(shopSchema);
const RENAMED: readonly Renamed[] = [[['said'], 'sources'], ...renamedIn(shopSchema, ['shop'])];

/** Where values come from is kept by table, row and column: 'rates/2025-01-01/markup'. */
const withSources = ({ sources, ...record }: ShopRecord): ShopRecord =>
  sources === undefined
    ? record
    : { ...record, sources: Object.fromEntries(Object.entries(sources).map(([cell, source]) => [cellToday(cell), source])) };

const cellToday = (cell: string): string =>
  OF_SHOP.reduce((named, [[table = '', , column = ''], now]) => {
    const [ofTable, row, ofColumn] = named.split('/');
    return ofTable === table && ofColumn === column ? [table, row, now].join('/') : named;
  }, cell);

const words = phrases('server-shop', {
  damaged: (fault: Text) => say`The shop file is damaged and was left as it is: ${{ fault }}`,
  changed: (from: number, now: number) =>
    say`The shop was changed elsewhere in the meantime: this page started from revision ${{ from: count(from) }}, the current one is ${{ now: count(now) }}.`,
  notKept: say`The shop was not saved: some of its values cannot be used.`,
});

export const theShop = say('shop-file')`The shop`;

/** Throws a refusal with every fault and its field. */
export const mustBeShop = ({ shop, dialect }: Pick<ShopRecord, 'shop' | 'dialect'>): void => {
  const read = parseValue(shopSchema, shop, theShop);
  const spelled = dialect === undefined ? undefined : readDialectFile(dialect);
  const findings = [...(read.kind === 'bad' ? read.findings : []), ...(spelled?.kind === 'bad' ? spelled.findings : [])];
  if (findings.length > 0) throw notValid(words.notKept, findings);
};

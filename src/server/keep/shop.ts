/** The shop of the folder with the words of its control, in one file, so that the two always fit together. */

import { readFile } from 'node:fs/promises';
import { readDialectFile } from '../../job/files/dialects.ts';
import { parseFile, parseValue } from '../../job/files/parse.ts';
import { houseShop } from '../../job/house-shop.ts';
import { shopSchema } from '../../job/shop.ts';
import type { Finding } from '../../text/finding.ts';
import { printPlain } from '../../text/print/print.ts';
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
    if (text === undefined) return { revision: 0, shop: { ...houseShop } };
    const parsed = parseFile(shopRecordSchema, text, 'shop.json');
    if (parsed.kind === 'parsed') return parsed.value;
    throw new Refusal(
      500,
      'damaged',
      `The file of the shop is damaged and was left as it is: ${firstOf(parsed.findings)}`,
      said(parsed.findings),
    );
  };
  return {
    open,
    save: (record) =>
      inTurn('shop', async () => {
        const now = await open();
        if (now.revision !== record.revision)
          throw new Refusal(
            409,
            'changed-elsewhere',
            `The shop was changed elsewhere in the meantime: this page began from revision ${record.revision}, and ${now.revision} is in force.`,
            { shop: now },
          );
        mustBeShop(record);
        const next = { ...record, revision: record.revision + 1 };
        await writeWhole(path, `${JSON.stringify(next, null, 1)}\n`);
        return next;
      }),
  };
};

/** Throws a refusal with every fault and its field. */
export const mustBeShop = ({ shop, dialect }: Pick<ShopRecord, 'shop' | 'dialect'>): void => {
  const read = parseValue(shopSchema, shop, 'The shop');
  const words = dialect === undefined ? undefined : readDialectFile(dialect);
  const findings = [...(read.kind === 'bad' ? read.findings : []), ...(words?.kind === 'bad' ? words.findings : [])];
  if (findings.length > 0) throw notValid('The shop was not kept: some of its values cannot be used.', findings);
};

const firstOf = (findings: readonly Finding[]): string => findings.map((f) => printPlain(f.text))[0] ?? '';

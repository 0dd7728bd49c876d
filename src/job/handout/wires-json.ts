/** The wires of a shop as plain data: rows in order, and the one sentence. */

import type { CutFacts } from '../../result/outcome-facts.ts';
import type { WireRow } from '../../result/wires.ts';
import { printPlain } from '../../text/print/print.ts';
import { figure, type Json } from './json-parts.ts';

export const wiresJson = ({ wires }: Pick<CutFacts, 'wires'>): Json =>
  wires === undefined
    ? {}
    : {
        wires: {
          sentence: printPlain(wires.sentence),
          chosen: wires.chosen,
          nextCheapest: wires.nextCheapest,
          rows: wires.rows.map((row) => ({
            wire: row.id,
            inStock: row.inStock,
            kind: row.kind,
            ...(row.kind === 'drops out' ? { why: row.why, reason: printPlain(row.reason) } : outcomeJson(row)),
          })),
        },
      };

const outcomeJson = (row: Exclude<WireRow, { kind: 'drops out' }>): Json => {
  const { accuracy, finish, form, ...rest } = row.outcome;
  return {
    ...rest,
    unattended: row.kind === 'worked out' ? row.unattended : undefined,
    accuracy: figure(accuracy),
    finish: figure(finish),
    form: figure(form),
  };
};

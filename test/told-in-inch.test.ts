/** All that a sheet says of the examples, told in inches with a decimal comma: no millimetre is left over, and names stay. */

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { printedSheet } from '../src/app/work/sheet-for-reader.ts';
import { sheetOf } from '../src/app/work/sheet-of.ts';
import { materialRows, wireRows } from '../src/job/files/catalogue.ts';
import { runUpTo } from '../src/job/pipeline/pipeline.ts';
import { askedRun } from '../src/job/request/run-from-data.ts';
import { sentenceOf } from '../src/text/finding.fixture.ts';
import { tellingFor } from '../src/text/print/reader.ts';
import { HOUSE } from '../src/text/reader.ts';

const JOBS: Readonly<Record<string, readonly [job: object, drawing: string]>> = {
  'the die plate': [{ height: 25, quantity: 2, tolerance: 0.01 }, 'examples/die-plate/die-plate.dxf'],
  'a corner that cannot be': [{ insideCorner: 0, tolerance: 0.005 }, 'examples/form-insert/form-insert.dxf'],
  'a part by numbers': [{ shape: { kind: 'gear', module: 2, teeth: 9, bore: 8 } }, 'examples/die-plate/die-plate.dxf'],
};

/** Numbers in them are no quantities. */
const names = [...wireRows(), ...materialRows()].map((r) => r.name);

/** Every string of a view but what speaks its own language: program, ids, keys, layers, the one plain line that is kept. */
const strings = (value: unknown, at = ''): readonly string[] => {
  if (typeof value === 'string')
    return /(^|\.)(code|id|key|unit|loop|owner|kind|chapter|field|source|path|severity|role|align|plain)$/.test(at) ? [] : [value];
  if (typeof value !== 'object' || value === null || ArrayBuffer.isView(value)) return [];
  return Object.entries(value).flatMap(([key, inner]) =>
    ['program', 'layers', 'places', 'figures', 'took'].includes(key) ? [] : strings(inner, Array.isArray(value) ? at : `${at}.${key}`),
  );
};

describe('a sheet told in inches', () => {
  for (const [name, [input, drawing]] of Object.entries(JOBS))
    it(`${name}: no quantity stays in mm, and none is lost`, () => {
      const asked = askedRun({
        input: { drawing: 'x', ...input },
        drawing: readFileSync(drawing),
        drawingName: 'x.dxf',
        day: '2026-11-25',
      });
      if (asked.kind === 'bad') throw new Error(sentenceOf(asked.findings[0]));
      const sheet = { ...sheetOf(runUpTo(asked.run, 'answer'), asked.run), took: { core: 0, view: 0 } };
      const told = printedSheet(sheet, tellingFor({ lengthUnit: 'inch', finishUnit: 'µin', locale: 'de-DE' }));
      const house = printedSheet(sheet, HOUSE);
      const said = strings(told);
      expect(said.length).toBeGreaterThan(20);
      const named = (text: string): string => names.reduce((rest, n) => rest.replaceAll(n, ''), text);
      expect(said.filter((text) => /\d\s?(mm|µm)(?![\p{L}])/u.test(named(text)))).toEqual([]);
      expect(said.filter((text) => /(?<![\d.])\d+\.\d+\s?(in|µin)/.test(named(text)))).toEqual([]);
      // What was ticked off at the machine is found by the comment of the program, whoever reads it.
      expect((told.schedule?.events ?? []).map((e) => e.plain)).toEqual((house.schedule?.events ?? []).map((e) => e.plain));
      const plain = strings(house);
      expect(said.length).toBe(plain.length);
      plain.forEach((text, i) => {
        if (!/mm|µm|\d\.\d/.test(text)) expect(said[i]).toBe(text);
      });
    });
});

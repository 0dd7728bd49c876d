/** Fonts on a disk: those of the house are found, files of the user's own are read, and whatever else is there is said and not thrown. */

import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { there } from '../../test/there.ts';
import { FACE_FILES } from '../font-reader/face-files.ts';
import { fontTables } from '../font-reader/font-tables.ts';
import type { LetterMaker } from '../font-reader/letter-maker.ts';
import { letteringSchema } from '../shapes/lettering/request.ts';
import { sentenceOf } from '../text/finding.fixture.ts';
import { printPlain } from '../text/print/print.ts';
import { fontFile } from './font-files.ts';
import { houseLetters, lettersWith } from './letters-on-disk.ts';

const folder = mkdtempSync(join(tmpdir(), 'fonts-'));
afterAll(() => rmSync(folder, { recursive: true }));

const asked = (more: object) => letteringSchema.parse({ kind: 'lettering', text: 'AO', letterHeight: 10, ...more });
const told = (maker: LetterMaker, more: object): string => {
  const made = maker(asked(more));
  return made.kind === 'made'
    ? printPlain(made.shape.name)
    : made.findings.map((f) => `${f.code} ${f.place?.kind === 'field' ? f.place.path : ''}: ${sentenceOf(f)}`).join();
};

describe('fonts on a disk', () => {
  it('are the eight cuts of the house', () => {
    for (const file of Object.values(FACE_FILES)) expect(fontTables(fontFile(file), file).kind).toBe('tables');
    expect(told(houseLetters, { face: 'mono-bold' })).toBe('Lettering ‘AO’ in DejaVu Sans Mono Bold, capitals 10 mm');
  });

  it('may be a file of the user’s own, found where the caller says', () => {
    writeFileSync(join(folder, 'own.ttf'), fontFile('DejaVuSerif.ttf'));
    expect(
      told(
        lettersWith((path) => join(folder, path)),
        { font: 'own.ttf' },
      ),
    ).toBe('Lettering ‘AO’ in DejaVu Serif, capitals 10 mm');
  });

  it('that are no fonts are refused with their field, never thrown', () => {
    const cut = fontFile('DejaVuSansMono.ttf').slice(0, 5000);
    const files: Readonly<Record<string, Uint8Array | string>> = {
      'text.ttf': 'no font at all',
      'empty.ttf': '',
      'web.ttf': 'wOF2 and more',
      'many.ttf': 'ttcf and more',
      'cut.ttf': cut,
    };
    for (const [name, content] of Object.entries(files)) writeFileSync(join(folder, name), content);
    const find = lettersWith((path) => join(folder, path));
    for (const name of Object.keys(files)) expect(told(find, { font: name })).toMatch(/^font-unusable font: /);
    expect(told(find, { font: 'gone.ttf' })).toMatch(/there is no such file/);
    expect(told(find, { font: '.' })).toMatch(/^font-unusable font: .*(no file|cannot be read)/);
    expect(told(find, { font: 'web.ttf' })).toMatch(/packed for web pages/);
    expect(told(find, { font: 'cut.ttf' })).toMatch(/damaged, or cut short/);
  });

  it('are refused with bytes changed, and bad outlines under right sums throw nothing', () => {
    const bytes = fontFile('DejaVuSansMono.ttf');
    for (let seed = 1; seed <= 12; seed += 1) {
      const bad = Uint8Array.from(bytes);
      for (let i = 0; i < 2000; i += 1) bad[((seed * 7919 + i * 104_729) * 31) % bad.length] = (seed * 37 + i * 101) % 256;
      writeFileSync(join(folder, 'bad.ttf'), bad);
      expect(
        told(
          lettersWith(() => join(folder, 'bad.ttf')),
          { font: 'bad.ttf' },
        ),
      ).toMatch(/^font-unusable font: .* damaged/);
      writeFileSync(join(folder, 'bad.ttf'), withBadOutlines(bytes, seed));
      expect(
        told(
          lettersWith(() => join(folder, 'bad.ttf')),
          { font: 'bad.ttf' },
        ),
      ).toMatch(/^(Lettering|font-unusable|letter)/);
    }
  });

  it('of the user’s own are not read where only the house’s are known', () => {
    expect(told(houseLetters, { font: '/etc/passwd' })).toMatch(/^font-unusable font: .* is not read here/);
  });
});

/** Wild numbers in the table of outlines, and its sum put right. */
const withBadOutlines = (bytes: Uint8Array, seed: number): Uint8Array => {
  const bad = Uint8Array.from(bytes);
  const view = new DataView(bad.buffer);
  const at = there(Array.from({ length: view.getUint16(4) }, (_, i) => 12 + 16 * i).find((i) => view.getUint32(i) === 0x676c7966));
  const [offset, length] = [view.getUint32(at + 8), view.getUint32(at + 12)];
  for (let i = 0; i < length / 3; i += 1) bad[offset + ((seed * 7919 + i * 31) % length)] = (seed * 37 + i * 101) % 256;
  let sum = 0;
  for (let i = 0; i + 3 < length; i += 4) sum = (sum + view.getUint32(offset + i)) >>> 0;
  for (let i = length - (length % 4); i < length; i += 1) sum = (sum + there(bad[offset + i]) * 2 ** (24 - 8 * (i % 4))) >>> 0;
  view.setUint32(at + 4, sum);
  return bad;
};

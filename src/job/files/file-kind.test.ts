/** Drawings, job files and programs told apart by what stands in them. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { fileKind, HEAD, programText } from './file-kind.ts';

const kindOf = (text: string | Uint8Array, name: string) =>
  fileKind(typeof text === 'string' ? new TextEncoder().encode(text) : text.subarray(0, HEAD), name);

const utf16 = (text: string): Uint8Array => new Uint8Array(Uint16Array.from([0xfeff, ...[...text].map((c) => c.charCodeAt(0))]).buffer);

const PROGRAM = '%\nO100\n(Lochplatte)\n/N10 G21 G90\nN20 G41 D1 X-1.5 Y.25 ; begin\nN30 M50\n\nN40 M02\n%\n';

describe('what a file from elsewhere is', () => {
  it('every example is what its ending says, whatever it is called', () => {
    const files = readdirSync('examples', { recursive: true, encoding: 'utf8' }).filter((f) => /\.(dxf|svg|nc|json)$/.test(f));
    expect(files.length).toBeGreaterThan(20);
    const wanted: Readonly<Record<string, string>> = { json: 'job file', nc: 'program' };
    for (const file of files) {
      const ending = file.split('.').at(-1) ?? '';
      const bytes = readFileSync(`examples/${file}`);
      expect([file, kindOf(bytes, file)]).toEqual([file, wanted[ending] ?? ending]);
      if (ending !== 'json') expect([file, kindOf(bytes, 'as-it-came.txt')]).toEqual([file, wanted[ending] ?? ending]);
    }
  });

  it('a program is one under any name and in any coding', () => {
    for (const name of ['plate.nc', 'plate.txt', 'plate.dxf', 'plate', 'plate.svg']) expect(kindOf(PROGRAM, name)).toBe('program');
    expect(kindOf(utf16(PROGRAM), 'plate.txt')).toBe('program');
    expect(kindOf(`SPARK 12\r\n${PROGRAM.replaceAll('\n', '\r\n')}`, 'plate.txt')).toBe('program');
    expect(kindOf('g0x1y2\rm30', 'lower-case.txt')).toBe('program');
  });

  it('what cannot be told by its content goes by its ending, and a text by none', () => {
    expect(kindOf('hello world', 'broken.nc')).toBe('program');
    expect(kindOf(Uint8Array.of(0, 1, 2, 250), 'broken.TAP')).toBe('program');
    expect(kindOf('999\nby hand\n0\nSECTION\n', 'plate.txt')).toBe('dxf');
    expect(kindOf('', 'empty.dxf')).toBe('dxf');
    for (const name of ['letter.txt', 'picture.png', 'page.html']) expect(kindOf('<!DOCTYPE html><p>G1 is a word', name)).toBe('unknown');
    expect(kindOf('Dear Sir, see part A1 and B2', 'letter.txt')).toBe('unknown');
    expect(kindOf('', 'letter.txt')).toBe('unknown');
  });
});

describe('the text of a program', () => {
  it('is read in the coding it was written in', () => {
    expect(programText(utf16('(Ø8)\nM02'))).toBe('(Ø8)\nM02');
    expect(programText(utf16('(Ø8)').map((_, i, all) => all[i ^ 1] ?? 0))).toBe('(Ø8)');
    expect(programText(new TextEncoder().encode('\uFEFF(Ø8)'))).toBe('(Ø8)');
    expect(programText(Uint8Array.of(0x28, 0xd8, 0x38, 0x29))).toBe('(Ø8)');
  });
});

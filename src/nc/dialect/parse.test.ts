/** Dialect files, good and bad. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { inventedWords } from '../../../test/nc/dialects.ts';
import { standardDialect } from './dialect.ts';
import { parseDialect, readDialect } from './parse.ts';

const codes = (json: unknown): readonly string[] => parseDialect(json).findings.map((finding) => finding.code);
const withWords = (words: Record<string, string>): unknown => ({ ...standardDialect, words });
const fieldsOf = (json: unknown): readonly unknown[] =>
  parseDialect(json).findings.map((finding) => finding.place?.kind === 'field' && finding.place.path);

describe('the dialect files of the house', () => {
  const files = readdirSync('dialects').filter((file) => file.endsWith('.json'));

  it.each(files)('reads %s without a remark and finds its name in it', (file) => {
    const parsed = readDialect(readFileSync(`dialects/${file}`, 'utf8'));
    expect(parsed).toMatchObject({ kind: 'dialect', findings: [], dialect: { name: file.replace('.json', ''), words: {} } });
  });

  it('has the standard dialect both as a file and built in', () => {
    const parsed = readDialect(readFileSync('dialects/standard.json', 'utf8'));
    expect(parsed).toMatchObject({ kind: 'dialect', dialect: standardDialect });
  });
});

describe('the check of a dialect', () => {
  it('takes invented words for everything', () => {
    expect(parseDialect({ ...standardDialect, words: inventedWords })).toMatchObject({ kind: 'dialect', findings: [] });
  });

  it('says where a file is not JSON', () => {
    expect(readDialect('{ "name": ')).toMatchObject({ kind: 'bad', findings: [{ code: 'dialect-not-json' }] });
    expect(readDialect(' '.repeat(200_000))).toMatchObject({ kind: 'bad', findings: [{ code: 'dialect-too-long' }] });
  });

  it('names each field that is missing, unknown or out of range', () => {
    expect(fieldsOf({ ...standardDialect, decimals: 9 })).toEqual(['dialect.decimals']);
    expect(fieldsOf({ ...standardDialect, words: { thread: 'thread!' } })).toEqual(['dialect.words.thread']);
    expect(fieldsOf({ ...standardDialect, units: undefined })).toEqual(['dialect.units']);
    expect(codes({ ...standardDialect, colour: 'red' })).toEqual(['dialect-field-bad']);
    expect(codes('a word')).toEqual(['dialect-field-bad']);
    expect(codes(null)).toEqual(['dialect-field-bad']);
  });

  it('refuses one word for two meanings, however it is spelled', () => {
    expect(codes(withWords({ thread: 'M71', cutWire: 'M071' }))).toEqual(['dialect-word-twice']);
    expect(codes(withWords({ thread: 'M71 P1', cutWire: 'M71 P2' }))).toEqual([]);
    expect(codes(withWords({ thread: 'M71 E1', cutWire: 'M71 E2', condition: 'E{n}' }))).toEqual([
      'dialect-word-twice',
      'dialect-word-twice',
    ]);
  });

  it.each(['G01', 'M02', 'M00', 'G71', 'M30', 'M71 X1', 'D5', 'M71 G41'])('refuses %s as the word for threading', (thread) => {
    expect(codes(withWords({ thread, cutWire: 'M90' }))).toEqual(['dialect-word-taken']);
  });

  it('takes any machine word that neither stops nor ends a program, and no letter of the coordinates for the condition', () => {
    expect(codes(withWords({ flushOn: 'M08', flushOff: 'M09' }))).toEqual([]);
    for (const m of ['M03', 'M06', 'M08', 'M19', 'M60']) expect(codes(withWords({ thread: m, cutWire: 'M77' }))).toEqual([]);
    expect(codes(withWords({ condition: 'M{n}' }))).toEqual(['dialect-word-taken']);
    expect(codes(withWords({ condition: 'X{n}' }))).toEqual(['dialect-word-taken']);
  });

  it('remarks on half a pair, coarse digits and a dialect that cannot speak', () => {
    expect(codes(withWords({ thread: 'M71' }))).toEqual(['dialect-pair-incomplete']);
    expect(fieldsOf(withWords({ thread: 'M71' }))).toEqual(['dialect.words.cutWire']);
    expect(fieldsOf(withWords({ powerOff: 'M77' }))).toEqual(['dialect.words.powerOn']);
    expect(codes({ ...standardDialect, decimals: 2 })).toEqual(['dialect-coarse']);
    expect(codes({ ...standardDialect, units: 'inch', decimals: 3 })).toEqual(['dialect-coarse']);
    expect(codes({ ...standardDialect, comments: 'none' })).toEqual(['dialect-cannot-speak']);
  });
});

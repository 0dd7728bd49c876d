/** All that is said of some examples, printed in the pseudo-language: page, findings, papers, answer. No English is left, and no sentence is without a template. */
import { describe, expect, it } from 'vitest';
import { FIELDS, helpOf } from '../../src/app/fields/fields.ts';
import { columnsOf, TABLES } from '../../src/app/shop/columns.ts';
import { messages } from '../../src/app/words/messages.ts';
import { printedSheet } from '../../src/app/work/sheet-for-reader.ts';
import { sheetOf } from '../../src/app/work/sheet-of.ts';
import { CHAPTERS } from '../../src/app/work/views.ts';
import { jobRun } from '../../src/cli/inputs.ts';
import type { Paper } from '../../src/documents/paper.ts';
import { answerText } from '../../src/documents/sheet/answer-text.ts';
import { schemas } from '../../src/job/files/catalogue.ts';
import { pictureFiles } from '../../src/job/handout/papers.ts';
import { paperOf } from '../../src/job/handout/papers-of.ts';
import type { JobRun } from '../../src/job/job-run.ts';
import { memoryOf } from '../../src/job/memory.ts';
import type { Answered } from '../../src/job/pipeline/answer.ts';
import { runUpTo } from '../../src/job/pipeline/pipeline.ts';
import { shapeForms } from '../../src/job/request/shape-keys.ts';
import { lines, plain } from '../../src/nc/write/comment.ts';
import { PAPERS } from '../../src/result/paper-names.ts';
import type { Template } from '../../src/text/language.ts';
import { print } from '../../src/text/print/print.ts';
import { HOUSE, type Reader } from '../../src/text/reader.ts';
import type { Text } from '../../src/text/text.ts';
import { isText } from '../../src/text/within.ts';
import { describedKeys } from '../../tools/described-keys.ts';
import { englishIn, namesIn, wordsOf } from './english.ts';
import { listedTemplates, pseudo, pseudoLanguage } from './pseudo-language.ts';

const SEVERITIES = ['refusal', 'doubt', 'warning', 'repair', 'note'] as const;
const ROLES = ['block', 'drawing', 'open line', 'clamp', 'start hole', 'lead', 'tab', 'comes out', 'core', 'slug', 'metal left', 'pass'];
const KEPT = ['die', 'punch', 'leave', 'left', 'right', 'slit'];
const EXAMPLES = [
  'examples/die-plate/die-plate.job.json',
  'examples/form-insert/form-insert.job.json',
  'examples/spline-hub/spline-hub.job.json',
];

const templates = listedTemplates();
const language = pseudoLanguage(templates);
const missing = new Set<string>();
const reader: Reader = {
  ...HOUSE,
  language: {
    ...language,
    // Whatever key a printed text has must be in the list.
    templates: new Proxy(language.templates, {
      get: (all, key: string): Template | undefined => {
        if (key !== '' && all[key] === undefined) missing.add(key);
        return all[key];
      },
    }),
  },
};

interface Ran {
  readonly run: JobRun;
  readonly answer: Answered;
  /** What a person or a file gave: longest first, so that no name is cut by a shorter one. */
  readonly names: readonly string[];
}

const ran = (path: string): Ran => {
  const run: JobRun = { ...jobRun(path, {}, '2026-11-25'), memory: memoryOf() };
  const answer = runUpTo(run, 'answer');
  if (answer.kind !== 'answered') throw new Error(`${path} has no answer`);
  const layers = answer.facts.drawing.layers.map((l) => l.name);
  return { run, answer, names: [...namesIn(run), answer.facts.head.name, ...layers].toSorted((a, b) => b.length - a.length) };
};

const all = EXAMPLES.map(ran);

/** Every string within a value, but for what is no word: ids, keys and kinds. */
const strings = (value: unknown, key = ''): readonly string[] => {
  if (typeof value === 'string') return NO_WORDS.test(key) ? [] : [value];
  if (typeof value !== 'object' || value === null || ArrayBuffer.isView(value)) return [];
  return Object.entries(value).flatMap(([inner, v]) => strings(v, Array.isArray(value) ? key : inner));
};
const NO_WORDS =
  /^(code|id|key|unit|loop|owner|kind|chapter|field|path|severity|role|align|plain|purpose|holds|marker|process|shape|side|overrides)$/;

/** What the page shows of a job, by part of the sheet. */
const sheetLayers = ({ run, answer }: Ran): Layers => {
  const {
    program,
    figures,
    findings,
    picture,
    took,
    answer: _,
    currency,
    ...parts
  } = printedSheet({ ...sheetOf(answer, run), took: { core: 0, view: 0 } }, reader);
  const told = { ...parts, contours: picture?.contours.map(({ piece, tab }) => ({ piece, tab })) };
  return Object.fromEntries(Object.entries(told).map(([part, value]) => [`sheet, ${part}`, strings(value)]));
};

const paperLayers = ({ run, answer }: Ran): Layers =>
  Object.fromEntries(
    PAPERS.map((name) => {
      const paper = paperOf(name, answer.facts, run, reader);
      return [`paper, ${name}`, paper === undefined ? [] : paperStrings(paper)];
    }),
  );

const paperStrings = ({ blocks, title, subtitle, foot }: Paper): readonly string[] => [
  ...strings([title, subtitle, foot]),
  ...blocks.flatMap((block) => (block.kind === 'picture' ? [block.caption, ...strings(block.picture)] : strings(block))),
];

const findingLayer = ({ answer }: Ran): Layers => ({
  findings: answer.facts.findings.flatMap(({ text, done, remedy }) =>
    [text, done, remedy?.text].filter((t) => t !== undefined).map((t) => wordsOf(t, reader)),
  ),
});

const answerLayer = ({ answer }: Ran): Layers => ({
  'printed answer': answerText(answer.facts, reader).split('\n'),
});

/** What stands in the pictures that are handed out as files. */
const pictureLayers = ({ answer }: Ran): Layers =>
  Object.fromEntries(
    Object.entries(pictureFiles(answer, 'job', reader)).map(([file, svg]) => [
      `picture, ${file}`,
      [...svg.matchAll(/<(text|title)[^>]*>([^<]*)</g)].map(([, , words = '']) => words),
    ]),
  );

type Layers = Readonly<Record<string, readonly string[]>>;

/** English words left in each layer, each once. */
const left = (): ReadonlyMap<string, readonly string[]> => {
  const found = new Map<string, Set<string>>();
  for (const one of all)
    for (const layers of [sheetLayers, paperLayers, findingLayer, answerLayer, pictureLayers].map((layersOf) => layersOf(one)))
      for (const [layer, said] of Object.entries(layers)) {
        const words = found.get(layer) ?? new Set();
        for (const text of said) for (const word of englishIn(text, one.names)) words.add(word);
        found.set(layer, words);
      }
  return new Map([...found].map(([layer, words]) => [layer, [...words]]));
};

describe('the pseudo-language', () => {
  it('keeps holes, is two fifths longer, stands between brackets, and has no plain letter', () => {
    expect(pseudo('{loop} does not close.')).toBe('[{loop} ďöéš ñöţ çļöšé. ļöŕéṁ í]');
    expect(pseudo(' high, ')).toMatch(/^ \[.*\] $/);
    expect(pseudo('{a}, {b}')).toBe('{a}, {b}');
    for (const { template } of templates) {
      const holes = (text: string): readonly string[] => text.match(/\{[^}]*\}/g) ?? [];
      const bare = (text: string): string => text.replace(/\{[^}]*\}/g, '');
      expect(holes(pseudo(template))).toEqual(holes(template));
      if (/[A-Za-z]/.test(bare(template))) expect(pseudo(template).length).toBeGreaterThanOrEqual(bare(template).length * 1.4);
      expect(bare(pseudo(template))).not.toMatch(/[A-Za-z]/);
    }
  });

  it('has every template that is listed', () => {
    expect(templates.filter(({ key }) => language.templates[key] === undefined)).toEqual([]);
  });
});

describe('what is printed in it', () => {
  const found = left();

  it('is of each layer that there is', () => {
    expect([...found.keys()]).toEqual(
      expect.arrayContaining([
        'sheet, schedule',
        'paper, set-up-sheet',
        'paper, annex',
        'findings',
        'printed answer',
        'picture, job.proof.svg',
      ]),
    );
  });

  it.each([...found.keys()])('holds no English: %s', (layer) => {
    expect(found.get(layer)).toEqual([]);
  });

  it('has a template for every key that was printed', () => {
    expect([...missing]).toEqual([]);
  });
});

/** What makers of the page's words are given that takes no word out of a list of its own. */
const SAMPLE = '7';
const GIVEN: Readonly<Record<string, readonly unknown[]>> = {
  'papers.name': [...PAPERS],
  'papers.download': [...PAPERS],
  'jobs.older': ['inputs', 'shop', 'version', 'rates'],
  'sheet.chapter': [...CHAPTERS],
  'sheet.notes': [...CHAPTERS],
  'sheet.severity': [...SEVERITIES],
  'sheet.mark': [...SEVERITIES],
  'program.severity': [...SEVERITIES],
  'sheet.basis': ['drawing', 'shop', 'published', 'measured', 'common practice', 'assumed', 'computed'],
  'sheet.saving': ['saved', 'saving', 'waiting for the server', 'changed elsewhere', 'put away'],
  'sheet.logKind': ['tick', 'measured', 'time', 'break', 'note'],
  'strip.mark': ['thread', 'slug', 'tab', 'spool', 'load', 'stop'],
  'picture.line': [...ROLES],
  'picture.thing': [...ROLES],
  'picture.keptChoice': [...KEPT],
  'picture.contour': KEPT.flatMap((kept) => [0, 1, 11].map((number) => ({ id: 'L1', kept, number }))),
  'typed.unknown': ['material', 'wire'],
  'fields.label': ['height'],
  'fields.within': ['height'],
  'shop.table': ['wires', 'passTables'],
  'shop.add': ['wires', 'passTables'],
  'shape.key': ['teeth', 'pressureAngle'],
  'run.aside': [[SAMPLE, SAMPLE]],
};
/** Makers that take a label or a reason, as a text of its own. */
const LABELLED =
  /^(sheet\.(change|setField|changeField|help|suggestions|refused|step|stepBack|backToDefaultOf)|typed\.notALength|picture\.typed\.wrong)$/;
/** And those that take a text second. */
const GIVEN_A_TEXT = /^(sheet\.refused|program\.meaning)$/;

const pageWords = (table: unknown, path: string): readonly string[] => {
  if (isText(table)) return [print(table, reader)];
  if (typeof table === 'function') {
    const first = GIVEN[path] ?? (LABELLED.test(path) ? [messages.fields.label('height')] : [SAMPLE, 1, 2]);
    const second = GIVEN_A_TEXT.test(path) ? messages.fields.label('height') : path.endsWith('unclear') ? [SAMPLE] : SAMPLE;
    return first.map((given) => print(table(given, second, SAMPLE, SAMPLE), reader));
  }
  return Object.entries(table as object).flatMap(([key, inner]) => pageWords(inner, path === '' ? key : `${path}.${key}`));
};

describe('the words of the page in it', () => {
  it('hold no English', () => {
    const said = pageWords(messages, '');
    expect(said.length).toBeGreaterThan(500);
    expect(said.filter((text) => englishIn(text).length > 0)).toEqual([]);
  });
});

describe('what a key of a file means, in it', () => {
  const meanings: readonly Text[] = [
    ...Object.values(FIELDS).flatMap((fields) => fields.flatMap((f) => helpOf(f.path) ?? [])),
    ...TABLES.flatMap((table) => columnsOf(table, 'EUR').flatMap((c) => c.help ?? [])),
    ...shapeForms().flatMap(({ keys }) => keys.map((k) => k.about)),
    ...Object.values(schemas),
  ];

  it('holds no English, on the page and among the options of the command', () => {
    expect(meanings.length).toBeGreaterThan(150);
    expect(meanings.map((text) => print(text, reader)).filter((text) => englishIn(text).length > 0)).toEqual([]);
  });

  it('names no hole: a schema holds plain words', () => {
    expect(describedKeys().filter(({ template }) => /[{}]/.test(template))).toEqual([]);
  });
});

describe('comments of a program in it', () => {
  it('have the letters that every control reads, and lines that are short enough', () => {
    const said = templates.map(({ template }) => pseudo(template));
    expect(said.map(plain).filter((text) => !/^[A-Z0-9+\-*/=., ]*$/.test(text))).toEqual([]);
    expect(said.flatMap(lines).filter((line) => line.length > 60)).toEqual([]);
    // No letter is lost: each has one of the alphabet under its marks.
    expect(plain(pseudo('Take the slug away'))).toMatch(/^, TAKE THE SLUG AWAY/);
  });
});

/** The rules of program reading, held against the report that states them. */
import type { CheckRow } from '../../quantity/check.ts';
import type { Dialect } from '../dialect/dialect.ts';
import { standardDialect } from '../dialect/dialect.ts';
import { readProgram } from './read.ts';

const registers = new Map([[1, 0.155]]);

const dialectOf = (unitsWord: Dialect['unitsWord']): Dialect => ({ ...standardDialect, unitsWord, percent: false });

/** 'yes' when the blocks, between a proper start and end, are read; otherwise the code of what refused them. */
const verdict = (blocks: readonly string[], dialect = dialectOf('G20/G21'), start = 'G21 G90 G00 X0. Y0.', end = 'M02'): string => {
  const read = readProgram([start, ...blocks, end].join('\n'), dialect, registers);
  return read.state === 'read' ? 'yes' : (read.findings.at(-1)?.code ?? 'no reason given');
};

/** 'yes' when every one of the texts is refused for its own reason. */
const allRefused = (cases: readonly (readonly [code: string, blocks: readonly string[]])[]): string => {
  const wrong = cases.map(([code, blocks]) => [code, verdict(blocks)] as const).filter(([code, said]) => code !== said);
  return wrong.length === 0 ? 'yes' : wrong.map(([code, said]) => `${said} instead of ${code}`).join(', ');
};

/** Radius of the wire centre's arc for an inside arc of 0.200 with an offset of 0.155, both mm. */
const insideArcRadius = (): number => {
  const text = [
    'G21 G90 G00 X0. Y5.',
    'G42 D1 G01 X0. Y1.',
    'G01 X-2. Y1.',
    'G02 X-2. Y1.4 I0. J0.2',
    'G01 X0. Y1.4',
    'G40 G01 X0. Y5.',
    'M02',
  ].join('\n');
  const read = readProgram(text, dialectOf('G20/G21'), registers);
  for (const action of read.actions) if (action.kind === 'move' && action.centre.kind === 'arc') return action.centre.radius;
  return -1;
};

const error = 'error list and chapter on cutter radius compensation';

export const checks: readonly CheckRow[] = [
  {
    id: 'I-01',
    source: 'nist-ir-6556',
    place: error,
    how: 'secondary page',
    question: 'Is G41 or G42 without D an error?',
    value: 'yes',
    ours: () =>
      allRefused([
        ['register-not-named', ['G41 G01 X5. Y0.', 'G01 X5. Y5.', 'G40 G01 X0. Y5.']],
        ['register-not-named', ['G42 G01 X5. Y0.', 'G01 X5. Y5.', 'G40 G01 X0. Y5.']],
      ]),
  },
  {
    id: 'I-01-zero',
    source: 'nist-ir-6556',
    place: error,
    how: 'secondary page',
    question: 'Is D0 read as an offset of 0, without a table entry?',
    value: 'yes',
    ours: () => verdict(['G41 D0 G01 X5. Y0.', 'G01 X5. Y5.', 'G40 G01 X0. Y5.']),
  },
  {
    id: 'I-02',
    source: 'nist-ir-6556',
    place: error,
    how: 'secondary page',
    question: 'Is an inside arc of radius 0.150 with an offset of 0.155 an error?',
    value: 'yes',
    ours: () =>
      allRefused([
        ['arc-tighter-than-offset', ['G42 D1 G01 X0. Y1.', 'G01 X-2. Y1.', 'G02 X-2. Y1.3 I0. J0.15', 'G01 X0. Y1.3', 'G40 G01 X0. Y5.']],
      ]),
  },
  {
    id: 'I-02-radius',
    source: 'nist-ir-6556',
    place: 'recomputed from the rule: path radius = programmed radius - offset',
    how: 'recomputed',
    question: 'Radius in mm of the path of an inside arc of 0.200 mm with an offset of 0.155 mm',
    value: '0.045000000',
    ours: insideArcRadius,
  },
  {
    id: 'I-03',
    source: 'nist-ir-6556',
    place: error,
    how: 'secondary page',
    question: 'Are a second G41, a unit word and G92 errors while compensation is on?',
    value: 'yes',
    ours: () =>
      allRefused([
        ['compensation-already-on', ['G41 D1 G01 X5. Y0.', 'G41 D1 G01 X5. Y5.', 'G40 G01 X0. Y5.']],
        ['compensation-forbids', ['G41 D1 G01 X5. Y0.', 'G21', 'G40 G01 X0. Y5.']],
        ['compensation-forbids', ['G41 D1 G01 X5. Y0.', 'G92 X0. Y0.', 'G40 G01 X0. Y5.']],
      ]),
  },
  {
    id: 'I-04',
    source: 'nist-ir-6556',
    place: error,
    how: 'secondary page',
    question: 'Is an arc by R with its end at its start an error?',
    value: 'yes',
    ours: () => allRefused([['arc-full-by-radius', ['G03 X0. Y0. R2.']]]),
  },
  {
    id: 'I-04-centre',
    source: 'nist-ir-6556',
    place: 'chapter on arcs; from memory',
    how: 'memory',
    question: 'Is a full circle by I and J read?',
    value: 'yes',
    ours: () => verdict(['G03 X0. Y0. I2. J0.']),
  },
  {
    id: 'I-05',
    source: 'nist-ir-6556',
    place: error,
    how: 'secondary page',
    question: 'Are G01 and G02 with F0 errors?',
    value: 'yes',
    ours: () =>
      allRefused([
        ['feed-zero', ['G01 X1. Y0. F0']],
        ['feed-zero', ['F0', 'G02 X2. Y0. I1. J0.']],
      ]),
  },
  {
    id: 'I-06',
    source: 'nist-ir-6556',
    place: error,
    how: 'secondary page',
    question: 'Is a K word in an arc of the XY plane an error?',
    value: 'yes',
    ours: () => allRefused([['arc-by-k', ['G02 X2. Y0. I1. J0. K1.']]]),
  },
  {
    id: 'I-07',
    source: 'iso-6983-1',
    place: 'preparatory functions; from memory',
    how: 'memory',
    question: 'Does the dialect decide between G70/G71 and G20/G21, and is a program with both pairs an error?',
    value: 'yes',
    ours: () => {
      const iso = dialectOf('G70/G71');
      const asked = readProgram('G21 G90 G00 X0. Y0.\nM02', iso, registers).findings.map(({ code }) => code);
      const said = [
        verdict([], iso, 'G71 G90 G00 X0. Y0.'),
        ...asked,
        verdict(['G71'], iso, 'G21 G90'),
        verdict(['G71'], dialectOf('G20/G21'), 'G21 G90'),
      ];
      return said.join() === 'yes,units-of-other-pair,units-of-both-pairs,units-of-both-pairs' ? 'yes' : said.join();
    },
  },
  {
    id: 'I-08',
    source: 'nist-ir-6556',
    place: 'word letters',
    how: 'secondary page',
    question: 'Are U, V, taper and threading words without a dialect entry refused?',
    value: 'yes',
    ours: () =>
      allRefused([
        ['axis-unknown', ['G01 X1. Y0. U0.1']],
        ['axis-unknown', ['G01 X1. Y0. V0.1']],
        ['word-unknown', ['G51 X1. Y0.']],
        ['word-unknown', ['M60']],
        ['word-unknown', ['T5']],
      ]),
  },
  {
    id: 'I-10',
    source: 'nist-ir-6556',
    place: error,
    how: 'secondary page',
    question: 'Are D without G41 or G42, N above 99999, a missing end, coordinates without a motion word, and an R too small errors?',
    value: 'yes',
    ours: () => {
      const said = [
        verdict(['G01 X1. Y0. D1']),
        verdict(['N100000 G01 X1. Y0.']),
        verdict(['G01 X1. Y0.'], undefined, undefined, ''),
        verdict(['X1. Y0.'], undefined, 'G21 G90'),
        verdict(['G02 X2. Y0. R0.9']),
      ];
      const wanted = ['register-idle', 'sequence-number-bad', 'program-end-missing', 'motion-not-stated', 'arc-radius-too-small'];
      return said.join() === wanted.join() ? 'yes' : said.join();
    },
  },
];

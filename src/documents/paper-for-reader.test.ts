/** Papers for readers of inches and commas: amounts follow them, what is typed into the control does not. */
import { describe, expect, it } from 'vitest';
import type { Telling } from '../text/print/restate.ts';
import { column, controlColumn, type Paper } from './paper.ts';
import { toldPaper } from './paper-for-reader.ts';

const INCH: Telling = { length: 'inch', finish: 'µin', decimalMark: ',', groupMark: '.', names: ['0.30 mm brass'] };

const paper: Paper = {
  title: 'Set-up sheet',
  subtitle: 'A job · 2026-11-25',
  foot: '',
  blocks: [
    { kind: 'text', text: 'Set the registers before the start: D1 = 0.2069, D2 = 0.1665 mm.', control: true },
    { kind: 'pairs', rows: [['Wire', '0.30 mm brass, 16 N, 10 m/min']] },
    { kind: 'list', items: ['hangs on a tab of 1.5 mm'], marker: 'warning' },
    {
      kind: 'table',
      columns: [column('Pass', 1), controlColumn('Offset mm', 1), column('Gap mm', 1, 'right'), column('Ra after µm', 1, 'right')],
      rows: [['1 rough', '0.2069', '0.037', '2.80']],
    },
    {
      kind: 'table',
      columns: [column('What', 1), { ...column('Allowed', 1), holds: 'amount' }, { ...column('Where, mm', 1), holds: 'amount' }],
      rows: [
        ['profile', '±0.0080', 'X 0 to 36'],
        ['Ra', 'up to 1.6', 'every cut face'],
      ],
      units: ['mm', 'µm'],
      note: 'Lengths in mm, Ra in µm.',
    },
    { kind: 'picture', caption: 'Plan view, mm.', picture: { low: { x: 0, y: 0 }, high: { x: 100, y: 50 }, strokes: [], labels: [] } },
  ],
};

describe('a paper told for its reader', () => {
  const [registers, pairs, list, passes, sizes, picture] = toldPaper(paper, INCH).blocks;

  it('keeps registers and offsets in the unit of the program, with the marks of the reader', () => {
    expect(registers).toMatchObject({ text: 'Set the registers before the start: D1 = 0,2069, D2 = 0,1665 mm.' });
    expect(passes).toMatchObject({ columns: [{}, { title: 'Offset mm' }, {}, {}], rows: [['1 rough', '0,2069', '0,00146', '110']] });
  });

  it('tells amounts, headings, notes and the scale bar in inch', () => {
    expect(pairs).toMatchObject({ rows: [['Wire', '0.30 mm brass, 16 N, 32,8 ft/min']] });
    expect(list).toMatchObject({ items: ['hangs on a tab of 0,0591 in'] });
    expect(passes).toMatchObject({ columns: [{}, {}, { title: 'Gap inch' }, { title: 'Ra after µin' }] });
    expect(sizes).toMatchObject({
      columns: [{}, {}, { title: 'Where, inch' }],
      rows: [
        ['profile', '±0,000315', 'X 0 to 1,42'],
        ['Ra', 'up to 63', 'every cut face'],
      ],
      note: 'Lengths in inch, Ra in µin.',
    });
    expect(picture).toMatchObject({ caption: 'Plan view, inch.', picture: { bar: { unit: 'inch', decimal: ',' } } });
  });

  it('is the same paper for whoever reads mm and points', () => {
    const usual = toldPaper(paper, { length: 'mm', finish: 'µm', decimalMark: '.', groupMark: ',', names: [] });
    expect(usual.blocks.slice(0, 5)).toEqual(paper.blocks.slice(0, 5));
  });
});

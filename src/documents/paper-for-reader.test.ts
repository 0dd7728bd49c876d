/** Papers for readers of inches and commas: amounts follow them, what is typed into the control does not, names are nobody's to change. */
import { describe, expect, it } from 'vitest';
import { bare, fixed, limit, mm, name, number, type Part, quantity, term, um, unitName, upTo } from '../text/part.ts';
import { HOUSE, type Reader } from '../text/reader.ts';
import { NOTHING, say } from '../text/say.ts';
import { column, type WrittenPaper } from './paper.ts';
import { printedPaper } from './paper-for-reader.ts';

const INCH: Reader = { length: 'inch', finish: 'µin', decimalMark: ',', groupMark: '.' };

const paper: WrittenPaper = {
  title: say`Set-up sheet`,
  subtitle: name('Bracket 2.5 mm'),
  foot: NOTHING,
  blocks: [
    { kind: 'text', text: say`Set the registers: D1 = ${{ register: number(0.2069, fixed(4)) }} mm.` },
    { kind: 'pairs', rows: [[say`Wire`, say`${{ wire: name('0.30 mm brass') }}, ${{ speed: quantity(10, 'm/min') }}`]] },
    { kind: 'list', items: [say`hangs on a tab of ${{ tab: mm(1.5) }}`, name('Plate 25.4 mm')], marker: 'warning' },
    {
      kind: 'table',
      columns: [
        column(say`Offset ${{ unit: term('mm') }}`, 1),
        column(say`Gap ${{ unit: unitName('mm') }}`, 1),
        column(say`Ra ${{ unit: unitName('µm') }}`, 1),
      ],
      rows: [[number(0.2069, fixed(4)), bare(0.037, 'mm', fixed(3)), bare(2.8, 'µm', fixed(2))]],
      note: say`Lengths in ${{ unit: unitName('mm') }}.`,
    },
    {
      kind: 'table',
      columns: [column(say`Allowed`, 1), column(say`Where`, 1)],
      rows: [
        [{ ...limit(0.008), bare: true } as Part, say`X ${{ from: bare(0, 'mm') }} to ${{ to: bare(36, 'mm', upTo(3)) }}`],
        [um(1.6), NOTHING],
      ],
    },
    {
      kind: 'picture',
      caption: say`Plan view, ${{ unit: unitName('mm') }}.`,
      picture: { low: { x: 0, y: 0 }, high: { x: 100, y: 50 }, strokes: [], labels: [] },
    },
  ],
};

describe('a paper told for its reader', () => {
  const { subtitle, blocks } = printedPaper(paper, INCH);
  const [registers, pairs, list, passes, sizes, picture] = blocks;

  it('keeps registers and offsets in the unit of the program, with the marks of the reader', () => {
    expect(registers).toMatchObject({ text: 'Set the registers: D1 = 0,2069 mm.' });
    expect(passes).toMatchObject({ rows: [['0,2069', '0,00146', '110']] });
  });

  it('tells amounts, headings, notes and the scale bar in inch, and leaves names alone', () => {
    expect(subtitle).toBe('Bracket 2.5 mm');
    expect(pairs).toMatchObject({ rows: [['Wire', '0.30 mm brass, 32,8 ft/min']] });
    expect(list).toMatchObject({ items: ['hangs on a tab of 0,0591\u00a0in', 'Plate 25.4 mm'] });
    expect(passes).toMatchObject({ columns: [{}, { title: 'Gap inch' }, { title: 'Ra µin' }], note: 'Lengths in inch.' });
    expect(sizes).toMatchObject({
      rows: [
        ['±0,000315', 'X 0 to 1,42'],
        ['63 µin', ''],
      ],
    });
    expect(picture).toMatchObject({ caption: 'Plan view, inch.', picture: { bar: { unit: 'inch', decimal: ',' } } });
  });

  it('says mm and points to whoever reads those', () => {
    expect(printedPaper(paper, HOUSE).blocks[3]).toMatchObject({ rows: [['0.2069', '0.037', '2.80']], note: 'Lengths in mm.' });
  });
});

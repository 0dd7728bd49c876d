/** Papers are laid out from facts, set as PDF with the same bytes each time, and say what applies to the job. */
import { describe, expect, it } from 'vitest';
import { paperFonts } from '../font-files/font-files.ts';
import { contour, path } from '../geometry/contour.ts';
import { circle, line, point } from '../geometry/segment.ts';
import { circleData, pathData, scaleBar } from '../picture/strokes.ts';
import type { Paper } from './paper.ts';
import { paperText } from './paper-text.fixture.ts';
import { paperPdf } from './pdf/pdf.ts';

const paper: Paper = {
  title: 'A paper',
  subtitle: 'for a test',
  foot: 'foot',
  blocks: [
    { kind: 'heading', text: 'Heading' },
    { kind: 'text', text: 'Some words about Ø 20 ±0.01 µm and “quotes”.' },
    {
      kind: 'pairs',
      rows: [
        ['Material', 'D2'],
        ['Height', '32 mm'],
      ],
    },
    {
      kind: 'table',
      columns: [
        { title: 'No.', width: 1, align: 'left' },
        { title: 'Value', width: 1, align: 'right' },
      ],
      rows: Array.from({ length: 120 }, (_, i) => [String(i + 1), String(i * i)]),
    },
    { kind: 'list', items: ['First point', 'Second point'], marker: 'warning' },
    {
      kind: 'picture',
      caption: 'A circle',
      picture: {
        low: point(-10, -10),
        high: point(10, 10),
        strokes: [{ data: circleData(point(0, 0), 8), width: 0.3, grey: 0.1 }],
        labels: [{ at: point(0, 0), text: '1', side: 'centre', ring: true }],
      },
    },
  ],
};

describe('a paper', () => {
  it('gives the same PDF bytes for the same content, on as many pages as its tables need', async () => {
    const fonts = paperFonts();
    const [one, two] = await Promise.all([paperPdf(paper, fonts, '2026-11-25'), paperPdf(paper, fonts, '2026-11-25')]);
    expect(one).toEqual(two);
    const text = new TextDecoder('latin1').decode(one);
    expect(text.startsWith('%PDF-')).toBe(true);
    expect(text.match(/\/Type \/Page\b/g)?.length).toBeGreaterThanOrEqual(3);
  });

  it('reads the same as text: every cell, item and caption is there', () => {
    const text = paperText(paper);
    for (const part of ['A PAPER', 'Heading', 'Material', '32 mm', '! First point', 'A circle']) expect(text).toContain(part);
    expect(text).toContain('and 80 more');
  });
});

describe('a picture', () => {
  it('writes a full circle as two halves and an open path without closing it', () => {
    expect(pathData(contour([circle(point(0, 0), 5)])).match(/A/g)).toHaveLength(2);
    expect(pathData(path([line(point(0, 0), point(3, 4))]))).toBe('M0 0L3 4');
  });

  it.each([
    [100, 20],
    [37, 5],
    [8.1, 2],
    [0.9, 0.2],
    [2500, 500],
  ])('has for a width of %d mm a scale bar of %d mm', (width, bar) => {
    expect(scaleBar(width).mm).toBeCloseTo(bar, 12);
    expect(scaleBar(25.4 * width, { unit: 'inch', decimal: ',' })).toEqual({ mm: 25.4 * bar, text: `${String(bar).replace('.', ',')} in` });
  });
});

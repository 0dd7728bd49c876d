/** Sets a paper as PDF: A4, vector drawing, the same bytes for the same paper. */
import type PDFDocument from 'pdfkit';
import type { Paper, PaperBlock } from '../paper.ts';
import { drawPicture } from './drawing.ts';
import { heightOf, INK, need, newPage, PAGE, type PdfPen, PENCIL, put, rule, WIDTH, write } from './pen.ts';
import { drawPairs, drawTable } from './table.ts';

/** TrueType files of the three faces; they are brought in, since the core opens no files. */
export interface Fonts {
  readonly plain: Uint8Array;
  readonly bold: Uint8Array;
  readonly mono: Uint8Array;
}

/** The paper as the bytes of a PDF. `day` (ISO 8601) is its date of making. */
export const paperPdf = async (paper: Paper, fonts: Fonts, day: string): Promise<Uint8Array> => {
  // Loaded here, since it takes longer than all the rest, and most answers want no paper.
  const { default: PDFDocument } = await import('pdfkit');
  const made = new Date(`${day}T00:00:00Z`);
  const doc = new PDFDocument({
    font: null,
    size: [PAGE.width, PAGE.height],
    margin: 0,
    bufferPages: true,
    autoFirstPage: false,
    lang: 'en',
    info: { Title: `${paper.title}: ${paper.subtitle}`, Creator: 'Kerfwright', Producer: 'Kerfwright', CreationDate: made, ModDate: made },
  });
  const bytes = collect(doc);
  doc.registerFont('plain', fonts.plain).registerFont('bold', fonts.bold).registerFont('mono', fonts.mono);
  const pen: PdfPen = { doc, y: PAGE.margin };
  newPage(pen);
  drawHead(pen, paper);
  for (const block of paper.blocks) drawBlock(pen, block);
  drawFeet(pen, paper.foot);
  doc.end();
  return bytes;
};

const drawHead = (pen: PdfPen, paper: Paper): void => {
  write(pen, paper.title, { face: 'bold', size: 17 }, 2);
  write(pen, paper.subtitle, { size: 9, colour: PENCIL }, 5);
  rule(pen, pen.y);
  pen.y += 9;
};

const drawBlock = (pen: PdfPen, block: PaperBlock): void => {
  if (block.kind === 'heading') drawHeading(pen, block.text);
  else if (block.kind === 'text') write(pen, block.text, { size: block.large ? 11.5 : 9 }, 8);
  else if (block.kind === 'pairs') drawPairs(pen, block.rows);
  else if (block.kind === 'table') drawTable(pen, block);
  else if (block.kind === 'list') drawList(pen, block.items, block.marker);
  else drawPicture(pen, block.picture, block.caption);
};

/** A heading keeps some room for what follows it. */
const drawHeading = (pen: PdfPen, text: string): void => {
  need(pen, 60);
  pen.y += 3;
  write(pen, text, { face: 'bold', size: 11 }, 5);
};

const drawList = (pen: PdfPen, items: readonly string[], marker: 'dash' | 'warning'): void => {
  const style = { size: 8.6, x: PAGE.margin + 15, width: WIDTH - 15 };
  for (const item of items) {
    // The marker stays with its item: both go to the next page where the item does not fit.
    need(pen, heightOf(pen, item, style));
    put(pen, marker === 'warning' ? '⚠' : '–', pen.y, { size: 9, colour: INK, width: 14 });
    write(pen, item, style, 3);
  }
  pen.y += 5;
};

const drawFeet = (pen: PdfPen, foot: string): void => {
  const { start, count } = pen.doc.bufferedPageRange();
  for (let i = 0; i < count; i++) {
    pen.doc.switchToPage(start + i);
    const y = PAGE.height - PAGE.margin - 4;
    rule(pen, y - 5);
    put(pen, foot, y, { size: 7, colour: PENCIL, width: WIDTH - 70 });
    put(pen, `Page ${i + 1} of ${count}`, y, { size: 7, colour: PENCIL, x: PAGE.margin + WIDTH - 66, width: 66, align: 'right' });
  }
};

const collect = (doc: PDFDocument): Promise<Uint8Array> =>
  new Promise((resolve, reject) => {
    const chunks: Uint8Array[] = [];
    doc.on('data', (chunk) => chunks.push(chunk));
    doc.on('error', reject);
    doc.on('end', () => resolve(joined(chunks)));
  });

const joined = (chunks: readonly Uint8Array[]): Uint8Array => {
  const all = new Uint8Array(chunks.reduce((n, c) => n + c.length, 0));
  let at = 0;
  for (const chunk of chunks) {
    all.set(chunk, at);
    at += chunk.length;
  }
  return all;
};

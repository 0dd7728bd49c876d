/** A page pen: knows how far down the page it is and starts a new page when a block does not fit. All in points on A4. */
import type PDFDocument from 'pdfkit';

export const MM = 72 / 25.4;
export const PAGE = { width: 210 * MM, height: 297 * MM, margin: 16 * MM, foot: 12 * MM } as const;
export const WIDTH = PAGE.width - 2 * PAGE.margin;

export type Face = 'plain' | 'bold' | 'mono';
export type Grey = readonly [number, number, number];

export const grey = (share: number): Grey => {
  const level = Math.round(share * 255);
  return [level, level, level];
};
export const INK = grey(0.08);
export const PENCIL = grey(0.38);
export const RULE = grey(0.72);

export interface PdfPen {
  readonly doc: PDFDocument;
  /** Where the next block starts, points from the top. */
  y: number;
}

const BOTTOM = PAGE.height - PAGE.margin - PAGE.foot;

/** Space left on the page, points. */
export const roomLeft = (pen: PdfPen): number => BOTTOM - pen.y;

export const newPage = (pen: PdfPen): void => {
  pen.doc.addPage();
  pen.y = PAGE.margin;
};

/** Starts a new page unless so much room is left. */
export const need = (pen: PdfPen, height: number): void => {
  if (height > roomLeft(pen)) newPage(pen);
};

export interface Written {
  readonly face?: Face;
  readonly size: number;
  readonly colour?: Grey;
  readonly x?: number;
  readonly width?: number;
  readonly align?: 'left' | 'right';
}

export const heightOf = (pen: PdfPen, text: string, style: Written): number =>
  pen.doc
    .font(style.face ?? 'plain')
    .fontSize(style.size)
    .heightOfString(text, { width: style.width ?? WIDTH, lineGap: 1 });

/** Writes text at a height without moving the pen. */
export const put = (pen: PdfPen, text: string, y: number, style: Written): void => {
  pen.doc
    .font(style.face ?? 'plain')
    .fontSize(style.size)
    .fillColor(style.colour ?? INK)
    .text(text, style.x ?? PAGE.margin, y, { width: style.width ?? WIDTH, align: style.align ?? 'left', lineGap: 1 });
};

/** Writes a paragraph and moves the pen below it. */
export const write = (pen: PdfPen, text: string, style: Written, after = 0): void => {
  const height = heightOf(pen, text, style);
  need(pen, height);
  put(pen, text, pen.y, style);
  pen.y += height + after;
};

export const rule = (pen: PdfPen, y: number, x = PAGE.margin, width = WIDTH): void => {
  pen.doc
    .lineWidth(0.5)
    .strokeColor(RULE)
    .moveTo(x, y)
    .lineTo(x + width, y)
    .stroke();
};

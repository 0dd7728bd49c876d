/** A picture on a page: to scale, with its scale bar. */

import { crowdOf } from '../../picture/label-room.ts';
import { type Label, type Picture, scaleBar } from '../../picture/strokes.ts';
import { grey, INK, MM, need, PAGE, type PdfPen, PENCIL, put, WIDTH, write } from './pen.ts';

const HIGHEST = 78 * MM;
const LABEL = 6.6;
const RING = 5;

interface PictureOnPage {
  readonly scale: number;
  readonly x: number;
  readonly y: number;
}

/** Draws the picture as large as the width and a third of the page allow, and says the scale. */
export const drawPicture = (pen: PdfPen, picture: Picture, caption: string): void => {
  const wide = picture.high.x - picture.low.x;
  const high = picture.high.y - picture.low.y;
  const scale = Math.min(WIDTH / wide, HIGHEST / high);
  need(pen, high * scale + 30);
  const frame: PictureOnPage = {
    scale,
    x: PAGE.margin + (WIDTH - wide * scale) / 2 - picture.low.x * scale,
    y: pen.y + picture.high.y * scale,
  };
  for (const stroke of picture.strokes) drawStroke(pen, frame, stroke);
  drawLabels(pen, frame, picture.labels);
  pen.y += high * scale + 6;
  if (picture.scaled !== false) drawScaleBar(pen, scale, scaleBar(wide, picture.bar));
  write(pen, caption, { size: 7.4, colour: PENCIL, x: PAGE.margin }, 8);
};

const drawStroke = (pen: PdfPen, frame: PictureOnPage, stroke: Picture['strokes'][number]): void => {
  const { doc } = pen;
  const onPaper = MM / frame.scale;
  doc.save().translate(frame.x, frame.y).scale(frame.scale, -frame.scale);
  doc
    .lineWidth(stroke.width * onPaper)
    .lineJoin('round')
    .lineCap(stroke.dash === undefined ? 'round' : 'butt')
    .strokeColor(grey(stroke.grey));
  if (stroke.dash !== undefined) doc.dash((stroke.dash[0] as number) * onPaper, { space: (stroke.dash[1] as number) * onPaper });
  doc.path(stroke.data);
  if (stroke.fill === undefined) doc.stroke();
  else doc.fillColor(grey(stroke.fill)).fillAndStroke();
  doc.undash().restore();
};

const drawLabels = (pen: PdfPen, frame: PictureOnPage, labels: readonly Label[]): void => {
  const ringed = labels.filter((l) => l.ring);
  const spots = ringed.map(({ at }) => ({ x: at.x * frame.scale, y: at.y * frame.scale }));
  const { share, shown } = crowdOf(spots, ringed.length > 99 ? RING * 1.6 : RING);
  for (const i of shown) drawLabel(pen, frame, ringed[i] as Label, share);
  for (const label of labels) if (!label.ring) drawLabel(pen, frame, label, 1);
};

const drawLabel = (pen: PdfPen, frame: PictureOnPage, label: Label, share: number): void => {
  const { doc } = pen;
  const x = frame.x + label.at.x * frame.scale;
  const y = frame.y - label.at.y * frame.scale;
  const size = LABEL * share;
  doc.font('bold').fontSize(size);
  const width = doc.widthOfString(label.text);
  const ring = Math.max(RING * share, width / 2 + 2 * share);
  const left = label.side === 'right' ? x + 3 : x - (label.ring ? ring : width / 2);
  const middle = label.side === 'above' ? y - ring - 2 : y;
  const centre = left + (label.ring ? ring : width / 2);
  if (label.ring) doc.lineWidth(0.6).strokeColor(INK).fillColor(grey(1)).circle(centre, middle, ring).fillAndStroke();
  doc.fillColor(INK).text(label.text, centre - width / 2, middle - size * 0.58, { lineBreak: false });
};

const drawScaleBar = (pen: PdfPen, scale: number, { mm: length, text }: ReturnType<typeof scaleBar>): void => {
  const y = pen.y + 4;
  pen.doc
    .lineWidth(0.8)
    .strokeColor(INK)
    .moveTo(PAGE.margin, y - 3)
    .lineTo(PAGE.margin, y)
    .lineTo(PAGE.margin + length * scale, y)
    .lineTo(PAGE.margin + length * scale, y - 3)
    .stroke();
  put(pen, text, y - 8, { size: 7, colour: PENCIL, x: PAGE.margin + length * scale + 4, width: 80 });
  pen.y += 12;
};

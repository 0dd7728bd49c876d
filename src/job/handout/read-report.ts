/** A drawing read for its own sake: text, plain data and picture. */
import type { Drawing, ReadOptions } from '../../drawing/drawing.ts';
import { takenOf } from '../../drawing/left-out.ts';
import { drawingPicture } from '../../drawing/picture/drawing-picture.ts';
import { readDrawing } from '../../drawing/read/read-drawing.ts';
import { describeDrawing, drawingJson } from './drawing-report.ts';

export interface ReadAnswer {
  readonly file: string;
  readonly drawing: Drawing;
  readonly picture: string;
}

export const readOne = (bytes: Uint8Array, file: string, options: ReadOptions): ReadAnswer => {
  const drawing = takenOf(readDrawing(bytes, file, options), {});
  return { file, drawing, picture: drawingPicture(drawing) };
};

export const readText = ({ file, drawing }: ReadAnswer): string => describeDrawing(drawing, file);

export const readJson = ({ file, drawing }: ReadAnswer): object => drawingJson(drawing, file);

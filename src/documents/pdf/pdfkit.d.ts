/** What we use of pdfkit, without the Node types its own declarations would bring into the core. */
declare module 'pdfkit' {
  interface TextOptions {
    width?: number;
    height?: number;
    align?: 'left' | 'right' | 'center';
    lineBreak?: boolean;
    lineGap?: number;
  }
  export default class PDFDocument {
    constructor(options: {
      font: null;
      size: [number, number];
      margin: number;
      bufferPages: boolean;
      autoFirstPage: boolean;
      info: Record<string, unknown>;
      lang: string;
    });
    x: number;
    y: number;
    registerFont(name: string, bytes: Uint8Array): this;
    font(name: string): this;
    fontSize(size: number): this;
    addPage(): this;
    switchToPage(index: number): this;
    bufferedPageRange(): { start: number; count: number };
    text(text: string, x: number, y: number, options?: TextOptions): this;
    heightOfString(text: string, options?: TextOptions): number;
    widthOfString(text: string, options?: TextOptions): number;
    save(): this;
    restore(): this;
    translate(x: number, y: number): this;
    scale(x: number, y: number): this;
    path(data: string): this;
    moveTo(x: number, y: number): this;
    lineTo(x: number, y: number): this;
    circle(x: number, y: number, radius: number): this;
    rect(x: number, y: number, width: number, height: number): this;
    clip(): this;
    lineWidth(width: number): this;
    lineJoin(style: 'round'): this;
    lineCap(style: 'round' | 'butt'): this;
    dash(length: number, options: { space: number }): this;
    undash(): this;
    strokeColor(colour: readonly [number, number, number]): this;
    fillColor(colour: readonly [number, number, number]): this;
    stroke(): this;
    fill(): this;
    fillAndStroke(): this;
    on(event: 'data', listener: (chunk: Uint8Array) => void): this;
    on(event: 'end', listener: () => void): this;
    on(event: 'error', listener: (error: Error) => void): this;
    end(): void;
  }
}

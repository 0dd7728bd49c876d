/**
 * The values of one entity, gathered before anything is made of them: DXF lets them come in any order. A file has millions, so they are
 * plain numbers in long arrays: `!` stands where one of those is read.
 */
import type { Tags } from './tags.ts';

/** Reused for every entity of a file, so that reading makes no rubbish; copy out what must be kept. */
export class Fields {
  type = '';
  place = 0;
  layer = '0';
  /** Group 2: the name of a block, layer or section. */
  name = '';
  /** Group 6: the line type, as named; empty where the entity or layer names none. */
  lineType = '';
  /** What is written in an entity that carries a text, and behind the sizes of a dimension style. */
  text = '';
  /** Group 3 of a dimension: its style. */
  style = '';
  paper = false;
  invisible = false;
  /** The first value that was not written as a number, and where. */
  bad: { readonly code: number; readonly text: string; readonly place: number } | undefined;
  /** Codes and values of all numbers in the order of the file. */
  codes = new Int16Array(64);
  values = new Float64Array(64);
  count = 0;

  begin(type: string, place: number): void {
    this.type = type;
    this.place = place;
    this.layer = '0';
    this.name = '';
    this.lineType = '';
    this.text = '';
    this.style = '';
    this.paper = false;
    this.invisible = false;
    this.bad = undefined;
    this.count = 0;
  }

  push(code: number, value: number): void {
    if (this.count === this.codes.length) {
      const codes = new Int16Array(this.count * 2);
      codes.set(this.codes);
      this.codes = codes;
      const values = new Float64Array(this.count * 2);
      values.set(this.values);
      this.values = values;
    }
    this.codes[this.count] = code;
    this.values[this.count++] = value;
  }

  codeAt(index: number): number {
    return this.codes[index]!;
  }

  valueAt(index: number): number {
    return this.values[index]!;
  }

  /** The first value with this code. */
  get(code: number, otherwise: number): number {
    for (let i = 0; i < this.count; i++) if (this.codes[i] === code) return this.values[i]!;
    return otherwise;
  }

  has(code: number): boolean {
    for (let i = 0; i < this.count; i++) if (this.codes[i] === code) return true;
    return false;
  }

  flag(code: number, bit: number): boolean {
    return (this.get(code, 0) & bit) !== 0;
  }
}

/**
 * Reads from the entity under the cursor to the next one. Numbers are kept only when `numbers` says that something will be
 * made of them. False when the file ends before the next entity begins: then nobody knows whether the last value is whole.
 */
export const readFields = (tags: Tags, fields: Fields, numbers: boolean): boolean => {
  fields.begin(tags.text(), tags.place);
  const talks = TALKING.has(fields.type);
  let embedded = false;
  while (tags.next()) {
    const code = tags.code;
    if (code === 0) return true;
    // After group 101 comes an object embedded in the entity, with codes of its own meaning.
    if (code === EMBEDDED) embedded = true;
    if (embedded || code > 239) continue;
    if (code === 8) fields.layer = tags.text();
    else if (code === 6) fields.lineType = tags.text();
    else if (code === 2) fields.name = tags.text();
    else if (code === 3 && fields.type === 'DIMENSION') fields.style = tags.text();
    else if (talks && (code === 1 || code === 3)) fields.text += tags.text();
    else if (code === 60) fields.invisible = tags.number() === 1;
    else if (code === 67) fields.paper = tags.number() === 1;
    else if (numbers && (code >= 210 || (code >= 10 && code <= 99) || code === FACTOR)) keepNumber(tags, fields, code);
  }
  return false;
};

/** Whose texts are looked at: they may say what unit the drawing is in. */
const TALKING: ReadonlySet<string> = new Set(['TEXT', 'MTEXT', 'ATTRIB', 'DIMENSION', 'DIMSTYLE']);

const keepNumber = (tags: Tags, fields: Fields, code: number): void => {
  const value = tags.number();
  if (!Number.isNaN(value)) fields.push(code, value);
  else fields.bad ??= { code, text: tags.text().slice(0, 40), place: tags.place };
};

const EMBEDDED = 101;
/** Of a dimension style: by what its dimensions multiply what they measure. */
export const FACTOR = 144;

/** Reads a DXF file, ASCII or binary, R12 to 2018, into curves in drawing units. It never throws and always ends. */

import { itemAt } from '../../sequence/sequence.ts';
import { asGiven, name, term } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import { type Budget, budget, usualLimits } from '../budget.ts';
import { type DrawnFile, refusedFile } from '../curve/curve.ts';
import type { DrawnDimension } from '../dimensions.ts';
import type { ReadLimits } from '../drawing.ts';
import { type Ledger, ledger } from '../ledger.ts';
import { signBook, type UnitSigns } from '../unit-signs.ts';
import { AsciiTags } from './ascii-tags.ts';
import { BinaryTags, isBinaryDxf } from './binary-tags.ts';
import { Entities, isMeasured, needsNumbers } from './entities.ts';
import { pointOf } from './entity-curves.ts';
import { FACTOR, Fields, readFields } from './fields.ts';
import { forecastOf } from './forecast.ts';
import { emptyHeader, readHeader, unitOfCode } from './header.ts';
import { layerTable } from './layers.ts';
import { drawnOut } from './place.ts';
import type { Block, EntityRecord } from './records.ts';
import { type Report, report } from './report-dxf.ts';
import { type Words, words } from './strings.ts';
import type { Tags } from './tags.ts';
import { tally } from './tally.ts';

/**
 * The curves of model space, blocks drawn out, in drawing units as the file has them. `state` is 'complete' only if every
 * section and the file had their end marks; what could be read of a file cut short is handed over with it. The format is
 * the openly published DXF reference (sources/dxf-reference).
 */
export const readDxf = (bytes: Uint8Array, limits: ReadLimits = usualLimits): DrawnFile => {
  const told = ledger();
  const allowance = budget(limits, told);
  if (!allowance.bytes(bytes.length)) return refused(told);
  const names = words();
  const tags = isBinaryDxf(bytes) ? new BinaryTags(bytes, names) : new AsciiTags(bytes, names);
  const says = report(told, tags.binary);
  const reading = new Reading(tags, names, says, told);
  reading.read();
  if (!reading.sawSection) {
    // What stood where in a file that is something else helps nobody: a fresh ledger with the one thing that does.
    const none = ledger();
    const what = bytes.length === 0 ? stated.empty : stated.noSection;
    none.add('not-a-drawing', what, { done: stated.nothingRead, remedy: stated.save });
    return refused(none);
  }
  return handedOver(reading, allowance, says, told);
};

const handedOver = (reading: Reading, allowance: Budget, says: Report, told: Ledger): DrawnFile => {
  const { blocks, layers, header } = reading;
  const { pieces, steps } = forecastOf(reading.model, blocks);
  if (!allowance.expected(pieces, steps)) return refused(told);
  const drawn = drawnOut(reading.model, { blocks, layers, budget: allowance, report: says });
  if (allowance.spent()) return refused(told);
  says.close();
  const unit = header.unitCode === undefined ? undefined : unitOfCode(header.unitCode);
  if (unit?.kind === 'unknown')
    told.add(
      'unit-code-unknown',
      header.unitCode !== undefined && Number.isFinite(header.unitCode) ? stated.unitCode(header.unitCode) : stated.noUnitCode,
    );
  return {
    state: reading.complete ? 'complete' : 'incomplete',
    format: 'dxf',
    units: unit?.kind === 'unit' ? unit.units : undefined,
    measurement: SYSTEMS.get(header.measurement),
    unitless: unit?.kind === 'unitless',
    signs: signsOf(reading),
    titled: reading.signs.titled(),
    dimensions: reading.dimensions(),
    ...drawn,
    layers: layers.listed(),
    passedOver: new Map([...says.tally.passedOver].map(([type, met]) => [type, met.count])),
    findings: told.findings(),
  };
};

const signsOf = ({ signs, header }: Reading): UnitSigns => {
  if (header.feet) signs.setting('inch', '$LUNITS');
  signs.style('$DIMPOST', header.behindSizes);
  return signs.signs();
};

/** What $MEASUREMENT says the drawing was begun in. */
const SYSTEMS: ReadonlyMap<number | undefined, 'inch' | 'metric'> = new Map([
  [0, 'inch'],
  [1, 'metric'],
]);

const refused = (told: Ledger): DrawnFile => refusedFile('dxf', told.findings());

/** One pass over the pairs of a file. Between two steps the cursor stands on a group 0, the beginning of the next thing. */
class Reading {
  readonly model: EntityRecord[] = [];
  readonly blocks = new Map<string, Block>();
  readonly layers = layerTable();
  readonly header = emptyHeader();
  readonly signs = signBook();
  sawSection = false;
  complete = false;
  readonly #tags: Tags;
  readonly #words: Words;
  readonly #says: Report;
  readonly #told: Ledger;
  readonly #entities: Entities;
  readonly #fields = new Fields();
  readonly #factors = new Map<string, number>();
  #section = '';
  #unclosed = '';
  #damagesTold = 0;

  constructor(tags: Tags, names: Words, says: Report, told: Ledger) {
    this.#tags = tags;
    this.#words = names;
    this.#says = says;
    this.#told = told;
    this.#entities = new Entities(says, this.signs);
    this.#entities.collectInto(this.model, this.#says.tally);
  }

  /** Once all styles are known. */
  dimensions(): readonly DrawnDimension[] {
    return this.#entities.dimensions.flatMap(({ style, made }) => made(this.#factors.get(style) ?? 1) ?? []);
  }

  read(): void {
    let more = this.#tags.next();
    while (more) {
      if (this.#tags.code !== 0) more = this.#tags.next();
      else {
        const word = this.#tags.text();
        if (word === 'EOF') break;
        more = this.#step(word);
      }
      this.#tellDamages();
    }
    this.#entities.closePolyline(more ? 'no end' : 'cut off');
    this.#tellDamages();
    const unclosed = this.#unclosed || this.#section;
    this.complete = more && unclosed === '';
    if (this.complete || !this.sawSection) return;
    this.#told.add('file-cut-short', more ? stated.unclosed(unclosed) : stated.noEndMark, {
      place: this.#says.at(this.#tags.place),
      done: stated.before,
      remedy: stated.askAgain,
    });
  }

  /** Reads the thing under the cursor and goes on to the next; false at the end of the bytes. */
  #step(word: string): boolean {
    if (word === 'SECTION') return this.#openSection();
    if (word === 'ENDSEC') {
      this.#entities.closePolyline('no end');
      this.#section = '';
      return this.#tags.next();
    }
    switch (this.#section) {
      case 'TABLES':
        return this.#table();
      case 'BLOCKS':
        return word === 'BLOCK' ? this.#openBlock() : word === 'ENDBLK' ? this.#closeBlock() : this.#entity(word);
      case 'ENTITIES':
        return this.#entity(word);
      case '':
        return this.#outside(word);
      default:
        return this.#tags.next();
    }
  }

  #openSection(): boolean {
    if (this.#section !== '') this.#unclosed = this.#section;
    this.sawSection = true;
    this.#entities.closePolyline('no end');
    this.#entities.collectInto(this.model, this.#says.tally);
    if (!this.#tags.next()) return false;
    this.#section = this.#tags.code === 2 ? this.#tags.text() : 'nameless';
    if (this.#section !== 'HEADER') return this.#tags.next();
    const more = readHeader(this.#tags, this.header);
    const { version, codePage } = this.header;
    if (!this.#words.setCodePage(version, codePage))
      this.#told.add('code-page-unknown', say`The code page '${{ page: name(codePage) }}' is not known here.`, {
        done: say`Names were read as windows-1252.`,
      });
    return more;
  }

  #table(): boolean {
    const whole = readFields(this.#tags, this.#fields, true);
    if (whole && this.#fields.type === 'LAYER') this.layers.define(this.#fields);
    if (whole && this.#fields.type === 'DIMSTYLE') {
      this.signs.style(this.#fields.name, this.#fields.text);
      this.#factors.set(this.#fields.name, this.#fields.get(FACTOR, 1));
    }
    return whole;
  }

  #openBlock(): boolean {
    const whole = readFields(this.#tags, this.#fields, true);
    const name = this.#fields.name;
    const records: EntityRecord[] = [];
    const aside = tally();
    if (MODEL_SPACE.test(name)) this.#entities.collectInto(this.model, this.#says.tally);
    else this.#entities.collectInto(records, aside, PAPER_SPACE.test(name));
    const external = this.#fields.flag(70, EXTERNAL);
    if (whole && !external) this.blocks.set(name.toLowerCase(), { name, base: pointOf(this.#fields, 10), records, aside });
    return whole;
  }

  #closeBlock(): boolean {
    this.#entities.closePolyline('no end');
    this.#entities.collectInto(this.model, this.#says.tally);
    return this.#skip();
  }

  #entity(word: string): boolean {
    const damages = this.#tags.damages.length;
    const whole = readFields(this.#tags, this.#fields, needsNumbers(word) || isMeasured(word));
    const damaged = this.#tags.damages.length > damages;
    if (whole && !damaged) this.#entities.take(this.#fields);
    else {
      this.#entities.spoil();
      const why = damaged ? stated.groupCode : stated.endsWithin;
      this.#says.leftOut(word, this.#fields.place, 'entity-unfinished', why);
    }
    return whole;
  }

  /** Where a damaged file has lost the head of a section, what can be drawn is still drawn. */
  #outside(word: string): boolean {
    if (!needsNumbers(word)) return this.#skip();
    this.#told.add('section-missing', say`A ${{ kind: term(word) }} stands outside of any section.`, {
      place: this.#says.at(this.#tags.place),
      done: say`It was read as a part of the drawing.`,
    });
    return this.#entity(word);
  }

  #skip(): boolean {
    return readFields(this.#tags, this.#fields, false);
  }

  #tellDamages(): void {
    for (; this.#damagesTold < this.#tags.damages.length; this.#damagesTold++) {
      const { place, text } = itemAt(this.#tags.damages, this.#damagesTold);
      this.#told.add('group-code-unreadable', say`'${{ text: name(text) }}' stands where a group code belongs.`, {
        place: this.#says.at(place),
        done: this.#tags.binary ? stated.ended : stated.wentOn,
      });
    }
  }
}

const MODEL_SPACE = /^[*$]model_space$/i;
const PAPER_SPACE = /^[*$]paper_space\d*$/i;
/** Block flags: the block is in another file. */
const EXTERNAL = 4;

const stated = phrases('reading-dxf-file', {
  empty: say`The file is empty.`,
  noSection: say`The file is no DXF drawing: it has no section of one.`,
  nothingRead: say`Nothing was read.`,
  save: say`Save the drawing as DXF or SVG.`,
  unitCode: (code: number) => say`The header gives ${{ code: asGiven(code) }} as the code of the unit ($INSUNITS); 0 to 24 are known.`,
  noUnitCode: say`The header gives no number as the code of the unit ($INSUNITS); 0 to 24 are known.`,
  unclosed: (section: string) => say`The file is not whole: the section ${{ section: term(section) }} has no end mark.`,
  noEndMark: say`The file is not whole: its end mark is missing.`,
  before: say`What could be read before is here.`,
  askAgain: say`Ask for the file again.`,
  groupCode: say`A group code in it could not be read.`,
  endsWithin: say`The file ends within it.`,
  ended: say`Reading ended here.`,
  wentOn: say`Reading went on at the next entity.`,
});

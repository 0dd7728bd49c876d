/** Decides how long a drawing unit is, and says so wherever the file leaves room for doubt. */

import type { Bounds } from '../../geometry/measure.ts';
import { atField, type Finding, remedy } from '../../text/finding.ts';
import { count, length, list, mm, name, type Part, term } from '../../text/part.ts';
import { phrases, say, sentences } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import type { DrawnFile } from '../curve/curve.ts';
import type { DrawingUnits } from '../drawing.ts';
import { find } from '../findings.ts';
import { NO_SIGNS, type Signs, type System, type UnitSigns } from '../unit-signs.ts';

/** Millimetres in one unit, by the names people write. The inch is 25.4 mm exactly (international inch). */
const KNOWN = new Map<string, { readonly name: string; readonly millimetres: number }>([
  ...named('mm', 1, ['mm', 'millimetre', 'millimetres', 'millimeter', 'millimeters']),
  ...named('cm', 10, ['cm', 'centimetre', 'centimetres', 'centimeter', 'centimeters']),
  ...named('m', 1000, ['m', 'metre', 'metres', 'meter', 'meters']),
  ...named('µm', 0.001, ['µm', 'μm', 'um', 'micron', 'microns', 'micrometre', 'micrometres', 'micrometer', 'micrometers']),
  ...named('inch', 25.4, ['in', 'inch', 'inches', '"', '″']),
  ...named('mil', 0.0254, ['mil', 'mils', 'thou']),
  ...named('ft', 304.8, ['ft', 'foot', 'feet', "'", '′']),
]);

function named(name: string, millimetres: number, words: readonly string[]): [string, { name: string; millimetres: number }][] {
  return words.map((word) => [word, { name, millimetres }]);
}

/** The unit a word stands for, or undefined. */
export const unitNamed = (word: string): { readonly name: string; readonly millimetres: number } | undefined =>
  KNOWN.get(word.trim().toLowerCase());

export interface UnitsDecided {
  readonly units: DrawingUnits;
  readonly findings: readonly Finding[];
}

/**
 * The user comes first, then the file; where neither says, millimetres are assumed and asked about.
 *
 * @param bounds of everything drawn, in drawing units; empty when nothing is
 */
export const decideUnits = (
  file: Pick<DrawnFile, 'units' | 'unitless' | 'format' | 'signs'>,
  asked: string | undefined,
  bounds: Bounds,
): UnitsDecided => {
  const findings: Finding[] = [];
  const wanted = asked === undefined ? undefined : unitNamed(asked);
  if (asked !== undefined && !wanted) findings.push(unknownUnit(asked, file.units));
  if (wanted)
    return {
      units: { ...wanted, basis: 'user' },
      findings: [...findings, ...overruled(wanted, file.units), ...implausible(wanted, bounds, true)],
    };
  const signs = file.signs ?? NO_SIGNS;
  if (file.units)
    return {
      units: file.units,
      findings: [...findings, ...implausible(file.units, bounds, false), ...disagreeing(file.units, signs, bounds)],
    };
  const inch = spokenFor(signs, 'inch');
  const assumed: DrawingUnits = { ...(inch ? INCHES : MILLIMETRES), basis: 'assumed' };
  return { units: assumed, findings: [...findings, missing(file.unitless, bounds, signs, inch)] };
};

const MILLIMETRES = { name: 'mm', millimetres: 1 } as const;
const INCHES = { name: 'inch', millimetres: 25.4 } as const;

/** Whether texts and styles speak of one system, and more of it than of the other. */
const spokenFor = (signs: UnitSigns, system: System): boolean =>
  signsIn(signs[system]) > signsIn(signs[system === 'inch' ? 'metric' : 'inch']);

const signsIn = ({ texts, styles }: Signs): number => texts + styles;

/** Units of the inch: thou, feet, yards, miles. */
const systemOf = ({ millimetres }: { readonly millimetres: number }): System =>
  [25.4, 304.8, 914.4, 0.0254, 25.4e-6, 1_609_344].some((inch) => Math.abs(millimetres / inch - 1) < 1e-5) ? 'inch' : 'metric';

/** A header is often that of a template: where texts and dimension styles speak of the other system, that is asked. */
const disagreeing = (units: DrawingUnits, signs: UnitSigns, bounds: Bounds): Finding[] => {
  const other = systemOf(units) === 'inch' ? 'metric' : 'inch';
  if (!spokenFor(signs, other)) return [];
  const instead = other === 'inch' ? INCHES : MILLIMETRES;
  return [
    find('units-disagree', sentences([words.header(units.name), evidence(signs[other], other), sizesIn(units, instead, bounds)]), {
      done: words.keptAsFile(units.name),
      remedy: remedy(say`Specify the unit of the drawing.`, { field: 'units', value: instead.name }),
    }),
  ];
};

/** What the file says beside its header, as it stands there: '22 texts with inches: '.375"', '1/2"'.' */
const evidence = ({ texts, samples }: Signs, system: System): Text => {
  const quoted = list(samples.map(name));
  if (texts > 0) return (system === 'inch' ? words.inchText : words.metricText)(quoted, texts);
  return (system === 'inch' ? words.inchStyle : words.metricStyle)(quoted);
};

const sizesIn = (
  units: DrawingUnits,
  instead: { readonly name: string; readonly millimetres: number },
  bounds: Bounds,
): Text | undefined =>
  isEmpty(bounds)
    ? undefined
    : words.sizesIn(units.name, sizeIn(bounds, units.millimetres), instead.name, sizeIn(bounds, instead.millimetres));

const unknownUnit = (asked: string, instead: DrawingUnits | undefined): Finding =>
  find('units-unknown', say`'${{ asked: name(asked) }}' is not a unit known here.`, {
    place: atField('units'),
    done: instead ? words.kept(instead.name) : words.asIfNone,
    remedy: say`Give one of ${{ units: term('mm, cm, m, µm, inch, mil, ft') }}.`,
  });

const overruled = (wanted: { readonly name: string; readonly millimetres: number }, own: DrawingUnits | undefined): Finding[] =>
  own && own.millimetres !== wanted.millimetres
    ? [
        find('units-overruled', say`The file is in ${{ own: term(own.name) }}, and ${{ wanted: term(wanted.name) }} was specified.`, {
          done: say`Every number of the drawing was read as ${{ wanted: term(wanted.name) }}.`,
        }),
      ]
    : [];

const missing = (unitless: boolean, bounds: Bounds, signs: UnitSigns, inch: boolean): Finding =>
  find('units-missing', sentences([unitless ? words.unitless : words.noUnit, ...spoken(signs), sizes(bounds)]), {
    done: inch ? words.inchAssumed : words.mmAssumed,
    remedy: remedy(say`Specify the unit of the drawing.`, { field: 'units' }),
  });

const spoken = (signs: UnitSigns): Text[] =>
  (['inch', 'metric'] as const).flatMap((system) => (signsIn(signs[system]) > 0 ? [evidence(signs[system], system)] : []));

/** 'Read as mm it measures 12 mm by 5 mm; read as inches …', nothing of a drawing without anything in it. */
const sizes = (bounds: Bounds): Text | undefined => (isEmpty(bounds) ? undefined : words.sizes(sizeIn(bounds, 1), sizeIn(bounds, 25.4)));

const sizeIn = (b: Bounds, millimetres: number): Text => words.size((b.maxX - b.minX) * millimetres, (b.maxY - b.minY) * millimetres);

const isEmpty = (b: Bounds): boolean => !(b.maxX >= b.minX && b.maxY >= b.minY);

/** mm: the travel of the largest wire machines is about this (common practice, no source). */
const LARGEST = 2000;
/** mm: less than the finest wires and their gap are wide. */
const SMALLEST = 0.2;

const implausible = (unit: { readonly name: string; readonly millimetres: number }, bounds: Bounds, asked: boolean): Finding[] => {
  if (isEmpty(bounds)) return [];
  const size = Math.max(bounds.maxX - bounds.minX, bounds.maxY - bounds.minY) * unit.millimetres;
  if (size === 0 || (size <= LARGEST && size >= SMALLEST)) return [];
  const than = size > LARGEST ? words.tooLarge : words.tooSmall;
  const [other, its] = unit.millimetres === 1 ? (['inches', 25.4] as const) : (['mm', 1] as const);
  return [
    find(
      'units-implausible',
      say`In ${{ unit: term(unit.name) }}, the whole drawing measures ${{ size: sizeIn(bounds, unit.millimetres) }}, ${{ than }}.`,
      {
        done: asked ? words.keptAsAsked(unit.name) : words.keptAsFile(unit.name),
        remedy: remedy(words.check(other, sizeIn(bounds, its)), { field: 'units' }),
      },
    ),
  ];
};

const words = phrases('units-of-drawing', {
  kept: (unit: string) => say`The unit of the file, ${{ unit: term(unit) }}, was kept.`,
  asIfNone: say`The unit was decided as if none had been given.`,
  mmAssumed: say`Millimetres were assumed.`,
  inchAssumed: say`Inches were assumed.`,
  header: (unit: string) => say`The header of the file gives ${{ unit: term(unit) }} as its unit.`,
  inchText: (samples: Part, texts: number) => say`It has texts in inches (${{ texts: count(texts) }}): ${{ samples }}.`,
  metricText: (samples: Part, texts: number) => say`It has texts in mm (${{ texts: count(texts) }}): ${{ samples }}.`,
  inchStyle: (samples: Part) => say`Its dimension styles are in inches: ${{ samples }}.`,
  metricStyle: (samples: Part) => say`Its dimension styles are metric: ${{ samples }}.`,
  sizesIn: (unit: string, size: Text, other: string, its: Text) =>
    say`Read as ${{ unit: term(unit) }} it measures ${{ size }}; read as ${{ other: term(other) }} it would be ${{ its }}.`,
  unitless: say`The file gives its unit as none.`,
  noUnit: say`The file does not specify the unit of the drawing.`,
  sizes: (asMm: Text, asInches: Text) => say`Read as mm it measures ${{ asMm }}; read as inches it would be ${{ asInches }}.`,
  size: (wide: number, high: number) => say`${{ wide: length(wide) }} by ${{ high: length(high) }}`,
  tooLarge: say`more than the ${{ largest: mm(LARGEST) }} that any machine is likely to take`,
  tooSmall: say`less than the ${{ smallest: mm(SMALLEST) }} of a thin wire's own cut`,
  keptAsAsked: (unit: string) => say`${{ unit: term(unit) }} was kept, as specified.`,
  keptAsFile: (unit: string) => say`${{ unit: term(unit) }} was kept, as the file has it.`,
  check: (other: string, size: Text) => say`Check the unit: read as ${{ other: term(other) }} it would measure ${{ size }}.`,
});

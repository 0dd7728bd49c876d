/** Every figure of every kind of shape names its own source: one that is about what it tells, and the request only for what stands in it. */

import { describe, expect, it } from 'vitest';
import { fontFile } from '../../font-files/font-files.ts';
import { parserOnDemand } from '../../font-files/parser-on-demand.ts';
import { FACE_FILES } from '../../font-reader/face-files.ts';
import { readFont } from '../../font-reader/read-font.ts';
import type { Figure } from '../../quantity/figure.ts';
import { saidBy } from '../../quantity/source.ts';
import { printSource } from '../../text/print/explain.ts';
import { makeLettering } from '../lettering/make-lettering.ts';
import { MEANS } from '../made.fixture.ts';
import { KINDS } from './kinds.ts';
import { makeShape } from './make.ts';
import type { KindName } from './questions.ts';
import { type ShapeInput, type ShapeRequest, shapeSchema } from './questions.ts';

const PLAIN = ['definition', 'plane-geometry'];
const GEAR = [...PLAIN, 'measuring-pins', 'iso-21771', 'inch', 'common practice'];
const BORE = [...PLAIN, 'din-6885-1', 'asme-b17-1', 'iso-286-1'];

/** What the figures of a kind may cite besides the request. */
const CITED: Readonly<Record<KindName, readonly string[]>> = {
  gear: GEAR,
  'internal-gear': GEAR,
  rack: GEAR,
  spline: [...PLAIN, 'measuring-pins', 'iso-21771', 'inch', 'involute-splines', 'iso-4156-classes', 'ansi-b92-1', 'common practice'],
  'straight-spline': [...PLAIN, 'measuring-pins', 'iso-14', 'sae-j499'],
  serration: [...PLAIN, 'measuring-pins', 'din-5481'],
  'keyway-hub': BORE,
  polygon: PLAIN,
  slot: PLAIN,
  sprocket: [...PLAIN, 'iso-606'],
  ratchet: PLAIN,
  'cycloid-rotor': [...PLAIN, 'trochoid-rotors'],
  spiral: [...PLAIN, 'plane-curves'],
  'form-tool': [...PLAIN, 'inch', 'asme-b1-5', 'asme-b1-8', 'asme-b1-9', 'iso-2904', 'din-513', 'square-thread'],
  lettering: ['the outlines of DejaVu Sans Bold'],
};

/** A bore and its keyway are the same in every wheel, and have nothing from the standard of its teeth. */
const OF_BORE = /^(bore|across|across-cut|key-|keyway-)/;

const figuresOf = (figure: Figure): readonly Figure[] => [figure, ...figure.from.flatMap(figuresOf)];

/** Numbers of a request, as they stand, turned about, and in radians. */
const numbersIn = (part: unknown): readonly number[] => {
  if (typeof part === 'number') return [part, -part, (part * Math.PI) / 180];
  if (typeof part === 'string') return (part.match(/\d+(\.\d+)?/g) ?? []).flatMap((n) => numbersIn(Number(n)));
  return typeof part === 'object' && part !== null ? Object.values(part).flatMap(numbersIn) : [];
};

/** What is wrong with the sources of figures, one line each. */
const misfits = (request: ShapeRequest, figures: readonly Figure[]): readonly string[] => {
  const own = [0, ...numbersIn(request)];
  const wrong = ({ key, value, source }: Figure): boolean => {
    const by = printSource(source);
    if (by === printSource(saidBy.request)) return !own.some((n) => Math.abs(n - value) < 1e-9);
    return !(OF_BORE.test(key) ? BORE : CITED[request.kind]).includes(by);
  };
  return [...new Set(figures.filter(wrong).map((f) => `${request.kind}: ${f.key} = ${f.value} by ${printSource(f.source)}`))];
};

const letters = (request: Extract<ShapeRequest, { kind: 'lettering' }>) =>
  makeLettering(request, () => readFont(fontFile(FACE_FILES['sans-bold']), 'sans-bold', parserOnDemand));

const sizesOf = (input: ShapeInput): { readonly request: ShapeRequest; readonly figures: readonly Figure[] } => {
  const request = shapeSchema.parse(input);
  const made = makeShape(request, { ...MEANS, letters });
  if (made.kind === 'refused') throw new Error(made.findings[0]?.code);
  return { request, figures: made.shape.sizes.flatMap((s) => figuresOf(s.figure)) };
};

const EXAMPLES = Object.entries(KINDS).map(([kind, { example }]) => ({ kind, ...example }) as ShapeInput);

/** Where the examples leave numbers to us, and where a standard has another table. */
const MORE: readonly ShapeInput[] = [
  { kind: 'gear', diametralPitch: 8, teeth: 22, bore: 20, boreZone: 'H7', keyway: 'DIN 6885-1', mate: 40, spanTeeth: 3, pin: 5 },
  { kind: 'gear', module: 3, teeth: 30, bore: 25.4, keyway: 'ASME B17.1', root: 'rack', shift: 0.2 },
  { kind: 'internal-gear', module: 2, teeth: 40, mate: 17, outside: 100 },
  { kind: 'rack', module: 2, teeth: 10, mate: 20, back: 12, pin: 3.4 },
  { kind: 'spline', part: 'hub', module: 2, teeth: 20, class: '5', outside: 60 },
  { kind: 'spline', part: 'shaft', module: 2, teeth: 20, class: '6', fitClass: 'f', spanTeeth: 4 },
  { kind: 'spline', part: 'shaft', standard: 'ANSI B92.1', pitch: 12, teeth: 20, class: '5' },
  { kind: 'straight-spline', part: 'shaft', size: '8x36x40' },
  { kind: 'straight-spline', standard: 'SAE J499', outerDiameter: 25.4, saeFit: '6B' },
  { kind: 'serration', part: 'shaft', size: '15x17' },
  { kind: 'serration', part: 'shaft', teeth: 40, pitchDiameter: 30, boreDiameter: 29, shaftDiameter: 31 },
  { kind: 'keyway-hub', shaft: 25.4, standard: 'ASME B17.1', outside: 60 },
  { kind: 'keyway-hub', shaft: 40, keyways: 2, cornerRadius: 0.3, boreZone: 'none' },
  { kind: 'polygon', sides: 5, acrossFlats: 24, cornerRadius: 1 },
  { kind: 'slot', length: 30, breadth: 8, ends: 'corners', cornerRadius: 0.5 },
  { kind: 'sprocket', chain: '08B', teeth: 17, bore: 20, keyway: 'DIN 6885-1', tipDiameter: 73 },
  { kind: 'ratchet', teeth: 24, outerDiameter: 60, depth: 4, undercut: 5, bore: 20, land: 0.6, back: 'curved' },
  { kind: 'cycloid-rotor', part: 'ring', pins: 12, pinCircle: 80, pinDiameter: 8, eccentricity: 2, outside: 110 },
  { kind: 'spiral', form: 'involute', innerRadius: 6, pitch: 4, turns: 3, width: 1.2 },
  { kind: 'spiral', form: 'logarithmic', innerRadius: 6, growth: 1.5, turns: 3, width: 1.2 },
  ...(['stub-acme', 'trapezoidal', 'square', 'buttress-3-30', 'buttress-7-45'] as const).map(
    (form) => ({ kind: 'form-tool', form, pitch: 5 }) as const,
  ),
  { kind: 'form-tool', form: 'v', pitch: 2, includedAngle: 60, depth: 1, noseRadius: 0.2 },
];

describe('the figures of shapes', () => {
  it.each([...EXAMPLES, ...MORE])('of $kind name sources that are about them', (input) => {
    const { request, figures } = sizesOf(input);
    expect(figures.length).toBeGreaterThan(0);
    expect(misfits(request, figures)).toEqual([]);
  });

  it('are caught where a keyway cites gears, or the request what it does not say', () => {
    const { request, figures } = sizesOf(MORE[0] as ShapeInput);
    const wall = figures.find((f) => f.key === 'keyway-wall') as Figure;
    expect(misfits(request, [{ ...wall, source: { file: 'iso-21771' } }])).toHaveLength(1);
    expect(misfits(request, [{ ...wall, source: saidBy.request }])).toHaveLength(1);
    expect(misfits(request, [{ ...wall, source: { file: 'iso-606' } }])).toHaveLength(1);
  });
});

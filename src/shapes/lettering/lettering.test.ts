/** Letters: as many contours as they have, near their curves, of the area of their outlines, and nothing of a plate left loose. */

import { Clipper, FillRule, type PathsD } from 'clipper2-ts';
import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { fontFile } from '../../font-files/font-files.ts';
import { parserOnDemand } from '../../font-files/parser-on-demand.ts';
import { FACE_FILES, isFace } from '../../font-reader/face-files.ts';
import { readFont } from '../../font-reader/read-font.ts';
import { areaOf, boundsOfChain, mergedBounds } from '../../geometry/area.ts';
import type { Contour } from '../../geometry/contour.ts';
import { flatten } from '../../geometry/flatten.ts';
import { nest } from '../../geometry/near/containment.ts';
import { selfCrossings } from '../../geometry/near/crossings.ts';
import { distanceTo } from '../../geometry/near/distance.ts';
import { contains } from '../../geometry/near/inside.ts';
import type { Point } from '../../geometry/segment.ts';
import { soundness } from '../../geometry/soundness.ts';
import { sentenceOf } from '../../text/finding.fixture.ts';
import { makeShape } from '../list/make.ts';
import { MEANS } from '../made.fixture.ts';
import type { MadeShape, Shape } from '../shape.ts';
import { makeLettering } from './make-lettering.ts';
import { bezier } from './outline.ts';
import { letteringSchema } from './request.ts';
import type { FontAsked, FontFound, GlyphOutline, Typeface } from './typeface.ts';

const read = new Map<string, FontFound>();
const fonts = ({ face }: FontAsked): FontFound => {
  if (!isFace(face)) throw new Error(face);
  const found = read.get(face) ?? readFont(fontFile(FACE_FILES[face]), face, parserOnDemand);
  read.set(face, found);
  return found;
};
const typeface = (face = 'sans-bold'): Typeface => {
  const found = fonts({ face });
  if (found.kind === 'none') throw new Error(`${face} is no font`);
  return found.typeface;
};
const outlinesOf = (character: string): readonly GlyphOutline[] => {
  const found = typeface().glyphOf(character);
  return found.kind === 'glyph' ? found.glyph.outlines : [];
};
const ask = (more: object): MadeShape =>
  makeLettering(letteringSchema.parse({ kind: 'lettering', text: 'O', letterHeight: 20, ...more }), fonts);
const made = (more: object): Shape => {
  const answer = ask(more);
  if (answer.kind === 'refused') throw new Error(sentenceOf(answer.findings[0]));
  return answer.shape;
};
const codes = (more: object): readonly string[] => {
  const answer = ask(more);
  return (answer.kind === 'made' ? answer.shape.findings : answer.findings).map((f) => f.code);
};
const size = (shape: Shape, key: string): number => shape.sizes.find((s) => s.figure.key === key)?.figure.value ?? Number.NaN;
const contoursOf = ({ outlines }: Shape): readonly Contour[] => outlines.map((o) => o.contour);
/** Area of metal pieces, or of openings: outlines of even depth less those straight inside them. */
const areaIn = (shape: Shape): number => {
  const contours = contoursOf(shape);
  const nested = nest(contours, 1e-6);
  return contours.reduce((sum, c, i) => sum + (there(nested[i]).depth % 2 === 0 ? 1 : -1) * Math.abs(areaOf(c)), 0);
};

const ALL = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789&@%#§ÄÖÜÇŲŮÑß';
const SCALE = 20 / 1493;

describe('letters as pieces', () => {
  it('have their counters: O one, B two, I none, and every one a place to thread', () => {
    for (const [text, counters] of [
      ['O', 1],
      ['B', 2],
      ['I', 0],
      ['8', 2],
      ['A', 1],
    ] as const) {
      const shape = made({ text, metal: 'inside' });
      expect(shape.outlines.map((o) => o.metal)).toEqual(expect.arrayContaining(['inside', ...Array(counters).fill('outside')]));
      expect(shape.outlines).toHaveLength(1 + counters);
      expect(shape.starts).toHaveLength(counters);
    }
  });

  it('have the area of their outlines, as an independent polygon library finds it', () => {
    for (const character of 'aBeg8&@ÇŲß') {
      const paths: PathsD = outlinesOf(character).map((o) => walked(o, SCALE));
      const theirs = Clipper.unionD(paths, [], FillRule.NonZero, 8).reduce((sum, p) => sum + Clipper.areaD(p), 0);
      const ours = areaIn(made({ text: character, metal: 'inside', fit: 0.002 }));
      expect(Math.abs(ours - theirs) / theirs).toBeLessThan(2e-4);
    }
  });

  it('come out sound, simple, counter-clockwise and about 0, 0', () => {
    for (const face of ['serif', 'mono-bold']) {
      const shape = made({ text: 'aBeg8&@ÇŲß', metal: 'inside', face, fit: 0.005 });
      const box = mergedBounds(contoursOf(shape).map(boundsOfChain));
      expect(box.minX + box.maxX).toBeCloseTo(0, 6);
      expect(box.minY + box.maxY).toBeCloseTo(0, 6);
      for (const c of contoursOf(shape)) {
        expect(soundness(c, 1e-6)).toEqual({ kind: 'sound' });
        expect(selfCrossings(c, 1e-6)).toEqual([]);
        expect(areaOf(c)).toBeGreaterThan(0);
      }
    }
  });

  it('lie within the tolerance of the curves of the font, corners of the control polygon of lines exactly', () => {
    for (const fit of [0.0005, 0.01]) {
      const shape = made({ text: 'S', metal: 'inside', fit });
      const [outline] = outlinesOf('S') as [GlyphOutline];
      const raw = walked(outline, SCALE, 40);
      const low = (c: readonly Point[]) => [Math.min(...c.map((p) => p.x)), Math.min(...c.map((p) => p.y))] as const;
      const box = boundsOfChain(there(contoursOf(shape)[0]));
      const [x, y] = low(raw);
      const off = Math.max(...raw.map((p) => distanceTo(there(contoursOf(shape)[0]), { x: p.x - x + box.minX, y: p.y - y + box.minY })));
      // The box of the sampled curve is itself off by a sampling step.
      expect(off).toBeLessThan(fit + 0.0005);
      expect(shape.fitDeviation).toBeLessThanOrEqual(fit);
    }
    const e = there(contoursOf(made({ text: 'E', metal: 'inside' }))[0]);
    expect(e.segments.map((s) => s.kind)).toEqual(Array(12).fill('line'));
    expect(made({ text: 'E' }).fitDeviation).toBe(0);
  });

  it('of a glyph whose parts lie over each other are one piece', () => {
    expect(outlinesOf('Ç')).toHaveLength(2);
    expect(made({ text: 'Ç', metal: 'inside' }).outlines).toHaveLength(1);
    expect(made({ text: 'Ů', metal: 'inside', face: 'sans' }).outlines.filter((o) => o.metal === 'inside').length).toBeLessThanOrEqual(2);
  });

  it('say which come in parts, and which run together', () => {
    expect(codes({ text: 'iO', metal: 'inside' })).toEqual(['letters-in-parts']);
    expect(codes({ text: 'II', metal: 'inside', spacing: -6 })).toEqual(['letters-run-together']);
    expect(made({ text: 'II', metal: 'inside', spacing: -6 }).outlines).toHaveLength(1);
    expect(codes({ text: 'VA', metal: 'inside' })).toEqual([]);
  });

  it('stand back by their share of a clearance, as openings do, and leave it all round', () => {
    const piece = made({ text: 'O', metal: 'inside', clearance: 0.04 });
    const hole = made({ text: 'O', metal: 'outside', clearance: 0.04 });
    expect(size(hole, 'text-width') - size(piece, 'text-width')).toBeCloseTo(0.08, 5);
    expect(size(piece, 'capital-height')).toBeCloseTo(19.96, 9);
    const [outer] = contoursOf(hole);
    const gaps = flatten(there(contoursOf(piece)[0]), 0.01).map((p) => distanceTo(there(outer), p));
    expect(Math.min(...gaps)).toBeGreaterThan(0.0399);
    expect(Math.max(...gaps)).toBeLessThan(0.0401);
    expect(codes({ text: 'O', metal: 'inside', clearance: 5, share: 1 })).toEqual(['letter-without-room']);
  });
});

describe('letters as openings', () => {
  it('lose their middles, and it is said', () => {
    const shape = made({ text: 'OAB' });
    expect(shape.outlines).toHaveLength(3);
    expect(shape.findings.map((f) => f.code)).toEqual(['letter-islands-fall']);
    expect(sentenceOf(shape.findings[0])).toContain('4 of them');
    expect(codes({ text: 'LE' })).toEqual([]);
  });

  it('keep all that is in them with bridges: no opening lies in another, whichever way they run', () => {
    for (const [text, bridgeWay] of [
      [ALL, 'upright'],
      ['ABeg8&ÖO', 'level'],
      ['ABeg8&ÖO', 'shortest'],
    ]) {
      const shape = made({ text, bridge: 0.8, bridgeWay, fit: 0.01 });
      expect(nest(contoursOf(shape), 1e-6).every((n) => n.depth === 0)).toBe(true);
      expect(shape.findings).toEqual([]);
      expect(size(shape, 'bridge')).toBe(0.8);
      for (const c of contoursOf(shape)) {
        expect(soundness(c, 1e-6)).toEqual({ kind: 'sound' });
        expect(selfCrossings(c, 1e-6)).toEqual([]);
      }
    }
  });

  it('lose the area of the bridges, and what a letter in a ring has of its own stays', () => {
    const whole = made({ text: 'O', metal: 'inside' });
    const [outer, counter] = contoursOf(whole).toSorted((a, b) => areaOf(b) - areaOf(a)) as [Contour, Contour];
    const bridged = made({ text: 'O', bridge: 2 });
    const heights = [outer, counter].map(boundsOfChain).map((b) => b.maxY - b.minY) as [number, number];
    const bars = 2 * (heights[0] - heights[1]);
    const lost = areaIn(whole) - areaIn(bridged);
    // Round ends are a little lower beside the middle of the bar.
    expect(lost).toBeGreaterThan(bars - 0.2);
    expect(lost).toBeLessThan(bars + 0.2);
    expect(bridged.outlines).toHaveLength(2);
    expect(size(bridged, 'thinnest-metal')).toBeCloseTo(2, 6);
    expect(made({ text: '®', bridge: 0.3 }).outlines.length).toBeGreaterThan(3);
    expect(made({ text: '®' }).outlines).toHaveLength(1);
  });

  it('say when a bridge is wider than the middle it holds', () => {
    expect(codes({ text: 'A', bridge: 8 })).toContain('letter-bridge-wide');
  });

  it('say when bars of one way tie no middle to the plate, where those of the other do', () => {
    expect(codes({ text: '✌', bridge: 0.5, bridgeWay: 'upright' })).toContain('letter-bridge-impossible');
    expect(codes({ text: '✌', bridge: 0.5, bridgeWay: 'level' })).not.toContain('letter-bridge-impossible');
  });

  it('are threaded inside of themselves, in letters without and with bridges', () => {
    for (const more of [{}, { bridge: 0.8 }, { metal: 'inside' }]) {
      const shape = made({ text: 'OAB8gi%®', ...more });
      const openings = shape.outlines.filter((o) => o.metal === 'outside').map((o) => o.contour);
      expect(shape.starts).toHaveLength(openings.length);
      shape.starts.forEach((start, i) => {
        expect(contains(there(openings[i]), start, 1e-6)).toBe('inside');
        expect(distanceTo(there(openings[i]), start)).toBeGreaterThan(0.2);
        expect(Math.min(...contoursOf(shape).map((c) => distanceTo(c, start)))).toBeGreaterThan(0.2);
      });
    }
  });
});

describe('texts', () => {
  it('are as high as asked, by capitals or by the em', () => {
    expect(size(made({ text: 'H' }), 'text-height')).toBeCloseTo(20, 9);
    expect(size(made({ text: 'H', heightOf: 'em' }), 'text-height')).toBeCloseTo((20 * 1493) / 2048, 9);
    expect(size(made({ text: 'H', letterHeight: 40 }), 'text-width')).toBeCloseTo(2 * size(made({ text: 'H' }), 'text-width'), 9);
  });

  it('grow with spacing, and shrink with kerning', () => {
    const plain = size(made({ text: 'HH' }), 'text-width');
    expect(size(made({ text: 'HH', spacing: 3 }), 'text-width') - plain).toBeCloseTo(3, 9);
    const kerned = size(made({ text: 'AV' }), 'text-width');
    expect(size(made({ text: 'AV', kerning: false }), 'text-width') - kerned).toBeCloseTo(139 * SCALE, 9);
  });

  it('stand in lines, left, in the middle or right', () => {
    const shape = (align: string) => made({ text: 'HHH\\nI', align, lineSpacing: 30 });
    const last = (align: string) => {
      const boxes = contoursOf(shape(align)).map(boundsOfChain);
      return boxes.reduce((a, b) => (b.maxY < a.maxY ? b : a));
    };
    expect(size(shape('left'), 'text-height')).toBeCloseTo(50, 9);
    const [left, middle, right] = ['left', 'middle', 'right'].map((a) => last(a).minX) as [number, number, number];
    expect(left).toBeLessThan(middle);
    expect(middle - left).toBeCloseTo(right - middle, 6);
    expect(made({ text: 'H\nH' }).outlines).toHaveLength(2);
  });

  it('are measured where they are narrow', () => {
    const pieces = made({ text: 'II', metal: 'inside' });
    const stem = boundsOfChain(there(contoursOf(pieces)[0]));
    expect(size(pieces, 'thinnest-metal')).toBeCloseTo(stem.maxX - stem.minX, 9);
    const apart = size(pieces, 'text-width') - 2 * (stem.maxX - stem.minX);
    expect(size(pieces, 'narrowest-opening')).toBeCloseTo(apart, 9);
    const openings = made({ text: 'II' });
    expect(size(openings, 'narrowest-opening')).toBeCloseTo(stem.maxX - stem.minX, 9);
    expect(size(openings, 'thinnest-metal')).toBeCloseTo(apart, 9);
    expect(openings.insideRadius).toBe(0);
  });

  it('that cannot be set are refused with the place of what is missing', () => {
    const missing = ask({ text: 'A\u{1F9F0}' });
    expect(missing).toMatchObject({ kind: 'refused', findings: [{ code: 'letter-missing', place: { path: 'text' } }] });
    expect(missing.kind === 'refused' && sentenceOf(missing.findings[0])).toContain('(line 1, place 2)');
    expect(codes({ text: 'שלום' })).toEqual(['letters-need-shaping']);
    expect(codes({ text: 'x\u0327' })).toEqual(['letters-need-shaping']);
    expect(codes({ text: 'A\tB' })).toEqual(['letter-missing']);
    expect(codes({ text: '  \n ' })).toEqual(['text-without-letters']);
    expect(codes({ text: '&@§'.repeat(100), letterHeight: 100, fit: 0.0001 })).toEqual(['letters-too-fine']);
  });

  it('with no font that can be read is refused at the face', () => {
    const request = letteringSchema.parse({ kind: 'lettering', text: 'O', letterHeight: 20 });
    const [broken, none] = [
      makeLettering(request, () => readFont(new Uint8Array([0, 1, 0, 0, 9]), 'my.ttf', parserOnDemand)),
      makeShape(request, MEANS),
    ];
    for (const answer of [broken, none]) {
      if (answer.kind !== 'refused') throw new Error(answer.kind);
      expect(answer.findings.map((f) => [f.code, f.place])).toEqual([['font-unusable', { kind: 'field', path: 'face' }]]);
    }
    expect(made({ text: 'e\u0301', metal: 'inside' }).outlines).toHaveLength(3);
  });
});

/** Corners and sampled curves of an outline, mm. */
const walked = (outline: GlyphOutline, scale: number, steps = 64): Point[] => {
  let at = outline.from;
  const points: Point[] = [at];
  for (const step of outline.steps) {
    const corners =
      step.kind === 'line'
        ? [at, step.to]
        : step.kind === 'quadratic'
          ? [at, step.control, step.to]
          : [at, step.first, step.second, step.to];
    const curve = bezier(corners);
    if (step.kind !== 'line') for (let i = 1; i < steps; i += 1) points.push(curve.pointAt(i / steps));
    points.push(step.to);
    at = step.to;
  }
  return points.map((p) => ({ x: p.x * scale, y: p.y * scale }));
};

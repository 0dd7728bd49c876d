/** The small parts of the picture that compute without a canvas: scale bar, lengths, deviation, labels, marks, traces, tools, fingers, keys. */

import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { HOUSE } from '../../text/reader.ts';
import { wordsFor } from '../words/words-for.ts';
import { circleView, polygonView } from '../work/chain-view.ts';
import type { ContourView, DeviationView, FindingView } from '../work/views.ts';
import { layered } from './bundles.ts';
import { type StrokePen, traceWhole, traceWithin } from './chain-strokes.ts';
import { coloursFrom, DARK, LIGHT, mixed } from './colours.ts';
import { deviationScale, extremes, stepOf, stepRows, towardsCut } from './deviation.ts';
import { placedLabels } from './labels.ts';
import { layersOf, legendOf, styleOf } from './layers.ts';
import { lengthsIn } from './lengths.ts';
import { findingNumbers, marksOf } from './marks.ts';
import { down, moved, untouched, up } from './paint/gestures.ts';
import { inDrawing, tidy, turns, typedLength, withTurn } from './panel/override-keys.ts';
import { blockNear, cutStretches, indexOfMoves, movesOfBlock } from './replayed.ts';
import { decimalsAt, measured, scaleBar } from './scale-bar.ts';
import { taken } from './tool.ts';

const WORDS = wordsFor(HOUSE).picture;

describe('the scale bar', () => {
  it('is the longest round length that has room', () => {
    expect(scaleBar(3.2, 'mm', 160)).toEqual({ length: 50, unit: 'mm', pixels: 160 });
    expect(scaleBar(3.1, 'mm', 150)).toEqual({ length: 20, unit: 'mm', pixels: 62 });
    const inch = scaleBar(4, 'inch', 160);
    expect([inch.length, inch.unit]).toEqual([1, 'inch']);
    expect(inch.pixels).toBeCloseTo(101.6, 9);
  });

  it('measures by legs and distance', () => {
    expect(measured({ x: 1, y: 1 }, { x: 4, y: -3 })).toEqual({ dx: 3, dy: -4, distance: 5 });
  });

  it('says coordinates as finely as a pixel shows', () => {
    expect([decimalsAt(1, 'mm'), decimalsAt(3, 'mm'), decimalsAt(11, 'mm'), decimalsAt(1e6, 'mm'), decimalsAt(1, 'inch')]).toEqual([
      0, 1, 2, 4, 2,
    ]);
  });
});

describe('lengths of the picture', () => {
  it('are printed in the unit and with the mark of the user', () => {
    expect(lengthsIn('mm', 'en').full(12.5)).toBe('12.5\u00a0mm');
    expect(lengthsIn('mm', 'de').full(12.5)).toBe('12,5\u00a0mm');
    expect(lengthsIn('inch', 'en').full(25.4 / 8)).toBe('0.125\u00a0in');
    expect(lengthsIn('mm', 'en').bare(-0.00001, 2)).toBe('0.00');
    expect(lengthsIn('mm', 'en').signed(-0.000148)).toBe('−0.148\u00a0µm');
    expect(lengthsIn('inch', 'en').signed(0.0254)).toBe('+1000\u00a0µin');
  });

  it('are typed back as they are printed, in any language', () => {
    for (const locale of ['en', 'de', 'fr'])
      for (const unit of ['mm', 'inch'] as const)
        for (const mm of [1.234, -20, 0.0125, 1234.5678, 25.4]) {
          const lengths = lengthsIn(unit, locale);
          const read = typedLength(lengths.typed(mm), lengths, WORDS.typed);
          expect(read.kind === 'length' && Math.abs(read.mm - mm) < 2e-4).toBe(true);
        }
  });

  it('are refused where they say two things or none', () => {
    const lengths = lengthsIn('mm', 'en');
    expect(typedLength('1,250', lengths, WORDS.typed).kind).toBe('wrong');
    expect(typedLength('1,250', lengthsIn('mm', 'de'), WORDS.typed)).toEqual({ kind: 'length', mm: 1.25 });
    expect(typedLength('5 mil', lengthsIn('mm', 'de'), WORDS.typed).kind).toBe('wrong');
    expect(typedLength('abc', lengths, WORDS.typed).kind).toBe('wrong');
    expect(typedLength('1.250', lengthsIn('mm', 'de'), WORDS.typed).kind).toBe('wrong');
    expect(typedLength('-3', lengths, WORDS.typed, 'positive').kind).toBe('wrong');
    expect(typedLength('0', lengths, WORDS.typed, 'positive').kind).toBe('wrong');
    expect(typedLength('0', lengths, WORDS.typed, 'not negative')).toEqual({ kind: 'length', mm: 0 });
    expect(typedLength('-1', lengths, WORDS.typed, 'not negative').kind).toBe('wrong');
    expect(typedLength('1/16 in', lengths, WORDS.typed, 'positive')).toEqual({ kind: 'length', mm: 1.5875 });
  });
});

const profile = (deviation: readonly number[]): DeviationView => {
  const n = deviation.length;
  const angle = (i: number): number => (2 * Math.PI * i) / n;
  return {
    loop: 'L1',
    share: Float64Array.from({ length: n }, (_, i) => i / n),
    x: Float64Array.from({ length: n }, (_, i) => 10 * Math.cos(angle(i))),
    y: Float64Array.from({ length: n }, (_, i) => 10 * Math.sin(angle(i))),
    deviation: Float64Array.from(deviation),
  };
};

describe('the deviation in the picture', () => {
  it('is magnified by a round factor until the tolerance stands off enough', () => {
    const scale = deviationScale([profile([0.004, -0.009, 0])], 0.008, 4, 16);
    expect(scale).toEqual({ factor: 500, span: 0.008, most: 0.009, left: 0.004, deep: 0.009 });
  });

  it('is measured by itself where it is far better than what is allowed', () => {
    expect(deviationScale([profile([0.0002, -0.0001])], 0.008, 4, 16)?.span).toBe(0.0002);
    expect(deviationScale([profile([0, 0])], 0.008, 4, 16)).toBeUndefined();
    expect(deviationScale([], 0.008, 4, 16)).toBeUndefined();
  });

  it('falls into the step whose numbers the legend gives', () => {
    const rows = stepRows({ span: 8, left: 20, deep: 5 });
    expect(rows.map((r) => [r.step, r.from, r.to])).toEqual([
      [3, 8, 20],
      [2, 4, 8],
      [1, 2, 4],
      [0, -2, 2],
      [-1, -4, -2],
      [-2, -8, -4],
    ]);
    for (const { step, from, to } of rows) expect(stepOf((from + to) / 2, 8)).toBe(step);
  });

  it('stands towards the side that was cut away', () => {
    const ring = profile(Array.from({ length: 40 }, () => 0));
    const first = (kept: 'die' | 'punch') => there(towardsCut(ring, kept, true)[0]).out.x;
    expect([first('die'), first('punch')].map(Math.round)).toEqual([-1, 1]);
  });

  it('names the most that is left and the deepest cut', () => {
    expect(extremes(profile([0, 3, -2, 1])).map((e) => [e.index, e.deviation])).toEqual([
      [1, 3],
      [2, -2],
    ]);
    expect(extremes(profile([]))).toEqual([]);
  });
});

describe('labels of the picture', () => {
  const label = (key: string, x: number, needed = false) => ({ key, at: { x, y: 0 }, width: 20, height: 14, away: 6, needed });

  it('never cover each other, and are left out where there is no room', () => {
    const placed = placedLabels(Array.from({ length: 60 }, (_, i) => label(`${i}`, i)));
    expect(placed.length).toBeGreaterThan(3);
    expect(placed.length).toBeLessThan(60);
    for (const [i, a] of placed.entries())
      for (const b of placed.slice(i + 1)) {
        const apart = a.box.maxX <= b.box.minX || b.box.maxX <= a.box.minX || a.box.maxY <= b.box.minY || b.box.maxY <= a.box.minY;
        expect(apart).toBe(true);
      }
  });

  it('stand without room where they are needed', () => {
    expect(placedLabels(Array.from({ length: 60 }, (_, i) => label(`${i}`, i, true)))).toHaveLength(60);
  });
});

const finding = (id: string, chapter: FindingView['chapter'], severity: FindingView['severity'], placed = true): FindingView => ({
  id,
  chapter,
  severity,
  code: 'x',
  sentence: id,
  ...(placed ? { at: { x: 1, y: 2, reach: 3 } } : {}),
});

describe('marks of findings', () => {
  const findings = [
    finding('f1', 'way', 'note', false),
    finding('f2', 'drawing', 'warning'),
    finding('f3', 'way', 'note'),
    finding('f4', 'way', 'refusal'),
  ];

  it('have one number through the whole sheet', () => {
    expect([...findingNumbers(findings)]).toEqual([
      ['f2', 1],
      ['f3', 2],
      ['f4', 3],
    ]);
  });

  it('show in their chapter, and everywhere when they refuse or are pointed at', () => {
    const ids = (chapter: FindingView['chapter'], pointed?: string) => marksOf(findings, chapter, pointed).map((m) => [m.id, m.number]);
    expect(ids('drawing')).toEqual([
      ['f2', 1],
      ['f4', 3],
    ]);
    expect(ids('drawing', 'f3')).toHaveLength(3);
    expect(ids('price', 'f1')).toEqual([['f4', 3]]);
  });
});

describe('layers of a chapter', () => {
  const layers = [
    { role: 'pass', pass: 2, chains: [] },
    { role: 'pass', pass: 1, chains: [] },
    { role: 'drawing', chains: [] },
    { role: 'metal left', chains: [] },
    { role: 'block', chains: [] },
  ] as const;

  it('lie upon each other from block to passes, the first pass over the later', () => {
    expect(layersOf(layers, 'way').map((l) => `${l.role}${'pass' in l ? l.pass : ''}`)).toEqual(['block', 'drawing', 'pass2', 'pass1']);
    expect(layersOf(layers, 'proof').map((l) => l.role)).toEqual(['block', 'metal left']);
  });

  it('are told in the legend in the order of cutting, no two passes with one dash', () => {
    expect(legendOf(layers, 'passes').map((r) => r.pass ?? r.role)).toEqual(['block', 'drawing', 1, 2]);
    const dashes = [1, 2, 3, 4, 5].map((pass) => styleOf({ role: 'pass', pass }).dash.join(' '));
    expect(new Set(dashes).size).toBe(5);
    expect(styleOf({ role: 'pass', pass: 9 })).toEqual(styleOf({ role: 'pass', pass: 5 }));
  });

  it('keep every segment when they are bundled', () => {
    const long = polygonView(
      Array.from({ length: 2500 }, (_, i) => ({ x: Math.cos(i), y: i })),
      true,
      'L1',
    );
    const [block] = layered([{ role: 'block', chains: [long, circleView(0, 0, 4), circleView(9, 9, 4)] }]);
    const { bundles, filled } = there(block);
    const held = bundles.flatMap((b) => b.stretches).reduce((n, s) => n + s.to - s.from, 0);
    expect(held).toBe(2502);
    expect(filled).toHaveLength(3);
    expect(bundles.at(-1)?.longest).toBeCloseTo(8 * Math.PI, 9);
  });

  it('take their colours from the style sheet, and from ourselves where it has none', () => {
    const colours = coloursFrom((variable) => (variable === '--ink' ? ' #123456 ' : ''), true);
    expect([colours.ink, colours.paper]).toEqual(['#123456', DARK.paper]);
    expect(coloursFrom(() => '', false)).toEqual(LIGHT);
    expect([mixed('#000000', '#ffffff', 0), mixed('#000000', '#ff8000', 0.5)]).toEqual(['#000000', '#804000']);
  });
});

const recorder = () => {
  const strokes: string[] = [];
  const ends: [number, number][] = [];
  const pen: StrokePen = {
    moveTo: (x, y) => void strokes.push(`M${x} ${y}`),
    lineTo: (x, y) => {
      strokes.push(`L${x} ${y}`);
      ends.push([x, y]);
    },
    arc: (x, y, r, _from, to) => {
      strokes.push('A');
      ends.push([x + r * Math.cos(to), y + r * Math.sin(to)]);
    },
    closePath: () => void strokes.push('Z'),
  };
  return { pen, strokes, ends };
};

describe('tracing chains', () => {
  it('draws what can be seen and passes over what is smaller', () => {
    const fine = polygonView(
      Array.from({ length: 1001 }, (_, i) => ({ x: i / 100, y: 0 })),
      false,
    );
    const { pen, strokes } = recorder();
    traceWhole(pen, { numbers: fine.segments, from: 0, to: 1000, closed: false }, 0.5);
    expect(strokes.length).toBeLessThan(25);
    expect(strokes.at(-1)).toBe('L10 0');
  });

  it('draws a small circle as something and a large one as an arc', () => {
    const { pen, strokes } = recorder();
    traceWhole(pen, { numbers: circleView(0, 0, 5).segments, from: 0, to: 1, closed: true }, 0.1);
    expect(strokes).toEqual(['M5 0', 'A', 'Z']);
  });

  it('draws only the pieces in sight, and all of those', () => {
    const { pen, ends } = recorder();
    traceWithin(
      pen,
      { numbers: circleView(0, 0, 1000).segments, from: 0, to: 1, closed: true },
      { minX: 990, minY: -10, maxX: 1010, maxY: 10 },
      20,
    );
    expect(ends.length).toBeGreaterThan(1);
    expect(ends.length).toBeLessThan(8);
    for (const [x, y] of ends) expect(Math.abs(Math.hypot(x, y) - 1000)).toBeLessThan(1e-6);
    expect(Math.max(...ends.map(([, y]) => y))).toBeGreaterThan(9);
  });
});

describe('the replay in the picture', () => {
  const moves = {
    block: Uint32Array.of(4, 5, 5, 7),
    segments: polygonView(
      [
        { x: 0, y: 0 },
        { x: 10, y: 0 },
        { x: 10, y: 10 },
        { x: 0, y: 10 },
        { x: 0, y: 20 },
      ],
      false,
    ).segments,
    cutting: Uint8Array.of(1, 1, 0, 1),
    begins: Float64Array.of(0, 1, 2, 3),
    pass: Uint8Array.of(1, 1, 0, 1),
  };

  it('cuts as far as it has come and leaves travels out', () => {
    expect(cutStretches(moves, 0, 4).map((s) => [s.from, s.to])).toEqual([
      [0, 2],
      [3, 4],
    ]);
    expect(cutStretches(moves, 0, 1).map((s) => [s.from, s.to])).toEqual([[0, 1]]);
    expect(cutStretches(moves, 0, 0)).toEqual([]);
    expect(movesOfBlock(moves, 5).map((s) => s.from)).toEqual([1, 2]);
  });

  it('finds the block of a place, a cut before a travel', () => {
    const index = indexOfMoves(moves);
    expect(blockNear(moves, index, { x: 5, y: 0.4 }, 1)).toBe(4);
    expect(blockNear(moves, index, { x: 0.1, y: 10.2 }, 1)).toBe(7);
    expect(blockNear(moves, index, { x: 50, y: 50 }, 1)).toBeUndefined();
    expect(blockNear(moves, indexOfMoves({ ...moves, segments: new Float64Array() }), { x: 0, y: 0 }, 1)).toBeUndefined();
  });
});

describe('tools of the picture', () => {
  const at = (x: number, y: number) => ({ kind: 'free', at: { x, y } }) as const;

  it('measure from one place to another and then anew', () => {
    const first = taken({ kind: 'measure' }, at(1, 1)).tool;
    const second = taken(first, at(4, 5)).tool;
    expect(second).toEqual({ kind: 'measure', from: at(1, 1), to: at(4, 5) });
    expect(taken(second, at(9, 9)).tool).toEqual({ kind: 'measure', from: at(9, 9) });
  });

  it('pick a place at once, and a rectangle by any two opposite corners', () => {
    expect(taken({ kind: 'pick', wanted: 'place' }, at(3, 4))).toEqual({
      tool: { kind: 'none' },
      picked: { kind: 'place', at: { x: 3, y: 4 } },
    });
    const first = taken({ kind: 'pick', wanted: 'rectangle' }, at(9, 1)).tool;
    expect(taken(first, at(9, 8)).picked).toBeUndefined();
    expect(taken(first, at(2, 8)).picked).toEqual({ kind: 'rectangle', low: { x: 2, y: 1 }, high: { x: 9, y: 8 } });
  });
});

describe('fingers on the picture', () => {
  it('pan once they have moved further than a tap, and lose nothing of the way', () => {
    const start = down(untouched, 1, { x: 0, y: 0 });
    const still = moved(start, 1, { x: 2, y: 2 });
    expect(still.gesture.kind).toBe('none');
    expect(moved(still.touching, 1, { x: 12, y: 2 }).gesture).toEqual({ kind: 'pan', dx: 12, dy: 2 });
    expect(up(still.touching, 1, { x: 2, y: 2 }).gesture).toEqual({ kind: 'tap', at: { x: 2, y: 2 } });
  });

  it('pinch with two, and a finger left over taps nothing', () => {
    const two = down(down(untouched, 1, { x: 0, y: 0 }), 2, { x: 100, y: 0 });
    const next = moved(two, 2, { x: 200, y: 0 });
    expect(next.gesture).toEqual({
      kind: 'pinch',
      before: [
        { x: 0, y: 0 },
        { x: 100, y: 0 },
      ],
      after: [
        { x: 0, y: 0 },
        { x: 200, y: 0 },
      ],
    });
    const one = up(next.touching, 2, { x: 200, y: 0 });
    expect(one.gesture.kind).toBe('none');
    expect(up(one.touching, 1, { x: 0, y: 0 })).toEqual({ touching: untouched, gesture: { kind: 'none' } });
    expect(down(two, 3, { x: 5, y: 5 })).toBe(two);
  });
});

describe('keys set by hand from the picture', () => {
  const contour = (id: string, number: number, area = 9): ContourView => ({ id, number, kept: 'die', area, perimeter: 1, overrides: [] });

  it('give the whole order with one contour moved', () => {
    const order = turns([contour('L3', 2), contour('L1', 1), contour('L9', 0), contour('O1', 1, 0), contour('L7', 3)]);
    expect(order).toEqual(['L1', 'L3', 'L7']);
    expect(withTurn(order, 'L7', -1)).toEqual(['L1', 'L7', 'L3']);
    expect(withTurn(order, 'L7', 1)).toEqual(order);
    expect(withTurn(order, 'L2', 1)).toEqual(order);
  });

  it('give places in units of the drawing without the noise of arithmetic', () => {
    expect(inDrawing({ x: 25.4 * 0.3, y: -0 }, 25.4)).toEqual({ x: 0.3, y: 0 });
    expect(tidy(0.1 + 0.2)).toBe(0.3);
  });
});

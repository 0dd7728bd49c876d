/** SVG shapes come out in mm, with y up, as the standard draws them. */

import { describe, expect, it } from 'vitest';
import { svgFixture } from '../../../test/drawing-fixtures.ts';
import { there } from '../../../test/there.ts';
import { usualLimits } from '../budget.ts';
import type { Curve, DrawnFile, EllipticArc } from '../curve/curve.ts';
import { splineCurve } from '../curve/spline.ts';
import { readSvg } from './read-svg.ts';

/** A page of 100 mm by 50 mm whose user unit is 1 mm. */
const page = (inside: string): DrawnFile =>
  readSvg(`<svg xmlns="http://www.w3.org/2000/svg" width="100mm" height="50mm" viewBox="0 0 100 50">${inside}</svg>`);
const codesOf = (file: DrawnFile): readonly string[] => file.findings.map((f) => f.code);

/** Start and end of a curve, rounded to 1e-9 mm. */
const ends = (curve: Curve): string => {
  const round = (n: number): number => Math.round(n * 1e9) / 1e9 + 0;
  const show = (p: { readonly x: number; readonly y: number }): string => `${round(p.x)},${round(p.y)}`;
  if (curve.kind === 'line' || curve.kind === 'arc') return `${curve.kind} ${show(curve.from)} ${show(curve.to)}`;
  if (curve.kind === 'spline') return `spline${curve.degree} ${show(there(curve.points[0]))} ${show(there(curve.points.at(-1)))}`;
  return `ellipse ${show(curve.centre)}`;
};
const drawn = (inside: string): readonly string[] => page(inside).curves.map((c) => ends(c.curve));

describe('basic shapes', () => {
  it.each([
    ['a line', '<line x1="1" y1="2" x2="3" y2="4"/>', ['line 1,48 3,46']],
    ['an open polyline', '<polyline points="0,0 10 0 10-5"/>', ['line 0,50 10,50', 'line 10,50 10,55']],
    ['a polygon', '<polygon points="0 0, 10 0, 0 10"/>', ['line 0,50 10,50', 'line 10,50 0,40', 'line 0,40 0,50']],
    ['a rectangle', '<rect x="1" y="1" width="4" height="2"/>', ['line 1,49 5,49', 'line 5,49 5,47', 'line 5,47 1,47', 'line 1,47 1,49']],
    ['a circle', '<circle cx="5" cy="6" r="2"/>', ['arc 7,44 7,44']],
    ['an ellipse', '<ellipse cx="5" cy="6" rx="2" ry="1"/>', ['ellipse 5,44']],
    ['an ellipse with one radius left to the other', '<ellipse cx="5" cy="6" rx="2"/>', ['arc 7,44 7,44']],
    ['real lengths in other units', '<line x1="1in" y1="0" x2="96" y2="0"/>', ['line 96,50 96,50']],
    ['percentages of the page', '<line x1="50%" y1="10%" x2="100%" y2="0"/>', ['line 50,45 100,50']],
  ])('draws %s', (_, inside, expected) => {
    expect(drawn(inside)).toEqual(expected);
  });

  it('runs a rounded rectangle in one go: four lines, four quarter turns', () => {
    const { curves } = page('<rect x="0" y="0" width="10" height="6" rx="2"/>');
    expect(curves.map((c) => c.curve.kind)).toEqual(['line', 'arc', 'line', 'arc', 'line', 'arc', 'line', 'arc']);
    curves.forEach(({ curve }, i) => {
      const next = there(curves[(i + 1) % 8]).curve;
      if ((curve.kind !== 'line' && curve.kind !== 'arc') || (next.kind !== 'line' && next.kind !== 'arc')) throw new Error('no ends');
      expect(curve.to).toEqual(next.from);
      // With y turned up the outline runs clockwise, as it was drawn to the eye.
      if (curve.kind === 'arc') expect(curve.sweep).toBeCloseTo(-Math.PI / 2, 12);
    });
    expect(new Set(curves.map((c) => c.entity)).size).toBe(1);
  });

  it('takes no corner for more than half a side', () => {
    const { curves } = page('<rect width="10" height="4" rx="50" ry="2"/>');
    expect(curves.map((c) => c.curve.kind)).toEqual(['ellipse', 'ellipse', 'ellipse', 'ellipse']);
    expect(Math.hypot((there(curves[0]).curve as EllipticArc).major.x, 0)).toBeCloseTo(5, 12);
  });

  it.each([
    ['a negative radius', '<circle r="-1"/>', 'entity-impossible'],
    ['no width', '<rect height="4"/>', 'entity-impossible'],
    ['a length in a unit of fonts', '<circle r="2em"/>', 'length-unreadable'],
    ['a number with a comma', '<circle r="1,5"/>', 'length-unreadable'],
    ['points that are no pairs', '<polygon points="0 0 1 0 1"/>', 'length-unreadable'],
    ['points that are no numbers', '<polygon points="0 0 1 x"/>', 'length-unreadable'],
    ['infinity', '<circle r="1e999"/>', 'length-unreadable'],
    ['a reach beyond all measure', '<circle r="1e200"/>', 'entity-impossible'],
  ])('leaves out %s and says where', (_, inside, code) => {
    const file = page(`\n${inside}`);
    expect(file.curves).toEqual([]);
    expect(file.findings).toMatchObject([{ code, place: { kind: 'line', line: 2 } }]);
  });
});

describe('paths', () => {
  it.each([
    [
      'lines of all kinds',
      'M10 10 h5 v5 H0 V0 l1 1 L2 2',
      ['10,40 15,40', '15,40 15,35', '15,35 0,35', '0,35 0,50', '0,50 1,49', '1,49 2,48'].map((e) => `line ${e}`),
    ],
    ['more than one run', 'm1 1 2 0 0 2z m10 0 1 0', ['line 1,49 3,49', 'line 3,49 3,47', 'line 3,47 1,49', 'line 11,49 12,49']],
    [
      'a run that goes on where the last one closed',
      'M1 1h2v2zl-1 0',
      ['line 1,49 3,49', 'line 3,49 3,47', 'line 3,47 1,49', 'line 1,49 0,49'],
    ],
    ['closing where it is closed already', 'M0 0h1v1L0 0z', ['line 0,50 1,50', 'line 1,50 1,49', 'line 1,49 0,50']],
    [
      'curves',
      'M0 0c0 1 1 2 2 2s2 0 2-2q1-1 2 0t2 0',
      ['spline3 0,50 2,48', 'spline3 2,48 4,50', 'spline2 4,50 6,50', 'spline2 6,50 8,50'],
    ],
    ['an arc with flags run together', 'M10 10a5 5 0 0110 0', ['arc 10,40 20,40']],
    ['an arc without radius as a line', 'M10 10A0 5 0 0 1 20 10', ['line 10,40 20,40']],
    ['no arc where it ends at its start', 'M10 10a5 5 0 0 1 0 0h1', ['line 10,40 11,40']],
  ])('draw %s', (_, data, expected) => {
    expect(drawn(`<path d="${data}"/>`)).toEqual(expected);
  });

  it('mirror the control point of smooth curves, and only after one of their kind', () => {
    const [, second, third] = page('<path d="M0 0C0 1 1 2 2 2S3 3 4 4T5 5"/>').curves.map((c) => c.curve);
    expect(second).toMatchObject({ points: [{ x: 2 }, { x: 3 }, { x: 3 }, { x: 4 }] });
    if (third?.kind !== 'spline') throw new Error(`the third is ${third?.kind}`);
    expect(ends(third)).toBe('spline2 4,46 5,45');
    expect(there(third.points[1]).x).toBeCloseTo(4, 12);
  });

  it.each([
    ['large and growing', '1 1', 270, -1],
    ['large and falling', '1 0', 270, 1],
    ['small and growing', '0 1', 90, -1],
    ['small and falling', '0 0', 90, 1],
  ])('turn an arc that is %s the right way round', (_, flags, degrees, way) => {
    const [arc] = page(`<path d="M10 0A10 10 0 ${flags} 0 10"/>`).curves.map((c) => c.curve);
    if (arc?.kind !== 'arc') throw new Error(`an arc came out as ${arc?.kind}`);
    expect(arc.sweep).toBeCloseTo((way * degrees * Math.PI) / 180, 12);
    expect(arc.radius).toBeCloseTo(10, 12);
  });

  it('make half axes longer that are too short to reach', () => {
    expect(there(page('<path d="M0 0A1 1 0 0 1 10 0"/>').curves[0]).curve).toMatchObject({ kind: 'arc', radius: 5 });
  });

  it('lay turned ellipses through both of their ends', () => {
    const ellipse = there(page('<path d="M10 10A6 3 30 0 1 17 14"/>').curves[0]).curve as EllipticArc;
    const at = (t: number): readonly number[] => [
      ellipse.centre.x + Math.cos(t) * ellipse.major.x + Math.sin(t) * ellipse.minor.x,
      ellipse.centre.y + Math.cos(t) * ellipse.major.y + Math.sin(t) * ellipse.minor.y,
    ];
    [...at(ellipse.start), ...at(ellipse.end)].forEach((value, i) => void expect(value).toBeCloseTo(there([10, 40, 17, 36][i]), 10));
    expect(Math.hypot(ellipse.major.x, ellipse.major.y)).toBeCloseTo(6, 12);
  });

  it.each(['M0 0L1', 'L1 1', 'M0 0Lx 1', 'hello', 'M0 0A1 1 0 2 1 5 5'])(
    'are left out whole when they break off or make no sense: %s',
    (data) => {
      const file = page(`<path d="${data}"/><circle r="1"/>`);
      expect(file.curves.length).toBe(1);
      expect(codesOf(file)).toEqual(['path-unreadable']);
    },
  );

  it('draw Bézier curves through the middle their control points give', () => {
    const curve = there(page('<path d="M0 0C0 4 8 4 8 0"/>').curves[0]).curve;
    if (curve.kind !== 'spline') throw new Error('no spline');
    expect(splineCurve(curve).pointAt(0.5)).toEqual({ x: 4, y: 47 });
  });
});

describe('transforms', () => {
  it.each([
    ['translate(10)', 'line 11,50 12,50'],
    ['translate(10,20)', 'line 11,30 12,30'],
    ['scale(2)', 'line 2,50 4,50'],
    ['scale(2 3) translate(1 1)', 'line 4,47 6,47'],
    ['rotate(90)', 'line 0,49 0,48'],
    ['rotate(90 1 0)', 'line 1,50 1,49'],
    ['rotate(180,2,1)', 'line 3,48 2,48'],
    ['skewY(45)', 'line 1,49 2,48'],
    ['translate(0 1)skewX(45)', 'line 1,49 2,49'],
    ['matrix(0 1 -1 0 5 6)', 'line 5,43 5,42'],
    ['matrix(1,0,0,1,-1,0) , scale(-1 1)', 'line -2,50 -3,50'],
    ['none', 'line 1,50 2,50'],
  ])('apply %s', (transform, expected) => {
    expect(drawn(`<g transform="${transform}"><line x1="1" x2="2"/></g>`)).toEqual([expected]);
  });

  it('compose from the outside in', () => {
    expect(drawn('<g transform="translate(10 0)"><g transform="scale(2)"><line transform="rotate(90)" x1="1" x2="2"/></g></g>')).toEqual([
      'line 10,48 10,46',
    ]);
  });

  it('keep circles round under a mirror and make ellipses under a stretch', () => {
    const file = page('<circle r="1" transform="scale(-2 2)"/><circle r="1" transform="scale(2 1)"/><circle r="1" transform="skewX(30)"/>');
    expect(file.curves.map((c) => c.curve.kind)).toEqual(['arc', 'ellipse', 'ellipse']);
  });

  it.each(['scale(x)', 'turn(3)', 'rotate(1 2)', 'translate(1', 'scale(1e999)', 'matrix(1 2 3)'])(
    'leave out what they cannot be read for: %s',
    (transform) => {
      const file = page(`<g transform="${transform}"><circle r="1"/></g>`);
      expect(file.curves).toEqual([]);
      expect(codesOf(file)).toEqual(['transform-unreadable']);
    },
  );

  it('leave out a circle that is pressed flat', () => {
    expect(codesOf(page('<circle r="1" transform="scale(1 0)"/>'))).toEqual(['entity-impossible']);
  });
});

describe('the page', () => {
  const sized = (attributes: string): DrawnFile =>
    readSvg(`<svg xmlns="http://www.w3.org/2000/svg" ${attributes}><line x2="10" y2="0"/></svg>`);
  const length = (file: DrawnFile): number => {
    const { curve } = there(file.curves[0]);
    if (curve.kind !== 'line') throw new Error('no line');
    return Math.hypot(curve.to.x - curve.from.x, curve.to.y - curve.from.y);
  };

  it.each([
    ['width="100mm" height="50mm" viewBox="0 0 100 50"', 10],
    ['width="10cm" viewBox="0 0 100 50"', 10],
    ['height="2in" viewBox="0 0 100 50.8"', 10],
    ['width="72pt" viewBox="0 0 254 254"', 1],
    ['width="200mm" height="50mm" viewBox="0 0 100 50"', 10],
    ['width="200mm" height="50mm" viewBox="0 0 100 50" preserveAspectRatio="xMinYMin slice"', 20],
    ['width="1in" height="1in"', 25.4 / 9.6],
  ])('with %s has a scale of its own', (attributes, expected) => {
    const file = sized(attributes);
    expect(length(file)).toBeCloseTo(expected, 12);
    expect(file.units).toEqual({ name: 'mm', millimetres: 1, basis: 'header' });
    expect(file.findings).toEqual([]);
  });

  it.each([
    '',
    'width="100" height="50"',
    'width="100px" height="50px"',
    'width="100%" height="100%" viewBox="0 0 300 300"',
    'viewBox="0 0 300 300"',
  ])('with "%s" is taken at 96 pixels to the inch, and doubted', (attributes) => {
    const file = sized(attributes);
    expect(length(file)).toBeCloseTo((10 * 25.4) / 96, 12);
    expect(file.units?.basis).toBe('assumed');
    expect(codesOf(file)).toEqual(['pixels-assumed']);
  });

  it('says that it is stretched unevenly', () => {
    expect(codesOf(sized('width="20mm" height="10mm" viewBox="0 0 10 10" preserveAspectRatio="none"'))).toEqual(['view-stretched']);
  });

  it.each(['viewBox="0 0 10"', 'viewBox="0 0 0 10"', 'width="-5mm"', 'width="five"'])(
    'is refused when its size makes no sense: %s',
    (attributes) => {
      expect(sized(attributes)).toMatchObject({ state: 'refused', findings: [{ code: 'length-unreadable' }] });
    },
  );

  it('sets a picture within a picture at its place and scale', () => {
    expect(drawn('<svg x="10" y="5" width="20" height="10" viewBox="0 0 10 5"><line x1="1" x2="2"/></svg>')).toEqual(['line 12,45 14,45']);
  });
});

describe('use, symbols and what is only defined', () => {
  it('draws a definition where it is used, before or after it is defined', () => {
    expect(drawn('<use href="#a" x="3" y="1"/><defs><line id="a" x1="1" x2="2"/></defs>')).toEqual(['line 4,49 5,49']);
    expect(drawn('<line id="a" x1="1" x2="2"/><use href="#a" transform="scale(2)" y="1"/>')).toEqual(['line 1,50 2,50', 'line 2,48 4,48']);
  });

  it('fits a symbol into the size it is used with', () => {
    const symbol = '<symbol id="s" viewBox="0 0 2 2"><line x1="0" y1="1" x2="2" y2="1"/></symbol>';
    expect(drawn(`${symbol}<use href="#s" x="10" y="10" width="4" height="4"/>`)).toEqual(['line 10,38 14,38']);
  });

  it.each(['defs', 'symbol', 'clipPath', 'mask', 'marker', 'pattern', 'sodipodi:namedview'])('draws nothing within %s', (name) => {
    expect(page(`<${name} xmlns:sodipodi="x"><circle r="1"/></${name}>`)).toMatchObject({ curves: [], findings: [] });
  });

  it.each([
    ['what is not there', '<use href="#none"/>', 'reference-missing'],
    ['what lies in another file', '<use href="other.svg#a"/>', 'reference-missing'],
    ['itself', '<g id="a"><use href="#a"/></g>', 'reference-to-itself'],
    ['itself by a detour', '<g id="a"><use href="#b"/></g><defs><g id="b"><use href="#a"/></g></defs>', 'reference-to-itself'],
  ])('says so where %s is used', (_, inside, code) => {
    const file = page(inside);
    expect(file.state).toBe('complete');
    expect(new Set(codesOf(file))).toEqual(new Set([code]));
  });

  it('refuses a bomb of uses by name', () => {
    const levels = Array.from({ length: 12 }, (_, i) => `<g id="l${i + 1}">${`<use href="#l${i}"/>`.repeat(10)}</g>`).join('');
    const bomb = `<defs><g id="l0"><line x2="1"/></g>${levels}</defs>`;
    const read = (id: string, limits: object): DrawnFile =>
      readSvg(`<svg xmlns="http://www.w3.org/2000/svg">${bomb}<use href="#${id}"/></svg>`, { ...usualLimits, ...limits });
    for (const [file, code] of [
      [read('l3', { entities: 500 }), 'too-many-entities'],
      [read('l12', {}), 'too-much-work'],
    ] as const) {
      expect(file).toMatchObject({ state: 'refused', curves: [] });
      expect(codesOf(file).at(-1)).toBe(code);
    }
  });
});

describe('layers and what is hidden', () => {
  it('tells hidden shapes apart', () => {
    const hide = [
      '<g display="none"><circle r="1" display="inline"/></g>',
      '<g visibility="hidden"><circle r="1"/><circle r="1" visibility="visible"/></g>',
    ];
    const file = page(`${hide.join('')}<circle r="1" style="fill:red; display : none"/><circle r="1" style="visibility:collapse"/>`);
    expect(file.curves.map((c) => c.hidden)).toEqual([true, true, false, true, true]);
  });

  it('names layers by the nearest group with a label, else with an id', () => {
    const label = 'xmlns:inkscape="x" inkscape:label="Cut"';
    const file = page(
      `<circle r="1"/><g id="a"><g><circle r="1"/></g></g><g id="b" ${label}><g id="c"><circle r="1"/></g></g><g id="d" display="none"><circle r="2"/></g>`,
    );
    expect(file.curves.map((c) => c.layer)).toEqual(['(no group)', 'a', 'Cut', 'd']);
    expect(file.layers).toEqual([
      { name: '(no group)', hidden: false, entities: 1 },
      { name: 'a', hidden: false, entities: 1 },
      { name: 'Cut', hidden: false, entities: 1 },
      { name: 'd', hidden: true, entities: 1 },
    ]);
  });

  it('counts texts and pictures, warns of shapes it does not know, and of styles and clips it does not apply', () => {
    const file = page(
      '<text>a<tspan>b</tspan></text><image/><blob/><style>circle{display:none}</style><circle r="1" clip-path="url(#c)"/>',
    );
    expect([...file.passedOver]).toEqual([
      ['text', 1],
      ['image', 1],
      ['blob', 1],
    ]);
    expect(new Set(codesOf(file))).toEqual(new Set(['style-sheet-ignored', 'clip-ignored', 'entities-passed-over', 'shapes-not-read']));
  });
});

describe('broken and hostile files', () => {
  const head = '<svg xmlns="http://www.w3.org/2000/svg" width="10mm" height="10mm" viewBox="0 0 10 10">';

  it.each([
    ['breaks off', `${head}<circle r="1"/><g><circle r="2"/>`, 2],
    ['breaks off in a path', `${head}<circle r="1"/><path d="M0 0L5`, 1],
    ['closes what it did not open', `${head}<circle r="1"/></g></svg>`, 1],
    ['names an unknown entity', `${head}<circle r="1"/>&bomb;</svg>`, 1],
    ['has two of one attribute', `${head}<circle r="1"/><circle r="1" r="2"/></svg>`, 1],
  ])('keeps what stands before the fault where it %s', (_, text, count) => {
    const file = readSvg(text);
    expect(file).toMatchObject({ state: 'incomplete', curves: { length: count } });
    expect(file.findings[0]).toMatchObject({ code: 'markup-broken', place: { kind: 'line', line: 1 } });
  });

  it.each([
    ['entities of its own', `<!DOCTYPE svg [<!ENTITY a "aaaa"><!ENTITY b "&a;&a;">]>${head}</svg>`, 'doctype-refused'],
    ['another root', '<html><svg/></html>', 'not-a-drawing'],
    ['nothing', '', 'not-a-drawing'],
    ['no markup', 'hello', 'not-a-drawing'],
    ['nesting without end', `${head}${'<g>'.repeat(50_000)}`, 'nested-too-deep'],
    ['too many bytes', head + ' '.repeat(2000), 'file-too-large'],
  ])('refuses %s by name', (_, text, code) => {
    const file = readSvg(text, { ...usualLimits, bytes: text.includes('  ') ? 1000 : usualLimits.bytes });
    expect(file).toMatchObject({ state: 'refused', curves: [] });
    expect(codesOf(file).at(-1)).toBe(code);
  });

  it('takes no longer for attributes without end than for their length', () => {
    const blanks = ' '.repeat(200_000);
    const long = [
      `<circle r="1${blanks}!"/>`,
      `<polygon points="0 0${blanks}!"/>`,
      `<g transform="scale(1${blanks}!)"/>`,
      `<g transform="${'a'.repeat(200_000)}"/>`,
      `<path d="M0 0${blanks}!"/>`,
      `<svg viewBox="0 0${blanks}1 !"/>`,
      `<g id="g" style="${'a:b;'.repeat(50_000)}"><line x2="1"/></g>${'<use href="#g"/>'.repeat(2000)}`,
    ];
    // With a pattern that takes the square of the length this is hours, and the test would not end.
    for (const inside of long) expect(page(inside).findings.length + page(inside).curves.length).toBeGreaterThan(0);
  });

  it('takes a plain DOCTYPE, a prefix for its own elements, and names like __proto__', () => {
    const doctype = '<!DOCTYPE svg PUBLIC "-//W3C//DTD SVG 1.1//EN" "http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd">';
    expect(readSvg(`${doctype}${head}<circle r="1"/></svg>`).state).toBe('complete');
    expect(readSvg('<svg:svg xmlns:svg="http://www.w3.org/2000/svg"><svg:circle r="1"/></svg:svg>').curves.length).toBe(1);
    const strange = page('<g id="__proto__"><circle r="1"/></g><use href="#constructor"/><__proto__/>');
    expect([strange.curves[0]?.layer, ...codesOf(strange)]).toEqual(['__proto__', 'reference-missing', 'shapes-not-read']);
  });

  it('reads bytes in the encoding they say', () => {
    const text = `<?xml version="1.0" encoding="ISO-8859-1"?>${head}<g id="Bügel"><circle r="1"/></g></svg>`;
    const latin = Uint8Array.from(text, (sign) => sign.charCodeAt(0));
    expect(readSvg(latin).curves[0]?.layer).toBe('Bügel');
    expect(readSvg(new TextEncoder().encode(text.replace('ISO-8859-1', 'UTF-8'))).curves[0]?.layer).toBe('Bügel');
    const wide = Uint8Array.from([0xff, 0xfe, ...[...text.slice(text.indexOf('<svg'))].flatMap((s) => [s.charCodeAt(0), 0])]);
    expect(readSvg(wide).curves[0]?.layer).toBe('Bügel');
  });

  it('reads the drawing of all kinds that the fuzz damages', () => {
    const file = readSvg(svgFixture);
    expect(file.state).toBe('complete');
    expect(file.curves.filter((c) => c.hidden).length).toBe(8);
    expect(codesOf(file)).toEqual(['entities-passed-over']);
  });
});

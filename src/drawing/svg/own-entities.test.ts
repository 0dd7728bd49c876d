/** Plain words that a document type defines are read; what comes from elsewhere or could grow is refused. */
import { describe, expect, it } from 'vitest';
import { sentenceOf } from '../../text/finding.fixture.ts';
import type { DrawnFile } from '../curve/curve.ts';
import { readSvg } from './read-svg.ts';

const NAMESPACE = 'http://www.w3.org/2000/svg';
const file = (subset: string, ns = '&ns;', rect = '<rect x="10" y="10" width="50" height="30"/>'): DrawnFile =>
  readSvg(
    `<?xml version="1.0"?><!DOCTYPE svg [${subset}]><svg xmlns="${ns}" width="100mm" height="100mm" viewBox="0 0 100 100">${rect}</svg>`,
  );

describe('entities of plain text', () => {
  it.each([
    ['double quotes', `<!ENTITY ns "${NAMESPACE}">`],
    ['single quotes and a comment', `\n\t<!-- names --><!ENTITY ns '${NAMESPACE}' >\n`],
    ['declarations beside them', `<!ELEMENT svg ANY><!ATTLIST svg xmlns:a CDATA #FIXED "http://a"><!ENTITY ns "${NAMESPACE}">`],
    ['a second definition, which does not count', `<!ENTITY ns "${NAMESPACE}"><!ENTITY ns "other">`],
  ])('are expanded: %s', (_, subset) => {
    const { state, curves, findings } = file(subset);
    expect([state, curves.length, findings.length]).toEqual(['complete', 4, 0]);
  });

  it('may stand for a length', () => {
    const { curves } = file('<!ENTITY w "50"><!ENTITY ns "x">', NAMESPACE, '<rect width="&w;" height="30"/>');
    expect(curves[0]?.curve).toMatchObject({ kind: 'line' });
    expect(curves.length).toBe(4);
  });
});

describe('what is no plain text', () => {
  it.each([
    ['another file', '<!ENTITY ns SYSTEM "file:///etc/hosts">', 'from another file'],
    ['another file by a public name', '<!ENTITY ns PUBLIC "-//x" "http://example.org/x">', 'from another file'],
    ['a parameter of another file', '<!ENTITY % p SYSTEM "http://example.org/x"> %p;', 'from another file'],
    ['an entity in an entity', '<!ENTITY a "aaaa"><!ENTITY ns "&a;&a;">', 'that hold others'],
    ['a sign by its number', '<!ENTITY ns "&#60;rect/>">', 'that hold others'],
    ['markup', '<!ENTITY ns \'<rect width="1" height="1"/>\'>', 'or markup'],
    ['a parameter entity', '<!ENTITY % p "x"><!ENTITY ns "x">', 'something other than'],
    ['default values', '<!ATTLIST rect width CDATA "50"><!ENTITY ns "x">', 'something other than'],
    ['a long value', `<!ENTITY ns "${'a'.repeat(5000)}">`, 'more text'],
  ])('is refused: %s', (_, subset, sentence) => {
    const { state, findings } = file(subset);
    expect([state, findings[0]?.code]).toEqual(['refused', 'doctype-refused']);
    expect(sentenceOf(findings[0])).toContain(sentence);
  });

  it('is refused by what its uses come to', () => {
    const uses = '<g id="&a;&a;&a;&a;"/>'.repeat(80);
    const { state, findings } = file(`<!ENTITY a "${'b'.repeat(4000)}">`, NAMESPACE, uses);
    expect([state, findings[0]?.code]).toEqual(['refused', 'doctype-refused']);
  });

  it('leaves the five of the standard as they are', () => {
    const { state, layers } = file('<!ENTITY amp "x">', NAMESPACE, '<g id="a&amp;b"><rect width="5" height="3"/></g>');
    expect([state, layers[0]?.name]).toEqual(['complete', 'a&b']);
  });
});

/** A quotation and a reply say what the customer gets or what prevents it, and nothing of how the shop works. */
import { describe, expect, it } from 'vitest';
import { there } from '../../test/there.ts';
import { modulesAt, sourceFiles } from '../../tools/source-files.ts';
import { templatesIn } from '../../tools/templates.ts';
import { jobRun } from '../cli/inputs.ts';
import { factsOf } from '../job/answered.fixture.ts';
import { cheaperWays } from '../job/what-if/cheaper.ts';
import type { JobFacts } from '../result/facts.ts';
import type { Catalogue, Finding } from '../text/finding.ts';
import { contour, mm } from '../text/part.ts';
import { printPlain } from '../text/print/print.ts';
import { HOUSE } from '../text/reader.ts';
import { say } from '../text/say.ts';
import type { Paper } from './paper.ts';
import { printedPaper } from './paper-for-reader.ts';
import { paperText } from './paper-text.fixture.ts';
import { reasonsForCustomer } from './part/customer-reasons.ts';
import { quotation } from './sheet/quotation.ts';

type PictureBlock = Extract<Paper['blocks'][number], { readonly kind: 'picture' }>;

const OWN_BUSINESS = /\b(wires?|pass(es)?|skims?|hours?|nozzles?|unattended|stack(ed)?|tabs?|lead-ins?|program|machine|job|kept|set)\b/i;

const paperOf = (facts: JobFacts, cheaper = {}) => printedPaper(quotation(facts, { until: '2026-12-25', cheaper: [], ...cheaper }), HOUSE);
const factsOfExample = (path: string) => factsOf(jobRun(`examples/${path}.job.json`, {}, '2026-11-25'));
const pictureIn = (facts: JobFacts): PictureBlock['picture'] =>
  there(paperOf(facts).blocks.find((b): b is PictureBlock => b.kind === 'picture')).picture;

describe('a reply that the part cannot be made', () => {
  const facts = factsOfExample('form-insert/form-insert');

  it('says where and what would do, and nothing of wire, passes or hours', () => {
    const text = paperText(paperOf(facts)).replace(/\s+/g, ' ');
    expect(text).toContain(
      'L1: an inside corner is sharper than we can make (at X 24, Y 9, L1). An inside corner radius of 0.058 mm would do.',
    );
    expect(OWN_BUSINESS.exec(text)?.[0]).toBeUndefined();
    expect(text).not.toContain('Prices are estimates');
  });

  it('names in the picture the contour that it speaks of', () => {
    expect(pictureIn(facts).labels.map((l) => l.text)).toEqual(['L1']);
  });
});

describe('what prevents a part', async () => {
  const files = sourceFiles('.', ['src']).filter((f) => /(^|\/)findings\.ts$/.test(f.path));
  const modules = Object.values(await modulesAt<{ readonly catalogue?: Catalogue }>(files.map((f) => f.path)));
  const codes = modules.flatMap(({ catalogue = {} }) => Object.keys(catalogue).filter((code) => catalogue[code] === 'refusal'));
  const planted = (code: string): Finding => ({
    code,
    severity: 'refusal',
    text: say`${{ loop: contour('L7') }}: a wire of ${{ wire: mm(0.25) }} in 3 passes and 4 hours.`,
    remedy: { text: say`Take a thinner wire.` },
  });
  const saidOf = (code: string): string => printPlain(there(reasonsForCustomer([planted(code)])[0]));

  it('is said without wire, passes and hours for every refusal that is not of the drawing itself', () => {
    expect(codes.length).toBeGreaterThan(100);
    const open = codes.filter((code) => OWN_BUSINESS.test(saidOf(code)));
    const { templates } = templatesIn(sourceFiles('.', ['src']));
    const ofThem = templates.filter(({ key }) => open.includes(there(key.split(/[/.]/)[0])) && !key.endsWith('.remedy'));
    expect(ofThem.length).toBeGreaterThan(10);
    expect(ofThem.filter(({ template }) => OWN_BUSINESS.test(template.replace(/\{\w+\}/g, ''))).map((t) => t.key)).toEqual([]);
  });

  it('is said once where several of our limits come to the same', () => {
    expect(reasonsForCustomer(['metal-left', 'contour-gouged'].map(planted)).map(printPlain)).toEqual([
      'L7: we have found no way to make it as drawn.',
    ]);
  });
});

describe('the quotation', () => {
  const run = jobRun('examples/split-jaw/split-jaw.job.json', {}, '2026-11-25');
  const facts = factsOf(run);

  it('offers what the customer can agree to: two pieces in one stack are how the shop cuts', () => {
    const cheaper = cheaperWays(run, 3);
    expect(cheaper.length).toBeGreaterThan(0);
    expect(OWN_BUSINESS.exec(paperText(paperOf(facts, { cheaper })))?.[0]).toBeUndefined();
  });

  it('is valid until a day only where it is an offer, and has no terms but those that the shop typed', () => {
    const at = (inventedRates: boolean, terms?: string): string =>
      paperText(paperOf({ ...facts, head: { ...facts.head, inventedRates } }, { terms })).replace(/\s+/g, ' ');
    expect(at(true)).not.toContain('Valid until');
    expect(at(true)).toContain('are no offer');
    expect(at(false)).toMatch(/Valid until \d{4}-\d\d-\d\d\./);
    expect(at(false)).not.toMatch(/\bdays net\b|payment/i);
    expect(at(false, '30 days net, ex works.')).toMatch(/ 30 days net, ex works\. $/);
  });

  it('is not certain of a tolerance that wire and program together may exceed, as the answer is not', () => {
    const { asked, outcome } = facts;
    if (outcome.answer !== 'yes') throw new Error('split-jaw can be cut');
    const used = there(outcome.program.proof.use).measured;
    const within = (part: number): string =>
      paperText(paperOf({ ...facts, outcome: { ...outcome, cut: { ...outcome.cut, within: asked.tolerance - part * used } } }));
    expect(used).toBeGreaterThan(0);
    expect(within(0.5)).toContain('cannot be certain of');
    expect(within(1.5)).not.toContain('cannot be certain of');
  });

  it('shows the part: contours and open lines, and neither lead-in nor tab, clamp or number', () => {
    const { strokes, labels } = pictureIn(facts);
    const drawn = facts.drawing.loops.length + facts.drawing.openChains.length;
    expect(strokes.length).toBeLessThanOrEqual(drawn);
    expect(strokes.every((s) => s.dash === undefined && s.width === 0.3)).toBe(true);
    expect(labels.map((l) => l.text)).toEqual(['L2']);
  });
});

describe('the corners that come out rounder', () => {
  const facts = factsOfExample('die-plate/die-plate');
  const withCorners = (left: (n: number) => number) => {
    const { outcome } = facts;
    if (outcome.answer !== 'yes') throw new Error('the die plate is cut');
    const [contour] = outcome.program.proof.contours;
    const corner = there(outcome.program.proof.contours.find((c) => c.rounded.length > 0)?.rounded[0]);
    const contours = Array.from({ length: 12 }, (_, n) => ({
      ...there(contour),
      loop: `L${n + 2}`,
      rounded: Array.from({ length: 4 }, () => ({ ...corner, radius: 0.165, left: left(n) })),
    }));
    const program = { ...outcome.program, proof: { ...outcome.program.proof, contours } };
    return paperText(paperOf({ ...facts, outcome: { ...outcome, program } })).replace(/\s+/g, ' ');
  };

  it('stand in one line for all contours of which the same is to be said', () => {
    expect(withCorners(() => 0.068)).toContain(
      'L2, L3, L4, L5, L6, L7, L8, L9, L10, L11, L12 and L13: 4 inside corners each come out at up to R 0.17 mm, at most 0.068 mm off the corner drawn.',
    );
  });

  it('are never left out without a word', () => {
    const text = withCorners((n) => 0.01 + 0.001 * n);
    expect(text.match(/4 inside corners come out/g)).toHaveLength(8);
    expect(text).toContain('and 4 more; ask us for the whole list');
  });
});

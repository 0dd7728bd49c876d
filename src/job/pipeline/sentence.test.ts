/** The answer sentence and the quotation hide nothing: what was assumed, what is open, what is not expected to be held, what is not in the price. */

import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { jobRun } from '../../cli/inputs.ts';
import { printedPaper } from '../../documents/paper-for-reader.ts';
import { paperText } from '../../documents/paper-text.fixture.ts';
import { quotation } from '../../documents/sheet/quotation.ts';
import { saidOf } from '../../quantity/source.ts';
import type { Finding } from '../../text/finding.ts';
import { printPlain } from '../../text/print/print.ts';
import { HOUSE } from '../../text/reader.ts';
import { cut, factsOf } from '../answered.fixture.ts';
import { builtInShop } from '../built-in-shop.ts';
import type { JobRun } from '../job-run.ts';

const die: JobRun = jobRun('examples/die-plate/die-plate.job.json', {}, '2026-11-25');
const withJob = (more: Partial<JobRun['job']>): JobRun => ({ ...die, job: { ...die.job, ...more } });
const sentence = (run: JobRun): string => printPlain(factsOf(run).sentence);
const quoted = (run: JobRun): string =>
  paperText(printedPaper(quotation(factsOf(run), { until: '2026-12-25', cheaper: [] }), HOUSE)).replace(/\s+/g, ' ');
const question = (stands = 1): Finding => ({ code: 'branched', severity: 'doubt', text: saidOf('A line ends at nothing.'), stands });

describe('a yes', () => {
  it('says "required" of what was asked only, and marks the rest as assumed', () => {
    expect(sentence(die)).toMatch(
      /^Yes\. A 0\.30 mm brass wire cuts tool steel D2, 32 mm thick, .*±0\.008 mm required; .*Ra 0\.8 µm required \(16 % rule\)\./,
    );
    const bare = { ...die, said: new Set(['drawing']) };
    expect(sentence(bare)).toMatch(
      /cuts tool steel D2 \(assumed\), 32 mm thick \(assumed\), in 3 passes: ±[\d.]+ mm expected \(k = 2, about 95 %\), ±0\.008 mm assumed; Ra [\d.]+ µm expected, Ra 0\.8 µm assumed \(16 % rule\)\..* for one piece \(assumed\),/,
    );
    expect(sentence(bare)).not.toContain('required');
    expect(quoted(bare)).toContain('tool steel D2 (assumed), 32 mm (assumed) thick, ±0.008 mm (assumed), Ra 0.8 µm (assumed),');
    expect(quoted(bare)).not.toContain('required');
    expect(quoted(die)).not.toContain('(assumed');
  });

  it('counts the open questions, each that a finding stands for', () => {
    expect(sentence({ ...die, notes: [question()] })).toMatch(/^Yes, if 1 question is answered\. A /);
    const many = { ...die, notes: [question(140), { ...question(), code: 'units-missing' }] };
    expect(sentence(many)).toMatch(/^Yes, if 141 questions are answered\. A /);
    expect(quoted(many)).toContain('This holds once the 141 questions below are answered.');
    expect(quoted(die)).not.toContain('This holds once');
  });

  it('names the fit that the cut is not expected to hold', () => {
    const size = { name: '20 K5', length: 20, tolerance: 0.0005, sides: 2 as const };
    expect(sentence(withJob({ sizes: [size] }))).toMatch(/^Yes, but what is required of 20 K5 is in doubt\. A /);
    expect(sentence({ ...withJob({ sizes: [size, { ...size, name: '8 H3' }] }), notes: [question(2)] })).toMatch(
      /^Yes, but what is required of 20 K5 and 8 H3 are in doubt\. 2 questions are open\. A /,
    );
    expect(quoted(withJob({ sizes: [size] }))).toMatch(
      /On 20 K5 we expect ±[\d.]+ mm \(k = 2, about 95 %\) and cannot be certain of ±0\.0005 mm\./,
    );
    expect(sentence(withJob({ sizes: [{ ...size, tolerance: 0.05 }] }))).toMatch(/^Yes\. A /);
  });

  it('names contours and finishes that the passes asked for do not reach, in the quotation too', () => {
    const contours = { L5: { passes: 1 }, L3: { finish: 0.4 } };
    expect(sentence(withJob({ contours }))).toMatch(/^Yes, but what is required of L5 is in doubt\. A /);
    expect(quoted(withJob({ contours }))).toMatch(
      /On L5 we expect ±0\.03\d+ mm \(k = 2, about 95 %\), Ra 2\.\d µm and cannot be certain of ±0\.008 mm, Ra 0\.8 µm\./,
    );
    expect(sentence(withJob({ contours: { L3: { finish: 0.4 } } }))).toMatch(/^Yes\. A /);
    expect(quoted(withJob({ contours: { L3: { finish: 0.4 } } }))).not.toContain('certain');
    const rough = withJob({ passes: 1, tolerance: 0.05 });
    expect(sentence(rough)).toMatch(/^Yes, but the finish is in doubt\. A /);
    expect(quoted(rough)).toMatch(/We expect Ra 2\.\d µm and cannot be certain of Ra 0\.8 µm\./);
  });

  it('is none of what a contour is asked where the rest of the error, or the program, takes its tolerance', () => {
    const own = { passes: 1, finish: 6 };
    const expected = there(cut(factsOf(withJob({ contours: { L5: own } }))).plan.classes?.[1]).accuracy.value;
    const warm = { cutting: 45, measuring: 20, swing: 0.5 };
    const so = (tolerance: number, more: Partial<JobRun['job']> = {}): string =>
      sentence(withJob({ tolerance: 0.05, contours: { L5: { ...own, tolerance } }, ...more }));
    expect(so(expected + 0.003)).toMatch(/^Yes\. A /);
    expect(so(expected + 0.00005)).toMatch(/^Yes, but what is required of L5 is in doubt\. A /);
    expect(so(expected + 0.003, { temperature: warm })).toMatch(/^Yes, but what is required of L5 is in doubt\. A /);
  });

  it('judges a finish by the rule that it is asked under: a mean just below the limit leaves much of a face above it', () => {
    const once = { passes: 1, tolerance: 0.05 };
    const expected = cut(factsOf(withJob(once))).plan.finish.value;
    expect(sentence(withJob({ ...once, finish: 1.5 * expected }))).toMatch(/^Yes\. A /);
    const near = withJob({ ...once, finish: 1.05 * expected });
    expect(sentence(near)).toMatch(/^Yes, but the finish is in doubt\. A /);
    expect(quoted(near)).toMatch(/We expect Ra [\d.]+ µm and cannot be/);
  });

  it('says that metal is not in the price, asks where the shop supplies it, and says what was entered', () => {
    expect(sentence(die)).toMatch(/ EUR for one piece, without material, at invented rates\.$/);
    const asked = factsOf(withJob({ stock: { suppliedBy: 'shop' } }));
    expect(printPlain(asked.sentence)).toMatch(/^Yes, if 1 question is answered\..*, without material, at invented rates\.$/);
    expect(asked.findings.map((f) => f.code)).toContain('metal-without-price');
    expect(sentence(withJob({ stock: { price: 900 } }))).toMatch(/ EUR for one piece, at invented rates\.$/);
    expect(quoted(withJob({ stock: { suppliedBy: 'customer' } }))).toContain('material supplied by you.');
    expect(quoted(die)).toContain('excluding material, tax and delivery.');
  });

  it('says that rates are invented until somebody has set them, under whatever name the shop is kept', () => {
    expect([sentence(die), sentence({ ...die, day: '2026-03-01' })]).toEqual(
      [1, 2].map(() => expect.stringMatching(/, at invented rates\.$/)),
    );
    const kept = { ...die, shop: { ...builtInShop, name: 'Mine' } };
    expect(sentence(kept)).toMatch(/, at invented rates\.$/);
    expect(quoted(kept)).toContain('The prices are worked out with invented rates and are no offer.');
    expect(factsOf(kept).asked.assumed.map((a) => printPlain(a.text))).toContain(
      'The rates are invented: those of this shop are not set yet.',
    );
    const own = { ...kept, shop: { ...kept.shop, rates: builtInShop.rates.map((r) => ({ ...r, machineHour: r.machineHour + 1 })) } };
    expect(sentence(own) + quoted(own)).not.toContain('invented');
  });
});

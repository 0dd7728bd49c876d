/** What comes loose: held or not, taken out or not, and what fell with it. */
import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { point } from '../../geometry/segment.ts';
import type { Action } from '../../nc/read/program.ts';
import { sentenceOf } from '../../text/finding.fixture.ts';
import type { Wanted } from '../proof.ts';
import {
  aroundPart,
  box,
  codes,
  cutBox,
  faults,
  openingOf,
  PART,
  PART_HOLE,
  question,
  RADIUS,
  ring,
  START_HOLE,
  script,
} from './by-hand.fixture.ts';
import { proveActions } from './prove.ts';

describe('a piece that comes loose', () => {
  it('lets a crumb fall unheld, and says so', () => {
    const s = script();
    s.go(30, 20);
    s.stop('THREAD THE WIRE');
    s.cut(30.6 - RADIUS, 20);
    s.circle(30, 20, 0.6 - RADIUS);
    s.end();
    const proof = proveActions(s.actions, question([{ loop: 'A', contour: ring(30, 20, 0.6), kept: 'die' }]));
    expect([proof.verdict, codes(proof)]).toEqual(['proven', ['crumb-falls']]);
    expect(there(proof.loose[0]).mass).toBeLessThan(5e-5);
  });

  it('misses the stop at which a slug is taken out before cutting goes on', () => {
    const s = openingOf(30, 10, openingOf(10, 10));
    s.end();
    const wanted: Wanted[] = [10, 30].map((x) => ({ loop: `at ${x}`, contour: box(x, 10, x + 10, 20), kept: 'die' }));
    const first = s.actions.findIndex((a) => a.kind === 'stop' && a.comment.startsWith('TAKE'));
    const left = s.actions.with(first, { ...there(s.actions[first]), comment: 'CUT THE WIRE', purpose: 'cut the wire' } as Action);
    const proof = proveActions(left, question(wanted));
    expect(proof.findings.filter((f) => f.code === 'slug-not-taken-out').map((f) => [f.severity, f.place])).toEqual([
      ['refusal', expect.objectContaining({ loop: 'at 10' })],
    ]);
    expect(codes(proveActions(s.actions, question(wanted)))).not.toContain('slug-not-taken-out');
  });

  it('misses that stop at the end of the program too, and behind a finishing pass of the same run', () => {
    const wanted: Wanted[] = [{ loop: 'A', contour: box(10, 10, 20, 20), kept: 'die' }];
    const whole = openingOf(10, 10);
    whole.end();
    expect(proveActions(whole.actions, question(wanted)).verdict).toBe('proven');
    const stop = whole.actions.findLastIndex((a) => a.kind === 'stop');
    const without = proveActions(whole.actions.toSpliced(stop, 1), question(wanted));
    expect([without.verdict, faults(without)]).toEqual(['not proven', ['slug-not-taken-out']]);
    expect(sentenceOf(without.findings.find((f) => f.code === 'slug-not-taken-out'))).toContain('before the program ends');
    const onward = openingOf(10, 10);
    const back = onward.actions.pop();
    for (const [x, y] of [
      [20, 10],
      [20, 20],
      [10, 20],
      [10, 10],
    ] as const)
      onward.cut(x + (x < 15 ? RADIUS : -RADIUS), y + (y < 15 ? RADIUS : -RADIUS));
    onward.actions.push(there(back));
    onward.end();
    expect(faults(proveActions(onward.actions, question(wanted)))).toEqual(['slug-not-taken-out']);
  });

  it('may lie while the wire runs out, but for no longer than a quarter of its edge and 3 mm', () => {
    const wanted: Wanted[] = [{ loop: 'A', contour: box(10, 10, 20, 20), kept: 'die' }];
    const runOn = (left: number) => {
      const s = openingOf(10, 10);
      const out = s.actions.pop();
      s.cut(20 - RADIUS, 10 + RADIUS);
      s.cut(20 - RADIUS, 20 - RADIUS);
      if (left > 0) s.cut(20 - RADIUS - left, 20 - RADIUS);
      s.actions.push(there(out));
      s.end();
      return faults(proveActions(s.actions, question(wanted)));
    };
    // The edge of the slug is 47 mm with the slit of the way in: 14.8 mm are allowed, of which 14.3 go to the second corner.
    expect(runOn(0)).toEqual([]);
    expect(runOn(1.5)).toEqual(['slug-not-taken-out']);
  });

  it('is neither secured nor taken out at a stop that a switch may pass over', () => {
    const wanted: Wanted[] = [{ loop: 'A', contour: box(10, 10, 20, 20), kept: 'die' }];
    const whole = openingOf(10, 10);
    whole.end();
    const optional = (comment: RegExp): readonly Action[] =>
      whole.actions.map((a) => (a.kind === 'stop' && comment.test(a.comment) ? { ...a, optional: true } : a));
    expect(faults(proveActions(optional(/^SECURE/), question(wanted)))).toEqual(['piece-falls-unheld']);
    expect(faults(proveActions(optional(/^TAKE/), question(wanted)))).toEqual(['slug-not-taken-out']);
  });

  it('sees an opening fall with the slug of the opening round it', () => {
    const s = openingOf(25, 15);
    s.go(45, 20);
    s.stop('THREAD THE WIRE');
    cutBox(s, 10 + RADIUS, 5 + RADIUS, 50 - RADIUS, 35 - RADIUS);
    s.end();
    const wanted: Wanted[] = [
      { loop: 'in', contour: box(25, 15, 35, 25), kept: 'die' },
      { loop: 'out', contour: box(10, 5, 50, 35), kept: 'die' },
    ];
    const proof = proveActions(s.actions, question(wanted, { holes: [30, 45].map((x) => ({ at: point(x, 20), diameter: START_HOLE })) }));
    const fallen = proof.findings.filter((f) => f.code === 'kept-metal-falls');
    expect([proof.verdict, fallen.map((f) => f.severity)]).toEqual(['not proven', ['refusal']]);
    expect(sentenceOf(fallen[0])).toContain('takes metal of contour in with it');
  });

  it('refuses an opening that is cut in a part which has come loose before it', () => {
    const inPart = { loop: 'in', contour: box(25, 15, 35, 25), kept: 'die' } as const;
    const holes = [...PART_HOLE.holes, { at: point(30, 20), diameter: START_HOLE }];
    const late = openingOf(25, 15, aroundPart(script()));
    late.end();
    const proof = proveActions(late.actions, question([inPart, PART], { holes }));
    const found = proof.findings.find((f) => f.code === 'cut-in-fallen-piece');
    expect([proof.verdict, found?.severity]).toEqual(['not proven', 'refusal']);
    expect(sentenceOf(found)).toContain('contour in is cut in the part');
    const early = aroundPart(openingOf(25, 15));
    early.end();
    expect(proveActions(early.actions, question([inPart, PART], { holes })).verdict).toBe('proven');
  });
});

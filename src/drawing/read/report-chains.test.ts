/** Ends that lie near each other name each other, and the join tolerance that would close them, which then does. */
import { describe, expect, it } from 'vitest';
import { asciiDxf, dxfTags, lightPolyline, lineTags, type Tag } from '../../../test/dxf-writer.ts';
import { sentenceOf } from '../../text/finding.fixture.ts';
import type { Finding } from '../../text/finding.ts';
import type { Drawing } from '../drawing.ts';
import { readDrawing } from './read-drawing.ts';

const read = (entities: readonly (readonly Tag[])[], join?: number): Drawing =>
  readDrawing(asciiDxf(dxfTags({ units: 4, entities })), 'a.dxf', { join });
const open = ({ findings }: Drawing): readonly Finding[] => findings.filter((f) => f.code === 'open-chain');

/** A rectangle of four lines whose corners are open by the gaps given. */
const gapped = (...gaps: readonly number[]): readonly (readonly Tag[])[] => {
  const [a = 0, b = 0, c = 0, d = 0] = gaps;
  return [lineTags(0, 0, 40 - a, 0), lineTags(40, 0, 40, 30 - b), lineTags(40, 30, c, 30), lineTags(0, 30, 0, d)];
};

describe('ends that do not quite meet', () => {
  it('of two chains 10 µm apart name each other and the join that closes them', () => {
    const halves = [
      lightPolyline(
        [
          [0, 0],
          [40, 0],
          [40, 30],
        ],
        false,
      ),
      lightPolyline(
        [
          [40, 30.01],
          [0, 30.01],
          [0, 0.01],
        ],
        false,
      ),
    ];
    const [first, second] = open(read(halves));
    expect(sentenceOf(first)).toMatch(/is 10 µm from an end of C2\..*is 10 µm from an end of C2\. Only 5 µm are closed\.$/);
    expect(sentenceOf(second)).toContain('is 10 µm from an end of C1');
    expect(first?.remedy).toMatchObject({ field: 'join', value: 0.011 });
    expect(read(halves, 0.011).loops.length).toBe(1);
  });

  it.each([
    [[0.01, 0.01, 0.01, 0.01], 0.011],
    [[0.02, 0.006, 0.3, 0.012], 0.301],
    [[0, 0, 0, 0.0503], 0.051],
  ])('are closed by the join that is offered for all of them: %o', (gaps, join) => {
    const found = open(read(gapped(...gaps)));
    expect(new Set(found.map((f) => f.remedy?.value))).toEqual(new Set([join]));
    const closed = read(gapped(...gaps), join);
    expect([closed.loops.length, closed.openChains.length]).toEqual([1, 0]);
  });

  it('of one chain say how far apart they are', () => {
    const [told] = open(read(gapped(0, 0, 0, 0.02)));
    expect(sentenceOf(told)).toContain('Its ends are 20 µm apart, and only 5 µm are closed.');
    expect(told?.remedy).toMatchObject({ field: 'join', value: 0.021 });
  });

  it('offer nothing to lines that lie apart, or that are no longer than the gap', () => {
    for (const lines of [[lineTags(0, 0, 40, 0), lineTags(0, 5, 40, 5)], [lineTags(0, 0, 0.4, 0)]])
      expect(open(read(lines)).map((f) => f.remedy?.value)).toEqual(lines.map(() => undefined));
  });
});

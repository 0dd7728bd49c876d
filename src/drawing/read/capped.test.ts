/** Lists of findings cut short without losing count. */

import { describe, expect, it } from 'vitest';
import { sentenceOf } from '../../text/finding.fixture.ts';
import { count } from '../../text/part.ts';
import { say } from '../../text/say.ts';
import { find } from '../findings.ts';
import { capped } from './capped.ts';

describe('long lists of findings', () => {
  const many = (n: number) => Array.from({ length: n }, (_, i) => find('gap-closed', say('gap-closed')`Gap ${{ gap: count(i + 1) }}.`));

  it('are cut short without losing count', () => {
    const list = capped(many(320));
    expect(list).toHaveLength(51);
    expect(sentenceOf(list.at(-1))).toBe('And 270 more of this kind, the first of them: Gap 51.');
    expect(list.reduce((n, f) => n + (f.stands ?? 1), 0)).toBe(320);
  });

  it('are left alone while they are short, kind by kind', () => {
    expect(capped(many(51))).toHaveLength(51);
    expect(capped([...many(50), find('no-loop', say('no-loop')`None.`)]).map((f) => f.stands)).toEqual(
      Array.from({ length: 51 }, () => undefined),
    );
  });
});

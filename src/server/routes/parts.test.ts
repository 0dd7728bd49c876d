/** The files of one upload are counted together while they come. */
import type { FastifyRequest } from 'fastify';
import { describe, expect, it } from 'vitest';
import { partsOf } from './parts.ts';

const MB = 1024 * 1024;

/** A form whose files say how long they are without being so. */
const form = (...megabytes: readonly number[]): FastifyRequest =>
  ({
    async *files() {
      for (const size of megabytes) yield { filename: 'a.dxf', toBuffer: async () => ({ length: size * MB }) };
    },
  }) as never;

describe('an upload', () => {
  it('takes 256 MB together and no more', async () => {
    expect(await partsOf(form(60, 60, 60, 60, 16))).toHaveLength(5);
    await expect(partsOf(form(60, 60, 60, 60, 17))).rejects.toMatchObject({ status: 413, answer: { error: 'too-large' } });
  });
});

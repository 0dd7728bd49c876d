/** Files that somebody brought in, handed out as they came. */
import type { FastifyReply } from 'fastify';
import { z } from 'zod';

export const bytesAnswer = z.any().describe('The bytes');

/** Never as what the sender says it is: a drawing may hold script, and no browser is to read it as a page. */
export const asBytes = (reply: FastifyReply, name: string, bytes: Buffer): Buffer => {
  reply.type('application/octet-stream').header('content-disposition', attachment(name));
  return bytes;
};

/** The name as RFC 6266 has it: in plain letters, and where it has others, whole beside that. */
const attachment = (name: string): string => {
  const plain = name.replaceAll(/[^\w .-]/g, '_');
  if (plain === name) return `attachment; filename="${name}"`;
  // Half a letter, as a name may be cut off in the middle of one, cannot be written in an address.
  const whole = encodeURIComponent(name.replaceAll(/\p{Surrogate}/gu, '_'));
  const quoted = whole.replaceAll(/['()*]/g, (c) => `%${c.charCodeAt(0).toString(16).toUpperCase()}`);
  return `attachment; filename="${plain}"; filename*=UTF-8''${quoted}`;
};

/** Writes every large asset of the page a second and third time, packed, so that the server sends it so and packs nothing itself. */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { brotliCompressSync, constants, gzipSync } from 'node:zlib';
import type { Rolldown } from 'vite';

/** Fonts for the screen are packed already. */
const UNPACKED = /\.(js|css|svg|ttf)$/;

/** Bytes; what is smaller fits into a packet or two either way. */
const LEAST = 2000;

/** Brotli where a reader takes it, gzip for one who fetches over plain http in the shop's network, which is not offered the other. */
export const packedAssets: Rolldown.Plugin = {
  name: 'packed-assets',
  writeBundle({ dir = '.' }) {
    const folder = join(dir, 'assets');
    for (const name of readdirSync(folder).filter((f) => UNPACKED.test(f))) {
      const plain = readFileSync(join(folder, name));
      if (plain.length < LEAST) continue;
      writeFileSync(join(folder, `${name}.br`), brotliCompressSync(plain, { params: { [constants.BROTLI_PARAM_QUALITY]: 9 } }));
      writeFileSync(join(folder, `${name}.gz`), gzipSync(plain, { level: 9 }));
    }
  },
};

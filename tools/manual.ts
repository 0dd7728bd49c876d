/** Writes the pages of docs/findings from what the layers' manuals say. */
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { chapters } from '../src/job/handout/manual-of-all.ts';
import { manualPages } from './manual-pages.ts';

const FOLDER = 'docs/findings';
const pages = Object.entries(manualPages(chapters));
rmSync(FOLDER, { recursive: true, force: true });
mkdirSync(FOLDER, { recursive: true });
for (const [name, text] of pages) writeFileSync(join(FOLDER, name), text);
process.stdout.write(`${FOLDER}: ${pages.length} pages\n`);

/** What the manual says of reading a drawing. */
import type { Manual } from '../text/manual.ts';
import type { catalogue } from './findings.ts';
import { manualOfFiles } from './manual-of-files.ts';
import { manualOfLoops } from './manual-of-loops.ts';

export const manual: Manual<typeof catalogue> = { ...manualOfFiles, ...manualOfLoops };

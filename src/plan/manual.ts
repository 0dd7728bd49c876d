/** What the manual says of planning. */
import type { Manual } from '../text/manual.ts';
import type { catalogue } from './findings.ts';
import { manualOfCut } from './manual-of-cut.ts';
import { manualOfRequest } from './manual-of-request.ts';

export const manual: Manual<typeof catalogue> = { ...manualOfRequest, ...manualOfCut };

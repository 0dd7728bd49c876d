/** Every finding that making a shape can end in, gathered from its families; each code has its page in docs/findings. */
import type { Catalogue } from '../finding/finding.ts';
import { catalogue as gear } from './gear/findings.ts';

export const catalogue = { ...gear } satisfies Catalogue;

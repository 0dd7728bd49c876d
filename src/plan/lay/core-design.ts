/** The design of one shape, with a slug or cut without a core, whichever is asked for, safer or cheaper. */
import { firstItem } from '../../sequence/sequence.ts';
import type { Finding } from '../../text/finding.ts';
import { type CoreAsked, type CoreNeeded, coreDecision, coreNeededFinding, noCoreFinding } from '../core/core-choice.ts';
import { noCoreOf, ringsOf } from '../core/core-laid.ts';
import type { NoCoreCut } from '../plan.ts';
import { type DesignAsked, type Designed, designFor } from './design.ts';

export interface CoreDesigned {
  readonly designed: Designed;
  readonly noCore?: NoCoreCut | undefined;
}

export const designWithCore = (asked: DesignAsked, core: CoreAsked): CoreDesigned => {
  const decision = coreDecision(core);
  if (decision.kind === 'slug') return withSlug(asked, decision.refused === undefined ? [] : [coreNeededFinding(core, decision.refused)]);
  const said = (why: CoreNeeded) => (decision.because === 'cheaper' ? [] : [coreNeededFinding(core, why)]);
  const found = ringsOf(firstItem(asked.fit.opened), core.rough.offset.value, core.kerf);
  if (found.kind === 'none') return withSlug(asked, said(found.why));
  const designed = designFor({ ...asked, rings: found.rings });
  if (designed.kind === 'not laid' || designed.design.core === undefined) return withSlug(asked, said('noWay'));
  const noCore = noCoreOf(core, found.rings, designed.design.core, decision.because);
  if (noCore === undefined) return withSlug(asked, []);
  return { designed: { ...designed, findings: [...designed.findings, noCoreFinding(core, noCore)] }, noCore };
};

/** What is said of the core counts only where the slug could be laid out instead. */
const withSlug = (asked: DesignAsked, findings: readonly Finding[]): CoreDesigned => {
  const designed = designFor(asked);
  return { designed: designed.kind === 'laid' ? { ...designed, findings: [...designed.findings, ...findings] } : designed };
};

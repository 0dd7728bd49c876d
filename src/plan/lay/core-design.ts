/** The design of one shape, with a slug or burnt out without a core, whichever is asked for, safer or cheaper. */
import { firstItem } from '../../sequence/sequence.ts';
import type { Finding } from '../../text/finding.ts';
import { burntFinding, type CoreAsked, coreDecision, type NotBurnt, notBurntFinding } from '../core/core-choice.ts';
import { burntOf, ringsOf } from '../core/core-laid.ts';
import type { CoreBurnt } from '../plan.ts';
import { type DesignAsked, type Designed, designFor } from './design.ts';

export interface CoreDesigned {
  readonly designed: Designed;
  readonly burnt?: CoreBurnt | undefined;
}

export const designWithCore = (asked: DesignAsked, core: CoreAsked): CoreDesigned => {
  const decision = coreDecision(core);
  if (decision.kind === 'slug') return withSlug(asked, decision.refused === undefined ? [] : [notBurntFinding(core, decision.refused)]);
  const said = (why: NotBurnt) => (decision.because === 'cheaper' ? [] : [notBurntFinding(core, why)]);
  const found = ringsOf(firstItem(asked.fit.opened), core.rough.offset.value, core.kerf);
  if (found.kind === 'none') return withSlug(asked, said(found.why));
  const designed = designFor({ ...asked, rings: found.rings });
  if (designed.kind === 'not laid' || designed.design.core === undefined) return withSlug(asked, said('noWay'));
  const burnt = burntOf(core, found.rings, designed.design.core, decision.because);
  if (burnt === undefined) return withSlug(asked, []);
  return { designed: { ...designed, findings: [...designed.findings, burntFinding(core, burnt)] }, burnt };
};

/** What is said of the core counts only where the slug could be laid out instead. */
const withSlug = (asked: DesignAsked, findings: readonly Finding[]): CoreDesigned => {
  const designed = designFor(asked);
  return { designed: designed.kind === 'laid' ? { ...designed, findings: [...designed.findings, ...findings] } : designed };
};

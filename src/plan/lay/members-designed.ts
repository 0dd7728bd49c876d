/** The designs of the loops of one shape: one for all that are left to the planner, and its own for each of which something is set by hand. */

import type { Point } from '../../geometry/segment.ts';
import type { Finding } from '../../text/finding.ts';
import { contour, fixed, list, mm } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import { placesMapped } from '../../text/within.ts';
import type { CoreAsked } from '../core/core-choice.ts';
import { find } from '../findings.ts';
import { movedPoint } from '../path/moved.ts';
import type { ContourPlan, NoCoreCut } from '../plan.ts';
import { isFromEdge, type Override, overrideOf } from '../question.ts';
import { spot } from '../said.ts';
import type { LikeLoops } from '../same-shape.ts';
import { agrees, idleTab, noWayForOverride, readOverride, setOf } from '../start/override.ts';
import { type CoreDesigned, designWithCore } from './core-design.ts';
import type { Design, DesignAsked } from './design.ts';

type Member = LikeLoops['members'][number];

export interface MemberDesigned {
  readonly member: Member;
  /** As the first of its shape has it: to be moved by the member's own way. */
  readonly design: Design;
  readonly noCore?: NoCoreCut | undefined;
  readonly overrides: NonNullable<ContourPlan['overrides']>;
}

export interface MembersDesigned {
  /** Those that could be laid out, in the order of the shape. */
  readonly members: readonly MemberDesigned[];
  readonly findings: readonly Finding[];
}

export const membersDesigned = (asked: DesignAsked, core: CoreAsked): MembersDesigned => {
  const { shape, question } = asked;
  const free = once(() => designWithCore(asked, core));
  const members: MemberDesigned[] = [];
  const findings: Finding[] = [];
  let freeTold = false;
  for (const member of shape.members) {
    const said = overrideOf(question, member.loop.loop.id);
    const own = said === undefined ? undefined : ownDesign(member, said, { asked, core }, free());
    if (own !== undefined) findings.push(...own.findings);
    if (own === undefined || own.as === 'the planner') {
      if (!freeTold) findings.push(...free().designed.findings);
      freeTold = true;
    }
    const { designed, noCore } = own?.designed ?? free();
    if (designed.kind === 'not laid') continue;
    members.push({ member, design: designed.design, noCore, overrides: said === undefined ? [] : setOf(said) });
  }
  return { members, findings };
};

interface Own {
  readonly as: 'the planner' | 'by hand';
  readonly designed: CoreDesigned;
  readonly findings: readonly Finding[];
}

interface Both {
  readonly asked: DesignAsked;
  readonly core: CoreAsked;
}

/** What the user sets is told in the place of the member, and designed in that of the first of its shape. */
const ownDesign = (member: Member, told: Override, { asked, core }: Both, free: CoreDesigned): Own => {
  const id = member.loop.loop.id;
  const chosen = free.designed;
  if (chosen.kind === 'laid' && agrees(chosen.design, told, member.by))
    return { as: 'the planner', designed: free, findings: [setFinding(id, told, chosen.design, member.by)] };
  const there = { x: -member.by.x, y: -member.by.y };
  const fromEdge = isFromEdge(asked.question, id);
  const around = { ...asked.shape.first, loop: { ...asked.shape.first.loop, loop: { ...asked.shape.first.loop.loop, id } } };
  const shape: LikeLoops = { first: around, members: [{ loop: around.loop, by: { x: 0, y: 0 } }] };
  const read = readOverride({
    around,
    said: movedOverride(told, there),
    clear: asked.clear,
    roughOffset: asked.rows[0].offset.value,
    question: asked.question,
    fromEdge,
  });
  const inPlace = (findings: readonly Finding[]): readonly Finding[] => findings.map((f) => movedFinding(f, member.by));
  if (read.kind === 'cannot')
    return { as: 'by hand', designed: { designed: { kind: 'not laid', findings: [] } }, findings: inPlace(read.findings) };
  const made = designWithCore({ ...asked, shape, override: read.override }, { ...core, shape });
  const { designed, noCore } = made;
  if (designed.kind === 'not laid') {
    const at = told.entry ?? told.hole?.at ?? movedPoint(around.loop.loop.contour.segments[0].from, member.by);
    return { as: 'by hand', designed: made, findings: [...inPlace(read.findings), noWayForOverride(id, told, at)] };
  }
  return {
    as: 'by hand',
    designed: made,
    findings: [
      ...inPlace([...read.findings, ...designed.findings]),
      ...(noCore !== undefined && told.tab !== undefined ? [idleTab(id)] : []),
      setFinding(id, told, designed.design, member.by),
    ],
  };
};

const movedOverride = ({ entry, hole, tab }: Override, by: Point): Override => ({
  entry: entry && movedPoint(entry, by),
  hole: hole && { ...hole, at: movedPoint(hole.at, by) },
  tab,
});

/** Its places move with its spot. */
const movedFinding = (finding: Finding, by: Point): Finding => {
  if (by.x === 0 && by.y === 0) return finding;
  const { place } = finding;
  const text = placesMapped(finding.text, (p) => ({ ...p, x: p.x + by.x, y: p.y + by.y }));
  return { ...finding, text, place: place?.kind === 'spot' ? { ...place, x: place.x + by.x, y: place.y + by.y } : place };
};

const setFinding = (id: string, told: Override, { entry, hole, tab }: Pick<ContourPlan, 'entry' | 'hole' | 'tab'>, by: Point): Finding => {
  const at = movedPoint(entry.at, by);
  const tabSet = tab === undefined || tab.length === 0 ? words.noTab : words.tab(tab.length);
  const set = [
    told.entry === undefined ? [] : [words.entry(at)],
    told.hole === undefined ? [] : [words.hole(movedPoint(hole.at, by))],
    told.tab === undefined ? [] : [tabSet],
  ].flat();
  return find('set-by-hand/contour', say`Set by hand on ${{ loop: contour(id) }}: ${{ set: list(set) }}.`, {
    place: { kind: 'spot', x: at.x, y: at.y, reach: 2, loop: id },
  });
};

const words = phrases('by-hand', {
  entry: (at: Point) => say`entry at ${{ at: spot(at) }}`,
  hole: (at: Point) => say`hole at ${{ at: spot(at) }}`,
  tab: (tab: number) => say`tab of ${{ tab: mm(tab, fixed(2)) }}`,
  noTab: say`no tab`,
});

const once = <T>(make: () => T): (() => T) => {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
};

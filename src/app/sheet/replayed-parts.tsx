/** Strip, replay, program, deviation, wall, curve and what-ifs in their chapters. */
import type { ReactNode } from 'react';
import { defaultOf } from '../fields/fields.ts';
import { useInput, useOnSheet, useTools } from '../fields/tools.ts';
import type { Chapter } from '../work/views.ts';
import { HoursParts, PassesParts, PriceParts, ProofParts, WayParts } from './chapter-parts.tsx';

export const ReplayedParts = ({ chapter }: { readonly chapter: Chapter }): ReactNode => {
  const answered = useOnSheet((s) => s.sheet !== undefined);
  return <div className="parts">{answered && <PartsOf chapter={chapter} />}</div>;
};

const PartsOf = ({ chapter }: { readonly chapter: Chapter }): ReactNode => {
  const { sheet, numbers } = useTools();
  const tolerance = useInput()['tolerance'] ?? defaultOf('tolerance');
  const given = { sheet, numbers };
  if (chapter === 'passes') return <PassesParts {...given} />;
  if (chapter === 'way') return <WayParts {...given} />;
  if (chapter === 'proof') return <ProofParts {...given} tolerance={typeof tolerance === 'number' ? tolerance : 0} />;
  if (chapter === 'hours') return <HoursParts {...given} />;
  return chapter === 'price' ? <PriceParts {...given} /> : null;
};

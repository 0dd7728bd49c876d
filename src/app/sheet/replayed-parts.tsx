/** Strip, replay, program, deviation, wall, curve and what-ifs in their chapters; fetched once the sentence stands. */
import { lazy, type ReactNode, Suspense } from 'react';
import type { Chapter } from '../work/views.ts';
import { defaultOf } from './fields.ts';
import { useInput, useOnSheet, useTools } from './tools.ts';

const parts = () => import('../replay/chapter-parts.tsx');
const WayParts = lazy(() => parts().then((m) => ({ default: m.WayParts })));
const HoursParts = lazy(() => parts().then((m) => ({ default: m.HoursParts })));
const ProofParts = lazy(() => parts().then((m) => ({ default: m.ProofParts })));
const PassesParts = lazy(() => parts().then((m) => ({ default: m.PassesParts })));
const PriceParts = lazy(() => parts().then((m) => ({ default: m.PriceParts })));

export const ReplayedParts = ({ chapter }: { readonly chapter: Chapter }): ReactNode => {
  const answered = useOnSheet((s) => s.sheet !== undefined);
  return (
    <div className="parts">
      <Suspense fallback={null}>{answered && <PartsOf chapter={chapter} />}</Suspense>
    </div>
  );
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

/** The chapters in their order: each with its notes, its inputs, and the numbers that these move. */
import type { ReactNode } from 'react';
import { FieldRow } from '../fields/field-row.tsx';
import { FIELDS, fieldOfFinding } from '../fields/fields.ts';
import { FigureTable } from '../fields/figure-table.tsx';
import { Notes } from '../fields/margin.tsx';
import { useInput, useOnSheet } from '../fields/tools.ts';
import { useWords } from '../words/use-words.ts';
import { CHAPTERS, type Chapter, type FindingView } from '../work/views.ts';
import { Assumed } from './assumed.tsx';
import { DrawingFacts, LogOfJob, PapersOfJob, ProofFacts, Schedule, WayFacts } from './chapter-facts.tsx';
import { ReplayedParts } from './replayed-parts.tsx';

export const Chapters = (): ReactNode => (
  <>
    {CHAPTERS.map((chapter) => (
      <ChapterPart key={chapter} chapter={chapter} />
    ))}
  </>
);

const NO_FINDINGS: readonly FindingView[] = [];

const ChapterPart = ({ chapter }: { readonly chapter: Chapter }): ReactNode => {
  const words = useWords().sheet;
  const findings = useOnSheet((s) => s.sheet?.findings) ?? NO_FINDINGS;
  const byNumbers = useInput()['shape'] !== undefined;
  // A part by numbers has no drawing that somebody made.
  const fields = byNumbers && chapter === 'drawing' ? [] : FIELDS[chapter];
  const paths = new Set(fields.map((f) => f.path));
  const pathOf = (f: FindingView): string | undefined => (f.place?.kind === 'field' ? fieldOfFinding(f.place.path)?.path : undefined);
  const own = findings.filter((f) => f.chapter === chapter || paths.has(pathOf(f) ?? ''));
  const beside = (path: string): readonly FindingView[] => own.filter((f) => pathOf(f) === path);
  return (
    <section className="chapter" id={chapter} data-chapter={chapter} aria-labelledby={`${chapter}-title`}>
      <h2 id={`${chapter}-title`} tabIndex={-1}>
        <a href={`#${chapter}`}>{words.chapter(chapter)}</a>
      </h2>
      <Notes chapter={chapter} findings={own.filter((f) => !paths.has(pathOf(f) ?? ''))} />
      {fields.length > 0 && (
        <div className="fields">
          {fields.map((field) => (
            <FieldRow key={field.path} field={field} findings={beside(field.path)} />
          ))}
        </div>
      )}
      <Facts chapter={chapter} />
      <ReplayedParts chapter={chapter} />
    </section>
  );
};

const Facts = ({ chapter }: { readonly chapter: Chapter }): ReactNode => {
  switch (chapter) {
    case 'drawing':
      return <DrawingFacts />;
    case 'asked':
      return <Assumed />;
    case 'passes':
      return <PassesFacts />;
    case 'way':
      return <WayFacts />;
    case 'proof':
      return <ProofFacts />;
    case 'hours':
      return <HoursFacts />;
    case 'price':
      return <PriceFacts />;
    case 'papers':
      return <PapersOfJob />;
    default:
      return <LogOfJob />;
  }
};

const PassesFacts = (): ReactNode => {
  const words = useWords().sheet;
  const passes = useOnSheet((s) => s.sheet?.passes);
  const wires = useOnSheet((s) => s.sheet?.wires);
  return (
    <>
      <FigureTable title={words.passTable} table={passes} place="passes" />
      <FigureTable title={words.wireTable} table={wires} place="wires" />
    </>
  );
};

const HoursFacts = (): ReactNode => {
  const words = useWords().sheet;
  const hours = useOnSheet((s) => s.sheet?.hours);
  return (
    <>
      <FigureTable title={words.hoursTable} table={hours} place="hours" ranges />
      <Schedule />
    </>
  );
};

const PriceFacts = (): ReactNode => {
  const words = useWords().sheet;
  const costs = useOnSheet((s) => s.sheet?.costs);
  const breaks = useOnSheet((s) => s.sheet?.breaks);
  const others = useOnSheet((s) => s.sheet?.others);
  return (
    <>
      <FigureTable title={words.breakTable} table={breaks} place="breaks" />
      <FigureTable title={words.costTable} table={costs} place="costs" ranges />
      <FigureTable title={words.otherWays} table={others} place="others" />
    </>
  );
};

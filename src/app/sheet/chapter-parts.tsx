/** Strip, replay, program, deviation, wall, curve and what-ifs joined to an open sheet, each for the chapter it belongs to. */
import { type ReactNode, useCallback, useEffect } from 'react';
import { paths } from '../../server/message/answers.ts';
import type { Numbers } from '../../text/print/reader.ts';
import { UnderGlass } from '../chart/cut-surface.tsx';
import { DeviationPanel } from '../chart/deviation-panel.tsx';
import { PriceCurve } from '../chart/price-curve.tsx';
import { WhatIfs } from '../chart/what-ifs.tsx';
import { OtherPrograms } from '../handout/other-programs.tsx';
import { ProgramText } from '../handout/program-text.tsx';
import { takePrograms } from '../handout/take-programs.ts';
import { usualSpeed } from '../replay/playing.ts';
import { Replay } from '../replay/replay.tsx';
import { ShiftStrip } from '../replay/shift-strip.tsx';
import { showBlock } from '../replay/show-block.ts';
import type { Timeline } from '../replay/timeline.ts';
import { usePlayback } from '../replay/use-playback.ts';
import { useReplayed, useTimeline } from '../replay/use-replayed.ts';
import { inputOf } from '../state/input.ts';
import { type OpenSheet, useSheet } from '../state/open-sheet.ts';
import { programsOf } from '../state/programs.ts';
import { useWords } from '../words/use-words.ts';
import type { Judged } from '../work/job-worker.ts';
import { printedComparison, toldJudged } from '../work/sheet-for-reader.ts';
import type { ContourView, ProgramView, ScheduleView } from '../work/views.ts';

export interface PartProps {
  readonly sheet: OpenSheet;
  readonly numbers: Numbers;
}

const useRun = (sheet: OpenSheet) => {
  const program = useSheet(sheet, (s) => s.sheet?.program);
  const schedule = useSheet(sheet, (s) => s.sheet?.schedule);
  const moment = useSheet(sheet, (s) => s.moment);
  const timeline = useTimeline(schedule, program);
  const now = useReplayed(timeline, program, moment);
  const block = now?.block;
  useEffect(() => {
    if (block !== undefined) sheet.store.setState({ block });
  }, [sheet, block]);
  return { program, schedule, timeline, moment };
};

/** Two places have its buttons; it is one replay. */
const ReplayOf = ({
  sheet,
  run,
  locale,
}: {
  readonly sheet: OpenSheet;
  readonly run: ReplayedRun;
  readonly locale: string | undefined;
}): ReactNode => {
  const moment = useSheet(sheet, (s) => s.moment);
  const playing = useSheet(sheet, (s) => s.playing === true);
  const speed = useSheet(sheet, (s) => s.speed) ?? usualSpeed(run.timeline);
  return (
    <Replay
      {...run}
      moment={moment}
      playing={playing}
      speed={speed}
      locale={locale}
      onMoment={(at) => leaveOrGo(sheet, at)}
      onPlaying={(goes) => sheet.store.setState({ playing: goes })}
      onSpeed={(minutes) => sheet.store.setState({ speed: minutes })}
    />
  );
};

/** A replay that is left takes its moment and its block along. */
const leaveOrGo = (sheet: OpenSheet, at: number | undefined): void =>
  sheet.store.setState(at === undefined ? { moment: undefined, block: undefined, playing: false } : { moment: at });

const usePlayed = (sheet: OpenSheet, timeline: Timeline | undefined): void => {
  const moment = useSheet(sheet, (s) => s.moment);
  const playing = useSheet(sheet, (s) => s.playing === true);
  const speed = useSheet(sheet, (s) => s.speed);
  usePlayback({
    timeline,
    moment,
    playing,
    speed: speed ?? (timeline === undefined ? 1 : usualSpeed(timeline)),
    onMoment: (at) => leaveOrGo(sheet, at),
    onEnded: () => sheet.store.setState({ playing: false }),
  });
};

interface ReplayedRun {
  readonly program: ProgramView;
  readonly schedule: ScheduleView;
  readonly timeline: Timeline;
}

const whole = (run: ReturnType<typeof useRun>): ReplayedRun | undefined =>
  run.program === undefined || run.schedule === undefined || run.timeline === undefined || run.program.moves.begins.length === 0
    ? undefined
    : { program: run.program, schedule: run.schedule, timeline: run.timeline };

/** For the way of the wire: the cut replayed, with the program beside it. */
export const WayParts = ({ sheet, numbers }: PartProps): ReactNode => {
  const { replay: replayWords, program: programWords } = useWords();
  const run = useRun(sheet);
  const block = useSheet(sheet, (s) => s.block);
  const id = useSheet(sheet, (s) => s.record?.id);
  const parts = whole(run);
  const { locale } = numbers;
  return (
    <>
      <h3>{replayWords.title}</h3>
      {parts === undefined ? <p className="fact">{replayWords.none}</p> : <ReplayOf sheet={sheet} run={parts} locale={locale} />}
      <h3>{programWords.title}</h3>
      {run.program === undefined ? (
        <p className="fact">{programWords.none}</p>
      ) : (
        <ProgramText
          program={run.program}
          block={block}
          locale={locale}
          download={id === undefined ? undefined : paths.file(id, 'program')}
          onBlock={(at) => showBlock(sheet, run.timeline, at)}
        />
      )}
    </>
  );
};

/** For the hours: the run on the schedule, whose start can be dragged, and the replay that goes along it. */
export const HoursParts = ({ sheet, numbers }: PartProps): ReactNode => {
  const run = useRun(sheet);
  const parts = whole(run);
  usePlayed(sheet, run.timeline);
  if (run.schedule === undefined) return null;
  return (
    <>
      <ShiftStrip
        schedule={run.schedule}
        moment={run.moment}
        locale={numbers.locale}
        onStart={(startAt, name) => sheet.actions.edit(name, { startAt })}
        onMoment={(at) => sheet.store.setState({ moment: at, playing: false })}
      />
      {parts !== undefined && <ReplayOf sheet={sheet} run={parts} locale={numbers.locale} />}
    </>
  );
};

const NO_CONTOURS: readonly ContourView[] = [];

/** `tolerance` in mm, either side. For the proof: deviation by contour, and programs from elsewhere. */
export const ProofParts = ({ sheet, numbers, tolerance }: PartProps & { readonly tolerance: number }): ReactNode => {
  const contours = useSheet(sheet, (s) => s.sheet?.picture?.contours) ?? NO_CONTOURS;
  const chosen = useSheet(sheet, (s) => s.chosen);
  return (
    <>
      <DeviationPanel
        contours={contours}
        tolerance={tolerance}
        chosen={chosen}
        numbers={numbers}
        deviation={(loop) => sheet.worker().deviation(loop)}
        onChoose={(loop) => sheet.actions.choose(loop)}
      />
      <Others sheet={sheet} locale={numbers.locale} />
    </>
  );
};

const NO_TROUBLES: readonly string[] = [];

/** Proven beside the worker of the answer: a long program must not keep an edit waiting. */
const Others = ({ sheet, locale }: { readonly sheet: OpenSheet; readonly locale: string | undefined }): ReactNode => {
  const words = useWords().program;
  const record = useSheet(sheet, (s) => s.record);
  const coming = useSheet(sheet, (s) => s.coming);
  const about = useSheet(sheet, (s) => s.sheet);
  const shown = useSheet(sheet, (s) => s.shownProgram);
  const troubles = useSheet(sheet, (s) => s.programTroubles) ?? NO_TROUBLES;
  const onShown = useCallback(() => sheet.store.setState({ shownProgram: undefined }), [sheet]);
  return (
    <OtherPrograms
      programs={programsOf(record, coming)}
      about={about}
      read={(program) => sheet.programs.text(program)}
      prove={(text) => sheet.prover.ask(async (worker): Promise<Judged> => toldJudged(await worker.prove(text), sheet.tell))}
      download={(number) => paths.program(record?.id ?? '', number)}
      locale={locale}
      shown={shown}
      onShown={onShown}
      troubles={troubles}
      onFiles={(files) => void takePrograms(sheet, files, words)}
      takeAway={(program) => sheet.programs.takeAway(program)}
      putBack={(program) => sheet.programs.putBack(program)}
    />
  );
};

/** For wire and passes: the wall under the glass. */
export const PassesParts = ({ sheet, numbers }: PartProps): ReactNode => {
  const wall = useSheet(sheet, (s) => s.sheet?.wall);
  return wall === undefined ? null : <UnderGlass wall={wall} numbers={numbers} />;
};

/** For the price: what would it cost if, and price against finish. */
export const PriceParts = ({ sheet, numbers }: PartProps): ReactNode => {
  const answer = useSheet(sheet, (s) => s.sheet);
  const reached = useSheet(sheet, (s) => (s.record === undefined ? undefined : inputOf(s.record)['finish']));
  const about = answer?.answer === 'yes' ? answer : undefined;
  const finish = typeof reached === 'number' ? reached : USUAL_FINISH;
  return (
    <>
      <WhatIfs
        about={about}
        ask={() => sheet.aside.ask(async (worker) => printedComparison(await worker.whatIfs(), sheet.tell))}
        numbers={numbers}
        onTry={(name, change) => sheet.actions.edit(name, change)}
      />
      <PriceCurve
        about={about}
        ask={() => sheet.aside.ask((worker) => worker.curve())}
        finish={finish}
        assumed={reached === undefined}
        numbers={numbers}
        onFinish={(ra, name) => sheet.actions.edit(name, { finish: ra })}
      />
    </>
  );
};

/** As the job file has it where nobody says anything, µm. */
const USUAL_FINISH = 1.6;

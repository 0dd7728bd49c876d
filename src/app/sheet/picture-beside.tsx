/** The picture beside the chapters: it follows the one in view, and what is pointed at in the margin. */
import { type ReactNode, useEffect, useState } from 'react';
import { defaultOf } from '../fields/fields.ts';
import { useInput, useOnSheet, useTools } from '../fields/tools.ts';
import { PictureSide } from '../picture/panel/picture-side.tsx';
import { showBlock } from '../replay/show-block.ts';
import { useReplayed, useTimeline } from '../replay/use-replayed.ts';
import { useWords } from '../words/use-words.ts';
import type { DeviationView, FindingView } from '../work/views.ts';

const NO_FINDINGS: readonly FindingView[] = [];

export const PictureBeside = (): ReactNode => {
  const words = useWords().sheet;
  const { sheet } = useTools();
  const answer = useOnSheet((s) => s.sheet);
  const chapter = useOnSheet((s) => s.chapter);
  const chosen = useOnSheet((s) => s.chosen);
  const pointed = useOnSheet((s) => s.pointed);
  const block = useOnSheet((s) => s.block);
  const lengthUnit = useOnSheet((s) => s.lengthUnit);
  const input = useInput();
  const moment = useOnSheet((s) => s.moment);
  const timeline = useTimeline(answer?.schedule, answer?.program);
  const replayed = useReplayed(timeline, answer?.program, moment);
  const deviations = useDeviations();
  const tolerance = input['tolerance'] ?? defaultOf('tolerance');
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: by keyboard one goes from the note to the picture
    <section className="beside" aria-label={words.picture} onClick={() => showNote(sheet.store.getState().pointed)}>
      <PictureSide
        picture={answer?.picture}
        chapter={chapter}
        findings={answer?.findings ?? NO_FINDINGS}
        lengthUnit={lengthUnit}
        chosen={chosen}
        pointed={pointed}
        deviations={deviations}
        tolerance={typeof tolerance === 'number' ? tolerance : undefined}
        sizes={answer?.shape?.sizes}
        moves={answer?.program?.moves}
        kerf={answer?.program?.kerf}
        cutUpTo={replayed?.cutUpTo}
        wire={replayed?.wire}
        fallen={replayed?.fallen}
        currentBlock={replayed?.block ?? block}
        input={input}
        onOverride={(name, change) => sheet.actions.edit(name, change)}
        onChoose={(owner) => sheet.actions.choose(owner)}
        onPoint={(id) => sheet.store.setState(id === undefined ? { pointed: undefined } : { pointed: id })}
        onBlock={(at) => showBlock(sheet, timeline, at)}
      />
    </section>
  );
};

/** A mark that was clicked leads to its note in the margin. */
const showNote = (id: string | undefined): void => {
  if (id !== undefined) document.getElementById(`note-${id}`)?.scrollIntoView({ block: 'nearest' });
};

/** Asked for when the chapter of the proof is in view, and again with every answer. */
const useDeviations = (): readonly DeviationView[] | undefined => {
  const { sheet } = useTools();
  const answer = useOnSheet((s) => s.sheet);
  const wanted = useOnSheet((s) => s.chapter === 'proof');
  const [deviations, setDeviations] = useState<readonly DeviationView[] | undefined>();
  useEffect(() => {
    const loops = (answer?.picture?.contours ?? []).filter((c) => c.state !== undefined).map((c) => c.id);
    if (!wanted || loops.length === 0) return;
    let newest = true;
    const worker = sheet.worker();
    void Promise.all(loops.map((loop) => worker.deviation(loop))).then((all) => {
      if (newest) setDeviations(all.filter((d) => d !== undefined));
    });
    return () => {
      newest = false;
    };
  }, [sheet, answer, wanted]);
  return deviations;
};

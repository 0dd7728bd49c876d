/** The open sheet: answer and chapters to read, the picture beside them, a line on top that stays. */
import { type ReactNode, useCallback, useEffect, useMemo, useRef, useState } from 'react';
import type { ShopRecord } from '../../server/message/answers.ts';
import { listsOf } from '../fields/lists.ts';
import { type Tools, ToolsContext, useNumbersOf } from '../fields/tools.ts';
import { takePrograms } from '../handout/take-programs.ts';
import { useDoor } from '../jobs/drop-anywhere.tsx';
import { type OpenSheet, useSheet } from '../state/open-sheet.ts';
import { Answer } from './answer.tsx';
import { Chapters } from './chapters.tsx';
import { PictureBeside } from './picture-beside.tsx';
import { Notices, StepBar } from './step-bar.tsx';
import { useChapterInView } from './use-chapter-in-view.ts';
import { useSheetKeys } from './use-sheet-keys.ts';
import './sheet.css';
import './chapters.css';
import { useReader, useWords } from '../words/use-words.ts';

interface SheetViewProps {
  readonly sheet: OpenSheet;
  readonly shop: ShopRecord['shop'] | undefined;
}

export const SheetView = ({ sheet, shop }: SheetViewProps): ReactNode => {
  const tools = useMadeTools(sheet, shop);
  const name = useSheet(sheet, (s) => s.record?.name) ?? '';
  useChapterInView(sheet);
  useSheetKeys(sheet);
  useProgramsDropped(sheet);
  return (
    <ToolsContext value={tools}>
      <StepBar />
      <main className="sheet" id="content" tabIndex={-1}>
        <div className="column">
          <h1 className="job-name">{name}</h1>
          <Notices />
          <Answer />
          <Chapters />
        </div>
        <PictureBeside />
      </main>
    </ToolsContext>
  );
};

/** A program that is dropped anywhere on the sheet is held against its drawing. */
const useProgramsDropped = (sheet: OpenSheet): void => {
  const { takeOver } = useDoor();
  const words = useWords().program;
  useEffect(() => takeOver((programs) => void takePrograms(sheet, programs, words)), [sheet, takeOver, words]);
};

const useMadeTools = (sheet: OpenSheet, shop: ShopRecord['shop'] | undefined): Tools => {
  const numbers = useNumbersOf(sheet);
  const reader = useReader();
  const lists = useMemo(() => listsOf(shop, reader), [shop, reader]);
  const [whyPlace, setWhyPlace] = useState('answer');
  const asked = useRef<HTMLElement | undefined>(undefined);
  const closeWhy = useCallback(() => {
    sheet.store.setState({ asking: undefined });
    asked.current?.focus();
  }, [sheet]);
  const ask = useCallback(
    (key: string, place: string, from: HTMLElement) => {
      const again = sheet.store.getState().asking === key;
      asked.current = from;
      setWhyPlace(place);
      sheet.store.setState({ asking: again ? undefined : key });
    },
    [sheet],
  );
  return useMemo(() => ({ sheet, numbers, lists, whyPlace, ask, closeWhy }), [sheet, numbers, lists, whyPlace, ask, closeWhy]);
};

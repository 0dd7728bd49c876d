/** What every part of an open sheet works with: the sheet, numbers in the user's units, the shop's lists, and the why that is open. */
import { createContext, useContext, useMemo } from 'react';
import { type Numbers, numbersIn } from '../../text/print/reader.ts';
import type { Input } from '../state/input.ts';
import { type OpenSheet, useSheet } from '../state/open-sheet.ts';
import type { SheetState } from '../state/sheet-state.ts';
import type { Lists } from './lists.ts';

export interface Tools {
  readonly sheet: OpenSheet;
  readonly numbers: Numbers;
  readonly lists: Lists;
  /** Where the open why is shown: beneath the sentence or the table in which it was asked. */
  readonly whyPlace: string;
  /** Asks why; asked again it closes. `from` gets the focus back. */
  readonly ask: (key: string, place: string, from: HTMLElement) => void;
  readonly closeWhy: () => void;
}

export const ToolsContext = createContext<Tools | undefined>(undefined);

export const useTools = (): Tools => {
  const tools = useContext(ToolsContext);
  if (tools === undefined) throw new Error('Parts of the sheet are drawn on an open sheet only.');
  return tools;
};

export const useOnSheet = <T>(select: (state: SheetState) => T): T => useSheet(useTools().sheet, select);

const NOTHING: Input = {};
export const useInput = (): Input =>
  useOnSheet((s) =>
    s.record === undefined ? NOTHING : (s.record.steps[Math.min(s.record.cursor, s.record.steps.length - 1)]?.input ?? NOTHING),
  );

export const useNumbersOf = (sheet: OpenSheet): Numbers => {
  const lengthUnit = useSheet(sheet, (s) => s.lengthUnit);
  const finishUnit = useSheet(sheet, (s) => s.finishUnit);
  const currency = useSheet(sheet, (s) => s.sheet?.currency);
  return useMemo(() => numbersIn({ lengthUnit, finishUnit, currency }), [lengthUnit, finishUnit, currency]);
};

/** Keeps the answer as the core told it, and shows it in the units that are chosen, again when others are. */
import type { StoreApi } from 'zustand/vanilla';
import type { Reader } from '../../text/reader.ts';
import { printedSheet, type Tell, tellIn } from '../work/sheet-for-reader.ts';
import type { SheetInTexts } from '../work/views.ts';
import { readerOf } from './preferences.ts';
import type { SheetState } from './sheet-state.ts';

export interface Telling {
  /** Together with what else changes with it, so that the page is drawn once. */
  readonly show: (sheet: SheetInTexts, beside: Partial<SheetState>) => void;
  readonly again: () => void;
  readonly tell: Tell;
}

export const startTelling = (store: StoreApi<SheetState>): Telling => {
  let plain: SheetInTexts | undefined;
  const reader = (): Reader => ({ ...readerOf(store.getState()), drawn: plain?.picture?.millimetres });
  const again = (beside: Partial<SheetState> = {}): void => {
    if (plain !== undefined) store.setState({ ...beside, sheet: printedSheet(plain, reader()) });
  };
  return {
    show: (sheet, beside) => {
      plain = sheet;
      again(beside);
    },
    again: () => again(),
    tell: (said) => tellIn(reader())(said),
  };
};

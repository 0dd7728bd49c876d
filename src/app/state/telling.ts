/** Keeps the answer as the core told it, and shows it in the units that are chosen, again when others are. */
import type { StoreApi } from 'zustand/vanilla';
import { tellerOf } from '../../text/print/reader.ts';
import { toldSheet } from '../work/sheet-for-reader.ts';
import type { Sheet } from '../work/views.ts';
import { namesOf } from './names.ts';
import type { SheetState } from './sheet-state.ts';

export interface Telling {
  /** Together with what else changes with it, so that the page is drawn once. */
  readonly show: (sheet: Sheet, beside: Partial<SheetState>) => void;
  readonly again: () => void;
  readonly tell: (text: string) => string;
}

export const startTelling = (store: StoreApi<SheetState>, shop: Readonly<Record<string, unknown>>): Telling => {
  const names = namesOf(shop);
  let plain: Sheet | undefined;
  const teller = () => tellerOf(store.getState(), names, plain?.picture?.millimetres);
  const tell = (text: string): string => teller()(text);
  const again = (beside: Partial<SheetState> = {}): void => {
    if (plain !== undefined) store.setState({ ...beside, sheet: toldSheet(plain, teller()) });
  };
  return {
    show: (sheet, beside) => {
      plain = sheet;
      again(beside);
    },
    again: () => again(),
    tell,
  };
};

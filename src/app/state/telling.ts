/** Keeps the answer as the core told it, and shows it in the units that are chosen, again when others are. */
import type { StoreApi } from 'zustand/vanilla';
import { tellerOf } from '../words/numbers.ts';
import { toldSheet } from '../work/told-sheet.ts';
import type { Sheet } from '../work/views.ts';
import { namesOf } from './names.ts';
import type { SheetState } from './sheet-state.ts';

export interface Telling {
  readonly show: (sheet: Sheet) => void;
  readonly again: () => void;
  readonly tell: (text: string) => string;
}

export const startTelling = (store: StoreApi<SheetState>, shop: Readonly<Record<string, unknown>>): Telling => {
  const names = namesOf(shop);
  let plain: Sheet | undefined;
  const teller = () => tellerOf(store.getState(), names, plain?.picture?.millimetres);
  const tell = (text: string): string => teller()(text);
  const again = (): void => {
    if (plain !== undefined) store.setState({ sheet: toldSheet(plain, teller()) });
  };
  return {
    show: (sheet) => {
      plain = sheet;
      again();
    },
    again,
    tell,
  };
};

/** How this user wants things shown, kept in the browser for every page. */
import type { Language } from '../../text/language.ts';
import { tellingFor } from '../../text/print/reader.ts';
import type { Reader } from '../../text/reader.ts';

export interface Preferences {
  readonly lengthUnit: 'mm' | 'inch';
  readonly finishUnit: 'µm' | 'µin';
  readonly theme: 'as the system' | 'light' | 'dark';
}

const USUAL: Preferences = { lengthUnit: 'mm', finishUnit: 'µm', theme: 'as the system' };

/** The user's own units and theme, for every sheet in this browser. */
export const preferences = (): Preferences => ({ ...USUAL, ...(kept('preferences') as Partial<Preferences> | undefined) });

export const keepPreferences = ({ lengthUnit, finishUnit, theme }: Preferences): void => {
  try {
    localStorage.setItem('preferences', JSON.stringify({ lengthUnit, finishUnit, theme }));
  } catch {
    // A browser that keeps nothing: units are chosen anew at the next visit.
  }
};

/** A language other than English, as a whole; the page has no control for it, since no language is there yet. */
const language = (): Language | undefined => kept('language') as Language | undefined;

const kept = (key: string): unknown => {
  try {
    return JSON.parse(localStorage.getItem(key) ?? 'null') ?? undefined;
  } catch {
    return undefined;
  }
};

/** Who reads the page: in the units that are chosen, with the number marks of the browser. */
export const readerOf = (units: Pick<Preferences, 'lengthUnit' | 'finishUnit'>): Reader => ({ ...tellingFor(units), language: language() });

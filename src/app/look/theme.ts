/** Puts the theme that the user chose on the page; the system's own when none was chosen. */
import type { SheetState } from '../state/sheet-state.ts';

export const wear = (theme: SheetState['theme']): void => {
  const { dataset } = document.documentElement;
  if (theme === 'as the system') delete dataset['theme'];
  else dataset['theme'] = theme;
};

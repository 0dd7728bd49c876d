/** Puts the theme that the user chose on the page; the system's own, also when that changes, while none was chosen. */
import type { SheetState } from '../state/sheet-state.ts';

type Theme = SheetState['theme'];

let chosen: Theme = 'as the system';

const system = matchMedia('(prefers-color-scheme: dark)');

const put = (): void => {
  document.documentElement.dataset['theme'] = chosen === 'as the system' ? (system.matches ? 'dark' : 'light') : chosen;
};
system.addEventListener('change', put);

export const wear = (theme: Theme): void => {
  chosen = theme;
  put();
};

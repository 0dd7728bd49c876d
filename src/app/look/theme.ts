/** Puts the theme that the user chose on the page; the system's own, also when that changes, while none was chosen. */
export type Theme = 'as the system' | 'light' | 'dark';

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

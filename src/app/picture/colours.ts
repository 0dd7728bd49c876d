/** The colours of the picture by name, as the page's style sheet gives them, with our own where it gives none. */

export const COLOUR_NAMES = [
  'ink',
  'paper',
  'muted',
  'accent',
  'pencil',
  'pass-1',
  'pass-2',
  'pass-3',
  'pass-4',
  'pass-5',
  'metal',
  'gone',
  'over',
  'under',
  'grid',
] as const;
export type ColourName = (typeof COLOUR_NAMES)[number];
export type Colours = Readonly<Record<ColourName, string>>;

export const LIGHT: Colours = {
  ink: '#1c1a17',
  paper: '#fbfaf6',
  muted: '#6b655b',
  accent: '#0b5cad',
  pencil: '#9a3412',
  'pass-1': '#12305c',
  'pass-2': '#2f5d9b',
  'pass-3': '#5585c2',
  'pass-4': '#7ba4d6',
  'pass-5': '#9dbde3',
  metal: '#e9e5da',
  gone: '#f6f3ea',
  over: '#2166ac',
  under: '#b35806',
  grid: '#d9d4c7',
};

export const DARK: Colours = {
  ink: '#ece7dc',
  paper: '#1d1c1a',
  muted: '#a59e90',
  accent: '#7db8f2',
  pencil: '#f0a184',
  'pass-1': '#cfe1fb',
  'pass-2': '#a3c4ee',
  'pass-3': '#7ba5dc',
  'pass-4': '#5c88c2',
  'pass-5': '#476da3',
  metal: '#33312d',
  gone: '#262522',
  over: '#67a9e0',
  under: '#e59b4c',
  grid: '#3d3a35',
};

/** `read` gives the value of a CSS variable, empty where there is none. */
export const coloursFrom = (read: (variable: string) => string, dark: boolean): Colours => {
  const own = dark ? DARK : LIGHT;
  return Object.fromEntries(COLOUR_NAMES.map((name) => [name, read(`--${name}`).trim() || own[name]])) as unknown as Colours;
};

/** Between two colours written #rrggbb; 0 gives the first. As the style sheet's color-mix in srgb does. */
export const mixed = (from: string, to: string, share: number): string => {
  const parts = [1, 3, 5].map((at) => {
    const [a, b] = [Number.parseInt(from.slice(at, at + 2), 16), Number.parseInt(to.slice(at, at + 2), 16)];
    return Math.round(a + (b - a) * share)
      .toString(16)
      .padStart(2, '0');
  });
  return `#${parts.join('')}`;
};

/** What is said around a part by numbers: its form, its sizes, and the list of what there is. */
/** Names of keys that do not read well as they are written. */
const NAMES: Readonly<Record<string, string>> = {
  fit: 'Arcs fitted within',
  font: 'Font file',
  heightOf: 'Height is that of',
  share: 'Share of the clearance',
};

export const shapeWords = {
  begin: 'A part by numbers',
  beginHelp: 'No drawing came, but a line of text: choose what it is. It begins with numbers of its own, which you then change.',
  sizes: 'What one would measure',
  sizesHelp: 'Point at a size, or step to it, to see how it is taken.',
  saveDrawing: 'Save the drawing as',
  size: 'Size',
  is: 'Is',
  limits: 'From … to',
  yes: 'yes',
  no: 'no',
  /** 'pressureAngle' -> 'Pressure angle'. */
  key: (key: string): string => NAMES[key] ?? spoken(key),
} as const;

const spoken = (key: string): string => {
  const words = key.replace(/[A-Z]/g, (c) => ` ${c.toLowerCase()}`);
  return words.charAt(0).toUpperCase() + words.slice(1);
};

/** The pages of docs/findings: one for each layer, written from what the layers' manuals say. */
import { certain } from '../src/sequence/sequence.ts';
import type { ManualChapter, ManualEntry } from '../src/text/manual.ts';
import { printPlain } from '../src/text/print/print.ts';
import { severityNames } from '../src/text/severity.ts';

interface Layer {
  /** The folder below src/, and the name of the page. */
  readonly folder: string;
  readonly title: string;
  /** Headings of its parts, where it has more than one chapter. */
  readonly parts?: Readonly<Record<string, string>>;
}

const LAYERS: readonly Layer[] = [
  { folder: 'drawing', title: 'Reading a drawing' },
  {
    folder: 'shapes',
    title: 'Parts by number',
    parts: {
      shapes: 'Any shape',
      'shapes/plain': 'Plain shapes',
      'shapes/teeth': 'Gears and racks',
      'shapes/spline': 'Splines and serrations',
      'shapes/keyway': 'Bores and keyways',
      'shapes/wheel': 'Sprockets and ratchets',
      'shapes/curve': 'Rotors and spirals',
      'shapes/tool': 'Form tools',
      'shapes/lettering': 'Letters',
    },
  },
  { folder: 'physics', title: 'Spark, wire and material' },
  { folder: 'plan', title: 'Planning the cut' },
  { folder: 'nest', title: 'Laying pieces into a plate' },
  {
    folder: 'nc',
    title: 'Programs',
    parts: { 'nc/dialect': 'The dialect of a control', 'nc/write': 'Writing a program', 'nc/read': 'Reading a program' },
  },
  { folder: 'proof', title: 'Proving a program' },
  { folder: 'accuracy', title: 'Accuracy and correction' },
  { folder: 'estimate', title: 'Hours, price and schedule' },
  { folder: 'job', title: 'The job' },
];

/** Text by file name; a chapter that no layer takes is an error, so that no finding is left without its page. */
export const manualPages = (chapters: readonly ManualChapter[]): Readonly<Record<string, string>> => {
  const homeless = chapters.filter((c) => !LAYERS.some((layer) => belongs(c, layer)));
  if (homeless.length > 0) throw new Error(`no page for ${homeless.map((c) => c.folder).join(', ')}: name it in tools/manual-pages.ts`);
  const pages = LAYERS.map((layer) => [`${layer.folder}.md`, page(layer, chapters)] as const);
  return { 'README.md': contents(chapters), ...Object.fromEntries(pages) };
};

const belongs = ({ folder }: ManualChapter, layer: Layer): boolean =>
  layer.parts === undefined ? folder === layer.folder : Object.hasOwn(layer.parts, folder);

const HOW = 'Written by `npm run manual` from the manual of each layer (`src/*/manual.ts`): change it there.';

const contents = (chapters: readonly ManualChapter[]): string => {
  const lines = LAYERS.map((layer) => {
    const count = chapters.filter((c) => belongs(c, layer)).reduce((sum, c) => sum + Object.keys(c.catalogue).length, 0);
    return `- [${layer.title}](${layer.folder}.md): ${count}`;
  });
  return `# Findings\nWhat each finding means, why it matters in the shop, and what to do. ${HOW}\n\n${lines.join('\n')}\n`;
};

const page = (layer: Layer, chapters: readonly ManualChapter[]): string => {
  const own = chapters.filter((c) => belongs(c, layer));
  const body = own.flatMap((c) => {
    const part = layer.parts?.[c.folder];
    const level = part === undefined ? '##' : '###';
    return [...(part === undefined ? [] : [`## ${part}`]), ...Object.keys(c.catalogue).map((code) => entry(c, code, level))];
  });
  return `${[`# ${layer.title}`, HOW, ...body].join('\n\n')}\n`;
};

const entry = ({ catalogue, manual }: ManualChapter, code: string, level: string): string => {
  const { title, meaning, matters, remedy } = manual[code] as ManualEntry;
  const severity = printPlain(severityNames[certain(catalogue[code], 'every code is in its catalogue')]);
  const text = [meaning, ...(matters === undefined ? [] : [matters]), `**What to do:** ${remedy}`];
  return [`<a id="${code}"></a>\n${level} ${title}`, `\`${code}\` · ${severity}`, ...text].join('\n\n');
};

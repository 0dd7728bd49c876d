/** The pseudo-language: each English template with accented letters, two fifths longer, between brackets, its holes as they are. */
import type { Language } from '../../src/text/language.ts';
import { nouns } from '../../src/text/noun.ts';
import { describedKeys } from '../../tools/described-keys.ts';
import { sourceFiles } from '../../tools/source-files.ts';
import { type ListedTemplate, templatesIn } from '../../tools/templates.ts';

/** Letters with marks that can be taken off again, as comments of a program do. */
const LETTERS = 'áḃçďéḟĝĥíĵķļṁñöṗɋŕšţûṽŵẋýž';
const CAPITALS = 'ÁḂÇĎÉḞĜĤÍĴĶĻṀÑÖṖɊŔŠŢÛṼŴẊÝŽ';

export const accented = (text: string): string =>
  text.replace(/[a-z]/g, (c) => LETTERS.charAt(c.charCodeAt(0) - 97)).replace(/[A-Z]/g, (c) => CAPITALS.charAt(c.charCodeAt(0) - 65));

/** What makes a sentence longer, in words, so that it can be broken where a sentence can. */
const LONGER = accented('lorem ipsum dolor sit amet consetetur sadipscing elitr sed diam nonumy eirmod tempor ');
const SHARE = 0.4;

const HOLE = /(\{[^}]*\})/;

/** '{loop} does not close.' -> '[{loop} ďöéš ñöţ çļöšé. ļöŕéṁ]'; blanks at the ends stay there, a template without letters stays whole. */
export const pseudo = (template: string): string => {
  const [, before = '', inner = '', after = ''] = /^(\s*)(.*?)(\s*)$/s.exec(template) ?? [];
  const pieces = inner.split(HOLE);
  const words = pieces.filter((_, i) => i % 2 === 0).join('');
  if (!/[A-Za-z]/.test(words)) return template;
  const need = Math.ceil(words.length * SHARE);
  const longer = LONGER.repeat(Math.ceil(need / LONGER.length))
    .slice(0, need)
    .trim();
  return `${before}[${pieces.map((p, i) => (i % 2 === 0 ? accented(p) : p)).join('')} ${longer}]${after}`;
};

/** Every sentence of the house, as `npm run templates` lists them. */
export const listedTemplates = (): readonly Said[] => [
  ...templatesIn(sourceFiles('.', ['src']).filter((f) => !/\.(test|fixture)\.tsx?$/.test(f.path))).templates,
  ...describedKeys(),
];

type Said = Pick<ListedTemplate, 'key' | 'template'>;

const JOINTS = { to: ' to ', by: ' by ', or: ' or ', and: ' and ' } as const;

const WEEKDAYS = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'];
const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

export const pseudoLanguage = (templates: readonly Said[]): Language => ({
  code: 'qps-ploc',
  templates: Object.fromEntries(templates.map(({ key, template }) => [key, pseudo(template)])),
  nouns: Object.fromEntries(
    Object.entries(nouns).map(([noun, [one, other]]) => [noun, { '': { one: pseudo(one), other: pseudo(other) } }]),
  ),
  junctions: { and: pseudo(' and '), or: pseudo(' or '), comma: ', ' },
  joints: Object.fromEntries(Object.entries(JOINTS).map(([joint, words]) => [joint, pseudo(words)])),
  below: pseudo('less than '),
  at: pseudo('at '),
  calendar: { weekdays: WEEKDAYS.map(accented), months: MONTHS.map(accented) },
});

/** The manual pages of the findings, shipped with the page; loaded when the first of them is asked for. */

const PAGES = import.meta.glob<string>('../../../docs/findings/*.md', { query: '?raw', import: 'default', eager: true });

export type ManualBlock =
  | { readonly kind: 'title' | 'text'; readonly text: string }
  | { readonly kind: 'list'; readonly items: readonly string[] };

/** None where a finding has no page. */
export const manualPage = (code: string): readonly ManualBlock[] | undefined => {
  const text = PAGES[`../../../docs/findings/${code}.md`];
  return text === undefined ? undefined : blocksOf(text);
};

/** Title, paragraphs and lists: all that our own pages use. */
const blocksOf = (text: string): readonly ManualBlock[] =>
  text
    .trim()
    .split(/\n\s*\n/)
    .map((part): ManualBlock => {
      if (part.startsWith('#')) return { kind: 'title', text: part.replace(/^#+\s*/, '') };
      const lines = part.split('\n');
      return /^[-*] /.test(part)
        ? { kind: 'list', items: part.split(/\n(?=[-*] )/).map((item) => item.replace(/^[-*] /, '').replace(/\s*\n\s*/g, ' ')) }
        : { kind: 'text', text: lines.join(' ') };
    });

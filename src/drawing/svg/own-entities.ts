/** The entities that an SVG file defines for itself: words of plain text, as drawing programs write them for their name spaces. */

/** Why definitions are not expanded. */
export type Unexpandable = 'external' | 'nested' | 'other' | 'too large';

export type OwnEntities =
  | { readonly kind: 'plain'; readonly entities: ReadonlyMap<string, string> }
  | { readonly kind: 'refused'; readonly why: Unexpandable };

/** Characters in all definitions of a file together. */
export const MOST_DEFINED = 4096;
/** Characters that all uses of them come to. */
export const MOST_EXPANDED = 1_000_000;

/**
 * What stands between [ and ] of a document type. A value with & could grow with every level and one with < could bring elements, so
 * that neither is expanded, nor what stands in another file. The first definition of a name counts, as the standard has it.
 */
export const ownEntities = (declaration: string): OwnEntities => {
  const open = declaration.indexOf('[');
  if (open < 0) return { kind: 'plain', entities: new Map() };
  const subset = declaration.slice(open + 1, declaration.lastIndexOf(']'));
  if (subset.length > MOST_SUBSET) return { kind: 'refused', why: 'too large' };
  const entities = new Map<string, string>();
  let defined = 0;
  let rest = afterIdle(subset);
  while (rest !== '') {
    const [whole, name, , double, single] = PLAIN.exec(rest) ?? [];
    const value = double ?? single;
    if (whole === undefined || name === undefined || value === undefined) return { kind: 'refused', why: reasonOf(rest) };
    if (/[&<%]/.test(value)) return { kind: 'refused', why: 'nested' };
    defined += value.length;
    if (defined > MOST_DEFINED) return { kind: 'refused', why: 'too large' };
    if (!entities.has(name)) entities.set(name, value);
    rest = afterIdle(rest.slice(whole.length));
  }
  return { kind: 'plain', entities };
};

/** Makes the words known to a parser that looks them up in a table, and counts what their uses come to. */
export const expandCounted = (table: Record<string, string>, entities: ReadonlyMap<string, string>, tooMuch: () => void): void => {
  let expanded = 0;
  // The five of XML itself stay what they are.
  for (const [name, value] of entities)
    if (!(name in table))
      Object.defineProperty(table, name, {
        get: () => {
          expanded += value.length;
          if (expanded <= MOST_EXPANDED) return value;
          tooMuch();
          return '';
        },
      });
};

const reasonOf = (rest: string): Unexpandable => {
  if (/^<!ENTITY\s+(%\s+)?[^\s"'>]+\s+(SYSTEM|PUBLIC)\b/.test(rest)) return 'external';
  return 'other';
};

const afterIdle = (text: string): string => text.replace(IDLE, '');

/** Blanks, comments, and what says nothing that is needed here: which elements may stand where, and name spaces. */
const IDLE =
  /^(\s+|<!--[\s\S]*?-->|<!ELEMENT\s[^>"'&]*>|<!ATTLIST\s+[\w:.-]+\s+xmlns(:\w+)?\s+CDATA\s+(#FIXED\s+)?("[^"<&]*"|'[^'<&]*')\s*>)+/;
const PLAIN = /^<!ENTITY\s+([A-Za-z_:][\w:.-]*)\s+("([^"]*)"|'([^']*)')\s*>/;
/** Characters between [ and ], comments and all. */
const MOST_SUBSET = 65_536;

/** The elements of an SVG file as a tree, read strictly; of a document type's own definitions only plain words are expanded. */

import { SaxesParser } from 'saxes';
import { count, name } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Budget } from '../budget.ts';
import type { Ledger } from '../ledger.ts';
import { expandCounted, MOST_DEFINED, MOST_EXPANDED, ownEntities, type Unexpandable } from './own-entities.ts';

export interface Element {
  /** Without the prefix of the SVG namespace; with it for all others, which nobody here draws. */
  readonly name: string;
  readonly attributes: ReadonlyMap<string, string>;
  /** The properties of its `style` attribute. */
  readonly styles: ReadonlyMap<string, string>;
  /** What a drawing program calls it, if it does. */
  readonly label: string | undefined;
  readonly children: Element[];
  /** What is written in a text, of its parts too. */
  readonly words: string[];
  /** Line of the file, from 1. */
  readonly line: number;
}

export interface Markup {
  readonly root: Element | undefined;
  readonly byId: ReadonlyMap<string, Element>;
  /** True when the file was well-formed to its end. */
  readonly whole: boolean;
}

/** What came before a fault is kept; a document type that defines more than plain words is refused. */
export const markupOf = (text: string, budget: Budget, told: Ledger): Markup => {
  const parser = new SaxesParser();
  const byId = new Map<string, Element>();
  const open: Element[] = [];
  let root: Element | undefined;
  let fault: { readonly why: string; readonly line: number } | undefined;
  let refused = false;
  let started = 1;
  parser.on('doctype', (declaration) => {
    const given = ownEntities(declaration);
    const stop = (why: Unexpandable): void => {
      refused ||= tellRefusal(why, parser.line, told);
    };
    if (given.kind === 'refused') stop(given.why);
    else expandCounted(parser.ENTITIES, given.entities, () => stop('too large'));
  });
  parser.on('opentagstart', () => {
    started = parser.line;
  });
  parser.on('opentag', (tag) => {
    if (refused || budget.spent()) return;
    const element = elementOf(tag.name, attributesOf(tag.attributes), started);
    const id = element.attributes.get('id');
    if (id !== undefined && !byId.has(id)) byId.set(id, element);
    const parent = open.at(-1);
    if (parent === undefined) root ??= element;
    else parent.children.push(element);
    open.push(element);
    budget.nesting(open.length);
    budget.work(1);
  });
  parser.on('text', (words) => {
    open.find((element) => element.name === 'text')?.words.push(words);
  });
  parser.on('closetag', () => {
    open.pop();
  });
  const stopped = (): boolean => refused || budget.spent();
  try {
    for (let at = 0; at < text.length && !stopped(); at += CHUNK) parser.write(text.slice(at, at + CHUNK));
    if (!stopped()) parser.close();
  } catch (error) {
    // The parser throws at the first fault; going on would only guess.
    fault = { why: String(error instanceof Error ? error.message : error).replace(/^\d+:\d+:\s*/, ''), line: parser.line };
    if (!stopped()) tellFault(fault, told);
  }
  return { root: stopped() ? undefined : root, byId, whole: fault === undefined };
};

/** Always true: the reading stops. */
const tellRefusal = (why: Unexpandable, line: number, told: Ledger): true => {
  told.add('doctype-refused', refusals[why], {
    place: { kind: 'line', line },
    done: say`Nothing was read: such definitions can grow without bound.`,
    remedy: say`Save the file again as plain SVG.`,
  });
  return true;
};

const tellFault = ({ why, line }: { readonly why: string; readonly line: number }, told: Ledger): void =>
  told.add('markup-broken', say`The file is not well-formed: ${{ parser: name(why) }}`, {
    place: { kind: 'line', line },
    done: say`What stands before was read.`,
    remedy: say`Ask for the file again.`,
  });

const CHUNK = 1 << 16;

/** All that is asked of an element again and again, however often it is used, is worked out once. */
const elementOf = (name: string, attributes: ReadonlyMap<string, string>, line: number): Element => ({
  name: localName(name),
  attributes,
  styles: stylesOf(attributes.get('style') ?? ''),
  label: [...attributes].find(([key]) => key.endsWith(':label'))?.[1],
  children: [],
  words: [],
  line,
});

const stylesOf = (style: string): ReadonlyMap<string, string> =>
  new Map(
    style.split(';').flatMap((part) => {
      const colon = part.indexOf(':');
      if (colon < 1) return [];
      return [
        [
          part.slice(0, colon).trim(),
          part
            .slice(colon + 1)
            .replace('!important', '')
            .trim(),
        ] as const,
      ];
    }),
  );

const localName = (name: string): string => (name.startsWith('svg:') ? name.slice(4) : name);

/** A name can stand for anything, '__proto__' too, so they live in a Map. */
const attributesOf = (given: Readonly<Record<string, unknown>>): ReadonlyMap<string, string> =>
  new Map(Object.entries(given).map(([name, value]) => [name, String(value)]));

/** Bytes to text by the mark at their start, or by what the XML declaration says, or as UTF-8. */
export const svgText = (bytes: Uint8Array): string => {
  const head = String.fromCharCode(...bytes.subarray(0, 200));
  const named = /^\s*<\?xml[^>]*encoding\s*=\s*["']([A-Za-z0-9._-]+)["']/.exec(head)?.[1];
  const marked = bytes[0] === 0xff && bytes[1] === 0xfe ? 'utf-16le' : bytes[0] === 0xfe && bytes[1] === 0xff ? 'utf-16be' : undefined;
  try {
    return new TextDecoder(marked ?? named ?? 'utf-8').decode(bytes);
  } catch {
    return new TextDecoder('utf-8').decode(bytes);
  }
};

const refusals = phrases('doctype', {
  external: say`The file takes definitions from another file in its DOCTYPE.`,
  nested: say`The file defines entities of its own in its DOCTYPE that hold others, or markup.`,
  other: say`The DOCTYPE of the file holds something other than entities of plain text.`,
  'too large': say`The file defines more text in its DOCTYPE than is expanded here: ${{ defined: count(MOST_DEFINED) }} characters of definitions, ${{ expanded: count(MOST_EXPANDED) }} where they are used.`,
});

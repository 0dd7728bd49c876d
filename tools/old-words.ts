/** Words that the trade does not use so, each with its own for it: one word for one thing, in all that is said. */
import type { ListedTemplate } from './templates.ts';

/** What was said, and what is said now; docs/GLOSSARY.md has the meanings. */
const OLD: readonly (readonly [old: RegExp, use: string])[] = [
  [/\btold\b|\bunsaid\b|\bas you said\b|you said so/i, 'stated, listed, given; not specified'],
  [/\bheld against\b/i, 'checked against'],
  [/\bbegun (on|from|at)\b/i, 'started'],
  [/\bon the clock\b|o['’]clock/i, 'schedule, time'],
  [/\b(no|some)body\b|\b(machine|time|cuts|runs|hours|night) alone\b|\balone at night\b/i, 'unattended, attended'],
  [/\bway of the wire\b|\bway in\b|\btrace of\b|\bthe trace\b/i, 'wire path, lead-in, entry mark'],
  [/\bburn(t|s|ed)? (out|away|without|whole|it all)\b/i, 'no-core cut'],
  [/\beroded\b/i, 'EDM-drilled'],
  [/\brungs?\b/i, 'energy setting'],
  [/\bzero of the (program|drawing)\b/i, 'program zero, drawing origin'],
  [/\bmended\b|\bmend\b/i, 'repaired'],
  [/\bmetal (is |are )?gone\b|\bmetal left (on|per)\b|\bof metal (is|are) left per\b/i, 'overcut, stock left'],
  [/\bthe house\b/i, 'built-in'],
  [/\bto be expected\b/i, 'expected'],
  [/\bin all\b(?! of)/i, 'total'],
  [/\bdear(er|est)?\b/i, 'expensive'],
  [/\broot kilogram\b/i, '√(mass in kg)'],
  [/\brunner-up\b/i, 'next cheapest'],
  [/(?<!slug that )\bdrops? out\b(?! as a slug)/i, 'not suitable'],
  [/\bas you asked\b|\b(is|are) asked( for)?\b(?=[.,;:]|$)/i, 'required, as specified'],
  [/\brun on\b/i, 'cycle start'],
  [/^(to be asked|take care|cannot be done|note well|for the record)\b/i, 'Query, Warning, Not possible, Note'],
];

/** Each sentence that says a thing in an old word: its key, the word, and what to say. What stands in holes is not looked at. */
export const oldWords = (templates: readonly Pick<ListedTemplate, 'key' | 'template'>[]): readonly string[] =>
  templates.flatMap(({ key, template }) => {
    const words = template.replace(/\{\w+\}/g, '…');
    return OLD.flatMap(([old, use]) => {
      const found = old.exec(words)?.[0];
      return found === undefined ? [] : [`${key}: '${found}' is said: ${use}`];
    });
  });

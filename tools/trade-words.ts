/** Words that are coined where the trade has its own, each with what to write instead: one word for one thing, in all that is printed. docs/GLOSSARY.md has the meanings. */

export interface Coined {
  readonly word: RegExp;
  readonly use: string;
}

export const COINED: readonly Coined[] = [
  { word: /\b(told|unsaid)\b|\bsaid\b(?! how)|\bas you said\b|you said so/i, use: 'stated, listed, shown; given, not specified' },
  { word: /\bheld against\b/i, use: 'checked against' },
  { word: /\bwhys\b|\b(a|the|this|its) why\b/i, use: 'calculation, basis' },
  { word: /\bbegun (on|from|at)\b/i, use: 'started from' },
  { word: /\bon the clock\b|o.clock\b/i, use: 'schedule; time' },
  { word: /\b(no|some)body\b/i, use: 'operator' },
  { word: /\b(machine|time|cuts|runs|hours|night) alone\b|\balone at night\b/i, use: 'unattended, attended' },
  { word: /\bways? of the wire\b|\bways? in\b|\b(the trace|trace of)\b/i, use: 'wire path; lead-in; entry mark' },
  { word: /\bburn(t|s|ed)? (out|away|without|whole|it all)\b/i, use: 'no-core cut; cut away' },
  { word: /\beroded\b/i, use: 'EDM-drilled' },
  { word: /\brungs?\b/i, use: 'energy setting' },
  { word: /\bzero of the (program|drawing)\b/i, use: 'program zero; drawing origin' },
  { word: /\bmend(ed)?\b/i, use: 'repaired' },
  {
    word: /\bmetal (is |are )?gone\b|\bmetal (is |are )?left (on|per)\b|(?<!stock (is )?)\bleft on\b|\bcut too deep\b/i,
    use: 'overcut; stock left',
  },
  { word: /\bthe house\b/i, use: 'built-in' },
  { word: /\bto be expected\b/i, use: 'expected' },
  { word: /\bin all\b(?! of)/i, use: 'total' },
  { word: /\bdear(er|est)?\b/i, use: 'expensive' },
  { word: /\broot kilogram/i, use: '√(mass in kg)' },
  { word: /\bmargin\b/i, use: 'markup, where it is added to the cost; border, round a block or plate' },
  // A stack and a drawing are so high.
  { word: /(?<!wide and )\{\} high\b(?! with)|\bmm high\b/i, use: 'thick, of a plate' },
  { word: /\brunner-up\b/i, use: 'next cheapest' },
  { word: /\b(?<!slug that )drops? out\b(?! as a slug)/i, use: 'not suitable' },
  { word: /\bcore pieces?\b/i, use: 'slug' },
  { word: /\bas you asked\b|\b(is|are) asked( for)?\b(?=[.,;:]|$)/i, use: 'required, as specified' },
  { word: /\brun on\b/i, use: 'cycle start' },
  { word: /^(to be asked|take care|cannot be done|note well|for the record)\b/i, use: 'Query, Warning, Not possible, Note' },
  { word: /\b(put|puts|putting) (away|back)\b|\btaken? away\b(?! waste)/i, use: 'move to bin, remove; restore' },
  { word: /\btaken for granted\b|\bin force\b|\bfrom elsewhere\b/i, use: 'assumptions; current; from other sources' },
];

/** What is coined in a template, each with what to write instead. What stands in holes is not looked at. */
export const coinedIn = (template: string): readonly string[] =>
  COINED.flatMap(({ word, use }) => {
    const found = word.exec(template.replace(/\{[^}]*\}/g, '{}'));
    return found === null ? [] : [`'${found[0]}' (${use})`];
  });

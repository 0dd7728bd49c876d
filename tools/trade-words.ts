/** Words that are coined where the trade has its own; each with what to write instead. Looked for in whole sentences, their holes left out. */

export interface Coined {
  readonly word: RegExp;
  readonly use: string;
}

export const COINED: readonly Coined[] = [
  { word: /\b(told|unsaid|said)\b/i, use: 'stated, listed, shown; given, not specified' },
  { word: /\bheld against\b/i, use: 'checked against' },
  { word: /\bwhys\b|\b(a|the|this|its) why\b/i, use: 'calculation, basis' },
  { word: /\bbegun (from|at)\b|\bon the clock\b|\bo.clock\b/i, use: 'started from; schedule; time' },
  { word: /\b(no|some)body\b/i, use: 'unattended, attended, operator' },
  { word: /\bways? of the wire\b|\bways? in\b|\btrace of the entry\b/i, use: 'wire path; lead-in; entry mark' },
  { word: /\bburnt (out|away)\b/i, use: 'no-core cut; cut away' },
  { word: /\beroded\b/i, use: 'EDM-drilled' },
  { word: /\brungs?\b/i, use: 'energy setting' },
  { word: /\bzero of the (program|drawing)\b/i, use: 'program zero; drawing origin' },
  { word: /\bmended\b|\bmetal (is )?gone\b|\bleft on\b|\bcut too deep\b/i, use: 'repaired; overcut; stock left' },
  { word: /\bthe house\b|\bto be expected\b|\bin all\b|\bdear(er|est)?\b/i, use: 'built-in; expected; total; expensive' },
  { word: /\broot kilogram/i, use: '√(mass in kg)' },
  { word: /\bmargin\b/i, use: 'markup, where it is added to the cost; border, round a block or plate' },
  { word: /\{\} high\b|\bmm high\b/i, use: 'thick, of a plate' },
  { word: /\brunner-up\b|\b(?<!slug that )drops out\b(?! as a slug)|\bcore pieces?\b/i, use: 'next cheapest; not suitable; slug' },
  { word: /^(To be asked|Take care|Cannot be done)\b/, use: 'Query, Warning, Not possible' },
  { word: /\b(put|puts|putting) (away|back)\b|\btaken? away\b/i, use: 'move to bin, remove; restore' },
  { word: /\btaken for granted\b|\bin force\b|\bfrom elsewhere\b/i, use: 'assumptions; current; from other sources' },
];

/** What is coined in a template, each with what to write instead. */
export const coinedIn = (template: string): readonly string[] =>
  COINED.flatMap(({ word, use }) => {
    const found = word.exec(template.replace(/\{[^}]*\}/g, '{}'));
    return found === null ? [] : [`'${found[0]}' (${use})`];
  });

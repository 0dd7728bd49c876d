/** What the texts, dimension styles and settings of a file say of its unit, beside what the header gives as one. */

export type System = 'inch' | 'metric';

/** How often something in the file speaks of one system, and how it is written there. */
export interface Signs {
  readonly texts: number;
  readonly styles: number;
  /** Texts and names of styles as they stand in the file, a few of them. */
  readonly samples: readonly string[];
}

export type UnitSigns = Readonly<Record<System, Signs>>;

export interface SignBook {
  /** A text or the text of a dimension. */
  readonly text: (text: string) => void;
  /** A dimension style by its name, and what it prints behind a size. */
  readonly style: (name: string, behind: string) => void;
  /** A setting of the header, as it is to be quoted. */
  readonly setting: (system: System, quoted: string) => void;
  readonly signs: () => UnitSigns;
  /** Whether the words of a title block stand among the texts. */
  readonly titled: () => boolean;
}

export const NO_SIGNS: UnitSigns = {
  inch: { texts: 0, styles: 0, samples: [] },
  metric: { texts: 0, styles: 0, samples: [] },
};

export const signBook = (): SignBook => {
  const counts = {
    inch: { texts: 0, styles: 0, samples: [] as string[] },
    metric: { texts: 0, styles: 0, samples: [] as string[] },
  };
  const note = (system: System, what: 'texts' | 'styles', sample: string): void => {
    const own = counts[system];
    own[what] += 1;
    if (own.samples.length < SAMPLES && !own.samples.includes(sample)) own.samples.push(sample);
  };
  const titles = new Set<string>();
  return {
    text: (text) => {
      const plain = plainText(text);
      const title = TITLE.exec(plain)?.[1]?.toLowerCase();
      if (title !== undefined) titles.add(title);
      if (plain === '' || THREAD.test(plain)) return;
      const [inch, metric] = [INCH.test(plain), METRIC.test(plain)];
      // A size given in both says nothing.
      if (inch !== metric) note(inch ? 'inch' : 'metric', 'texts', plain.slice(0, SHOWN));
    },
    style: (name, behind) => {
      if (/mm|cm/i.test(behind) || METRIC_STYLE.test(name)) note('metric', 'styles', name);
      else if (/["″]|\bin\b/i.test(behind) || /inch/i.test(name)) note('inch', 'styles', name);
    },
    setting: (system, quoted) => note(system, 'styles', quoted),
    signs: () => counts,
    titled: () => titles.size >= TITLES,
  };
};

/** Without the codes by which formats set signs and fonts. */
export const plainText = (text: string): string =>
  text
    .replace(/%%[cdpu]/gi, ' ')
    .replace(/\\U\+2033/gi, '″')
    .replace(/\\[A-Za-z][^;\\{}]*;|[{}]|\\[A-Za-z~]/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();

/** 3/8", .375 ″, 2 in., 4 inches, and notes that say so for the whole sheet. */
const INCH = /\d\s*(?:["″”]|''|inch(?:es)?\b|in\.|in$)|\b(?:dimensions?|dims?|units?|sizes?|tolerances?)\b.*\binch(?:es)?\b/i;
const METRIC = /\d\s*(?:mm|cm)\b|\b(?:dimensions?|dims?|units?|sizes?|tolerances?|maße?|cotes|medidas)\b.*\b(?:mm|millimet(?:er|re)s?)\b/i;
/** Pipes and threads keep their inches in metric drawings. */
const THREAD = /\b(?:npt|npsm|bsp[pt]?|unc|unf|unef|pipe|whitworth)\b|\bG\s?\d/i;
/** As the standards that measure in mm are named in styles. */
const METRIC_STYLE = /\b(?:iso|din|jis|gost|gb)[-_ ]?\d|\bmm\b|metric/i;

/** How the fields of a title block begin. */
const TITLE =
  /^(title|drawing|drawn|dwg|date|scale|sheet|rev(?:ision)?|material|checked|approved|project|ma(?:ß|ss)stab|datum|gez(?:eichnet)?|gepr(?:üft)?|benennung|werkstoff|blatt|(?:é|e)chelle|mati(?:è|e)re|dessin(?:é|e)|escala|fecha|dibujado|plano|hoja|scala|disegnat[oa]|foglio)\b/i;
/** A note may begin with one of them. */
const TITLES = 3;

/** Quoted in a question. */
const SAMPLES = 3;
/** Signs of a text. */
const SHOWN = 40;

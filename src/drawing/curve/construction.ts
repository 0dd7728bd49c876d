/** Tells lines that explain a drawing from those that bound the part: by the line type they are drawn with, or by the name of their layer. */

/** The line type where it is one of centre lines, hidden edges, fold lines or phantoms; by the names of the usual tables of types. */
export const brokenType = (named: string): string | undefined => (BROKEN.test(named) ? named : undefined);

const BROKEN = /cent(?:er|re)|mitte|dash|dot(?!ted_?solid)|strich|punkt|phantom|hidden|verdeckt|divide|chain|acad_iso\d\d|^jis_0[2-9]/i;

/** Whether a layer is named for what is never cut. */
export const isLayerOfNotes = (layer: string): boolean => NOTES.test(layer);

const NOTES =
  /(?:^|[-_ .|$])(?:cent(?:er|re)(?: ?lines?)?|ax[ei]s|dims?|dimensions?|hidden|construction|defpoints|phantom|hatch(?:ing)?|notes?|mittellinien?|achsen?|bema(?:ß|ss)ung|ma(?:ß|ss)e|hilfslinien?|verdeckte?|schraffur|cotation|cotes?|cotas|ejes|quote|assi)(?:[-_ .|$0-9]|$)/i;

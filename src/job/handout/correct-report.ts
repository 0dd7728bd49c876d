/** A correction as text and as plain data. */

import { correctionText } from '../../documents/sheet/correction-text.ts';
import { printerIn } from '../../documents/text.ts';
import { printPlain } from '../../text/print/print.ts';
import { stated } from '../../text/print/stated.ts';
import type { Reader } from '../../text/reader.ts';
import type { CorrectAnswer } from '../pipeline/correct-job.ts';
import { figure, type Json } from './json-parts.ts';

type Corrected = Extract<CorrectAnswer, { kind: 'corrected' }>;

export const correctText = (answer: Corrected, reader?: Reader): string =>
  correctionText(answer, reader === undefined ? undefined : printerIn(reader));

/** Lengths in mm. */
export const correctJson = ({ correction, changed, registers, inControl, passTable }: Corrected): Json => ({
  registersBefore: Object.fromEntries(registers),
  inControl,
  changed,
  passTable,
  ...(correction && correctionJson(correction)),
});

const correctionJson = (correction: NonNullable<Corrected['correction']>): Json => ({
  metalLeft: figure(correction.left),
  worth: correction.worth,
  safe: correction.safe,
  registers: correction.registers.map((r) => ({ pass: r.pass, register: r.register, before: r.before, after: figure(r.after) })),
  sizes: correction.sizes.map(({ deviation, salvage, next }) => ({
    ...deviation.measured,
    sizeAt20: figure(deviation.size),
    metalLeft: figure(deviation.left),
    salvage: { ...salvage, sentence: printPlain(salvage.sentence) },
    next,
  })),
  findings: correction.findings.map((f) => stated(f)),
});

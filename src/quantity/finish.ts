/** Surface finishes: Ra inside the house (µm); classes, grades and microinches as drawings ask for them. */

import { say } from '../text/say.ts';
import type { Formula } from './formula.ts';

export const raFromVdi: Formula<'vdi'> = {
  name: say('quantity.ra-from-vdi')`Ra of a VDI 3400 class`,
  text: say('quantity.ra-from-vdi.by')`Ra = 10^(class / 20) / 10`,
  source: 'vdi-3400',
  unit: 'µm',
  inputs: { vdi: { unit: '1', name: 'VDI 3400 class', low: 0, high: 45 } },
  compute: ({ vdi }) => 10 ** (vdi / 20) / 10,
};

export const microinches: Formula<'ra'> = {
  name: say('quantity.microinches')`Ra in microinches`,
  text: say('quantity.microinches.by')`Ra in µin = Ra in µm / 0.0254`,
  source: 'inch',
  unit: 'µin',
  inputs: { ra: { unit: 'µm', name: 'Ra' } },
  compute: ({ ra }) => ra / 0.0254,
};

export const raFromMicroinches: Formula<'microinches'> = {
  name: say('quantity.ra-from-microinches')`Ra from microinches`,
  text: say('quantity.ra-from-microinches.by')`Ra in µm = 0.0254 · Ra in µin`,
  source: 'inch',
  unit: 'µm',
  inputs: { microinches: { unit: 'µin', name: 'Ra in microinches' } },
  compute: ({ microinches }) => 0.0254 * microinches,
};

/** Two printed charts differ by a factor of 1.8: Rz is never more than a band, and never a pass or a fail. */
export const rzBand = (ra: number): { readonly low: number; readonly nominal: number; readonly high: number } => ({
  low: 4 * ra,
  nominal: 5.5 * ra,
  high: 7.6 * ra,
});

/** Ra in µm of grades N1 to N12. */
export const gradeRa: readonly number[] = [0.025, 0.05, 0.1, 0.2, 0.4, 0.8, 1.6, 3.2, 6.3, 12.5, 25, 50];

export type FinishAnswer =
  | { readonly kind: 'finish'; readonly ra: number; readonly asked: 'Ra' | 'VDI class' | 'N grade' | 'microinches' }
  /** Rz was asked: the Ra that is safe, and the one that might do. */
  | { readonly kind: 'band'; readonly rz: number; readonly raSafe: number; readonly raMight: number }
  | { readonly kind: 'not a finish'; readonly text: string; readonly reason: string };

/** Reads 'Ra 0.8', '0.8', '0,8 µm', 'N6', 'VDI 24', '32 µin', 'Rz 6.3'. A bare number is Ra in µm. */
export const parseFinish = (text: string): FinishAnswer => {
  const parts = /^(ra|rz|vdi|n)?\s*(\d{1,6}(?:[.,]\d{1,6})?|[.,]\d{1,6})\s*(µm|μm|um|µin|μin|uin|microinch(?:es)?)?$/i.exec(
    text.trim().slice(0, 40),
  );
  if (parts === null)
    return { kind: 'not a finish', text: text.slice(0, 40), reason: 'write it like Ra 0.8, N6, VDI 24, 32 µin or Rz 6.3' };
  const [, kind = 'Ra', digits = '', unit] = parts;
  const word = kind.toLowerCase();
  const number = Number(digits.replace(',', '.'));
  const inch = /in/i.test(unit ?? '');
  if ((word === 'n' || word === 'vdi') && unit !== undefined) return { kind: 'not a finish', text, reason: 'a grade or class has no unit' };
  if (word === 'n') return fromGrade(text, number);
  if (word === 'vdi') return checked(text, { kind: 'finish', ra: raFromVdi.compute({ vdi: number }), asked: 'VDI class' });
  const size = inch ? raFromMicroinches.compute({ microinches: number }) : number;
  if (word === 'rz') return size > 0 ? fromRz(size) : { kind: 'not a finish', text, reason: 'a roughness is more than 0' };
  return checked(text, { kind: 'finish', ra: size, asked: inch ? 'microinches' : 'Ra' });
};

const fromGrade = (text: string, grade: number): FinishAnswer => {
  const ra = gradeRa[grade - 1];
  return ra === undefined ? { kind: 'not a finish', text, reason: 'grades run from N1 to N12' } : { kind: 'finish', ra, asked: 'N grade' };
};

const fromRz = (rz: number): FinishAnswer => ({ kind: 'band', rz, raSafe: rz / rzBand(1).high, raMight: rz / rzBand(1).low });

const checked = (text: string, answer: FinishAnswer & { readonly kind: 'finish' }): FinishAnswer =>
  answer.ra > 0 && answer.ra <= 100 ? answer : { kind: 'not a finish', text, reason: 'Ra is more than 0 and at most 100 µm' };

/** Finds a material by its key, or says by name why there is none. */
import { atField, type Finding } from '../../text/finding.ts';
import { name as asName, list, number, type Part, significant, term } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import { find } from '../findings.ts';
import { conductorLimit } from '../starting-model.ts';
import type { Material, NonConductor } from './material.ts';
import { materials, nonConductors } from './materials.ts';

export type MaterialAnswer =
  | { readonly kind: 'material'; readonly material: Material }
  | { readonly kind: 'non-conductor'; readonly name: string; readonly finding: Finding }
  | { readonly kind: 'unknown'; readonly finding: Finding };

/** Case, spaces, dots and underscores in the key do not matter; `more` are materials that the shop has added, which come first. */
export const findMaterial = (id: string, more: readonly Material[] = []): MaterialAnswer => {
  const wanted = plain(id);
  const material = [...more, ...materials].find((m) => isCalled(m, wanted));
  if (material !== undefined) return { kind: 'material', material };
  const nonConductor = nonConductors.find((m) => plain(m.id) === wanted || plain(m.name) === wanted);
  if (nonConductor !== undefined) return { kind: 'non-conductor', name: nonConductor.name, finding: notConducting(nonConductor) };
  return { kind: 'unknown', finding: unknown(id, more) };
};

const isCalled = ({ id, name, formerly }: Material, wanted: string): boolean =>
  [id, name, formerly ?? id].some((called) => plain(called) === wanted);

const plain = (text: string): string => text.toLowerCase().replace(/[\s._-]+/g, '');

/** The refusal with its reason; also for a material that the shop describes by its constants. */
export const notConducting = ({ name, resistivity }: Pick<NonConductor, 'name' | 'resistivity'>): Finding =>
  find(
    'material-not-conducting',
    say`${{ material: asName(name) }} cannot be cut by wire: its resistivity is about ${{ resistivity: ohmCentimetres(resistivity.value) }} ohm·cm and a spark needs less than about ${{ limit: ohmCentimetres(conductorLimit.value) }} ohm·cm.`,
    { place: atField('material'), remedy: say`Ask for a conducting grade, or for grinding, laser or water jet.` },
  );

const ohmCentimetres = (ohmMetres: number): Part => {
  const value = ohmMetres * 100;
  return value < 1e6 ? number(value, significant(3)) : term(`10^${Math.round(Math.log10(value))}`);
};

const unknown = (id: string, more: readonly Material[]): Finding => {
  const shown = asName(id.length > 40 ? `${id.slice(0, 40)}…` : id);
  const keys = [...more, ...materials].map((m) => m.id);
  const near = keys.filter((k) => alike(plain(k), plain(id)));
  return find('material-unknown', say`No material has the key '${{ key: shown }}'.`, {
    place: atField('material'),
    remedy: near.length > 0 ? words.near(near) : words.known(keys),
  });
};

const words = phrases('material-unknown', {
  near: (keys: readonly string[]) => say`Did you mean ${{ keys: list(keys.map(term)) }}?`,
  known: (keys: readonly string[]) => say`Known keys: ${{ keys: list(keys.map(term)) }}.`,
});

/** One is part of the other, or they differ by one typing slip. */
const alike = (a: string, b: string): boolean => {
  if (a === '' || b === '') return false;
  if (b.length > 2 && (a.includes(b) || b.includes(a))) return true;
  return a.length > 1 && Math.abs(a.length - b.length) <= 1 && oneSlip(a, b);
};

/** One character put in, left out or changed. */
const oneSlip = (a: string, b: string): boolean => {
  let head = 0;
  while (head < Math.min(a.length, b.length) && a[head] === b[head]) head++;
  let tail = 0;
  while (tail < Math.min(a.length, b.length) - head && a[a.length - 1 - tail] === b[b.length - 1 - tail]) tail++;
  return Math.max(a.length, b.length) - head - tail <= 1;
};

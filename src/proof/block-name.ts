/** Lengths, masses and blocks as findings print them. */
import type { Block } from '../nc/read/program.ts';

export const mm = (value: number): string => `${trimmed(value, 4)} mm`;

export const gram = (kg: number): string => (kg < 1 ? `${trimmed(kg * 1000, kg < 0.01 ? 2 : 0)} g` : `${trimmed(kg, 2)} kg`);

/** 'line 12 (N0110 G01 X4.5)'. Without the text of the program only the number of the block, counted from 1. */
export const blockName = (blocks: readonly Block[], block: number): string => {
  const known = blocks[block];
  return known === undefined ? `block ${block + 1}` : `line ${known.line} (${known.text.trim()})`;
};

const trimmed = (value: number, digits: number): string => String(Number(value.toFixed(digits)));

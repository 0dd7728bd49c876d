/** A paper as plain text, in which tests and goldens read what is printed on it. */
import type { Paper, PaperBlock } from './paper.ts';
import { brokenInto, inColumns } from './text.ts';

export const paperText = (paper: Paper): string =>
  [paper.title.toUpperCase(), paper.subtitle, '', ...paper.blocks.map(blockText)].join('\n').replaceAll('\u00a0', ' ');

const blockText = (block: PaperBlock): string => {
  if (block.kind === 'heading') return `\n${block.text}\n${'-'.repeat(block.text.length)}`;
  if (block.kind === 'text') return `${brokenInto(block.text, '')}\n`;
  if (block.kind === 'list')
    return `${block.items.map((item) => brokenInto(item, block.marker === 'warning' ? ' ! ' : ' - ')).join('\n')}\n`;
  if (block.kind === 'table') return `${inColumns(block)}\n`;
  if (block.kind === 'picture') return `[picture: ${block.caption}]\n`;
  const width = Math.max(...block.rows.map(([label]) => label.length));
  return `${block.rows.map(([label, value]) => `${label.padEnd(width)}  ${value}`).join('\n')}\n`;
};

/** What a finding means, told at length: its page of the manual, opened in place. */
import { type ReactNode, useEffect, useState } from 'react';
import { sheetWords } from '../words/sheet.ts';
import type { ManualBlock } from './manual.ts';

const NONE: readonly ManualBlock[] = [];
const GONE: readonly ManualBlock[] = [{ kind: 'text', text: sheetWords.manualGone }];

export const ManualPage = ({ code }: { readonly code: string }): ReactNode => {
  const [blocks, setBlocks] = useState(NONE);
  useEffect(() => {
    let wanted = true;
    import('./manual.ts').then(
      ({ manualPage }) => wanted && setBlocks(manualPage(code) ?? NONE),
      () => wanted && setBlocks(GONE),
    );
    return () => {
      wanted = false;
    };
  }, [code]);
  return (
    <div className="manual">
      {blocks.map((block) => (
        <Block key={block.kind === 'list' ? block.items.join() : block.text} block={block} />
      ))}
    </div>
  );
};

const Block = ({ block }: { readonly block: ManualBlock }): ReactNode => {
  if (block.kind !== 'list') return <p className={block.kind === 'title' ? 'manual-title' : ''}>{plain(block.text)}</p>;
  return (
    <ul>
      {block.items.map((item) => (
        <li key={item}>{plain(item)}</li>
      ))}
    </ul>
  );
};

/** Marks of emphasis and code are left out: the pages read as well without. */
const plain = (text: string): string => text.replace(/[`*]/g, '').replace(/\[([^\]]*)\]\([^)]*\)/g, '$1');

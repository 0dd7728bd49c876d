/** What a finding means, told at length: its page of the manual, opened in place. */
import { type ReactNode, useState } from 'react';
import { sheetWords as words } from '../words/sheet.ts';
import type { ManualBlock } from './manual.ts';

export const ManualPage = ({ code }: { readonly code: string }): ReactNode => {
  const [open, setOpen] = useState(false);
  const [blocks, setBlocks] = useState<readonly ManualBlock[] | undefined>();
  const toggle = (): void => {
    setOpen(!open);
    if (blocks === undefined) void import('./manual.ts').then(({ manualPage }) => setBlocks(manualPage(code) ?? []));
  };
  return (
    <>
      <button type="button" className="plain" aria-expanded={open} onClick={toggle}>
        {words.whatItMeans}
      </button>
      {open && blocks !== undefined && (
        <span className="manual">
          {blocks.map((block) =>
            block.kind === 'list' ? (
              block.items.map((item) => (
                <span key={item} className="manual-item">
                  {plain(item)}
                </span>
              ))
            ) : (
              <span key={block.text} className={block.kind === 'title' ? 'manual-title' : 'manual-text'}>
                {plain(block.text)}
              </span>
            ),
          )}
        </span>
      )}
    </>
  );
};

/** Marks of emphasis and code are left out: the pages read as well without. */
const plain = (text: string): string => text.replace(/[`*]/g, '').replace(/\[([^\]]*)\]\([^)]*\)/g, '$1');

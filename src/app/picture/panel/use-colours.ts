/** The colours of the page as they are now; told anew when the theme changes, and those of paper while the page is printed. */
import { useEffect, useState } from 'react';
import { flushSync } from 'react-dom';
import { type Colours, coloursFrom, LIGHT } from '../colours.ts';

const readNow = (): Colours => {
  const root = document.documentElement;
  const style = getComputedStyle(root);
  return coloursFrom((variable) => asHex(style.getPropertyValue(variable)), root.dataset['theme'] === 'dark');
};

/** Any CSS colour as #rrggbb, since colours are mixed; empty where it is none or half transparent. */
const asHex = (css: string): string => {
  if (css.trim() === '') return '';
  const context = document.createElement('canvas').getContext('2d');
  if (context === null) return '';
  context.fillStyle = css;
  return /^#[0-9a-f]{6}$/.test(context.fillStyle) ? context.fillStyle : '';
};

export interface Worn {
  readonly colours: Colours;
  readonly printing: boolean;
}

export const useColours = (): Worn => {
  const [worn, setWorn] = useState<Worn>(() => ({ colours: readNow(), printing: false }));
  useEffect(() => {
    const again = (): void => setWorn({ colours: readNow(), printing: false });
    const printed = (): void => flushSync(() => setWorn({ colours: LIGHT, printing: true }));
    const watcher = new MutationObserver(again);
    watcher.observe(document.documentElement, { attributes: true, attributeFilter: ['data-theme'] });
    addEventListener('beforeprint', printed);
    addEventListener('afterprint', again);
    // The style sheet may have come after the first reading.
    again();
    return () => {
      watcher.disconnect();
      removeEventListener('beforeprint', printed);
      removeEventListener('afterprint', again);
    };
  }, []);
  return worn;
};

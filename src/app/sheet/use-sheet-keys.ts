/** Keys that hold on the whole sheet: undo, redo, and the chapters by number. */
import { useEffect } from 'react';
import type { OpenSheet } from '../state/open-sheet.ts';
import { CHAPTERS } from '../work/views.ts';

export const useSheetKeys = (sheet: OpenSheet): void => {
  useEffect(() => {
    const stop = new AbortController();
    addEventListener(
      'keydown',
      (event) => {
        if (event.defaultPrevented || isTyping(event.target)) return;
        const key = event.key.toLowerCase();
        const held = event.ctrlKey || event.metaKey;
        if (held && !event.altKey && (key === 'z' || key === 'y')) {
          event.preventDefault();
          if (key === 'y' || event.shiftKey) sheet.actions.redo();
          else sheet.actions.undo();
        } else if (!held && !event.altKey && /^[1-9]$/.test(key)) goToChapter(Number(key) - 1);
      },
      { signal: stop.signal },
    );
    return () => stop.abort();
  }, [sheet]);
};

/** Within a field undo is the field's own. */
const isTyping = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement &&
  target.closest('input:not([type="checkbox"]):not([type="radio"]):not([type="range"]), textarea, select, [role="application"]') !== null;

const goToChapter = (at: number): void => {
  const title = document.getElementById(`${CHAPTERS[at] ?? ''}-title`);
  title?.scrollIntoView({ block: 'start' });
  title?.focus({ preventScroll: true });
};

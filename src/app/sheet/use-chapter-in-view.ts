/** Tells the store which chapter is being read, so that contents and picture follow. */
import { useEffect } from 'react';
import type { OpenSheet } from '../state/open-sheet.ts';
import { CHAPTERS, type Chapter } from '../work/views.ts';

/** The band of the window, in shares of its height, in which a chapter counts as read. */
const BAND = '-25% 0px -60% 0px';

export const useChapterInView = (sheet: OpenSheet): void => {
  useEffect(() => {
    const seen = new Set<Chapter>();
    const watcher = new IntersectionObserver(
      (entries) => {
        for (const { target, isIntersecting } of entries) {
          const chapter = (target as HTMLElement).dataset['chapter'] as Chapter;
          if (isIntersecting) seen.add(chapter);
          else seen.delete(chapter);
        }
        const chapter = CHAPTERS.filter((c) => seen.has(c)).at(-1);
        if (chapter !== undefined && chapter !== sheet.store.getState().chapter) sheet.actions.show({ chapter });
      },
      { rootMargin: BAND },
    );
    for (const part of document.querySelectorAll('[data-chapter]')) watcher.observe(part);
    return () => watcher.disconnect();
  }, [sheet]);
};

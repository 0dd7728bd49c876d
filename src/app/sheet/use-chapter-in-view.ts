/** Tells the store which chapter is being read, so that contents and picture follow. */
import { useEffect } from 'react';
import type { OpenSheet } from '../state/open-sheet.ts';
import { CHAPTERS, type Chapter } from '../work/views.ts';

/** Where in the window a chapter counts as read, as the rims of the watcher leave a band of it. */
const BAND = '-25% 0px -60% 0px';
const TOP_OF_BAND = 0.25;

export const useChapterInView = (sheet: OpenSheet): void => {
  useEffect(() => {
    const parts = [...document.querySelectorAll<HTMLElement>('[data-chapter]')];
    const seen = new Set<Chapter>();
    const watcher = new IntersectionObserver(
      (entries) => {
        for (const { target, isIntersecting } of entries) {
          const chapter = chapterOf(target as HTMLElement);
          if (isIntersecting) seen.add(chapter);
          else seen.delete(chapter);
        }
        const chapter = CHAPTERS.filter((c) => seen.has(c)).at(-1) ?? lastAbove(parts) ?? CHAPTERS[0];
        if (chapter !== sheet.store.getState().chapter) sheet.actions.show({ chapter });
      },
      { rootMargin: BAND },
    );
    for (const part of parts) watcher.observe(part);
    return () => watcher.disconnect();
  }, [sheet]);
};

const chapterOf = (part: HTMLElement): Chapter => part.dataset['chapter'] as Chapter;

/** Between two chapters, or at the top of the sheet, none is in the band. */
const lastAbove = (parts: readonly HTMLElement[]): Chapter | undefined => {
  const above = parts.findLast((part) => part.getBoundingClientRect().top < TOP_OF_BAND * innerHeight);
  return above && chapterOf(above);
};

/** The width that a picture has on the page, so that its text keeps its size whatever the window. */
import { type RefObject, useLayoutEffect, useState } from 'react';

export const useWidth = (element: RefObject<HTMLElement | null>, usual: number): number => {
  const [width, setWidth] = useState(usual);
  useLayoutEffect(() => {
    const { current } = element;
    if (current === null) return;
    const measure = (): void => setWidth(Math.max(240, Math.round(current.clientWidth)));
    measure();
    const watcher = new ResizeObserver(measure);
    watcher.observe(current);
    return () => watcher.disconnect();
  }, [element]);
  return width;
};

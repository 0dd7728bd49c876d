/** Something that takes long is asked for when its place comes into view, and again when what it speaks of has changed. */
import { type RefObject, useCallback, useEffect, useRef, useState } from 'react';

export interface Asked<T> {
  /** The last answer; `older` when it speaks of inputs that have changed since. */
  readonly answer: T | undefined;
  readonly older: boolean;
  readonly working: boolean;
  readonly failed: boolean;
  readonly again: () => void;
}

/** So long nothing may change before it is asked again, ms: whoever is typing is not to be slowed down. */
const CALM = 400;

/** How far outside the window a place counts as in view. */
const NEAR = '200px';

/** `about` is what the answer speaks of; nothing is asked while it is undefined. */
export const useAsked = <T>(place: RefObject<HTMLElement | null>, about: unknown, ask: () => Promise<T>): Asked<T> => {
  const seen = useSeen(place);
  const [state, setState] = useState<{ readonly answer?: T; readonly of?: unknown; readonly failed?: unknown }>({});
  const [tries, setTries] = useState(0);
  const asking = useRef(ask);
  asking.current = ask;
  const fresh = state.of === about;
  // What was begun in view is finished out of view; what changes out of view waits until it is looked at.
  const [wanted, setWanted] = useState<unknown>();
  useEffect(() => {
    if (seen) setWanted(about);
  }, [seen, about]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: asked again for another subject or another try, not for every state
  useEffect(() => {
    if (wanted === undefined || wanted !== about || fresh) return;
    let newest = true;
    const timer = setTimeout(() => {
      asking.current().then(
        (answer) => newest && setState({ answer, of: about }),
        () => newest && setState((before) => ({ ...before, failed: about })),
      );
    }, CALM);
    return () => {
      newest = false;
      clearTimeout(timer);
    };
  }, [wanted, about, tries]);
  const again = useCallback(() => {
    setState((before) => ({ ...before, failed: undefined }));
    setTries((n) => n + 1);
  }, []);
  const failed = about !== undefined && state.failed === about;
  return { answer: state.answer, older: !fresh, working: wanted === about && about !== undefined && !fresh && !failed, failed, again };
};

const useSeen = (place: RefObject<HTMLElement | null>): boolean => {
  const [seen, setSeen] = useState(false);
  useEffect(() => {
    const { current } = place;
    if (current === null) return;
    const watcher = new IntersectionObserver((entries) => setSeen(entries.some((e) => e.isIntersecting)), { rootMargin: NEAR });
    watcher.observe(current);
    return () => watcher.disconnect();
  }, [place]);
  return seen;
};

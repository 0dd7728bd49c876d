/** The keys, told in a small window on '?' or its button. */
import { type ReactNode, useEffect, useRef } from 'react';
import { useWords } from '../words/use-words.ts';

export const KeysHelp = (): ReactNode => {
  const words = useWords().page;
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    const stop = new AbortController();
    addEventListener(
      'keydown',
      (event) => {
        const typing = event.target instanceof HTMLElement && event.target.closest('input, textarea, select') !== null;
        if (event.key !== '?' || typing || event.defaultPrevented) return;
        event.preventDefault();
        if (dialog.current?.open === true) dialog.current.close();
        else dialog.current?.showModal();
      },
      { signal: stop.signal },
    );
    return () => stop.abort();
  }, []);
  return (
    <>
      <button type="button" className="plain" onClick={() => dialog.current?.showModal()}>
        {words.keys}
      </button>
      <dialog ref={dialog} className="keys" aria-labelledby="keys-title">
        <h2 id="keys-title">{words.keysTitle}</h2>
        <dl>
          {Object.entries(words.keyRows).map(([key, means]) => (
            <div key={key}>
              <dt>
                {key.split(' ').map((k) => (
                  <span key={k}>{k === 'to' ? ` ${words.keyTo} ` : <kbd>{k}</kbd>} </span>
                ))}
              </dt>
              <dd>{means}</dd>
            </div>
          ))}
        </dl>
        <button type="button" onClick={() => dialog.current?.close()}>
          {words.closeKeys}
        </button>
      </dialog>
    </>
  );
};

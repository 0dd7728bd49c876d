/** What a finding means, at length: its entry in the manual, opened in place. */
import { type ReactNode, useEffect, useState } from 'react';
import { type ManualEntry, stretchesOf } from '../../text/manual.ts';
import { useWords } from '../words/use-words.ts';

export const ManualPage = ({ code }: { readonly code: string }): ReactNode => {
  const words = useWords().sheet;
  const [page, setPage] = useState<ManualEntry | 'gone'>();
  useEffect(() => {
    let wanted = true;
    // The manual is longer than all else that the page says: it is fetched when the first of it is asked for.
    import('../../job/handout/manual-of-all.ts').then(
      ({ manualOf }) => wanted && setPage(manualOf(code)),
      () => wanted && setPage('gone'),
    );
    return () => {
      wanted = false;
    };
  }, [code]);
  return <div className="manual">{page === 'gone' ? <p>{words.manualGone}</p> : page !== undefined && <Entry page={page} />}</div>;
};

const Entry = ({ page: { title, meaning, matters, remedy } }: { readonly page: ManualEntry }): ReactNode => {
  const words = useWords().sheet;
  return (
    <>
      <p className="manual-title">{title}</p>
      <p>{marked(meaning)}</p>
      {matters !== undefined && <p>{marked(matters)}</p>}
      <p>
        <em>{words.whatToDo}</em>
        {marked(remedy)}
      </p>
    </>
  );
};

const marked = (text: string): ReactNode =>
  stretchesOf(text).map(({ words, typed, number }) => (typed ? <code key={number}>{words}</code> : words));

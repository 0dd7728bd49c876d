/** What stands while something is worked out, or could not be. */
import type { ReactNode } from 'react';
import { useWords } from '../words/use-words.ts';
import type { Asked } from './use-asked.ts';

export const AskedState = ({ asked, working }: { readonly asked: Asked<unknown>; readonly working: string }): ReactNode => {
  const words = useWords().price;
  return (
    <div role="status" className="asked-state">
      {asked.working && (
        <p>
          <progress aria-label={working} /> {working}
        </p>
      )}
      {asked.failed && (
        <p>
          {words.failed}{' '}
          <button type="button" className="plain" onClick={asked.again}>
            {words.again}
          </button>
        </p>
      )}
      {asked.older && asked.answer !== undefined && <p>{words.older}</p>}
    </div>
  );
};

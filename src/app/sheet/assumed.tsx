/** What nobody said and was taken for granted, each with the way to its field. */
import type { ReactNode } from 'react';
import { goToField } from '../fields/margin.tsx';
import { useOnSheet } from '../fields/tools.ts';
import { labelOf } from '../words/fields.ts';
import { useWords } from '../words/use-words.ts';
import type { Sheet } from '../work/views.ts';

const NOTHING: Sheet['assumed'] = [];

export const Assumed = (): ReactNode => {
  const words = useWords().sheet;
  const assumed = useOnSheet((s) => s.sheet?.assumed) ?? NOTHING;
  if (assumed.length === 0) return null;
  return (
    <div className="assumed">
      <h3>{words.assumed}</h3>
      <ul>
        {assumed.map(({ text, field }) => (
          <li key={text}>
            {text}{' '}
            {field !== undefined && (
              <button type="button" className="plain" onClick={() => goToField(field)}>
                {words.changeField(labelOf(field))}
              </button>
            )}
          </li>
        ))}
      </ul>
    </div>
  );
};

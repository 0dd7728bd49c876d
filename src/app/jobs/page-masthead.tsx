/** The masthead of pages without an open job: units and theme are kept for whichever sheet is opened next. */
import { type ReactNode, useState } from 'react';
import { Masthead, type Preferences } from '../look/masthead.tsx';
import { keepPreferences, preferences } from '../state/preferences.ts';

export const PageMasthead = (): ReactNode => {
  const [preferred, setPreferred] = useState<Preferences>(preferences);
  return (
    <Masthead
      preferences={preferred}
      onPrefer={(part) => {
        const next = { ...preferred, ...part };
        setPreferred(next);
        keepPreferences(next);
      }}
    />
  );
};

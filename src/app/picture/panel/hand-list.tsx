/** All that is set by hand, whatever the answer says and whether its contour is cut: each can be given back to the planner from here. */

import type { ReactNode } from 'react';
import { useWords } from '../../words/use-words.ts';
import { type HandChange, handSettings } from './override-keys.ts';

export interface HandListProps {
  readonly input: Readonly<Record<string, unknown>>;
  readonly onOverride: (name: string, change: HandChange) => void;
}

export const HandList = ({ input, onOverride }: HandListProps): ReactNode => {
  const words = useWords().picture;
  const settings = handSettings(input);
  if (settings.length === 0) return null;
  return (
    <section className="hand-form hand-settings" aria-label={words.handList}>
      <h3>{words.handList}</h3>
      <ul>
        {settings.map(({ path, id, what }) => {
          const named = id === undefined ? words.handWhat[what] : words.handOf(id, words.handWhat[what]);
          return (
            <li key={path}>
              {named}{' '}
              <button
                type="button"
                aria-label={words.giveBackOf(named)}
                onClick={() => onOverride(words.step.giveBack(named), { [path]: undefined })}
              >
                {words.giveBack}
              </button>
            </li>
          );
        })}
      </ul>
    </section>
  );
};

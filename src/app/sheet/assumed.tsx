/** What nobody said and was taken for granted, each with the way to its field. */
import type { ReactNode } from 'react';
import { goToField } from '../fields/margin.tsx';
import { useOnSheet } from '../fields/tools.ts';
import { labelOf } from '../words/fields.ts';
import { useWords } from '../words/use-words.ts';

/** The field an assumption speaks of, told by the words the job says it with. */
const FIELD_OF: readonly (readonly [begins: RegExp, path: string])[] = [
  [/^The material /, 'material'],
  [/^The block is /, 'height'],
  [/^A finish /, 'finish'],
  [/^The profile /, 'tolerance'],
  [/^Inside corners /, 'insideCorner'],
  [/pieces? (is|are) wanted/, 'quantity'],
  [/^The outermost contours? /, 'outline'],
  [/start hole/, 'startHole'],
  [/nozzles/i, 'flush'],
  [/^The drawing is in /, 'units'],
  [/^The block stands /, 'block.margin'],
];

const NOTHING: readonly string[] = [];

export const Assumed = (): ReactNode => {
  const words = useWords().sheet;
  const assumed = useOnSheet((s) => s.sheet?.assumed) ?? NOTHING;
  if (assumed.length === 0) return null;
  return (
    <div className="assumed">
      <h3>{words.assumed}</h3>
      <ul>
        {assumed.map((sentence) => {
          const path = FIELD_OF.find(([begins]) => begins.test(sentence))?.[1];
          return (
            <li key={sentence}>
              {sentence}{' '}
              {path !== undefined && (
                <button type="button" className="plain" onClick={() => goToField(path)}>
                  {words.changeField(labelOf(path))}
                </button>
              )}
            </li>
          );
        })}
      </ul>
    </div>
  );
};

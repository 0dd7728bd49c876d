/** The contours as a list: chosen here by those who do not point, and read by those who do not see the picture. */
import type { ReactNode } from 'react';
import { useWords } from '../../words/use-words.ts';
import type { ContourView } from '../../work/views.ts';
import type { Lengths } from '../lengths.ts';
import { contourSaid } from '../what-is-here.ts';

interface ContourListProps {
  readonly contours: readonly ContourView[];
  readonly lengths: Lengths;
  readonly chosen?: string | undefined;
  readonly onChoose: (owner: string | undefined) => void;
  readonly onPoint: (id: string | undefined) => void;
}

export const ContourList = ({ contours, lengths, chosen, onChoose, onPoint }: ContourListProps): ReactNode => {
  const words = useWords().picture;
  return contours.length === 0 ? (
    <p>{words.noContours}</p>
  ) : (
    <ul className="contour-list" aria-label={words.contours}>
      {contours.map((contour) => {
        const mine = contour.id === chosen;
        return (
          <li key={contour.id}>
            <button
              type="button"
              aria-pressed={mine}
              onClick={() => onChoose(mine ? undefined : contour.id)}
              onPointerEnter={() => onPoint(contour.id)}
              onPointerLeave={() => onPoint(undefined)}
              onFocus={() => onPoint(contour.id)}
              onBlur={() => onPoint(undefined)}
            >
              <span>
                {contourSaid(contour, lengths, words)}
                {contour.overrides.length > 0 && <em className="by-hand-mark"> {words.setByHand}</em>}
              </span>
            </button>
          </li>
        );
      })}
    </ul>
  );
};

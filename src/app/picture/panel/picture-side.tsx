/** The picture with what belongs to it: the list of contours, the chosen one set by hand, holes and clamps; and the picking between them. */

import { type ReactNode, useCallback, useMemo, useState } from 'react';
import type { Point } from '../../../geometry/segment.ts';
import { useWords } from '../../words/use-words.ts';
import { lengthsIn } from '../lengths.ts';
import type { Picked } from '../tool.ts';

import { ContourList } from './contour-list.tsx';
import { HandList } from './hand-list.tsx';
import { OverrideForm } from './override-form.tsx';
import type { HandChange } from './override-keys.ts';
import { type Picking, Picture, type PictureProps } from './picture.tsx';
import { SetUpForm } from './set-up-form.tsx';

export interface PictureSideProps extends Omit<PictureProps, 'picking' | 'onPicked' | 'onPickingEnded'> {
  readonly input: Readonly<Record<string, unknown>>;
  readonly onOverride: (name: string, change: HandChange) => void;
}

interface Waiting extends Picking {
  readonly use: (what: Picked) => void;
}

export const PictureSide = ({ input, onOverride, ...props }: PictureSideProps): ReactNode => {
  const words = useWords().picture;
  const [waiting, setWaiting] = useState<Waiting | undefined>();
  const lengths = useMemo(() => lengthsIn(props.lengthUnit), [props.lengthUnit]);
  const { picture, chosen } = props;
  const contours = picture?.contours ?? [];
  const contour = contours.find((c) => c.id === chosen);
  const onPick = useCallback((prompt: string, then: (at: Point) => void): void => {
    setWaiting({ wanted: 'place', prompt, use: (what) => what.kind === 'place' && then(what.at) });
  }, []);
  const onPickRectangle = useCallback((then: (low: Point, high: Point) => void): void => {
    setWaiting({ wanted: 'rectangle', prompt: '', use: (what) => what.kind === 'rectangle' && then(what.low, what.high) });
  }, []);
  const shared = { input, millimetres: picture?.millimetres ?? 1, lengths, onOverride, onPick };
  return (
    <div className="picture-side">
      <Picture
        {...props}
        picking={waiting}
        onPicked={(what) => {
          setWaiting(undefined);
          waiting?.use(what);
        }}
        onPickingEnded={() => setWaiting(undefined)}
      />
      <HandList input={input} onOverride={onOverride} />
      {picture !== undefined && (
        <div className="picture-more">
          <details>
            <summary>{words.contours}</summary>
            <ContourList contours={contours} lengths={lengths} chosen={chosen} onChoose={props.onChoose} onPoint={props.onPoint} />
          </details>
          {contour === undefined ? (
            <p className="hand-note">{words.byHandHint}</p>
          ) : (
            <OverrideForm key={contour.id} {...shared} contour={contour} contours={contours} />
          )}
          <details>
            <summary>{words.setUp}</summary>
            <SetUpForm {...shared} onPickRectangle={onPickRectangle} />
          </details>
        </div>
      )}
    </div>
  );
};

/** Holes that are there already, clamps, and where the block lies: typed, or taken from the picture. */

import type { ReactNode } from 'react';
import type { Point } from '../../../geometry/segment.ts';
import { valueAt } from '../../state/input.ts';
import { useWords } from '../../words/use-words.ts';
import type { Words } from '../../words/words-for.ts';

import { type HandProps, xy } from './override-form.tsx';
import { type Clamp, CORNER_KEY, DATUM_KEY, type Hole, inDrawing, inMm, tidy } from './override-keys.ts';
import { TypedFields } from './typed-fields.tsx';

export interface SetUpProps extends HandProps {
  /** Asks for two corners in the picture. */
  readonly onPickRectangle: (then: (low: Point, high: Point) => void) => void;
}

export const SetUpForm = (props: SetUpProps): ReactNode => {
  const words = useWords().picture;
  return (
    <section className="hand-form" aria-label={words.setUp}>
      <h3>{words.setUp}</h3>
      <Clamps {...props} />
      <Holes {...props} />
      <Datum {...props} />
      <Stock {...props} />
    </section>
  );
};

const listAt = <T,>({ input }: HandProps, key: string): readonly T[] => {
  const value = valueAt(input, key);
  return Array.isArray(value) ? (value as readonly T[]) : [];
};

/** An empty list says nothing and is left out of the job. */
const listed = (all: readonly unknown[]): unknown => (all.length === 0 ? undefined : all);

const Clamps = (props: SetUpProps): ReactNode => {
  const words = useWords().picture;
  const { millimetres, lengths, onOverride, onPickRectangle } = props;
  const clamps = listAt<Clamp>(props, 'clamps');
  const asTyped = (low: Point, high: Point): Clamp => ({ low: inDrawing(low, millimetres), high: inDrawing(high, millimetres) });
  const put = (name: string, next: readonly Clamp[]): void => onOverride(name, { clamps: listed(next) });
  const set = (at: number, [lowX, lowY, highX, highY]: Corners): void =>
    put(words.step.addClamp, clamps.toSpliced(at, 1, asTyped({ x: lowX, y: lowY }, { x: highX, y: highY })));
  const judge = ([lowX, lowY, highX, highY]: Corners): string => (lowX < highX && lowY < highY ? '' : words.typed.cornersApart);
  return (
    <div className="hand-list">
      <h4>{words.clamps}</h4>
      {clamps.map((clamp, i) => (
        <TypedFields
          key={words.clamp(i + 1)}
          what={words.clamp(i + 1)}
          fields={corners(clamp, millimetres, words)}
          lengths={lengths}
          judge={judge}
          onSet={(mm) => set(i, mm)}
        >
          <button
            type="button"
            aria-label={words.removeOf(words.clamp(i + 1))}
            onClick={() => put(words.step.removeClamp, clamps.toSpliced(i, 1))}
          >
            {words.remove}
          </button>
        </TypedFields>
      ))}
      <TypedFields
        key={`new ${clamps.length}`}
        what={words.clamp(clamps.length + 1)}
        fields={corners(undefined, millimetres, words)}
        lengths={lengths}
        button={words.addClamp}
        judge={judge}
        onSet={(mm) => set(clamps.length, mm)}
      >
        <button type="button" onClick={() => onPickRectangle((low, high) => put(words.step.addClamp, [...clamps, asTyped(low, high)]))}>
          {words.drawClamp}
        </button>
      </TypedFields>
    </div>
  );
};

/** x and y of the low corner, then of the high one. */
type Corners = readonly [number, number, number, number];

const corners = (clamp: Clamp | undefined, millimetres: number, words: Words['picture']) => {
  const low = clamp === undefined ? undefined : inMm(clamp.low, millimetres);
  const high = clamp === undefined ? undefined : inMm(clamp.high, millimetres);
  const named = (corner: string, at: Point | undefined) => {
    const [x, y] = xy(at);
    return [
      { ...x, label: `${corner} ${x.label}` },
      { ...y, label: `${corner} ${y.label}` },
    ] as const;
  };
  return [...named(words.lowCorner, low), ...named(words.highCorner, high)] as const;
};

const Holes = (props: SetUpProps): ReactNode => {
  const words = useWords().picture;
  const { millimetres, lengths, onOverride, onPick } = props;
  const holes = listAt<Hole>(props, 'holes');
  const put = (name: string, next: readonly Hole[]): void => onOverride(name, { holes: listed(next) });
  const asTyped = (at: Point, diameter: number): Hole => ({ at: inDrawing(at, millimetres), diameter: tidy(diameter / millimetres) });
  const set = (at: number, [x, y, diameter]: readonly [number, number, number]): void =>
    put(words.step.addHole, holes.toSpliced(at, 1, asTyped({ x, y }, diameter)));
  const fields = (hole: Hole | undefined) =>
    [
      ...xy(hole === undefined ? undefined : inMm(hole.at, millimetres)),
      { label: words.diameter, mm: hole === undefined ? undefined : hole.diameter * millimetres, sign: 'positive' },
    ] as const;
  return (
    <div className="hand-list">
      <h4>{words.holes}</h4>
      {holes.map((hole, i) => (
        <TypedFields
          key={words.existingHole(i + 1)}
          what={words.existingHole(i + 1)}
          fields={fields(hole)}
          lengths={lengths}
          onSet={(mm) => set(i, mm)}
        >
          <button
            type="button"
            aria-label={words.removeOf(words.existingHole(i + 1))}
            onClick={() => put(words.step.removeHole, holes.toSpliced(i, 1))}
          >
            {words.remove}
          </button>
        </TypedFields>
      ))}
      <TypedFields
        key={`new ${holes.length}`}
        what={words.existingHole(holes.length + 1)}
        fields={fields(undefined)}
        lengths={lengths}
        button={words.addHole}
        onSet={(mm) => set(holes.length, mm)}
      >
        <button
          type="button"
          aria-label={words.pickOf(words.existingHole(holes.length + 1))}
          onClick={() =>
            onPick(words.pickPlace(words.existingHole(holes.length + 1)), (at) =>
              put(words.step.addHole, [...holes, asTyped(at, drilled(props))]),
            )
          }
        >
          {words.pick}
        </button>
      </TypedFields>
    </div>
  );
};

/** mm: a picked hole is as wide as those to be drilled, 2 mm where the job says nothing else, until its width is typed. */
const drilled = ({ input }: HandProps): number => {
  const diameter = valueAt(input, 'startHole');
  return typeof diameter === 'number' && diameter > 0 ? diameter : 2;
};

const Stock = (props: SetUpProps): ReactNode => {
  const words = useWords().picture;
  return valueAt(props.input, 'stock.width') === undefined ? (
    <p className="hand-note">{words.stockNeedsSize}</p>
  ) : (
    <OnePlace {...props} title={words.stock} path={CORNER_KEY} step={words.step.stock} />
  );
};

const Datum = (props: SetUpProps): ReactNode => {
  const words = useWords().picture;
  return <OnePlace {...props} title={words.datumPlace} path={DATUM_KEY} step={words.step.datum} />;
};

interface OnePlaceProps extends SetUpProps {
  readonly title: string;
  readonly path: string;
  readonly step: string;
}

/** A single place that is a key of its own. */
const OnePlace = ({ title, path, step, input, millimetres, lengths, onOverride, onPick }: OnePlaceProps): ReactNode => {
  const words = useWords().picture;
  const at = valueAt(input, path) as Point | undefined;
  const set = (place: Point): void => onOverride(step, { [path]: inDrawing(place, millimetres) });
  const fields = xy(at === undefined ? undefined : inMm(at, millimetres));
  return (
    <div className="hand-list">
      <h4>{title}</h4>
      <TypedFields what={title} fields={fields} lengths={lengths} onSet={([x, y]) => set({ x, y })}>
        <button type="button" aria-label={words.pickOf(title)} onClick={() => onPick(words.pickPlace(title), set)}>
          {words.pick}
        </button>
        {at !== undefined && (
          <button
            type="button"
            aria-label={words.giveBackOf(title)}
            onClick={() => onOverride(words.step.giveBack(title), { [path]: undefined })}
          >
            {words.giveBack}
          </button>
        )}
      </TypedFields>
    </div>
  );
};

/** The chosen contour set by hand: kept side, beginning, slug, tab, entry, hole and turn; each can be given back to the planner. */

import type { ReactNode } from 'react';
import type { Point } from '../../../geometry/segment.ts';
import { valueAt } from '../../state/input.ts';
import { useWords } from '../../words/use-words.ts';
import type { Words } from '../../words/words-for.ts';
import type { ContourView } from '../../work/views.ts';
import type { Lengths } from '../lengths.ts';

import {
  coreKey,
  entryKey,
  type HandChange,
  holeKey,
  inDrawing,
  inMm,
  isOpenLine,
  keptKey,
  ORDER_KEY,
  startKey,
  tabKey,
  tidy,
  turns,
  withTurn,
} from './override-keys.ts';
import { TypedFields } from './typed-fields.tsx';

export interface HandProps {
  /** The inputs as they are typed: what stands there was set by hand. */
  readonly input: Readonly<Record<string, unknown>>;
  /** mm in one unit of the drawing. */
  readonly millimetres: number;
  readonly lengths: Lengths;
  /** `name` is the step that undo shows. */
  readonly onOverride: (name: string, change: HandChange) => void;
  /** Asks for a place in the picture. */
  readonly onPick: (what: string, then: (at: Point) => void) => void;
}

export interface OverrideFormProps extends HandProps {
  readonly contour: ContourView;
  readonly contours: readonly ContourView[];
}

export const OverrideForm = (props: OverrideFormProps): ReactNode => {
  const words = useWords().picture;
  const { contour, input } = props;
  const cut = contour.number > 0;
  const closed = cut && !isOpenLine(contour);
  /** What was set by hand stays in view where the answer is a no and nothing is cut. */
  const set = (key: string): boolean => valueAt(input, key) !== undefined;
  return (
    <section className="hand-form" aria-label={words.byHandTitle(contour.id)}>
      <h3>{words.byHandTitle(words.contour(contour))}</h3>
      <KeptRow {...props} />
      {(cut || set(startKey(contour.id))) && <StartRow {...props} />}
      {((cut && contour.kept === 'die') || set(coreKey(contour.id))) && <CoreRow {...props} />}
      {(closed || set(tabKey(contour.id))) && <TabRow {...props} />}
      {(closed || set(entryKey(contour.id))) && <EntryRow {...props} />}
      {(closed || set(holeKey(contour.id))) && <HoleRow {...props} />}
      {closed && <OrderRow {...props} />}
    </section>
  );
};

interface RowProps {
  readonly title: string;
  readonly overridden: boolean;
  readonly onBack: () => void;
  readonly children: ReactNode;
}

const Row = ({ title, overridden, onBack, children }: RowProps): ReactNode => {
  const words = useWords().picture;
  return (
    <div className="hand-row">
      <span className="hand-title">{title}</span>
      <div className="hand-control">{children}</div>
      <span className="hand-state">
        {overridden ? (
          <>
            <em className="by-hand-mark">{words.setByHand}</em>{' '}
            <button type="button" aria-label={words.giveBackOf(title)} onClick={onBack}>
              {words.giveBack}
            </button>
          </>
        ) : (
          words.byPlanner
        )}
      </span>
    </div>
  );
};

/** Whether a key stands in the inputs, and what gives it back. */
const stateOf = (
  { input, onOverride }: HandProps,
  key: string,
  title: string,
  words: Words['picture'],
): Pick<RowProps, 'overridden' | 'onBack'> => ({
  overridden: valueAt(input, key) !== undefined,
  onBack: () => onOverride(words.step.giveBack(title), { [key]: undefined }),
});

interface ChoiceProps<T extends string> extends OverrideFormProps {
  readonly title: string;
  readonly path: string;
  readonly step: string;
  readonly choices: readonly (readonly [T, string])[];
  /** What the planner chose, in words, where it is known. */
  readonly planned?: string | undefined;
}

const ChoiceRow = <T extends string>({ title, path, step, choices, planned, ...shared }: ChoiceProps<T>): ReactNode => {
  const words = useWords().picture;
  const value = valueAt(shared.input, path);
  return (
    <Row title={title} {...stateOf(shared, path, title, words)}>
      <select
        aria-label={title}
        value={typeof value === 'string' ? value : ''}
        onChange={(event) => shared.onOverride(step, { [path]: event.target.value === '' ? undefined : event.target.value })}
      >
        <option value="">{value === undefined && planned !== undefined ? words.planned(planned) : words.planner}</option>
        {choices.map(([choice, text]) => (
          <option key={choice} value={choice}>
            {text}
          </option>
        ))}
      </select>
    </Row>
  );
};

const KeptRow = (props: OverrideFormProps): ReactNode => {
  const words = useWords().picture;
  const { contour } = props;
  const kinds = isOpenLine(contour) ? (['left', 'right', 'slit', 'leave'] as const) : (['die', 'punch', 'leave'] as const);
  const choices = kinds.map((k) => [k, words.keptChoice(k)] as const);
  return (
    <ChoiceRow
      {...props}
      title={words.kept}
      path={keptKey(contour)}
      step={words.step.kept(contour.id)}
      choices={choices}
      planned={words.keptChoice(contour.kept)}
    />
  );
};

const StartRow = (props: OverrideFormProps): ReactNode => {
  const words = useWords().picture;
  const { id, hole } = props.contour;
  const planned = hole === undefined ? undefined : words.startChoices[hole.diameter > 0 ? 'hole' : 'edge'];
  const choices = (['hole', 'edge'] as const).map((k) => [k, words.startChoices[k]] as const);
  return <ChoiceRow {...props} title={words.start} path={startKey(id)} step={words.step.start(id)} choices={choices} planned={planned} />;
};

const CoreRow = (props: OverrideFormProps): ReactNode => {
  const words = useWords().picture;
  const { id } = props.contour;
  const choices = (['slug', 'no-core'] as const).map((k) => [k, words.coreChoices[k]] as const);
  return <ChoiceRow {...props} title={words.core} path={coreKey(id)} step={words.step.core(id)} choices={choices} />;
};

const TabRow = (props: OverrideFormProps): ReactNode => {
  const words = useWords().picture;
  const { contour, lengths, onOverride } = props;
  const set = ([mm]: readonly number[]): void => onOverride(words.step.tab(contour.id), { [tabKey(contour.id)]: mm });
  return (
    <Row title={words.tab} {...stateOf(props, tabKey(contour.id), words.tab, words)}>
      <TypedFields
        what={words.tab}
        fields={[{ label: words.tabWidth, mm: typedTab(props) ?? contour.tab?.length, sign: 'not negative' }]}
        lengths={lengths}
        onSet={set}
      />
    </Row>
  );
};

/** What stands in the inputs is shown as it was asked for, also where the planner could not follow it. */
const typedTab = ({ input, contour }: OverrideFormProps): number | undefined => {
  const value = valueAt(input, tabKey(contour.id));
  return typeof value === 'number' ? value : undefined;
};

const typedPlace = ({ input, millimetres }: HandProps, key: string): (Point & { readonly diameter?: number }) | undefined => {
  const value = valueAt(input, key) as (Point & { readonly diameter?: number }) | undefined;
  return value === undefined ? undefined : { ...value, ...inMm(value, millimetres) };
};

const EntryRow = (props: OverrideFormProps): ReactNode => {
  const words = useWords().picture;
  const { contour, lengths, millimetres, onOverride, onPick } = props;
  const set = (at: Point): void => onOverride(words.step.entry(contour.id), { [entryKey(contour.id)]: inDrawing(at, millimetres) });
  return (
    <Row title={words.entry} {...stateOf(props, entryKey(contour.id), words.entry, words)}>
      <TypedFields
        what={words.entry}
        fields={xy(typedPlace(props, entryKey(contour.id)) ?? contour.entry)}
        lengths={lengths}
        onSet={([x, y]) => set({ x, y })}
      >
        <button type="button" aria-label={words.pickOf(words.entry)} onClick={() => onPick(words.pickPlace(words.entry), set)}>
          {words.pick}
        </button>
      </TypedFields>
    </Row>
  );
};

const HoleRow = (props: OverrideFormProps): ReactNode => {
  const words = useWords().picture;
  const { contour, lengths, millimetres, onOverride, onPick } = props;
  const hole = typedPlace(props, holeKey(contour.id)) ?? contour.hole;
  const set = (at: Point, diameter?: number): void => {
    const place = inDrawing(at, millimetres);
    onOverride(words.step.hole(contour.id), {
      [holeKey(contour.id)]: diameter === undefined ? place : { ...place, diameter: tidy(diameter) },
    });
  };
  const diameter = hole?.diameter || contour.hole?.diameter || undefined;
  return (
    <Row title={words.startHole} {...stateOf(props, holeKey(contour.id), words.startHole, words)}>
      <TypedFields
        what={words.startHole}
        fields={[...xy(hole), { label: words.diameter, mm: diameter, sign: 'positive' }]}
        lengths={lengths}
        onSet={([x, y, d]) => set({ x, y }, d)}
      >
        <button
          type="button"
          aria-label={words.pickOf(words.startHole)}
          onClick={() => onPick(words.pickPlace(words.startHole), (at) => set(at, diameter))}
        >
          {words.pick}
        </button>
      </TypedFields>
    </Row>
  );
};

export const xy = (at: Point | undefined) =>
  [
    { label: 'X', mm: at?.x },
    { label: 'Y', mm: at?.y },
  ] as const;

const OrderRow = (props: OverrideFormProps): ReactNode => {
  const words = useWords().picture;
  const { contour, contours, onOverride } = props;
  const order = turns(contours);
  const turn = order.indexOf(contour.id);
  const move = (by: -1 | 1): void => onOverride(words.step.order(contour.id), { [ORDER_KEY]: withTurn(order, contour.id, by) });
  return (
    <Row title={words.order} {...stateOf(props, ORDER_KEY, words.order, words)}>
      <span>{words.orderNow(turn + 1, order.length)}</span>{' '}
      <button type="button" disabled={turn <= 0} onClick={() => move(-1)}>
        {words.earlier}
      </button>{' '}
      <button type="button" disabled={turn < 0 || turn === order.length - 1} onClick={() => move(1)}>
        {words.later}
      </button>
    </Row>
  );
};

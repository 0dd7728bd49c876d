/** One open sheet: its store, what may be done to it, and the worker behind it. */

import type { Remote } from 'comlink';
import { useStore } from 'zustand';
import { createStore, type StoreApi } from 'zustand/vanilla';
import type { AnsweredFrom } from '../../server/message/answered-from.ts';
import type { ShopRecord } from '../../server/message/answers.ts';
import type { JobRecord } from '../../server/message/job-record.ts';
import { NOTHING } from '../../text/say.ts';
import type { JobWorker, Question } from '../work/job-worker.ts';
import type { Tell } from '../work/sheet-for-reader.ts';
import type { SheetInTexts } from '../work/views.ts';
import { answeredFromOf, lineOf, sameFrom, sameLine } from './answer-line.ts';
import { type Aside, startAside } from './aside.ts';
import { takeWorker, type WarmWorker } from './idle-workers.ts';
import { inputOf, redone, undone, withStep } from './input.ts';
import { type Keeper, startKeeper, unsaved } from './keeper.ts';
import { pageVersion } from './page-version.ts';
import { keepPreferences, preferences } from './preferences.ts';
import { type ProgramKeeper, startPrograms } from './programs.ts';
import { type Runner, startRunner } from './runner.ts';
import { fetchDrawing, fetchJob, fetchShop } from './server.ts';
import type { SheetActions, SheetState } from './sheet-state.ts';
import { startTelling, type Telling } from './telling.ts';

export interface OpenSheet {
  readonly store: StoreApi<SheetState>;
  readonly actions: SheetActions;
  readonly worker: () => Remote<JobWorker>;
  /** A sentence of the core in the units and number marks of the user. */
  readonly tell: Tell;
  /** For what takes long, beside the worker of the answer. */
  readonly aside: Aside;
  /** For programs from elsewhere, whose verdict is not to wait for what takes longer still. */
  readonly prover: Aside;
  /** Programs from elsewhere that are held against the drawing. */
  readonly programs: ProgramKeeper;
  /** Saves what waits, before a file of the saved revision is asked for; true when all is saved. */
  readonly flush: () => Promise<boolean>;
  readonly close: () => void;
}

export type Opened =
  | { readonly kind: 'open'; readonly sheet: OpenSheet }
  | { readonly kind: 'no such job'; readonly sentence: string }
  | { readonly kind: 'gone' };

export const openSheet = async (id: string): Promise<Opened> => {
  const warm = takeWorker();
  const opened = await openWith(id, warm);
  if (opened.kind !== 'open') warm.thread.terminate();
  return opened;
};

const openWith = async (id: string, warm: WarmWorker): Promise<Opened> => {
  const [record, drawing, shop] = await Promise.all([fetchJob(id), fetchDrawing(id), fetchShop()]);
  if (record.kind === 'gone' || drawing.kind === 'gone' || shop.kind === 'gone') return { kind: 'gone' };
  for (const answer of [record, drawing, shop])
    if (answer.kind === 'refused') return { kind: 'no such job', sentence: answer.error.sentence };
  if (record.kind !== 'ok' || drawing.kind !== 'ok' || shop.kind !== 'ok') return { kind: 'gone' };
  return { kind: 'open', sheet: sheetOn(record.value, drawing.value, shop.value, warm) };
};

const sheetOn = (base: JobRecord, bytes: Uint8Array, shop: ShopRecord, warm: WarmWorker): OpenSheet => {
  const mine = unsaved(base);
  const store = createStore<SheetState>(() => ({ ...beginning(), record: mine ?? base }));
  const put = (part: Partial<SheetState>): void => store.setState(part);
  const keeper = startKeeper(
    base,
    {
      saving: (saving) => put({ saving }),
      record: (record) => {
        put({ record });
        ask(record);
      },
      beside: (record) => programs.heard(record),
    },
    mine,
  );
  const drawing = { name: base.drawingName, bytes };
  const told = startTelling(store);
  const runner = startRunner(
    drawing,
    eventsOf(store, keeper, told, ({ input, day }) => answeredFromOf(input, shop, { version: pageVersion(), day })),
    warm,
  );
  const questionOf = (record: JobRecord): Question => ({
    input: inputOf(record),
    shop: shop.shop,
    day: today(),
    dialect: shop.dialect,
  });
  let question = questionOf(mine ?? base);
  const [aside, prover] = [startAside(drawing, () => question), startAside(drawing, () => question)];
  const ask = (record: JobRecord): void => {
    question = questionOf(record);
    runner.ask(question);
  };
  ask(mine ?? base);
  const programs = startPrograms(base.id, store);
  const unwatched = whenLeft(keeper);
  return {
    store,
    actions: actionsOn(store, keeper, runner, ask, told),
    tell: told.tell,
    worker: () => runner.worker,
    aside,
    prover,
    programs,
    flush: () => keeper.flush(),
    close: () => {
      unwatched();
      keeper.close();
      runner.close();
      aside.close();
      prover.close();
      programs.close();
    },
  };
};

/** Looks what another tab saved whenever the page is looked at again, and saves what waits whenever it is not; the answer ends that. */
const whenLeft = (keeper: Keeper): (() => void) => {
  const look = (): void => void (document.visibilityState === 'visible' ? keeper.look() : keeper.flush());
  const leave = (): void => keeper.leave();
  document.addEventListener('visibilitychange', look);
  window.addEventListener('pagehide', leave);
  return () => {
    document.removeEventListener('visibilitychange', look);
    window.removeEventListener('pagehide', leave);
  };
};

const beginning = (): SheetState => ({
  saving: 'saved',
  chapter: 'drawing',
  ...preferences(),
});

const eventsOf = (
  store: StoreApi<SheetState>,
  keeper: Keeper,
  told: Telling,
  fromOf: (question: Question) => AnsweredFrom,
): Parameters<typeof startRunner>[1] => ({
  began: () => store.setState({ running: { stage: NOTHING, share: 0 } }),
  tell: (stage, share) => store.setState({ running: { stage, share } }),
  answered: (sheet, asked, question) => {
    const { record } = store.getState();
    told.show(sheet, { running: undefined, fault: undefined });
    noteShown(sheet, asked);
    const line = lineOf(sheet.sentence.text);
    const answeredFrom = fromOf(question);
    if (record === undefined || (sameLine(record.line, line) && sameFrom(record.answeredFrom, answeredFrom))) return;
    const lined = { ...record, line, answeredFrom };
    store.setState({ record: lined });
    keeper.keep(lined);
  },
  failed: (fault) => store.setState({ fault, running: undefined }),
});

/** Notes in the browser's own timeline how long the user waited for an answer, until it was painted, and how much of that the core took. */
const noteShown = ({ took }: SheetInTexts, asked: number): void => {
  requestAnimationFrame(() => setTimeout(() => performance.measure('answer shown', { start: asked, detail: took })));
};

const actionsOn = (
  store: StoreApi<SheetState>,
  keeper: Keeper,
  runner: Runner,
  ask: (record: JobRecord) => void,
  told: Telling,
): SheetActions => {
  const move = (make: (record: JobRecord) => JobRecord): void => {
    const { record } = store.getState();
    if (record === undefined) return;
    const next = make(record);
    if (next === record) return;
    store.setState({ record: next });
    keeper.keep(next);
    ask(next);
  };
  return {
    edit: (name, change) => move((record) => withStep(record, name, change)),
    undo: () => move((record) => (record.cursor > 0 ? undone(record) : record)),
    redo: () => move((record) => (record.cursor + 1 < record.steps.length ? redone(record) : record)),
    cancel: () => {
      runner.cancel();
      store.setState({ running: undefined });
    },
    choose: (chosen) => store.setState({ chosen }),
    show: (part) => {
      store.setState(part);
      if (part.lengthUnit !== undefined || part.finishUnit !== undefined) told.again();
      keepPreferences(store.getState());
    },
    takeTheirs: () => void keeper.takeTheirs(),
    keepMine: () => void keeper.keepMine(),
  };
};

/** The day by the user's own calendar, ISO 8601. */
export const today = (): string => {
  const now = new Date();
  const two = (n: number): string => String(n).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
};

/** A part of an open sheet's state; the component is drawn anew only when that part changes. */
export const useSheet = <T>(sheet: OpenSheet, select: (state: SheetState) => T): T => useStore(sheet.store, select);

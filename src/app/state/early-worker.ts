/** The worker of the first sheet, begun while the page itself is still being loaded: whoever opens a sheet takes it, the next one begins anew. */
import { type WarmWorker, warmWorker } from './runner.ts';

/** The one thing the page keeps outside a sheet: there is no sheet yet that could keep it. */
const early: { worker?: WarmWorker } = {};

export const beginEarly = (): void => {
  early.worker ??= warmWorker();
};

export const takeWorker = (): WarmWorker => {
  const worker = early.worker ?? warmWorker();
  delete early.worker;
  return worker;
};

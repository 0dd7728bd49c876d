/** A finding as words: what leaves the house as JSON, over the wire or to a picture. */
import type { Finding, Place, Severity } from '../finding.ts';
import { HOUSE, type Reader } from '../reader.ts';
import { print } from './print.ts';

export interface Stated {
  readonly code: string;
  readonly severity: Severity;
  readonly sentence: string;
  readonly place?: Place | undefined;
  readonly done?: string | undefined;
  readonly remedy?: string | undefined;
  readonly stands?: number | undefined;
}

/** What is not there is undefined, so that JSON holds only what there is. */
export const stated = ({ text, done, remedy, place, ...rest }: Finding, reader: Reader = HOUSE): Stated => ({
  ...rest,
  sentence: print(text, reader),
  place,
  done: done && print(done, reader),
  remedy: remedy && print(remedy.text, reader),
});

/** What was assumed looks so on every paper: "required" stands by what was asked for, and by nothing else. */

import type { Asked } from '../../result/facts.ts';
import type { Part } from '../../text/part.ts';
import { only, phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';

/** Whether nobody gave this key of the job file. */
export const isAssumed = ({ assumed }: Pick<Asked, 'assumed'>, field: string): boolean => assumed.some((a) => a.field === field);

/** '±0.02 mm (assumed)', or what was asked as it is. */
export const markedAssumed = (asked: Pick<Asked, 'assumed'>, field: string, value: Part | Text): Text => {
  if (isAssumed(asked, field)) return words.assumed(value);
  return 'kind' in value ? only(value) : value;
};

const words = phrases('assumed-mark', { assumed: (value: Part | Text) => say`${{ value }} (assumed)` });

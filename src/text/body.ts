/** The inside of a text, for this folder alone: the gate holds all others off. */
import type { Part } from './part.ts';
import type { Text } from './text.ts';

export interface TextBody {
  /** 'open-chain/gap', 'set-up.title'; '' for a text without words of its own; one without a key can only be printed in English. */
  readonly key?: string | undefined;
  /** '{loop} on layer {layer} does not close.' */
  readonly template: string;
  readonly holes: Readonly<Record<string, Part>>;
}

export const bodyOf = (text: Text): TextBody => text as unknown as TextBody;
/** A text put into a string would silently become '[object Object]': the compiler lets that pass, so it throws. */
const guarded: object = {
  toString: (): never => {
    throw new Error('A text is printed for a reader; it cannot be put into a string.');
  },
};

export const textOf = (body: TextBody): Text => Object.assign(Object.create(guarded), body) as Text;

/** The text under this key, unless it has one already. */
export const keyed = (text: Text, key: string): Text => {
  const body = bodyOf(text);
  return body.key === undefined ? textOf({ ...body, key }) : text;
};

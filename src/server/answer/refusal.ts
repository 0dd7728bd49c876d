/** A request that cannot be answered as asked: thrown by whoever finds it, answered as data by `error-answer.ts`. */

import { fileFault } from '../../job/files/parse.ts';
import type { Finding } from '../../text/finding.ts';
import { printPlain } from '../../text/print/print.ts';
import { stated } from '../../text/print/stated.ts';
import type { Text } from '../../text/text.ts';
import type { ServerError } from '../message/answers.ts';

export class Refusal extends Error {
  readonly status: number;
  readonly answer: ServerError;

  constructor(status: number, error: string, text: Text, more: Omit<ServerError, 'error' | 'sentence'> = {}) {
    const sentence = printPlain(text);
    super(sentence);
    this.status = status;
    this.answer = { error, sentence, ...more };
  }
}

export const notFound = (text: Text): Refusal => new Refusal(404, 'not-found', text);

export const notValid = (text: Text, findings: readonly Finding[]): Refusal => new Refusal(400, 'not-valid', text, said(findings));

/** Findings as an answer carries them. */
export const said = (findings: readonly Finding[]): Pick<ServerError, 'findings'> => ({
  findings: findings.map((f) => {
    const { place, ...rest } = stated(f);
    return { ...rest, place: place === undefined ? undefined : { ...place } };
  }),
});

/** A fault in a field of what was sent. */
export const badField = (path: string, text: Text): Refusal => notValid(text, [fileFault(path, text)]);

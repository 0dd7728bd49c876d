/** A request that cannot be answered as asked: thrown by whoever finds it, answered as data by `error-answer.ts`. */

import type { Finding } from '../../text/finding.ts';
import { legacy } from '../../text/legacy.ts';
import { stated } from '../../text/print/stated.ts';
import type { ServerError } from '../message/answers.ts';

export class Refusal extends Error {
  readonly status: number;
  readonly answer: ServerError;

  constructor(status: number, error: string, sentence: string, more: Omit<ServerError, 'error' | 'sentence'> = {}) {
    super(sentence);
    this.status = status;
    this.answer = { error, sentence, ...more };
  }
}

export const notFound = (sentence: string): Refusal => new Refusal(404, 'not-found', sentence);

export const notValid = (sentence: string, findings: readonly Finding[]): Refusal =>
  new Refusal(400, 'not-valid', sentence, said(findings));

/** Findings as an answer carries them. */
export const said = (findings: readonly Finding[]): Pick<ServerError, 'findings'> => ({
  findings: findings.map((f) => {
    const { place, ...rest } = stated(f);
    return { ...rest, place: place === undefined ? undefined : { ...place } };
  }),
});

/** A fault in a field of what was sent. */
export const badField = (path: string, sentence: string): Refusal =>
  notValid(sentence, [{ code: 'file-not-valid', severity: 'refusal', text: legacy(sentence), place: { kind: 'field', path } }]);

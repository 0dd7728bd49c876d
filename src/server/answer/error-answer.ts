/** Every error as the one shape that pages and programs rely on: a code, a sentence, the fields at fault. */
import type { FastifyError, FastifyReply, FastifyRequest } from 'fastify';
import { hasZodFastifySchemaValidationErrors } from 'fastify-type-provider-zod';
import { name } from '../../text/part.ts';
import { printPlain } from '../../text/print/print.ts';
import { only, phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import type { ServerError } from '../message/answers.ts';
import { Refusal } from './refusal.ts';

interface ErrorAnswer {
  readonly status: number;
  readonly answer: ServerError;
}

/** `tell` hears of errors that are our mistake. */
export const errorHandler =
  (tell: (line: string) => void) =>
  (error: FastifyError | Refusal, request: FastifyRequest, reply: FastifyReply): void => {
    const { status, answer } = errorAnswer(error);
    if (status >= 500 && !(error instanceof Refusal))
      tell(`${request.method} ${request.routeOptions.url ?? '?'}: ${error.stack ?? error.message}`);
    // What is still coming of a body that nobody wants any more is not waited for.
    if (status === 413) reply.header('connection', 'close');
    reply.code(status).type('application/json; charset=utf-8').send(JSON.stringify(answer));
  };

export const errorAnswer = (error: FastifyError | Refusal): ErrorAnswer => {
  if (error instanceof Refusal) return { status: error.status, answer: error.answer };
  if (hasZodFastifySchemaValidationErrors(error) && error.validationContext === 'params')
    return { status: 404, answer: { error: 'not-found', sentence: printPlain(words.noJob) } };
  if (hasZodFastifySchemaValidationErrors(error)) return notValidAnswer(error);
  const known = KNOWN[error.code ?? ''];
  if (known !== undefined) return { status: known[0], answer: { error: known[1], sentence: printPlain(reasons[known[2]]) } };
  const status = error.statusCode ?? 500;
  if (status >= 400 && status < 500)
    return { status, answer: { error: 'not-understood', sentence: printPlain(words.notUnderstood(error.message)) } };
  return {
    status: 500,
    answer: { error: 'our-mistake', sentence: printPlain(words.ourMistake) },
  };
};

const MOST_FAULTS = 20;

const notValidAnswer = (error: Error & { validation?: readonly { instancePath: string; message?: string }[] }): ErrorAnswer => {
  const findings = (error.validation ?? []).slice(0, MOST_FAULTS).map(({ instancePath, message }) => {
    const path = instancePath.replace(/^\//, '').replaceAll('/', '.').slice(0, 200);
    return {
      code: 'file-not-valid',
      severity: 'refusal',
      sentence: printPlain(
        words.fault(path === '' ? words.sent : only(name(path)), message === undefined ? words.unusable : only(name(message))),
      ),
      place: { kind: 'field', path },
    };
  });
  return { status: 400, answer: { error: 'not-valid', sentence: printPlain(words.notValid), findings } };
};

const reasons = phrases('server-error', {
  tooLarge: say`This is larger than the limit of the server.`,
  diskFull: say`Nothing was saved: the disk is full. What was saved before is unchanged.`,
  notAllowed: say`The server cannot read or write its own folder; check the folder's owner and permissions.`,
  fileTooLarge: say`One of the files is larger than 64 MB.`,
  tooManyFiles: say`At most 20 files can be added at once.`,
  onlyFiles: say`Only files are accepted here, no other fields.`,
  fieldName: say`A field has a name that is not allowed.`,
  notAForm: say`Drawings are sent as the files of a form (multipart/form-data).`,
  wrongForm: say`The server does not read this kind of content here.`,
  notJson: say`The request is not JSON, or has a key that is not allowed.`,
  nothingSent: say`The request is empty; JSON is expected.`,
  otherLength: say`The request is shorter or longer than announced.`,
  badAddress: say`The address cannot be read.`,
  brokenOff: say`The upload stopped before it was complete.`,
  readOnly: say`Nothing was saved: the disk of the server's folder is read-only.`,
});

const words = phrases('server-answer', {
  noJob: say`No such job, and no file of that name.`,
  notUnderstood: (why: string) => say`The request cannot be answered: ${{ why: name(why) }}`,
  ourMistake: say`The server itself failed; this is a fault in the program, not in your job. Nothing that was saved is lost.`,
  notValid: say`The request cannot be used as it is.`,
  sent: say`The request`,
  unusable: say`cannot be used`,
  fault: (field: Text, why: Text) => say`${{ field }}: ${{ why }}.`,
});

type Row = readonly [status: number, error: string, said: keyof typeof reasons];

const TOO_LARGE: Row = [413, 'too-large', 'tooLarge'];
const DISK_FULL: Row = [507, 'not-kept', 'diskFull'];
const NOT_ALLOWED: Row = [500, 'not-kept', 'notAllowed'];

/** By the code of Fastify, of its plugins, or of the system. */
const KNOWN: Readonly<Record<string, Row>> = {
  FST_ERR_CTP_BODY_TOO_LARGE: TOO_LARGE,
  FST_REQ_FILE_TOO_LARGE: [413, 'too-large', 'fileTooLarge'],
  FST_FILES_LIMIT: [413, 'too-many', 'tooManyFiles'],
  FST_PARTS_LIMIT: [413, 'too-many', 'tooManyFiles'],
  FST_FIELDS_LIMIT: [413, 'too-many', 'onlyFiles'],
  FST_PROTO_VIOLATION: [400, 'not-valid', 'fieldName'],
  FST_INVALID_MULTIPART_CONTENT_TYPE: [415, 'wrong-kind', 'notAForm'],
  FST_ERR_CTP_INVALID_MEDIA_TYPE: [415, 'wrong-kind', 'wrongForm'],
  FST_ERR_CTP_INVALID_JSON_BODY: [400, 'not-json', 'notJson'],
  FST_ERR_CTP_EMPTY_JSON_BODY: [400, 'not-json', 'nothingSent'],
  FST_ERR_CTP_INVALID_CONTENT_LENGTH: [400, 'not-understood', 'otherLength'],
  FST_ERR_BAD_URL: [400, 'not-understood', 'badAddress'],
  ERR_STREAM_PREMATURE_CLOSE: [400, 'broken-off', 'brokenOff'],
  ENOSPC: DISK_FULL,
  EDQUOT: DISK_FULL,
  EACCES: NOT_ALLOWED,
  EPERM: NOT_ALLOWED,
  EROFS: [500, 'not-kept', 'readOnly'],
};

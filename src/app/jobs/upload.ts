/** Files on their way to the server: each drawing by itself, a job file together with all others, with how far each is. */
import { paths, type ServerError } from '../../server/message/answers.ts';
import type { Words } from '../words/words-for.ts';

export interface Upload {
  readonly id: number;
  readonly name: string;
  readonly state:
    | { readonly kind: 'sending'; readonly share: number }
    | { readonly kind: 'brought'; readonly job: string; readonly jobName: string }
    | { readonly kind: 'failed'; readonly sentence: string };
}

/** As the server's own limit, so that nobody waits for a refusal. */
const MOST_MEGABYTES = 64;

export interface Batch {
  readonly name: string;
  readonly files: readonly File[];
}

/** A job file names its drawing, so both go in one request; drawings alone each go by themselves. */
export const batchesOf = (files: readonly File[]): readonly Batch[] =>
  files.some((f) => /\.json$/i.test(f.name))
    ? [{ name: files.map((f) => f.name).join(', '), files }]
    : files.map((f) => ({ name: f.name, files: [f] }));

/** Why files are not even sent; nothing when they may be. */
export const notToBeSent = ({ files }: Batch, words: Words['jobs']): string | undefined => {
  const large = files.find((f) => f.size > MOST_MEGABYTES * 1024 * 1024);
  return large === undefined ? undefined : words.tooLarge(large.name, MOST_MEGABYTES);
};

interface Brought {
  readonly id: string;
  readonly name: string;
}

export type Sent = { readonly kind: 'brought'; readonly jobs: readonly Brought[] } | { readonly kind: 'failed'; readonly sentence: string };

/** fetch cannot tell how much was sent; the older request can. */
export const send = ({ files }: Batch, tell: (share: number) => void, words: Words['jobs']): Promise<Sent> =>
  new Promise((resolve) => {
    const form = new FormData();
    for (const file of files) form.append('files', file, file.name);
    const request = new XMLHttpRequest();
    request.upload.onprogress = ({ loaded, total }) => tell(total > 0 ? loaded / total : 0);
    request.onerror = () => resolve({ kind: 'failed', sentence: words.gone });
    request.onload = () => resolve(answerOf(request, words));
    request.open('POST', paths.jobs);
    request.send(form);
  });

const answerOf = (request: XMLHttpRequest, words: Words['jobs']): Sent => {
  try {
    const body: unknown = JSON.parse(request.responseText);
    if (request.status < 300 && Array.isArray(body)) return { kind: 'brought', jobs: body as readonly Brought[] };
    const { sentence, findings } = body as Partial<ServerError>;
    return {
      kind: 'failed',
      sentence: sentence === undefined ? words.gone : [sentence, ...(findings ?? []).map((f) => f.sentence)].join(' '),
    };
  } catch {
    return { kind: 'failed', sentence: words.gone };
  }
};

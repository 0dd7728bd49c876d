/** What the page asks of the server; every answer is a named case, a server that is gone included. */
import {
  type Bin,
  type BinnedJob,
  type LogAddition,
  paths,
  type Saving,
  type ServerError,
  type ShopRecord,
} from '../../server/message/answers.ts';
import type { JobRecord, JobSummary } from '../../server/message/job-record.ts';
import { count } from '../../text/part.ts';
import { print } from '../../text/print/print.ts';
import { phrases, say } from '../../text/say.ts';
import { preferences, readerOf } from './preferences.ts';

export type Answered<T> =
  | { readonly kind: 'ok'; readonly value: T }
  | { readonly kind: 'refused'; readonly status: number; readonly error: ServerError }
  | { readonly kind: 'gone' };

export const fetchJobs = (): Promise<Answered<readonly JobSummary[]>> => ask(paths.jobs);
export const fetchJob = (id: string): Promise<Answered<JobRecord>> => ask(paths.job(id));
export const fetchShop = (): Promise<Answered<ShopRecord>> => ask(paths.shop);
export const saveShop = (record: ShopRecord): Promise<Answered<ShopRecord>> => send('PUT', paths.shop, record);
export const saveJob = (id: string, saving: Saving): Promise<Answered<{ readonly revision: number }>> => send('PUT', paths.job(id), saving);
export const addToLog = (id: string, entry: LogAddition): Promise<Answered<JobRecord>> => send('POST', paths.log(id), entry);
export const removeJob = (id: string): Promise<Answered<BinnedJob>> => send('DELETE', paths.job(id));
export const fetchBin = (): Promise<Answered<Bin>> => ask(paths.bin);
export const returnJob = (bin: string): Promise<Answered<JobSummary>> => send('POST', paths.jobBack(bin));

export const keepProgram = (id: string, file: File): Promise<Answered<JobRecord>> => {
  const body = new FormData();
  body.append('files', file, file.name);
  return answered(fetch(paths.programs(id), { method: 'POST', body }), (r) => r.json() as Promise<JobRecord>);
};
export const dropProgram = (id: string, number: number): Promise<Answered<JobRecord>> => send('DELETE', paths.program(id, number));
export const returnProgram = (id: string, number: number): Promise<Answered<JobRecord>> => send('POST', paths.programBack(id, number));

export const fetchDrawing = (id: string): Promise<Answered<Uint8Array>> => bytesAt(paths.drawing(id));
export const fetchProgram = (id: string, number: number): Promise<Answered<Uint8Array>> => bytesAt(paths.program(id, number));

export interface ServedFile {
  readonly name: string;
  readonly content: Blob;
}

/** A file that the job is handed out as, under the name the server gives it. */
export const fetchFile = (id: string, file: string): Promise<Answered<ServedFile>> =>
  answered(fetch(paths.file(id, file)), async (r) => ({
    name: /filename="([^"]+)"/.exec(r.headers.get('content-disposition') ?? '')?.[1] ?? file,
    content: await r.blob(),
  }));

const bytesAt = (path: string): Promise<Answered<Uint8Array>> => answered(fetch(path), async (r) => new Uint8Array(await r.arrayBuffer()));

const ask = <T>(path: string): Promise<Answered<T>> => answered(fetch(path), (r) => r.json() as Promise<T>);

const send = <T>(method: string, path: string, body?: unknown): Promise<Answered<T>> =>
  answered(fetch(path, body === undefined ? { method } : sent(method, JSON.stringify(body))), (r) =>
    r.status === 204 ? Promise.resolve(undefined as T) : (r.json() as Promise<T>),
  );

const sent = (method: string, body: string): RequestInit => ({
  method,
  body,
  headers: { 'content-type': 'application/json' },
  keepalive: body.length < OUTLIVES,
});

/** What is this small goes on its way even when the page is left; browsers let 64 KiB do so. */
const OUTLIVES = 20_000;

const answered = async <T>(asking: Promise<Response>, read: (response: Response) => Promise<T>): Promise<Answered<T>> => {
  try {
    const response = await asking;
    if (response.ok) return { kind: 'ok', value: await read(response) };
    return { kind: 'refused', status: response.status, error: await errorOf(response) };
  } catch {
    return { kind: 'gone' };
  }
};

const words = phrases('page.server', { status: (status: number) => say`The server answered with ${{ status: count(status) }}.` });

const errorOf = async (response: Response): Promise<ServerError> => {
  try {
    const body = (await response.json()) as Partial<ServerError>;
    if (typeof body.sentence === 'string') return { error: 'not-said', ...body, sentence: body.sentence };
  } catch {
    // A proxy or a server that is shutting down answers with a page instead of data.
  }
  return { error: 'not-said', sentence: print(words.status(response.status), readerOf(preferences())) };
};

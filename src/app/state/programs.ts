/** Programs from elsewhere on an open sheet: taken in, kept with the job by the server, read again, taken away and put back. */
import type { StoreApi } from 'zustand/vanilla';
import { fileKind, HEAD, programText } from '../../job/files/file-kind.ts';
import type { JobRecord } from '../../server/message/job-record.ts';
import type { Coming, OtherProgram, Trouble } from './kept-program.ts';
import { type Answered, dropProgram, fetchProgram, keepProgram, returnProgram } from './server.ts';
import type { SheetState } from './sheet-state.ts';

export type TakenIn =
  | { readonly kind: 'taken'; readonly key: string }
  | { readonly kind: 'too large'; readonly megabytes: number }
  /** A drawing or a job file. What is nothing of all this is taken for a program, whose proof says what is wrong with it. */
  | { readonly kind: 'no program' }
  | { readonly kind: 'unreadable' };

export interface ProgramKeeper {
  /** Shows a program and sends it to be kept; one that is there already, word for word, is shown as it is. */
  take(file: File): Promise<TakenIn>;
  /** Rejects where the server does not answer, or refuses. */
  text(program: OtherProgram): Promise<string>;
  takeAway(program: OtherProgram): Promise<Answered<unknown>>;
  putBack(program: OtherProgram): Promise<Answered<unknown>>;
  /** Takes over which programs the server keeps, and nothing else: the rest of the record may be edited here and not be saved yet. */
  heard(record: JobRecord): void;
  close(): void;
}

/** The worker reads programs as they come from a machine, MB. */
const MOST = 20;
/** ms */
const AGAIN = 2000;

export const startPrograms = (id: string, store: StoreApi<SheetState>): ProgramKeeper => new JobPrograms(id, store);

/** All programs, in the order they came. */
export const programsOf = (record: JobRecord | undefined, coming: readonly Coming[] = []): readonly OtherProgram[] => {
  const kept = (record?.programs ?? []).map((program, i): OtherProgram => {
    const number = i + 1;
    return { key: coming.find((c) => c.number === number)?.key ?? `kept ${number}`, number, ...program };
  });
  return [...kept, ...coming.filter((c) => c.number === undefined)];
};

class JobPrograms implements ProgramKeeper {
  private readonly id: string;
  private readonly store: StoreApi<SheetState>;
  private readonly texts = new Map<number, Promise<string>>();
  private sending: Promise<void> = Promise.resolve();
  private timer: ReturnType<typeof setTimeout> | undefined;
  private closed = false;
  private last = 0;

  constructor(id: string, store: StoreApi<SheetState>) {
    this.id = id;
    this.store = store;
  }

  async take(file: File): Promise<TakenIn> {
    if (file.size > MOST * 1e6) return { kind: 'too large', megabytes: MOST };
    try {
      const bytes = new Uint8Array(await file.arrayBuffer());
      if (['dxf', 'svg', 'job file'].includes(fileKind(bytes.subarray(0, HEAD), file.name))) return { kind: 'no program' };
      const text = programText(bytes);
      const there = await this.same(file.name, text);
      if (there !== undefined) return { kind: 'taken', key: there.key };
      this.last += 1;
      const coming: Coming = {
        key: `came ${this.last}`,
        name: file.name,
        at: new Date().toISOString(),
        text,
        trouble: { kind: 'on its way' },
      };
      this.put([...this.coming(), coming]);
      // One after the other: each gets the next number.
      this.sending = this.sending.then(() => this.send(coming.key, file));
      return { kind: 'taken', key: coming.key };
    } catch {
      return { kind: 'unreadable' };
    }
  }

  async text(program: OtherProgram): Promise<string> {
    const here = this.coming().find((c) => c.key === program.key);
    if (here !== undefined) return here.text;
    const { number } = program;
    if (number === undefined) throw new Error('A program that is neither here nor kept.');
    const known = this.texts.get(number);
    if (known !== undefined) return known;
    const asked = fetchProgram(this.id, number).then((answer) => {
      if (answer.kind !== 'ok') throw new Error(answer.kind);
      return programText(answer.value);
    });
    this.texts.set(number, asked);
    asked.catch(() => this.texts.delete(number));
    return asked;
  }

  async takeAway({ key, number }: OtherProgram): Promise<Answered<unknown>> {
    if (number !== undefined) return this.answered(await dropProgram(this.id, number));
    this.put(this.coming().filter((c) => c.key !== key));
    return { kind: 'ok', value: undefined };
  }

  async putBack({ number }: OtherProgram): Promise<Answered<unknown>> {
    return number === undefined ? { kind: 'ok', value: undefined } : this.answered(await returnProgram(this.id, number));
  }

  close(): void {
    this.closed = true;
    clearTimeout(this.timer);
  }

  private async same(name: string, text: string): Promise<OtherProgram | undefined> {
    const { record } = this.store.getState();
    for (const program of programsOf(record, this.coming()))
      if (program.name === name && program.removed === undefined && (await this.text(program).catch(() => undefined)) === text)
        return program;
    return undefined;
  }

  private async send(key: string, file: File): Promise<void> {
    while (!this.closed && this.coming().some((c) => c.key === key)) {
      const answer = await keepProgram(this.id, file);
      if (answer.kind === 'ok') return this.kept(key, answer.value);
      if (answer.kind === 'refused') return this.mark(key, { kind: 'refused', sentence: answer.error.sentence });
      this.mark(key, { kind: 'server gone' });
      await new Promise<void>((resolve) => {
        this.timer = setTimeout(resolve, AGAIN);
      });
    }
  }

  private coming(): readonly Coming[] {
    return this.store.getState().coming ?? [];
  }

  private put(coming: readonly Coming[]): void {
    this.store.setState({ coming });
  }

  private mark(key: string, trouble: Trouble): void {
    this.put(this.coming().map((c) => (c.key === key ? { ...c, trouble } : c)));
  }

  /** What came last has the last number. Both at once, so that it is never shown twice, nor not at all. */
  private kept(key: string, { programs = [] }: JobRecord): void {
    const { record } = this.store.getState();
    const coming = this.coming().map((c): Coming => {
      if (c.key !== key) return c;
      const { trouble: _, ...rest } = c;
      return { ...rest, number: programs.length };
    });
    this.store.setState(record === undefined ? { coming } : { coming, record: { ...record, programs } });
  }

  heard({ programs = [] }: JobRecord): void {
    const { record } = this.store.getState();
    if (record === undefined || JSON.stringify(record.programs ?? []) === JSON.stringify(programs)) return;
    this.store.setState({ record: { ...record, programs } });
  }

  private answered(answer: Answered<JobRecord>): Answered<JobRecord> {
    if (answer.kind === 'ok') this.heard(answer.value);
    return answer;
  }
}

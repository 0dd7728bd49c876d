/** The shop: wires, materials, machines, rates, shifts and the words of its control, as tables that can be edited and pasted into. */
import { type ReactNode, useEffect, useState } from 'react';
import type { ShopRecord } from '../../server/message/answers.ts';
import { fetchShop, saveShop } from '../state/server.ts';
import { useWords } from '../words/use-words.ts';
import { TABLES } from './columns.ts';
import { DialectField } from './dialect-field.tsx';
import { ShopTable } from './shop-table.tsx';
import './shop.css';
import type { ShopFault } from './shop-state.ts';

type Saved =
  | { readonly kind: 'as loaded' | 'saved' | 'unsaved' | 'gone' | 'elsewhere' }
  | { readonly kind: 'faults'; readonly faults: readonly ShopFault[] };

export const ShopPage = (): ReactNode => {
  const words = useWords().shop;
  const { record, edit, undo, save, load, saved } = useShop();
  if (record === undefined) return <main className="shop">{saved.kind === 'gone' ? <p role="alert">{words.gone}</p> : null}</main>;
  const faults = saved.kind === 'faults' ? saved.faults : [];
  return (
    <main className="shop" id="content">
      <header>
        <a href="/jobs">{words.back}</a>
        <h1>{words.title}</h1>
        <p>{words.intro}</p>
      </header>
      <Simple record={record} edit={edit} />
      {TABLES.map((table) => (
        <ShopTable key={table} table={table} record={record} faults={faults} onEdit={edit} />
      ))}
      <DialectField record={record} onEdit={edit} />
      <footer className="saving">
        <button type="button" className="save" onClick={() => void save()}>
          {words.save}
        </button>
        <button type="button" disabled={undo === undefined} onClick={undo}>
          {words.undo}
        </button>
        <div role="status">
          <SavedLine saved={saved} load={load} />
        </div>
      </footer>
    </main>
  );
};

const SavedLine = ({ saved, load }: { readonly saved: Saved; readonly load: () => Promise<void> }): ReactNode => {
  const words = useWords().shop;
  if (saved.kind === 'saved') return words.saved;
  if (saved.kind === 'unsaved') return words.unsaved;
  if (saved.kind === 'gone') return words.gone;
  if (saved.kind === 'elsewhere')
    return (
      <>
        {words.elsewhere}{' '}
        <button type="button" onClick={() => void load()}>
          {words.loadAnew}
        </button>
      </>
    );
  if (saved.kind !== 'faults') return null;
  return (
    <>
      {words.faults}
      <ul>
        {saved.faults.map((f) => (
          <li key={`${f.path} ${f.sentence}`}>{f.sentence}</li>
        ))}
      </ul>
    </>
  );
};

interface SimpleProps {
  readonly record: ShopRecord;
  readonly edit: (record: ShopRecord) => void;
}

const Simple = ({ record, edit }: SimpleProps): ReactNode => {
  const words = useWords().shop;
  const put = (key: string, value: unknown): void => edit({ ...record, shop: { ...record.shop, [key]: value } });
  return (
    <div className="simple">
      <label>
        {words.name}
        <input size={36} value={String(record.shop['name'] ?? '')} onChange={(e) => put('name', e.target.value)} />
      </label>
      <label>
        {words.quotationDays}
        <input
          inputMode="numeric"
          value={String(record.shop['quotationDays'] ?? 30)}
          onChange={(e) => put('quotationDays', /^\d+$/.test(e.target.value) ? Number(e.target.value) : e.target.value)}
        />
      </label>
      <label>
        {words.terms}
        <textarea
          rows={2}
          maxLength={600}
          value={String(record.shop['terms'] ?? '')}
          onChange={(e) => put('terms', e.target.value === '' ? undefined : e.target.value)}
        />
      </label>
    </div>
  );
};

const useShop = () => {
  const [steps, setSteps] = useState<readonly ShopRecord[]>([]);
  const [saved, setSaved] = useState<Saved>({ kind: 'as loaded' });
  const record = steps.at(-1);
  const load = async (): Promise<void> => {
    const answer = await fetchShop();
    if (answer.kind === 'ok') setSteps([answer.value]);
    setSaved({ kind: answer.kind === 'ok' ? 'as loaded' : 'gone' });
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: once, when the page opens
  useEffect(() => void load(), []);
  const edit = (next: ShopRecord): void => {
    setSteps([...steps.slice(-200), next]);
    setSaved({ kind: 'unsaved' });
  };
  const save = async (): Promise<void> => {
    if (record === undefined) return;
    const answer = await saveShop(record);
    if (answer.kind === 'ok') {
      setSteps([...steps.map((s) => ({ ...s, revision: answer.value.revision })), answer.value]);
      setSaved({ kind: 'saved' });
    } else if (answer.kind === 'gone') setSaved({ kind: 'gone' });
    else if (answer.status === 409) {
      const theirs = answer.error.shop?.revision;
      if (theirs !== undefined) setSteps(steps.map((s) => ({ ...s, revision: theirs })));
      setSaved({ kind: 'elsewhere' });
    } else setSaved({ kind: 'faults', faults: faultsOf(answer.error) });
  };
  const undo = steps.length > 1 ? () => setSteps(steps.slice(0, -1)) : undefined;
  return { record, edit, undo, save, load, saved };
};

const faultsOf = (error: {
  readonly sentence: string;
  readonly findings?: readonly { readonly sentence: string; readonly place?: unknown }[] | undefined;
}): readonly ShopFault[] =>
  error.findings === undefined || error.findings.length === 0
    ? [{ path: '', sentence: error.sentence }]
    : error.findings.map((f) => ({ sentence: f.sentence, path: String((f.place as { readonly path?: string } | undefined)?.path ?? '') }));

/** The words of the shop's control: the dialect file as text, typed or taken from a file; the server holds it against its schema. */
import { type ReactNode, useId } from 'react';
import type { ShopRecord } from '../../server/message/answers.ts';
import { useWords } from '../words/use-words.ts';

export interface DialectProps {
  readonly record: ShopRecord;
  readonly onEdit: (record: ShopRecord) => void;
}

export const DialectField = ({ record, onEdit }: DialectProps): ReactNode => {
  const words = useWords().shop;
  const [title, text] = [useId(), useId()];
  const put = (dialect: string): void => {
    const { dialect: _, ...rest } = record;
    onEdit(dialect.trim() === '' ? rest : { ...rest, dialect });
  };
  return (
    <section aria-labelledby={title}>
      <h2 id={title}>{words.dialect}</h2>
      <label htmlFor={text}>{words.dialectHelp}</label>
      <textarea id={text} rows={12} value={record.dialect ?? ''} onChange={(e) => put(e.target.value)} spellCheck={false} />
      <label>
        {words.loadDialect}{' '}
        <input
          type="file"
          accept=".json,application/json"
          onChange={(e) => {
            const file = e.target.files?.[0];
            if (file !== undefined) void file.text().then(put);
          }}
        />
      </label>
    </section>
  );
};

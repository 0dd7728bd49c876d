/** The head of every page: the name, the ways to the other pages, and how the user wants things shown. */
import { type ReactNode, useEffect } from 'react';
import type { Units } from '../../text/print/reader.ts';
import { useWords } from '../words/use-words.ts';
import type { Words } from '../words/words-for.ts';
import { KeysHelp } from './keys-help.tsx';
import { type Theme, wear } from './theme.ts';
import './view.css';

export interface Preferences extends Pick<Units, 'lengthUnit' | 'finishUnit'> {
  readonly theme: Theme;
}

interface MastheadProps {
  readonly preferences: Preferences;
  /** The job that is open: the way to its machine page is shown. */
  readonly job?: string | undefined;
  readonly onPrefer: (part: Partial<Preferences>) => void;
}

export const Masthead = ({ preferences, job, onPrefer }: MastheadProps): ReactNode => {
  const words = useWords().page;
  const { lengthUnit, finishUnit, theme } = preferences;
  useEffect(() => wear(theme), [theme]);
  return (
    <header className="masthead">
      <a className="skip" href="#content">
        {words.skip}
      </a>
      <span className="page-name">{words.name}</span>
      <nav aria-label={words.pages}>
        <a href="/jobs">{words.jobs}</a>
        <a href="/shop">{words.shop}</a>
        {job !== undefined && <a href={`/run/${job}`}>{words.atMachine}</a>}
      </nav>
      <section className="preferences" aria-label={words.preferences}>
        <Pair label={words.lengths} options={['mm', 'inch'] as const} chosen={lengthUnit} onChoose={(v) => onPrefer({ lengthUnit: v })} />
        <Pair label={words.finishes} options={['µm', 'µin'] as const} chosen={finishUnit} onChoose={(v) => onPrefer({ finishUnit: v })} />
        <label className="theme">
          {words.theme}{' '}
          <select value={theme} onChange={(event) => onPrefer({ theme: event.target.value as Preferences['theme'] })}>
            {(['as the system', 'light', 'dark'] as const).map((t) => (
              <option key={t} value={t}>
                {words.themes[t]}
              </option>
            ))}
          </select>
        </label>
        <KeysHelp />
      </section>
    </header>
  );
};

interface PairProps<T extends keyof Words['page']['unit']> {
  readonly label: string;
  readonly options: readonly T[];
  readonly chosen: T;
  readonly onChoose: (option: T) => void;
}

const Pair = <T extends keyof Words['page']['unit']>({ label, options, chosen, onChoose }: PairProps<T>): ReactNode => {
  const words = useWords().page;
  return (
    <fieldset className="pair">
      <legend className="unseen">{label}</legend>
      {options.map((option) => (
        <button key={option} type="button" className="plain" aria-pressed={option === chosen} onClick={() => onChoose(option)}>
          {words.unit[option]}
        </button>
      ))}
    </fieldset>
  );
};

/** The list of what can be made by numbers: choosing one begins a job with numbers of its own. */
import { type ReactNode, useState } from 'react';
import { shapeExample, shapeForms } from '../../job/request/shape-keys.ts';
import { print } from '../../text/print/print.ts';
import { useReader, useWords } from '../words/use-words.ts';
import { useDoor } from './drop-anywhere.tsx';
import '../look/shape.css';

export const ByNumbers = (): ReactNode => {
  const words = useWords().shape;
  const reader = useReader();
  const { bring } = useDoor();
  const [making, setMaking] = useState(false);
  const begin = (kind: Parameters<typeof shapeExample>[0]): void => {
    setMaking(true);
    const file = new File([JSON.stringify({ shape: shapeExample(kind) })], `${kind}.job.json`, { type: 'application/json' });
    bring([file]);
  };
  return (
    <details className="by-numbers">
      <summary>{words.begin}</summary>
      <p>{words.beginHelp}</p>
      <ul>
        {shapeForms().map(({ kind, title, what }) => (
          <li key={kind}>
            <button type="button" disabled={making} onClick={() => begin(kind)}>
              {print(title, reader)}
            </button>{' '}
            <span>{print(what, reader)}</span>
          </li>
        ))}
      </ul>
    </details>
  );
};

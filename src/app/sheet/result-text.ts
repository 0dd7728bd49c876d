/** A result of the sentence in the user's units: the sentence itself is written in mm and µm. */
import type { Numbers } from '../../text/print/reader.ts';
import type { Shown } from '../work/views.ts';

export const resultText = (text: string, shown: Shown | undefined, numbers: Numbers): string => {
  const within = /^±([\d.]+) mm$/.exec(text);
  if (within?.[1] !== undefined) return numbers.within(Number(within[1]));
  const finish = /^Ra ([\d.]+) µm$/.exec(text);
  if (finish?.[1] !== undefined) return numbers.finish(Number(finish[1]));
  return shown === undefined || shown.unit === 'min' ? text : numbers.value(shown);
};

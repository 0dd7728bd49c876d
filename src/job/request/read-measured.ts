/** Reads what somebody measured: 'L2: 24.006 of 24 at 22', with units and 'one side' where they are meant. */

import { parseLength, readingsPart, type TypedReading } from '../../quantity/typed-length.ts';
import { atField, type Finding } from '../../text/finding.ts';
import { name, quantity } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { find } from '../findings.ts';

export interface MeasuredText {
  readonly loop: string;
  /** mm */
  readonly size: number;
  readonly expected: number;
  /** °C; 20 when nobody said. */
  readonly temperature: number;
  readonly sides: 1 | 2;
  /** Whoever typed it was asked, and means it so. */
  readonly anyway: boolean;
}

export type MeasuredRead =
  | { readonly kind: 'measured'; readonly measured: MeasuredText }
  | { readonly kind: 'bad'; readonly finding: Finding };

const LONGEST = 120;

const SHAPE = /^([^\s:=]+)\s*[:=]\s*(\S.*?)\s+of\s+(\S.*?)(?:\s+at\s+(-?\d+(?:[.,]\d+)?)\s*(?:°?\s*C)?)?(\s+one\s+side)?(\s+anyway)?$/i;

export const readMeasured = (text: string): MeasuredRead => {
  const parts = SHAPE.exec(text.trim().slice(0, LONGEST + 1));
  if (parts === null || text.trim().length > LONGEST) return bad(text, words.form);
  const [, loop, measured, wanted, degrees, one, anyway] = parts as unknown as readonly [
    string,
    string,
    string,
    string,
    string?,
    string?,
    string?,
  ];
  const [size, expected] = [lengthIn(measured), lengthIn(wanted)];
  if (size.kind === 'bad') return bad(text, size.reason);
  if (expected.kind === 'bad') return bad(text, expected.reason);
  const temperature = degrees === undefined ? 20 : Number(degrees.replace(',', '.'));
  if (temperature < -20 || temperature > 100) return bad(text, words.temperature(temperature));
  return {
    kind: 'measured',
    measured: { loop, size: size.mm, expected: expected.mm, temperature, sides: one === undefined ? 2 : 1, anyway: anyway !== undefined },
  };
};

type Length = { readonly kind: 'length'; readonly mm: number } | { readonly kind: 'bad'; readonly reason: Text };

const lengthIn = (text: string): Length => {
  const answer = parseLength(text);
  if (answer.kind === 'ambiguous') return { kind: 'bad', reason: words.readings(text, answer.readings) };
  if (answer.kind === 'not a length') return { kind: 'bad', reason: words.noLength(text, answer.reason) };
  return answer.mm > 0 ? { kind: 'length', mm: answer.mm } : { kind: 'bad', reason: words.notAbove(text) };
};

const words = phrases('measured', {
  form: say`a contour, a size and a nominal size are needed`,
  temperature: (celsius: number) => say`${{ temperature: quantity(celsius, '°C', { as: 'given' }) }} is no temperature for measuring`,
  readings: (text: string, readings: readonly TypedReading[]) =>
    say`'${{ typed: name(text) }}' can be read as ${{ readings: readingsPart(readings) }}`,
  noLength: (text: string, reason: Text) => say`'${{ typed: name(text) }}' is not a length (${{ reason }})`,
  notAbove: (text: string) => say`'${{ typed: name(text) }}' is not above 0`,
});

const bad = (text: string, reason: Text): MeasuredRead => ({
  kind: 'bad',
  finding: find(
    'measured-not-readable',
    say`'${{ typed: name(text.slice(0, LONGEST)) }}' cannot be read as a measurement: ${{ reason }}.`,
    {
      place: atField('measured'),
      remedy: say`Write it like L2: 24.006 of 24 at 22: contour, measurement, nominal size and temperature in °C.`,
    },
  ),
});

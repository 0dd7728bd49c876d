/** Magnitudes that shops remember, against the starting model. Nobody printed them: they hold it to the right order and no closer. */
import type { CheckRow } from '../quantity/check.ts';
import { model, plain } from './cases.fixture.ts';

const row = (id: string, question: string, value: string, [low, high]: readonly [number, number], ours: () => number): CheckRow => ({
  id: `E-envelope-${id}`,
  source: 'magnitude-envelope',
  place: 'list',
  how: 'memory',
  question,
  value,
  ours,
  limits: { low, high, reason: 'the range that shops remember' },
});

const against = (material: string): number => model({ material }).rate / model().rate;

export const checks: readonly CheckRow[] = [
  row('rate', 'rough cut with 0.25 wire in 50 mm of tool steel, mm²/min', '160', [120, 220], () => model().rate),
  row('rate-tall', 'the same at 300 mm against 50 mm', '0.7', [0.55, 0.85], () => model({ height: 300 }).rate / model().rate),
  row('rate-thin', 'the same at 5 mm against 50 mm', '0.4', [0.25, 0.5], () => model({ height: 5 }).rate / model().rate),
  row('wire-0.10', 'rate of 0.10 wire against 0.25', '0.45', [0.35, 0.55], () => model({ wire: plain(0.1) }).rate / model().rate),
  row('wc-6co', 'rate in carbide of 6 % cobalt against tool steel', '0.45', [0.35, 0.55], () => against('wc-6co')),
  row('wc-10co', 'rate in carbide of 10 % cobalt against tool steel', '0.45', [0.35, 0.55], () => against('wc-10co')),
  row('wc-15co', 'rate in carbide of 15 % cobalt against tool steel', '0.45', [0.35, 0.55], () => against('wc-15co')),
  row('ti-6al-4v', 'rate in Ti-6Al-4V against tool steel', '0.7', [0.55, 0.85], () => against('ti-6al-4v')),
  row('6061', 'rate in aluminium 6061 against tool steel', '1.9', [1.4, 2.4], () => against('6061')),
  row('7075', 'rate in aluminium 7075 against tool steel', '1.9', [1.4, 2.4], () => against('7075')),
  row('gap-rough', 'side gap of a rough cut, µm', '40', [30, 45], () => model().gap(1) * 1000),
  row('gap-fine', 'side gap of the finest skims, µm', '5', [4, 6], () => model().gap(0.05) * 1000),
  row('ra-rough', 'Ra of a rough cut, µm', '2.8', [2.5, 3.2], () => model().ra(1)),
  row('ra-fine-wire', 'Ra of a rough cut with 0.10 wire, µm', '2', [1.8, 2.3], () => model({ wire: plain(0.1) }).ra(1)),
  row('form-rough', 'lag and bow after a rough cut, 50 mm, µm', '20', [15, 25], () => model().formErrorStart),
  row('form-tall', 'lag and bow after a rough cut, 100 mm, µm', '30', [20, 40], () => model({ height: 100 }).formErrorStart),
];

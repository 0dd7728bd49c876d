/** The error budget as text: what each share comes to, the biggest one, and what would lower it. */

import type { Budget } from '../../accuracy/budget.ts';
import type { PlanBudgets } from '../../accuracy/budget-of-plan.ts';
import { printPlain } from '../../text/print/print.ts';
import { column } from '../paper.ts';
import { AS_IT_IS, type Printer } from '../text.ts';

/** Shares below this (µm) are printed as nothing. */
const NOTHING = 0.05;

const MOST_SIZES = 12;

export const budgetLines = ({ profile, sizes }: PlanBudgets, { tableText, wrapped }: Printer = AS_IT_IS): readonly string[] => [
  tableText(budgetTable(profile)),
  wrapped(printPlain(profile.biggest.sentence), '  '),
  ...sizes.slice(0, MOST_SIZES).map((s) => wrapped(sizeLine(s), '  ')),
  ...(sizes.length > MOST_SIZES ? [`  and ${sizes.length - MOST_SIZES} more sizes; --json lists them all`] : []),
];

export const budgetTable = (budget: Budget) =>
  ({
    kind: 'table',
    columns: [
      column('Error of the profile', 4),
      column('Kind', 1.5),
      column('µm', 1, 'right'),
      { ...column('Share', 1, 'right'), holds: 'amount' },
    ],
    rows: [
      ...budget.rows
        .filter((r) => r.figure.value >= NOTHING)
        .map((r) => [capital(printPlain(r.figure.name)), r.kind, r.figure.value.toFixed(1), percent(r.share)]),
      ['In all, of the tolerance', '', budget.total.value.toFixed(1), `±${(budget.tolerance * 1000).toFixed(1)}`],
    ],
    // The last share is the tolerance itself.
    units: [...budget.rows.filter((r) => r.figure.value >= NOTHING).map(() => undefined), 'µm'],
    note: `Systematic errors go the same way every time and are added (${budget.systematic.value.toFixed(1)} µm); random ones count by root of squares, one standard deviation (${budget.random.value.toFixed(1)} µm).`,
  }) as const;

const sizeLine = (budget: Budget): string => {
  const { of, total, tolerance, biggest } = budget;
  const name = of.kind === 'size' ? `${of.name}, ${Number(of.length.toFixed(4))} mm` : 'The profile';
  const holds = total.value <= tolerance * 1000 ? 'is held' : 'is not sure to be held';
  return `${name}: ${total.value.toFixed(1)} µm are to be expected, so that ±${(tolerance * 1000).toFixed(1)} µm ${holds}. ${printPlain(biggest.sentence)}`;
};

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
const percent = (share: number): string => `${Math.round(share * 100)} %`;

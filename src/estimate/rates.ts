/** What an hour, a hole and a kilogram cost in this shop, from which day on, and how many minutes its people need. */
import { z } from 'zod';
import { atField, type Finding } from '../text/finding.ts';
import { term } from '../text/part.ts';
import { say } from '../text/say.ts';
import { find } from './findings.ts';

const money = z.number().min(0).finite();
const minutes = z.number().min(0).max(6000);

export const ratesSchema = z
  .strictObject({
    from: z.iso.date().describe('First day on which these rates hold'),
    currency: z.string().length(3).describe('ISO 4217 code'),
    machineHour: money.describe('Machine running, minor units per hour'),
    labourHour: money.describe('A person at work, minor units per hour'),
    drillingHour: money.describe('Start-hole drilling with its operator, minor units per hour'),
    drillingFeed: z.number().positive().describe('Start-hole drilling in tool steel, mm of depth per minute'),
    drillingFeeds: z
      .record(z.string(), z.number().positive())
      .optional()
      .describe('By key of a material, where the shop knows better: mm of depth per minute'),
    drillingHole: minutes.describe('Finding and setting one hole, minutes'),
    filtersHour: money.describe('Filters used up, minor units per machine hour'),
    resinHour: money.describe('Deionising resin used up, minor units per machine hour'),
    power: z.number().min(0).describe('Mean power of machine, chiller and pumps, kW'),
    powerPrice: money.describe('Minor units per kWh'),
    materialPrices: z.record(z.string(), money).optional().describe('By key of a material: minor units per kg'),
    markup: z.number().min(0).max(10).describe('Added to the cost: 0.2 is 20 %'),
    minutes: z
      .strictObject({
        setUp: minutes.describe('Clamping, picking up the datum and a trial, once for the job'),
        programming: minutes.describe('Laying out and checking, once for the job'),
        programmingContour: minutes.describe('More of it for each contour'),
        load: minutes.describe('Changing from one piece to the next'),
        inspection: minutes.describe('Measuring and cleaning one piece'),
        stop: minutes.describe('One stop at which a slug or part is secured or taken out'),
        handThread: minutes.describe('Threading by hand'),
        spool: minutes.optional().describe('Putting on a full spool and threading again; 10 when left out'),
        condition: minutes.describe('Setting a condition by hand where the dialect has no word for it'),
      })
      .describe('What people need'),
    spread: z.number().min(0).max(1).describe('One standard deviation of those minutes, as a share'),
  })
  .describe('Rates of the shop from one day on');

export type Rates = z.infer<typeof ratesSchema>;

export type RatesOnDay = { readonly kind: 'rates'; readonly rates: Rates } | { readonly kind: 'none yet'; readonly finding: Finding };

/** The rates that held on a day (ISO 8601): the latest that began on it or before, so that an old quotation can be worked out again as it was. */
export const ratesOn = (all: readonly Rates[], day: string): RatesOnDay => {
  const rates = all.filter((r) => r.from <= day).toSorted((a, b) => b.from.localeCompare(a.from))[0];
  if (rates !== undefined) return { kind: 'rates', rates };
  const [first] = all.map((r) => r.from).toSorted();
  return { kind: 'none yet', finding: noneYet(day, first) };
};

const noneYet = (day: string, first: string | undefined): Finding => {
  const place = atField('rates');
  return first === undefined
    ? find('rates-not-yet/none', say`The shop has no rates for ${{ day: term(day) }}; it has none at all.`, { place })
    : find(
        'rates-not-yet/later',
        say`The shop has no rates for ${{ day: term(day) }}; its first rates start on ${{ first: term(first) }}.`,
        {
          place,
        },
      );
};

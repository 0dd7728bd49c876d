/** No price mixes currencies: wires that are priced in another one than the rates of the day are left out, and money that names none is asked about where the shop has several. */

import { ratesOn } from '../../estimate/rates.ts';
import type { Wire } from '../../physics/wire/wire.ts';
import { atField, type Finding } from '../../text/finding.ts';
import { list, name, term } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import { find } from '../findings.ts';
import type { JobRun } from '../job-run.ts';

type Asked = Pick<JobRun, 'job' | 'shop' | 'day'>;

/** None where no rates hold on the day. */
const currencyOf = ({ shop, day }: Asked): string | undefined => {
  const onDay = ratesOn(shop.rates, day);
  return onDay.kind === 'rates' ? onDay.rates.currency.toUpperCase() : undefined;
};

const isIn = (wire: Wire, currency: string | undefined): boolean =>
  currency === undefined || wire.currency === undefined || wire.currency.toUpperCase() === currency;

/** The wires that the job can be priced with. */
export const pricedWires = (run: Asked): readonly Wire[] => {
  const currency = currencyOf(run);
  return run.shop.wires.filter((wire) => isIn(wire, currency));
};

/** Where the wire asked for, or every wire, is priced in another currency than the rates, there is no price to be had. */
export const withoutPrice = (run: Asked): readonly Finding[] => {
  const { job, shop, day } = run;
  const currency = currencyOf(run);
  const others = shop.wires.filter((wire) => !isIn(wire, currency));
  const asked = others.filter((wire) => job.wire === undefined || wire.id === job.wire);
  if (currency === undefined || asked.length === 0 || (job.wire === undefined && others.length < shop.wires.length)) return [];
  return [
    find('currencies-mixed/none', words.mixed(asked, day, currency), {
      place: atWire(shop.wires, asked[0] as Wire),
      remedy: words.inOne(currency),
      severity: 'refusal',
    }),
  ];
};

/** What is left out of the choice, and what is read as being in the currency of the day though it names none. */
export const currencyFindings = (run: Asked): readonly Finding[] => {
  const { job, shop, day } = run;
  const currency = currencyOf(run);
  if (currency === undefined) return [];
  const others = job.wire === undefined ? shop.wires.filter((wire) => !isIn(wire, currency)) : [];
  const several = new Set(shop.rates.map((r) => r.currency.toUpperCase())).size > 1;
  const silent = several
    ? shop.wires.filter((wire) => wire.currency === undefined && (job.wire === undefined || wire.id === job.wire))
    : [];
  const leftOut = others.map((wire) =>
    find('currencies-mixed', words.leftOut(wire, day, currency), { place: atWire(shop.wires, wire), remedy: words.inOne(currency) }),
  );
  const [first] = silent;
  const asked = first === undefined ? [] : [unnamed(words.wires(silent, currency), atWire(shop.wires, first))];
  const metal = several && job.stock?.price !== undefined ? [unnamed(words.metal(currency), atField('stock.price'))] : [];
  return [...leftOut, ...asked, ...metal];
};

const unnamed = (text: Finding['text'], place: Finding['place']): Finding =>
  find('currency-not-named', text, { place, remedy: words.nameIt });

const atWire = (wires: readonly Wire[], wire: Wire): ReturnType<typeof atField> => atField(`wires.${wires.indexOf(wire)}.currency`);

const words = phrases('currency', {
  mixed: (wires: readonly Wire[], day: string, currency: string) =>
    say`The rates on ${{ day: term(day) }} are in ${{ currency: term(currency) }}, and the price of ${{
      wires: list(
        wires.map((w) => name(w.name)),
        'and',
      ),
    }} wire is in another currency: a price does not mix two.`,
  leftOut: (wire: Wire, day: string, currency: string) =>
    say`${{ wire: name(wire.name) }} wire is left out: it is priced in ${{ own: term(wire.currency ?? '') }}, and the rates on ${{ day: term(day) }} are in ${{ currency: term(currency) }}.`,
  inOne: (currency: string) => say`Give the price of the wire in ${{ currency: term(currency) }}.`,
  wires: (wires: readonly Wire[], currency: string) =>
    say`The rates of the shop are in more than one currency, and the price of ${{
      wires: list(
        wires.map((w) => name(w.name)),
        'and',
      ),
    }} wire names none: it is read as ${{ currency: term(currency) }}.`,
  metal: (currency: string) =>
    say`The rates of the shop are in more than one currency, and the price of the material names none: it is read as ${{ currency: term(currency) }}.`,
  nameIt: say`Check the price against this currency; a wire of the shop can name its own.`,
});

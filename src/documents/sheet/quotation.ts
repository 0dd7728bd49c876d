/** The quotation: what the customer gets, for how much, on which assumptions. */

import type { Estimate } from '../../estimate/estimate.ts';
import type { Asked, JobFacts, Yes } from '../../result/facts.ts';
import type { Offer } from '../../result/offer.ts';
import { printMoney } from '../../text/print/money.ts';
import { accuracy, findingText, finish, mass, money, place } from '../../text/print/phrases.ts';
import { printPlain } from '../../text/print/print.ts';
import type { Paper, PaperBlock } from '../paper.ts';
import { breakTable } from '../part/job-tables.ts';
import { planPicture } from '../part/plan-picture.ts';

export const quotation = (facts: JobFacts, offer: Offer): Paper => {
  const { head, asked, outcome } = facts;
  return {
    title: outcome.answer === 'yes' ? 'Quotation' : 'Reply to your inquiry',
    subtitle: `${head.name}${head.customer === undefined ? '' : ` · for ${head.customer}`} · ${head.shop} · ${head.day}`,
    foot: `${head.shop} · ${head.name} · ${head.day}`,
    blocks: [
      { kind: 'text', text: printPlain(facts.sentence), large: true },
      ...pictureBlock(facts),
      ...(outcome.answer === 'yes' ? priceBlocks(asked, outcome, offer) : refusalBlocks(facts)),
      ...assumptionBlocks(facts),
      ...closing(facts, offer),
    ],
  };
};

const pictureBlock = (facts: JobFacts): readonly PaperBlock[] => {
  const picture = planPicture(facts);
  return picture === undefined
    ? []
    : [
        {
          kind: 'picture',
          picture,
          caption: `Your drawing ${facts.head.drawingName}, as we read it. Dimensions in mm.${facts.outcome.answer === 'no' ? ' Heavy rings: what stands in the way.' : ''}`,
        },
      ];
};

const priceBlocks = (asked: Asked, { cut, hours }: Yes, offer: Offer): readonly PaperBlock[] => {
  const { plan, within } = cut;
  const { estimate } = hours;
  const own = estimate.breaks.find((b) => b.quantity === asked.quantity) ?? estimate.breaks[0];
  const price: PaperBlock[] = [{ kind: 'heading', text: 'Price' }, breakTable(estimate)];
  if (own !== undefined)
    price.push({
      kind: 'text',
      text: `For ${own.quantity} ${own.quantity === 1 ? 'piece' : 'pieces'}: ${money(own.total, estimate.currency)}, without tax and carriage; ${metalSaid(estimate)}.`,
    });
  const get: PaperBlock = {
    kind: 'pairs',
    rows: [
      ['Material', `${asked.material.name}, ${place(asked.height)} mm high`],
      ['Cut with', `${plan.wire.name}, ${plan.passes.length} ${plan.passes.length === 1 ? 'pass' : 'passes'}`],
      ['Accuracy expected', `±${accuracy(within)} mm (asked for: ±${asked.tolerance} mm)`],
      ['Finish expected', `Ra ${finish(plan.finish)} µm (asked for: Ra ${asked.finish} µm)`],
    ],
  };
  return [{ kind: 'heading', text: 'What you get' }, get, ...price, ...cheaperBlocks(offer)];
};

const metalSaid = ({ metal }: Estimate): string =>
  metal === undefined || metal.suppliedBy === 'customer' ? 'material supplied by you' : `with ${mass(metal.mass.value)} of material each`;

const cheaperBlocks = (offer: Offer): readonly PaperBlock[] =>
  offer.cheaper.length === 0
    ? []
    : [
        { kind: 'heading', text: 'What would make it cheaper' },
        {
          kind: 'list',
          items: offer.cheaper.map((c) => `${printPlain(c.sentence)}: saves ${printMoney(c.saves, c.currency)} each.`),
          marker: 'dash',
        },
      ];

const refusalBlocks = (facts: JobFacts): readonly PaperBlock[] => [
  { kind: 'heading', text: 'What stands in the way' },
  {
    kind: 'list',
    items: facts.findings
      .filter((f) => f.severity === 'refusal')
      .slice(0, 20)
      .map(findingText),
    marker: 'dash',
  },
];

const assumptionBlocks = (facts: JobFacts): readonly PaperBlock[] => {
  const doubts = facts.findings.filter((f) => f.severity === 'doubt' || f.severity === 'repair').slice(0, 12);
  const items = [...facts.asked.assumed.map((a) => printPlain(a.text)), ...doubts.map(findingText)];
  const corners = facts.findings
    .filter((f) => f.code === 'corner-rounded')
    .slice(0, 8)
    .map(findingText);
  return [
    ...(items.length === 0
      ? []
      : [{ kind: 'heading', text: 'What we assumed' } as const, { kind: 'list', items, marker: 'dash' } as const]),
    ...(corners.length === 0
      ? []
      : [
          { kind: 'heading', text: 'Where the wire rounds your drawing' } as const,
          { kind: 'list', items: corners, marker: 'dash' } as const,
        ]),
  ];
};

const closing = (facts: JobFacts, offer: Offer): readonly PaperBlock[] => {
  const fatigue = facts.asked.material.cautions.includes('recast layer')
    ? ' A recast layer of a few thousandths stays on the cut faces; for parts under fatigue loads we need your acceptance in writing.'
    : '';
  const validity = facts.outcome.answer === 'yes' ? `Valid until ${offer.until}. ` : '';
  return [
    {
      kind: 'text',
      text: `${validity}Times and prices are estimates with the range given; sizes are measured at 20 °C (ISO 1).${fatigue}`,
    },
  ];
};

/** The quotation: what the customer gets, for how much, on which assumptions. */

import type { Asked, JobFacts, Yes } from '../../result/facts.ts';
import type { Cheaper, Offer } from '../../result/offer.ts';
import { type Estimate, fallingShort, isOver, isTooRough, usedOn } from '../../result/shown.ts';
import { usedByProgram } from '../../result/tolerance-told.ts';
import { contour, count, fixed, limit, list, mass, mm, money, name, type Part, significant, term, um, unitName } from '../../text/part.ts';
import { only, phrases, say, sentences } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { contoursIn } from '../../text/within.ts';
import type { Said, WrittenBlock, WrittenPaper } from '../paper.ts';
import { isAssumed, markedAssumed } from '../part/assumed-mark.ts';
import { classTable } from '../part/class-table.ts';
import { openQueries, queriesForCustomer, reasonsForCustomer } from '../part/customer-reasons.ts';
import { breakTable } from '../part/job-tables.ts';
import { finish, length, surely } from '../part/numbers.ts';
import { partPicture } from '../part/part-picture.ts';

export const quotation = (facts: JobFacts, offer: Offer): WrittenPaper => {
  const { head, outcome } = facts;
  const customer = head.customer === undefined ? [] : [words.for(head.customer)];
  return {
    title: outcome.answer === 'yes' ? words.quotation : words.reply,
    subtitle: only(list([name(head.name), ...customer, name(head.shop), term(head.day)], 'dot')),
    foot: only(list([name(head.shop), name(head.name), term(head.day)], 'dot')),
    blocks: [
      { kind: 'text', text: offered(facts), large: true },
      ...pictureBlock(facts),
      ...(outcome.answer === 'yes' ? priceBlocks(facts.asked, outcome, offer) : refusalBlocks(facts)),
      ...assumptionBlocks(facts),
      ...closing(facts, offer),
    ],
  };
};

/** What we can do and for how much; how the shop does it is its own business. */
const offered = ({ head, asked, outcome, findings }: JobFacts): Text => {
  if (outcome.answer === 'no') return words.cannot;
  const { within } = outcome.cut;
  const { estimate } = outcome.hours;
  const used = usedByProgram(outcome.program.proof.use);
  const total = estimate.breaks.find((b) => b.quantity === asked.quantity)?.total.value ?? estimate.each.value * asked.quantity;
  const made = (asked.quantity === 1 ? words.canOne : words.canMany)(partOf(asked), money(total, estimate.currency), asked.quantity);
  return sentences([
    made,
    within + used <= asked.tolerance ? undefined : words.doubtful(surely(within, asked), limit(asked.tolerance)),
    ...doubtfulSizes(outcome.cut, asked),
    ...fallingShort(outcome.cut.plan, { ...asked, usedOn: (loops) => usedOn(outcome.program.proof, loops) }).map((c) =>
      doubtfulContours(c, asked),
    ),
    isTooRough(outcome.cut.plan, asked)
      ? words.doubtfulFinish(um(outcome.cut.plan.finish.value, significant(2)), um(asked.finish, { as: 'given' }))
      : undefined,
    openQuestions(findings),
    head.inventedRates ? words.invented : undefined,
  ]);
};

const materialOf = (asked: Asked): Text =>
  words.high(markedAssumed(asked, 'material', name(asked.material.name)), markedAssumed(asked, 'height', length(asked.height)));

const partOf = (asked: Asked): Text =>
  words.part(
    materialOf(asked),
    markedAssumed(asked, 'tolerance', limit(asked.tolerance)),
    markedAssumed(asked, 'finish', um(asked.finish, { as: 'given' })),
  );

/** Limits of single sizes that the cut is not expected to hold. */
const doubtfulSizes = ({ budgets }: Yes['cut'], asked: Asked): readonly Text[] =>
  (budgets?.sizes ?? []).flatMap((size) =>
    size.of.kind === 'size' && isOver(size)
      ? [words.doubtfulSize(size.of.name, surely(size.total.value / 1000, asked), limit(size.tolerance))]
      : [],
  );

const doubtfulContours = ({ loops, asked: required, accuracy, finish }: ReturnType<typeof fallingShort>[number], asked: Asked): Text =>
  words.doubtfulContours(
    list(loops.map(contour), 'and'),
    only(list([surely(accuracy.value, asked), words.ra(um(finish.value, significant(2)))], 'comma')),
    only(list([limit(required.tolerance), words.ra(um(required.finish, { as: 'given' }))], 'comma')),
  );

const openQuestions = (findings: JobFacts['findings']): Text | undefined => {
  const open = openQueries(findings).reduce((sum, f) => sum + (f.stands ?? 1), 0);
  if (open === 0) return undefined;
  return open === 1 ? words.openOne : words.openMore(open);
};

const pictureBlock = (facts: JobFacts): readonly WrittenBlock[] => {
  const picture = partPicture(facts, spokenOf(facts));
  if (picture === undefined) return [];
  const inTheWay = facts.outcome.answer === 'no' ? words.inTheWay : undefined;
  return [{ kind: 'picture', picture, caption: sentences([words.asWeRead(facts.head.drawingName), inTheWay]) }];
};

/** Contours that the words below the picture name: without their names in it nobody could find them. */
const spokenOf = (facts: JobFacts): ReadonlySet<string> =>
  new Set([...preventing(facts), ...radiiOf(facts), ...queriesForCustomer(facts.findings)].flatMap(contoursIn));

const preventing = ({ outcome, findings }: JobFacts): readonly Text[] =>
  outcome.answer === 'no' ? cutShort(reasonsForCustomer(findings), MOST_REASONS) : [];

const MOST_REASONS = 20;
const MOST_QUERIES = 12;
const MOST_RADII = 8;

/** No list ends without a word about what was left out. */
const cutShort = (items: readonly Text[], most: number): readonly Text[] =>
  items.length <= most ? items : [...items.slice(0, most), words.more(items.length - most)];

const priceBlocks = (asked: Asked, { cut, hours }: Yes, offer: Offer): readonly WrittenBlock[] => {
  const { plan, within } = cut;
  const { estimate } = hours;
  const own = estimate.breaks.find((b) => b.quantity === asked.quantity) ?? estimate.breaks[0];
  const rows: readonly (readonly [Said, Said])[] = [
    [words.material, materialOf(asked)],
    [words.accuracy, (isAssumed(asked, 'tolerance') ? words.ofAssumed : words.of)(surely(within, asked), limit(asked.tolerance))],
    [
      words.finish,
      (isAssumed(asked, 'finish') ? words.ofAssumedFinish : words.ofFinish)(finish(plan.finish), um(asked.finish, { as: 'given' })),
    ],
  ];
  return [
    { kind: 'heading', text: words.whatYouGet },
    { kind: 'pairs', rows },
    ...(plan.classes === undefined ? [] : [classTable(plan.classes, 'customer')]),
    { kind: 'heading', text: words.price },
    breakTable(estimate),
    ...(own === undefined
      ? []
      : [{ kind: 'text', text: priceSaid(own.quantity, money(own.total.value, estimate.currency), estimate) } as const]),
    ...cheaperBlocks(offer),
  ];
};

/** Metal without a price is in no price, whoever brings it. */
const priceSaid = (quantity: number, total: Part, { metal }: Estimate): Text => {
  if (metal?.cost !== undefined) return words.withMetal(quantity, total, metal.mass.value);
  return (metal?.suppliedBy === 'customer' ? words.withoutMetal : words.metalOpen)(quantity, total);
};

const cheaperBlocks = ({ cheaper }: Offer): readonly WrittenBlock[] =>
  cheaper.length === 0
    ? []
    : [
        { kind: 'heading', text: words.cheaper },
        { kind: 'list', items: cheaper.map((c) => words.saves(c)), marker: 'dash' },
      ];

const refusalBlocks = (facts: JobFacts): readonly WrittenBlock[] => [
  { kind: 'heading', text: words.standsInTheWay },
  { kind: 'list', items: preventing(facts), marker: 'dash' },
];

const assumptionBlocks = (facts: JobFacts): readonly WrittenBlock[] => {
  // What no field of the enquiry answers is that no shop was named: then the rates are invented.
  const assumed = facts.asked.assumed.flatMap(({ field, text }) => {
    if (field === undefined) return [words.sample];
    return OF_THE_SHOP.has(field) ? [] : [text];
  });
  const queries = cutShort(queriesForCustomer(facts.findings), MOST_QUERIES);
  return [...listed(words.assumed, [...assumed, ...queries]), ...listed(words.radii, radiiOf(facts))];
};

/** Assumptions about how the shop works, which are no customer's. */
const OF_THE_SHOP: ReadonlySet<string> = new Set(['flush']);

/** Corners of one contour that come out rounder than drawn, as they are printed. */
interface Rounded {
  readonly corners: number;
  readonly radius: number;
  readonly left: number;
}

/** Of each contour the corners that come out rounder than drawn; contours of which the same is printed share a line. */
const radiiOf = ({ outcome }: JobFacts): readonly Text[] => {
  if (outcome.answer === 'no') return [];
  const alike = new Map<string, Rounded & { readonly loops: string[] }>();
  for (const { loop, rounded } of outcome.program.proof.contours) {
    if (rounded.length === 0) continue;
    const [radius, left] = [Math.max(...rounded.map((r) => r.radius)), Math.max(...rounded.map((r) => r.left))];
    const key = [rounded.length, Math.round(radius * 100), Math.round(left * 1000)].join();
    const known = alike.get(key);
    if (known === undefined) alike.set(key, { loops: [loop], corners: rounded.length, radius, left });
    else known.loops.push(loop);
  }
  return cutShort([...alike.values()].map(radiusSaid), MOST_RADII);
};

const radiusSaid = ({ loops, ...rounded }: Rounded & { readonly loops: readonly string[] }): Text => {
  const [loop = '', ...more] = loops;
  if (more.length > 0) return words.radiiEach(loops, rounded);
  return (rounded.corners === 1 ? words.radius : words.radiiAlike)(loop, rounded);
};

const listed = (heading: Text, items: readonly Said[]): readonly WrittenBlock[] =>
  items.length === 0
    ? []
    : [
        { kind: 'heading', text: heading },
        { kind: 'list', items, marker: 'dash' },
      ];

const closing = (facts: JobFacts, offer: Offer): readonly WrittenBlock[] => {
  if (facts.outcome.answer === 'no') return [];
  const fatigue = facts.asked.material.cautions.includes('recast layer') ? words.fatigue : undefined;
  // What is no offer is valid until no day.
  const validity = facts.head.inventedRates ? undefined : words.validUntil(offer.until);
  const terms = offer.terms === undefined ? undefined : words.terms(offer.terms);
  return [
    { kind: 'text', text: sentences([validity, words.estimates, fatigue]) },
    ...(terms === undefined ? [] : [{ kind: 'text', text: terms } as const]),
  ];
};

const words = phrases('quotation', {
  quotation: say`Quotation`,
  reply: say`Reply to your enquiry`,
  for: (customer: string) => say`for ${{ customer: name(customer) }}`,
  asWeRead: (drawing: string) => say`Your drawing ${{ drawing: name(drawing) }}, as we read it. Dimensions in ${{ unit: unitName('mm') }}.`,
  inTheWay: say`Heavy rings: what prevents it.`,
  whatYouGet: say`What you get`,
  price: say`Price`,
  material: say`Material`,
  high: (material: Text, height: Text) => say`${{ material }}, ${{ height }} thick`,
  canOne: (part: Text, total: Part, _: number) => say`We can make this part: ${{ part }}, ${{ total }}.`,
  canMany: (part: Text, total: Part, pieces: number) =>
    say`We can make ${{ pieces: count(pieces, 'piece') }} of this part: ${{ part }}, ${{ total }}.`,
  part: (material: Text, tolerance: Text, finish: Text) => say`${{ material }}, ${{ tolerance }}, Ra ${{ finish }}`,
  openOne: say`This holds once the question below is answered.`,
  openMore: (questions: number) => say`This holds once the ${{ questions: count(questions, 'question') }} below are answered.`,
  doubtfulSize: (size: string, expected: Text, asked: Part) =>
    say`On ${{ size: name(size) }} we expect ${{ expected }} and cannot be certain of ${{ asked }}.`,
  doubtfulContours: (loops: Part, expected: Text, required: Text) =>
    say`On ${{ loops }} we expect ${{ expected }} and cannot be certain of ${{ required }}.`,
  doubtfulFinish: (expected: Part, asked: Part) => say`We expect Ra ${{ expected }} and cannot be certain of Ra ${{ asked }}.`,
  ra: (value: Part) => say`Ra ${{ ra: value }}`,
  invented: say`The prices are worked out with invented rates and are no offer.`,
  doubtful: (expected: Text, asked: Part) => say`We expect ${{ expected }} and cannot be certain of ${{ asked }}.`,
  cannot: say`We cannot make this part as drawn.`,
  accuracy: say`Expected accuracy`,
  of: (expected: Text, asked: Part) => say`${{ expected }} (required ${{ asked }})`,
  ofAssumed: (expected: Text, assumed: Part) => say`${{ expected }} (assumed ${{ assumed }})`,
  finish: say`Expected finish`,
  ofFinish: (expected: Part, asked: Part) => say`Ra ${{ expected }} (required Ra ${{ asked }})`,
  ofAssumedFinish: (expected: Part, assumed: Part) => say`Ra ${{ expected }} (assumed Ra ${{ assumed }})`,
  withoutMetal: (quantity: number, total: Part) =>
    say`For ${{ pieces: count(quantity, 'piece') }}: ${{ total }}, excluding tax and delivery; material supplied by you.`,
  metalOpen: (quantity: number, total: Part) =>
    say`For ${{ pieces: count(quantity, 'piece') }}: ${{ total }}, excluding material, tax and delivery.`,
  withMetal: (quantity: number, total: Part, kilograms: number) =>
    say`For ${{ pieces: count(quantity, 'piece') }}: ${{ total }}, excluding tax and delivery, including ${{ mass: mass(kilograms) }} of material each.`,
  cheaper: say`What would make it cheaper`,
  saves: ({ sentence, saves, currency }: Cheaper) => say`${{ change: sentence }}: saves ${{ saves: money(saves, currency) }} each.`,
  standsInTheWay: say`What prevents it`,
  assumed: say`Our assumptions`,
  sample: say`The rates are those of an invented shop: this is a sample and no offer.`,
  radii: say`Inside corner radii`,
  more: (items: number) => say`and ${{ items: count(items) }} more; ask us for the whole list`,
  radius: (loop: string, { radius, left }: Rounded) =>
    say`${{ loop: contour(loop) }}: 1 inside corner comes out at R ${{ radius: mm(radius, fixed(2)) }}, at most ${{ left: mm(left, fixed(3)) }} off the corner drawn.`,
  radiiEach: (loops: readonly string[], { corners, radius, left }: Rounded) =>
    say`${{ loops: list(loops.map(contour), 'and') }}: ${{ corners: count(corners) }} inside corners each come out at up to R ${{ radius: mm(radius, fixed(2)) }}, at most ${{ left: mm(left, fixed(3)) }} off the corner drawn.`,
  radiiAlike: (loop: string, { corners, radius, left }: Rounded) =>
    say`${{ loop: contour(loop) }}: ${{ corners: count(corners) }} inside corners come out at up to R ${{ radius: mm(radius, fixed(2)) }}, at most ${{ left: mm(left, fixed(3)) }} off the corner drawn.`,
  validUntil: (day: string) => say`Valid until ${{ day: term(day) }}.`,
  terms: (typed: string) => say`${{ terms: name(typed) }}`,
  estimates: say`Prices are estimates with the range given; sizes apply at 20 °C (ISO 1).`,
  fatigue: say`A recast layer of a few micrometres stays on the cut faces; for parts under fatigue loads we need your acceptance in writing.`,
});

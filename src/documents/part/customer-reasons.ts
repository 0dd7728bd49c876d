/**
 * What of the findings is for a customer. What is wrong with the drawing is said as it was found; a limit of ours is said as a limit,
 * without wire, passes or hours; anything else is the shop's own business.
 */
import type { Finding } from '../../text/finding.ts';
import { findingInFull, located } from '../../text/located.ts';
import { contour, inside, limit, list, type Part, quantity } from '../../text/part.ts';
import { print } from '../../text/print/print.ts';
import { HOUSE } from '../../text/reader.ts';
import { phrases, say, sentences } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { contoursIn } from '../../text/within.ts';

/** Of the drawing or of the file itself: whoever drew it wants to read just that. */
const OF_THE_DRAWING: ReadonlySet<string> = new Set([
  ...['file-too-large', 'too-many-entities', 'nested-too-deep', 'too-much-work', 'not-a-drawing', 'doctype-refused'],
  ...['arc-without-turn', 'pixels-assumed', 'units-missing', 'units-implausible', 'units-unknown', 'branched', 'loop-partly-hidden'],
  ...['loop-crosses-itself', 'loop-touches-itself', 'loop-sliver', 'loops-cross', 'loops-share-edge', 'no-loop', 'corners-eased'],
  ...['no-closed-contour', 'contours-touch'],
]);

/** What prevents the part, each reason once, the gravest first. */
export const reasonsForCustomer = (findings: readonly Finding[]): readonly Text[] =>
  eachOnce(findings.filter((f) => f.severity === 'refusal').map(reason));

/** What the customer should know or answer: how the drawing was read where it left that open. */
export const queriesForCustomer = (findings: readonly Finding[]): readonly Text[] =>
  [...openQueries(findings), ...findings.filter((f) => f.code === 'corners-eased')].map(asFound);

/** What only the customer can answer. */
export const openQueries = (findings: readonly Finding[]): readonly Finding[] =>
  findings.filter((f) => f.severity === 'doubt' && OF_THE_DRAWING.has(f.code));

const reason = (finding: Finding): Text => {
  if (OF_THE_DRAWING.has(finding.code)) return asFound(finding);
  const ours = limits[finding.code as keyof typeof limits] ?? words.noWay;
  const about = contoursIn(finding.text);
  const text = about.length === 0 ? ours : words.about(list(about.map(contour), 'and'), inside(ours));
  return sentences([located({ text, place: finding.place }), change(finding)]);
};

/** Without the remedy: it speaks to the shop, of its files and its wire. */
const asFound = ({ remedy: _, ...finding }: Finding): Text => findingInFull(finding);

/** What the customer could change, where the remedy is a value of the enquiry. */
const change = ({ remedy }: Finding): Text | undefined => {
  if (typeof remedy?.value !== 'number') return undefined;
  if (remedy.field === 'insideCorner') return words.radius(quantity(remedy.value, 'mm'));
  if (remedy.field === 'finish') return words.finish(quantity(remedy.value, 'µm'));
  return remedy.field === 'tolerance' ? words.tolerance(limit(remedy.value)) : undefined;
};

const eachOnce = (texts: readonly Text[]): readonly Text[] => [...new Map(texts.map((text) => [print(text, HOUSE), text])).values()];

const words = phrases('customer-reason', {
  about: (contours: Part, limit: Part) => say`${{ contours }}: ${{ limit }}`,
  noWay: say`We have found no way to make it as drawn.`,
  radius: (radius: Part) => say`An inside corner radius of ${{ radius }} would do.`,
  finish: (finish: Part) => say`Ra ${{ finish }} would do.`,
  tolerance: (tolerance: Part) => say`${{ tolerance }} would do.`,
});

/** By the code of the finding. All that concerns program, proof, passes or what the shop set itself is our way, and has no line here. */
const limits = phrases('customer-limit', {
  'corner-too-tight': say`An inside corner is sharper than we can make.`,
  'corner-too-round': say`An inside corner is sharper than we can make.`,
  'slot-too-narrow': say`It is narrower than we can make.`,
  'contour-unsound': say`Its outline cannot be followed.`,
  'opening-in-slug': say`It lies in a piece that falls out.`,
  'hole-does-not-fit': say`There is no room to start the cut.`,
  'hole-too-fine': say`There is no room to start the cut.`,
  'hole-not-drilled': say`No hole can be drilled to start the cut.`,
  'no-room-for-lead': say`There is no room to start the cut.`,
  'no-way-in-from-edge': say`There is no room to start the cut.`,
  'outside-stock': say`It extends beyond the block.`,
  'cuts-overlap': say`There is too little room between the contours.`,
  'cuts-beyond-travel': say`The part is larger than we can take.`,
  'height-out-of-range': say`The part is thicker or thinner than we can cut.`,
  'finish-out-of-reach': say`The finish is finer than we can reach.`,
  'tolerance-out-of-reach': say`The tolerance is closer than we can hold.`,
  'material-unknown': say`We do not know how to cut this material.`,
  'material-not-conducting': say`We cannot cut this material: it does not conduct electricity.`,
  'nothing-to-cut': say`The drawing has no contour to cut.`,
  'layer-unknown': say`The drawing does not have the layer that was named to us.`,
});

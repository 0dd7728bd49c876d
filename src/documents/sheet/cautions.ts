/** The cautions that a job calls for, in the order in which they matter at the machine. */

import type { Caution, ContourPlan, Material } from '../../result/shown.ts';
import { fixed, type Part, quantity } from '../../text/part.ts';
import { phrases, say, sentences } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';

/** A loose piece above this needs lifting gear or a second person: the NIOSH lifting constant is 23 kg, see sources/. */
const LIFTING_LIMIT = 23;
/** From here on a falling piece can hurt a hand or the lower nozzle. Common practice, no source. */
const HEAVY = 0.5;

const OF_EVERY_JOB = phrases('caution', {
  voltage: say`High voltage at wire and table while sparking (ISO 28881:2022 covers the hazards of these machines). Never reach into a running cut.`,
  sharp: say`Wire ends and burrs are sharp: gloves and eye protection when threading and when taking pieces out.`,
  mist: say`Water mist, hydrogen and fumes: run the extraction, keep flames and sparks away.`,
  waste: say`Used filters, resin, wire and sludge are controlled waste: collect them separately.`,
});

const OF_MATERIAL: Readonly<Record<Caution, Text>> = phrases('caution-of-material', {
  'combustible fines': say`Fines of this metal can burn: keep them wet and separate from others, never sweep them dry, ventilate, class D extinguisher at hand (NFPA 660, formerly 484).`,
  'water-reactive when burning': say`Once burning, these fines react with water: no water on the fire.`,
  hydrogen: say`This metal gives off hydrogen in water, also from wet sludge: leave containers vented.`,
  'cobalt leaching': say`Carbide loses its cobalt binder in poor water: watch the conductivity and do not leave the part lying in the tank.`,
  'cobalt in sludge': say`Cobalt in sludge and mist harms lungs and skin: gloves, no dry dust, filters as hazardous waste.`,
  'nickel in sludge': say`Nickel in sludge and mist can cause allergy and worse: gloves, no dry dust, filters as hazardous waste.`,
  'chromium in sludge': say`Chromium in the sludge: gloves, filters as hazardous waste.`,
  'recast layer': say`A recast layer stays on the surface: for parts under fatigue loads get the customer’s acceptance in writing.`,
  'conductive dust': say`The dust conducts: keep it out of cabinets and connectors.`,
});

const LAST = say(
  'caution.last',
)`The machine manual, local rules and the advice of qualified people take precedence over this sheet. Its figures are estimates until the shop’s own log has confirmed them.`;

/** Sentences for the set-up sheet. */
export const cautionsFor = ({ cautions }: Material, contours: readonly ContourPlan[]): readonly Text[] => [
  ...pieceCautions(contours),
  ...cautions.map((c) => OF_MATERIAL[c]),
  ...Object.values(OF_EVERY_JOB),
  LAST,
];

const pieceCautions = (contours: readonly ContourPlan[]): readonly Text[] => {
  const heaviest = contours.toSorted((a, b) => b.piece.mass.value - a.piece.mass.value)[0];
  if (heaviest === undefined || heaviest.piece.mass.value < HEAVY) return [];
  const { role, mass } = heaviest.piece;
  const weight = quantity(mass.value, 'kg', fixed(mass.value < 10 ? 1 : 0));
  return [sentences([role === 'part' ? heavy.part(weight) : heavy.slug(weight), mass.value > LIFTING_LIMIT ? heavy.lift : undefined])];
};

const heavy = phrases('caution-of-piece', {
  part: (weight: Part) =>
    say`The part weighs ${{ weight }}: secure it before it is cut free, keep hands clear below it, watch the lower nozzle.`,
  slug: (weight: Part) =>
    say`The heaviest slug weighs ${{ weight }}: secure it before it is cut free, keep hands clear below it, watch the lower nozzle.`,
  lift: say`Use lifting gear.`,
});

/** What a tolerance class says of the teeth of one spline: how thick they may be, to a gauge and to pins. mm. */

import { type Figure, given } from '../../quantity/figure.ts';
import { apply } from '../../quantity/formula.ts';
import { saidBy } from '../../quantity/source.ts';
import { atField, type Finding, remedy } from '../../text/finding.ts';
import { fixed, mm, term, um } from '../../text/part.ts';
import { say, symbols } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import type { ToothFigures } from '../teeth/tooth-figures.ts';
import type { SplineStandard } from './basic-sizes.ts';
import { find } from './findings.ts';
import { fundamentalDeviation } from './fundamental-deviations.ts';
import {
  ANSI_SHARES,
  ansiMachining,
  ansiVariation,
  effectiveVariation,
  ISO_CLASSES,
  isoTotal,
  leadVariation,
  pitchVariation,
  profileVariation,
  type SplineClass,
} from './tolerance-formulas.ts';

export type FitClass = 'k' | 'js' | 'h' | 'f' | 'e' | 'd';

export interface ClassAsked {
  readonly standard: SplineStandard;
  readonly part: 'shaft' | 'hub';
  readonly class: SplineClass;
  readonly fitClass: FitClass;
  /** Length on which shaft and hub engage; half the pitch diameter when it is not said. */
  readonly engagement: number | undefined;
  /** Diametral pitch, for ANSI. */
  readonly pitch: number | undefined;
}

export interface ClassRoom {
  readonly kind: 'room';
  /** Machining tolerance and variation together. */
  readonly total: Figure;
  readonly variation: Figure;
  /** Of the largest effective tooth of a shaft from the basic one: below 0 it is thinner. A hub has 0. */
  readonly deviation: Figure;
}

export type Classed = ClassRoom | { readonly kind: 'refused'; readonly finding: Finding };

type Basic = Pick<ToothFigures, 'module' | 'teeth' | 'reference' | 'thickness'>;

/** `basic` has the teeth as they are without a class. */
export const classRoom = (basic: Basic, asked: ClassAsked): Classed => {
  const { total, variation } = asked.standard === 'ISO 4156' ? isoRoom(basic, asked) : ansiRoom(basic, asked);
  if (!(total.value > variation.value))
    return {
      kind: 'refused',
      finding: find(
        'spline-class-without-room',
        say`Over an engagement of ${{ engagement: mm(asked.engagement ?? 0, fixed(1)) }} index, profile and lead of class ${{ class: term(asked.class) }} may vary by ${{ variation: um(1000 * variation.value, fixed(1)) }}, the whole total tolerance of ${{ total: um(1000 * total.value, fixed(1)) }}: nothing is left for the size.`,
        {
          place: atField('engagement'),
          remedy: remedy(say`A coarser class, or a shorter engagement.`, { field: 'engagement' }),
        },
      ),
    };
  const deviation = asked.part === 'hub' ? 0 : deviationOf(basic.reference.value, asked, total.value);
  if (typeof deviation !== 'number') return { kind: 'refused', finding: deviation };
  return {
    kind: 'room',
    total,
    variation,
    deviation: published('deviation', say('spline.deviation')`fundamental deviation ${{ fit: term(asked.fitClass) }}`, deviation, 'mm'),
  };
};

const isoRoom = ({ module, teeth, reference, thickness }: Basic, asked: ClassAsked): Pick<ClassRoom, 'total' | 'variation'> => {
  const { factor, pitch, profile, lead } = ISO_CLASSES[asked.class];
  const total = apply(
    isoTotal,
    {
      reference,
      thickness,
      factor: published('class-factor', say('spline.class-factor')`factor of class ${{ class: term(asked.class) }}`, factor, '1'),
    },
    { key: 'total-tolerance' },
  );
  const part = (key: string, formula: typeof pitchVariation, of: Figure, [by, at]: readonly [number, number]): Figure =>
    apply(
      formula,
      {
        of,
        by: published(`${key}-by`, say('spline.by')`factor of the class`, by, '1'),
        at: published(`${key}-at`, say('spline.at')`least of the class, µm`, at, '1'),
      },
      { key },
    );
  const half = (Math.PI * reference.value) / 2;
  const face = asked.engagement ?? reference.value / 2;
  const variation = apply(
    effectiveVariation,
    {
      pitch: part(
        'index-variation',
        pitchVariation,
        { ...reference, key: 'half-circle', name: say('spline.half-circle')`half the pitch circle`, value: half },
        pitch,
      ),
      profile: part(
        'profile-variation',
        profileVariation,
        { ...reference, key: 'profile-size', name: symbols`m (1 + ${0.0125} z)`, value: module.value * (1 + 0.0125 * teeth.value) },
        profile,
      ),
      lead: part(
        'lead-variation',
        leadVariation,
        given({
          key: 'engagement',
          name: say('spline.engagement')`length of engagement`,
          value: face,
          unit: 'mm',
          ...engagementBasis(asked),
        }),
        lead,
      ),
    },
    { key: 'variation' },
  );
  return { total, variation };
};

const engagementBasis = ({ engagement }: ClassAsked) =>
  engagement === undefined
    ? ({ basis: 'common practice', source: { file: 'common-practice' } } as const)
    : ({ basis: 'job', source: saidBy.request } as const);

const ansiRoom = ({ teeth }: Basic, asked: ClassAsked): Pick<ClassRoom, 'total' | 'variation'> => {
  const share = published(
    'class-share',
    say('spline.class-share')`share of class 5 for class ${{ class: term(asked.class) }}`,
    ANSI_SHARES[asked.class],
    '1',
  );
  const pitch = given({
    key: 'pitch',
    name: say('spline.pitch')`diametral pitch`,
    value: asked.pitch ?? 0,
    unit: '1',
    basis: 'job',
    source: saidBy.request,
  });
  const machining = apply(ansiMachining, { pitch, teeth, share }, { key: 'machining-tolerance' });
  const variation = apply(ansiVariation, { pitch, teeth, share }, { key: 'variation' });
  const value = machining.value + variation.value;
  const total: Figure = {
    ...machining,
    key: 'total-tolerance',
    name: say('spline.total-tolerance')`total tolerance of space width and tooth thickness`,
    value,
    low: value,
    high: value,
    formula: symbols`m + λ`,
    from: [machining, variation],
  };
  return { total, variation };
};

const deviationOf = (diameter: number, { standard, fitClass }: ClassAsked, total: number): number | Finding => {
  if (standard === 'ANSI B92.1')
    return fitClass === 'h'
      ? 0
      : find(
          'spline-class-not-in-table/ansi',
          say`ANSI B92.1 has one side fit, without play at its tightest; fit ${{ fit: term(fitClass) }} is of ISO 4156.`,
          {
            place: atField('fitClass'),
            remedy: remedy(say`Fit ${{ fit: term('h') }}, with the play that is wanted as clearance.`, { field: 'fitClass', value: 'h' }),
          },
        );
  if (fitClass === 'k') return total;
  if (fitClass === 'js') return total / 2;
  const deviation = fundamentalDeviation(fitClass, diameter);
  return deviation === 'none'
    ? find(
        'spline-class-not-in-table',
        say`Fit ${{ fit: term(fitClass) }} is there up to a pitch diameter of ${{ most: mm(1000) }}; this one has ${{ own: mm(diameter, fixed(1)) }}.`,
        { place: atField('fitClass') },
      )
    : deviation;
};

const published = (key: string, name: Text, value: number, unit: 'mm' | '1'): Figure =>
  given({ key, name, value, unit, basis: 'published', source: { file: 'iso-4156-classes' } });

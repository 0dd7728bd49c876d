/** Which inputs can help against a finding: its own field where it names one, else those that its remedy speaks of. */
import type { FindingView } from '../work/views.ts';
import { fieldOfFinding } from './fields.ts';

const HELPING: Readonly<Record<string, readonly string[]>> = {
  'corner-too-tight': ['insideCorner', 'ease', 'wire'],
  'corner-too-round': ['insideCorner', 'ease', 'wire'],
  'slot-too-narrow': ['wire'],
  'finish-out-of-reach': ['finish', 'passes'],
  'tolerance-out-of-reach': ['tolerance', 'passes'],
  'metal-left': ['tolerance'],
  'contour-gouged': ['tolerance'],
  'wire-unknown': ['wire'],
  'wire-out-of-range': ['wire'],
  'wire-not-for-machine': ['wire'],
  'no-wire-in-stock': ['wire'],
  'height-out-of-range': ['height'],
  'stack-too-high': ['stack', 'height'],
  'material-unknown': ['material'],
  'material-not-conducting': ['material'],
  'passes-too-many': ['passes'],
  'offsets-not-for-passes': ['offsets', 'passes'],
  'offset-below-wire': ['offsets'],
  'hole-does-not-fit': ['startHole'],
  'hole-too-fine': ['startHole', 'wire'],
  'no-room-for-lead': ['startHole', 'wire'],
  'outside-stock': ['size'],
  'layer-unknown': ['layers'],
  'no-loop': ['layers', 'join'],
  'no-closed-contour': ['layers', 'join'],
  'nothing-to-cut': ['layers', 'outline'],
  'ease-failed': ['ease'],
  'rates-not-yet': ['date'],
};

/** Paths of fields that are on the sheet. */
export const helpingFields = ({ code, place }: Pick<FindingView, 'code' | 'place'>): readonly string[] => {
  const own = place?.kind === 'field' ? fieldOfFinding(place.path)?.path : undefined;
  return [...new Set([...(own === undefined ? [] : [own]), ...(HELPING[code] ?? [])])];
};

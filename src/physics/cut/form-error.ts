/** Lag and bow that a rough cut leaves because the wire is pushed, and what each skim makes of them. */

import type { Formula } from '../../quantity/formula.ts';
import { say } from '../../text/say.ts';
import { wireSag } from '../wire/wire-string.ts';

/**
 * The push per length goes with the sparks per length, that is with f(d) f(H) / H of the rate law; what a string of span L
 * gives way under it goes with L² / T. The flush is left out: bad flushing does not push less.
 */
export const roughFormError: Formula<
  'reference' | 'push' | 'referencePush' | 'span' | 'referenceSpan' | 'tension' | 'referenceTension' | 'floor'
> = {
  name: say('cut.rough-form-error')`form error of a rough cut`,
  text: say(
    'cut.rough-form-error.by',
  )`form error = reference · (push / reference push) · (span / reference span)² · (reference tension / tension), at least the machine's own`,
  source: 'starting-model',
  unit: 'µm',
  inputs: {
    reference: { unit: 'µm', name: 'form error of the reference cut' },
    push: { unit: '1', name: 'sparks per length' },
    referencePush: { unit: '1', name: 'sparks per length of the reference cut' },
    span: { unit: 'mm', name: 'wire between the guides' },
    referenceSpan: { unit: 'mm', name: 'wire between the guides in the reference cut' },
    tension: { unit: 'N', name: 'wire tension' },
    referenceTension: { unit: 'N', name: 'wire tension in the reference cut' },
    floor: { unit: 'µm', name: "the machine's own form error" },
  },
  compute: (v) =>
    Math.max(
      (v.reference * wireSag.compute({ load: v.push, span: v.span, tension: v.tension })) /
        wireSag.compute({ load: v.referencePush, span: v.referenceSpan, tension: v.referenceTension }),
      v.floor,
    ),
  bends: true,
};

export const sparksPerLength: Formula<'wire' | 'heightShare' | 'height'> = {
  name: say('cut.sparks-per-length')`sparks per length of wire`,
  text: say('cut.sparks-per-length.by')`push = f(d) · f(H) / H`,
  source: 'starting-model',
  unit: '1',
  inputs: {
    wire: { unit: '1', name: 'share of the wire' },
    heightShare: { unit: '1', name: 'share of the height' },
    height: { unit: 'mm', name: 'height' },
  },
  compute: ({ wire, heightShare, height }) => (wire * heightShare) / height,
};

export const wireSpan: Formula<'height' | 'guides'> = {
  name: say('cut.wire-span')`wire between the guides`,
  text: say('cut.wire-span.by')`span = height + 2 · guide distance`,
  source: 'definition',
  unit: 'mm',
  inputs: { height: { unit: 'mm', name: 'height' }, guides: { unit: 'mm', name: 'face of the work to guide' } },
  compute: ({ height, guides }) => height + 2 * guides,
};

/** Never below the machine's own error. */
export const formErrorLeft: Formula<'before' | 'left' | 'floor'> = {
  name: say('cut.form-error-left')`form error after a skim`,
  text: say('cut.form-error-left.by')`form error = the larger of left · form error before and the machine's own`,
  source: 'starting-model',
  unit: 'µm',
  inputs: {
    before: { unit: 'µm', name: 'form error before' },
    left: { unit: '1', name: 'share that a skim leaves' },
    floor: { unit: 'µm', name: "the machine's own form error" },
  },
  compute: ({ before, left, floor }) => Math.max(before * left, floor),
  bends: true,
};

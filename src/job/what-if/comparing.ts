/** Comparing, for whoever asks from outside: the work and its text. */
export { comparisonText } from '../../documents/sheet/comparison-text.ts';
export { compareJob, priceCurve } from './compare.ts';
export { timeComparison } from './compare-time.ts';

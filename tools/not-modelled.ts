/** What papers in sources/ found and the model does not know: no row can hold it, so that the summary says it instead. */

export interface NotModelled {
  readonly source: string;
  readonly what: string;
}

export const NOT_MODELLED: readonly NotModelled[] = [
  {
    source: 'sato-wire-break',
    what: 'wire breaks by servo voltage, pause, flow and nozzle distance (E-02): the model has no risk of a break',
  },
  { source: 'sato-wire-break', what: 'current and power at which wires break over the thickness (E-03): the model knows no power' },
  { source: 'physics-textbook', what: 'power in the gap against what melting takes (D-17): the model knows no power' },
  { source: 'kanlayasiri-2007', what: 'Ra by pulse length, current, pause and wire tension (E-11): the model knows one energy alone' },
  {
    source: 'jmmp-2023',
    what: 'how much thickness counts in Ti-6Al-4V (E-13): the paper prints no number that a feed could be held against',
  },
];

/** What makes a job impossible to judge: a drawing that is none, and names that nothing goes by. */
import type { Drawing } from '../../drawing/drawing.ts';
import { atField, type Finding } from '../../text/finding.ts';
import { list, name } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import { find } from '../findings.ts';
import { materialOf } from '../job-material.ts';
import type { JobRun } from '../job-run.ts';
import { withoutPrice } from './wire-currency.ts';

/** Empty when the job can be judged, be the answer yes or no. */
export const unusable = (run: Pick<JobRun, 'job' | 'shop' | 'day'>, drawing: Drawing): readonly Finding[] => {
  if (drawing.state === 'refused') return drawing.findings;
  const material = materialOf(run.job.material, run.shop);
  return [
    ...(material.kind === 'unknown' ? [material.finding] : []),
    ...unknownWire(run),
    ...withoutPrice(run),
    ...unknownLayers(
      run.job.layers ?? [],
      drawing.layers.map((l) => l.name),
    ),
  ];
};

const unknownWire = ({ job, shop }: Pick<JobRun, 'job' | 'shop'>): readonly Finding[] =>
  job.wire === undefined || shop.wires.some((w) => w.id === job.wire)
    ? []
    : [
        find(
          'file-not-valid/wire',
          say`The shop has no wire named '${{ wire: name(job.wire) }}'; it has ${{ known: list(shop.wires.map((w) => name(w.id))) }}.`,
          {
            place: atField('wire'),
          },
        ),
      ];

const unknownLayers = (asked: readonly string[], known: readonly string[]): readonly Finding[] =>
  asked
    .filter((layer) => !known.includes(layer))
    .map((layer) =>
      find('layer-unknown', known.length === 0 ? words.none(layer) : words.others(layer, known), {
        place: atField('layers'),
      }),
    );

const words = phrases('layer-unknown', {
  none: (layer: string) => say`The drawing has no layer '${{ layer: name(layer) }}'; it has none.`,
  others: (layer: string, known: readonly string[]) =>
    say`The drawing has no layer '${{ layer: name(layer) }}'; it has ${{ known: list(known.map((k) => name(`'${k}'`))) }}.`,
});

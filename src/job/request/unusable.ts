/** What makes a job impossible to judge: a drawing that is none, and names that nothing goes by. */
import type { Drawing } from '../../drawing/drawing.ts';
import type { Finding } from '../../text/finding.ts';
import { find } from '../findings.ts';
import { materialOf } from '../job-material.ts';
import type { JobRun } from '../job-run.ts';

/** Empty when the job can be judged, be the answer yes or no. */
export const unusable = (run: Pick<JobRun, 'job' | 'shop'>, drawing: Drawing): readonly Finding[] => {
  if (drawing.state === 'refused') return drawing.findings;
  const material = materialOf(run.job.material, run.shop);
  return [
    ...(material.kind === 'unknown' ? [material.finding] : []),
    ...unknownWire(run),
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
        find('file-not-valid', `The shop has no wire called '${job.wire}'; it has ${shop.wires.map((w) => w.id).join(', ')}.`, {
          place: { kind: 'field', path: 'wire' },
        }),
      ];

const unknownLayers = (asked: readonly string[], known: readonly string[]): readonly Finding[] =>
  asked
    .filter((name) => !known.includes(name))
    .map((name) =>
      find('layer-unknown', `The drawing has no layer '${name}'; it has ${known.map((k) => `'${k}'`).join(', ') || 'none'}.`, {
        place: { kind: 'field', path: 'layers' },
      }),
    );

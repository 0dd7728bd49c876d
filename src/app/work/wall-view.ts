/** The cut wall for drawing it to scale: what each pass leaves, and what other processes would leave at the same thickness. */

import { type JobFacts, plannedOf, resultOf } from '../../result/facts.ts';
import type { CutFacts } from '../../result/outcome-facts.ts';
import type { Text } from '../../text/text.ts';
import { shown } from './figure-view.ts';
import type { FaceView, WallView } from './views.ts';

type Ways = NonNullable<CutFacts['otherWays']>;

export const wallView = (facts: JobFacts): WallView<Text> | undefined => {
  const result = resultOf(facts);
  const otherWays = plannedOf(facts)?.otherWays;
  return (
    result && {
      thickness: otherWays?.thickness ?? facts.asked.height,
      passes: result.passes.map(({ number, ra, damage, stock, gap }) => ({
        number,
        ra: shown(ra),
        damage: shown(damage),
        stock: shown(stock),
        gap: shown(gap),
      })),
      faces: otherWays === undefined ? [] : [...wireFace(otherWays), ...otherWays.ways.flatMap(otherFace)],
      without: (otherWays?.ways ?? []).filter((w) => w.edge === undefined).map((w) => w.sentence),
    }
  );
};

const wireFace = ({ wire, verdict }: Ways): readonly FaceView<Text>[] =>
  wire === undefined
    ? []
    : [
        {
          process: 'wire',
          name: wire.name,
          off: wire.formError / 1000,
          shape: 'barrel',
          rough: wire.rz / 1000,
          ra: [wire.ra, wire.ra],
          tires: false,
          sentence: verdict,
        },
      ];

const otherFace = ({ process, name, edge, sentence }: Ways['ways'][number]): readonly FaceView<Text>[] => {
  if (edge === undefined) return [];
  const jet = process === 'water jet';
  return [
    {
      process,
      name,
      off: edge.perpendicularity.value,
      shape: 'leaning',
      rough: edge.rz / 1000,
      ra: [edge.ra.low, edge.ra.high],
      tires: jet,
      sentence,
    },
  ];
};

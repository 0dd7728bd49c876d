/** The deviation along each contour, magnified: metal left and gouges stand out to either side between lines of tolerance. */

import type { Point } from '../../geometry/segment.ts';
import { roundBelow } from '../../picture/round-length.ts';
import { itemAt, sideBySide } from '../../sequence/sequence.ts';
import { fixed, um } from '../../text/part.ts';
import { print } from '../../text/print/print.ts';
import type { Reader } from '../../text/reader.ts';
import { only } from '../../text/say.ts';
import type { ProfilePlace } from '../profile.ts';
import type { Deviation, Proof, ProofQuestion } from '../proof.ts';
import { cutSide } from '../sweep/inside-corners.ts';
import type { PaperView } from './picture-frame.ts';
import { number, onPaper, pair } from './picture-frame.ts';
import type { Sign } from './picture-signs.ts';

/** The tolerance is drawn about this share of the picture's width. */
const TOLERANCE_SHARE = 0.006;

/** The two colours of the page; each stands with its sign, so that neither is told by its colour alone. */
const STOCK_LEFT = '#2166ac';
const OVERCUT = '#b35806';

/** Peaks are cut off at so many tolerances. */
const HIGHEST = 2.5;

/** A round factor: 1, 2 or 5 times a power of ten. */
export const magnification = (frame: PaperView, tolerance: number): number =>
  Math.max(1, roundBelow(((frame.width / frame.scale) * TOLERANCE_SHARE) / tolerance));

export const deviationMarks = (proof: Proof, question: ProofQuestion, frame: PaperView, factor: number): string =>
  proof.contours
    .flatMap(({ profile }, i) => {
      const { contour, kept } = itemAt(question.wanted, i);
      const outward = outwardOf(
        profile.map((p) => p.at),
        cutSide(contour, kept),
      );
      const places = sideBySide(profile, outward);
      const shifted = (by: (place: ProfilePlace) => number): string =>
        `M${places.map(([p, out]) => pair(frame, { x: p.at.x + out.x * by(p), y: p.at.y + out.y * by(p) })).join('L')}Z`;
      const most = HIGHEST * question.tolerance;
      const amount = ({ deviation }: ProfilePlace): number => Math.min(Math.max(deviation, -most), most) * factor;
      const base = shifted(() => 0);
      const band = (side: number): string =>
        `<path d="${shifted(() => side * question.tolerance * factor)}" stroke="#999" stroke-width="${number(frame.pen * 0.4)}" stroke-dasharray="${number(frame.pen * 2)}"/>`;
      return [
        band(1),
        band(-1),
        `<path d="${base}${shifted((p) => Math.max(amount(p), 0))}" fill="${STOCK_LEFT}" fill-opacity="0.75" fill-rule="evenodd"/>`,
        `<path d="${base}${shifted((p) => Math.min(amount(p), 0))}" fill="${OVERCUT}" fill-opacity="0.75" fill-rule="evenodd"/>`,
      ];
    })
    .join('\n');

/** At the worst places of each contour, in µm: + where stock is left, − where it is overcut. */
export const deviationSigns = (proof: Proof, frame: PaperView, reader: Reader): readonly Sign[] =>
  proof.contours.flatMap(({ leftMost, gougeMost }) => [
    ...signAt(leftMost, { sign: '+', colour: STOCK_LEFT }, frame, reader),
    ...signAt({ at: gougeMost.at, amount: -gougeMost.amount }, { sign: '−', colour: OVERCUT }, frame, reader),
  ]);

const signAt = (
  { at, amount }: Deviation,
  { sign, colour }: { readonly sign: string; readonly colour: string },
  frame: PaperView,
  reader: Reader,
): readonly Sign[] => {
  if (amount * 1000 < LEAST_SHOWN) return [];
  const { x, y } = onPaper(frame, at);
  const words = `${sign}${print(only(um(amount * 1000, fixed(1))), reader)}`;
  return [{ mark: '', at: { x, y: y + frame.letter * 1.2 }, words, colour, box: false }];
};

/** µm */
const LEAST_SHOWN = 0.05;

/** Unit vectors towards the side to be cut away, from the neighbours of each place. */
const outwardOf = (places: readonly Point[], side: 1 | -1): readonly Point[] =>
  places.map((_, n) => {
    const before = itemAt(places, (n + places.length - 1) % places.length);
    const after = itemAt(places, (n + 1) % places.length);
    const [x, y] = [after.x - before.x, after.y - before.y];
    const length = Math.hypot(x, y) || 1;
    return { x: (-side * y) / length, y: (side * x) / length };
  });

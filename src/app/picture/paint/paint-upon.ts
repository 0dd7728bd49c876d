/** Paints what stands upon the ground and may change every frame: the cut so far, what is chosen, numbers, marks, datum and scale bar. */
import type { ChainView } from '../../work/views.ts';
import { type Brush, bundlePath, haloed, inMillimetres, inPixels, penOf, seen, wholePath } from '../brush.ts';
import { type Bundle, layered, whole } from '../bundles.ts';
import type { ColourName } from '../colours.ts';
import { scaleBar } from '../scale-bar.ts';
import type { PictureGround, Upon } from '../scene.ts';
import { meets, toPixel } from '../view.ts';
import { paintCut } from './paint-cut.ts';
import { type HitBox, paintLabels } from './paint-labels.ts';
import { paintTakings } from './paint-takings.ts';

/** Gives where marks came to stand, so that a pointer finds them. */
export const paintUpon = (brush: Brush, ground: PictureGround, upon: Upon): readonly HitBox[] => {
  inMillimetres(brush);
  paintFallen(brush, ground, upon.fallen);
  paintCut(brush, upon);
  const chosen = chainsOf(ground, upon.chosen);
  shade(brush, chosen);
  outline(brush, chosen, 'accent', 3.5);
  const owner = upon.marks.find((m) => m.id === upon.pointed)?.loop ?? upon.pointed;
  if (owner !== undefined && owner !== upon.chosen) outline(brush, chainsOf(ground, owner), 'ink', 2.5);
  inPixels(brush);
  paintTakings(brush, upon);
  paintDatum(brush, ground, upon.datumWord);
  const boxes = paintLabels(brush, ground, upon);
  paintScaleBar(brush, ground);
  return boxes;
};

const chainsOf = ({ picture }: PictureGround, owner: string | undefined): readonly ChainView[] =>
  owner === undefined
    ? []
    : picture.layers
        .filter((l) => l.role === 'drawing' || l.role === 'open line')
        .flatMap((l) => l.chains)
        .filter((c) => c.owner === owner);

const bundles = new WeakMap<ChainView, readonly Bundle[]>();

const outline = (brush: Brush, chains: readonly ChainView[], colour: ColourName, width: number): void => {
  for (const chain of chains) {
    const all = bundles.get(chain) ?? layered([{ role: 'drawing', chains: [chain] }]).flatMap((l) => l.bundles);
    bundles.set(chain, all);
    for (const bundle of all) {
      if (!meets(bundle.box, seen(brush))) continue;
      const path = bundlePath(brush, bundle);
      // A pale line beneath keeps it apart from what it lies upon.
      penOf(brush, { colour: 'paper', width: width + 3, dash: [] });
      brush.context.stroke(path);
      penOf(brush, { colour, width, dash: [] });
      brush.context.stroke(path);
    }
  }
};

/** What is chosen is tinted too: its outline alone may lie among other lines. */
const shade = ({ context, colours, view }: Brush, chains: readonly ChainView[]): void => {
  context.fillStyle = colours.accent;
  context.globalAlpha = 0.16;
  for (const chain of chains) if (chain.closed) context.fill(wholePath(chain, [whole(chain)], view.scale), 'evenodd');
  context.globalAlpha = 1;
};

/** Where a slug has fallen there is nothing left. */
const paintFallen = (brush: Brush, ground: PictureGround, fallen: readonly string[]): void => {
  for (const chain of fallen.flatMap((owner) => chainsOf(ground, owner))) {
    brush.context.fillStyle = brush.colours.paper;
    brush.context.fill(wholePath(chain, [whole(chain)], brush.view.scale), 'evenodd');
  }
};

const paintDatum = (brush: Brush, { picture }: PictureGround, word: string): void => {
  const { context, colours, view, family } = brush;
  const { x, y } = toPixel(view, picture.datum);
  context.strokeStyle = colours.ink;
  context.fillStyle = colours.ink;
  context.lineWidth = 1.3;
  context.setLineDash([]);
  context.beginPath();
  context.arc(x, y, 6, 0, 2 * Math.PI);
  context.moveTo(x - 11, y);
  context.lineTo(x + 11, y);
  context.moveTo(x, y - 11);
  context.lineTo(x, y + 11);
  context.stroke();
  context.font = `12px ${family}`;
  context.textAlign = 'left';
  context.textBaseline = 'top';
  haloed(brush, word, x + 9, y + 5, 'ink');
};

const paintScaleBar = (brush: Brush, { lengths }: PictureGround): void => {
  const { context, colours, view, size, family } = brush;
  const bar = scaleBar(view.scale, lengths.unit, Math.min(160, size.width / 3));
  const [left, y] = [16, size.height - 16];
  context.fillStyle = colours.paper;
  context.globalAlpha = 0.85;
  context.fillRect(left - 8, y - 26, Math.max(bar.pixels, 56) + 16, 36);
  context.globalAlpha = 1;
  context.strokeStyle = colours.ink;
  context.lineWidth = 1.5;
  context.setLineDash([]);
  context.lineCap = 'butt';
  context.beginPath();
  context.moveTo(left, y - 5);
  context.lineTo(left, y);
  context.lineTo(left + bar.pixels, y);
  context.lineTo(left + bar.pixels, y - 5);
  context.stroke();
  context.fillStyle = colours.ink;
  context.font = `12px ${family}`;
  context.textAlign = 'left';
  context.textBaseline = 'bottom';
  context.fillText(lengths.full(bar.length * (lengths.unit === 'inch' ? 25.4 : 1)), left, y - 7);
};

/** In which file of the font package dejavu-fonts-ttf each cut lies that comes with the house. */
import type { FaceName } from '../shapes/lettering/typefaces.ts';

export { type FaceName, USUAL_FACE } from '../shapes/lettering/typefaces.ts';

export const FACE_FILES: Readonly<Record<FaceName, string>> = {
  sans: 'DejaVuSans.ttf',
  'sans-bold': 'DejaVuSans-Bold.ttf',
  condensed: 'DejaVuSansCondensed.ttf',
  'condensed-bold': 'DejaVuSansCondensed-Bold.ttf',
  serif: 'DejaVuSerif.ttf',
  'serif-bold': 'DejaVuSerif-Bold.ttf',
  mono: 'DejaVuSansMono.ttf',
  'mono-bold': 'DejaVuSansMono-Bold.ttf',
};

export const isFace = (name: string): name is FaceName => Object.hasOwn(FACE_FILES, name);

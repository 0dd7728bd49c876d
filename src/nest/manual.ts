/** What the manual says of laying pieces into a plate. */
import type { Manual } from '../text/manual.ts';
import type { catalogue } from './findings.ts';

export const manual: Manual<typeof catalogue> = {
  'nest-value-unusable': {
    title: 'A number of the nest is missing, negative or too large',
    meaning:
      'Margin and web are lengths of 0 mm or more, quantities whole numbers from 1 up, steps of turning parts of the full turn of at least 1°, and every kind of piece has its own name. The finding names the value that does not comply.',
    matters: 'A guess would lay pieces closer than you meant, and that only shows when the plate is cut.',
    remedy: 'Correct the value named. A step must divide 360°: 15, 30, 45, 90.',
  },
  'nest-outline-unusable': {
    title: 'An outline of the nest crosses itself or does not hold together',
    meaning: 'A piece, the plate or a forbidden zone has an outline that is open, meets itself, or meets one of its own openings.',
    matters: 'Such an outline has no clear inside, so it is not known what is metal and what may lie beside it.',
    remedy:
      'Repair the outline in the drawing, most often a doubled line or an opening that runs out over the edge. Reading the drawing on its own shows the place. A clamp that sticks out over the plate is no fault.',
  },
  'plate-too-small': {
    title: 'Nothing is left of the plate inside its border',
    meaning: 'The border is kept free all along the edge of the plate. Here it takes the whole plate.',
    matters:
      'The border is there for clamps, a bowed or scaled edge and the hold of the frame that is left, so it is not made smaller without your word.',
    remedy:
      'Take a larger plate, or a smaller border if the edge is clean and the clamps are given as forbidden zones. Check that both are in the same unit.',
  },
  'piece-too-large': {
    title: 'A piece has no room even on an empty plate',
    meaning:
      'The piece was tried in every way it may be turned on the plate without any other piece, inside the border and clear of the forbidden zones, and has no room. The finding gives its size and that of the plate.',
    matters: 'The other pieces are laid all the same; this one is missing from the plate.',
    remedy:
      'Take a larger plate, a smaller border, move a clamp, or allow more turns. A long piece often fits at an angle: allow turns by a step such as 15°, if the grain of the sheet does not matter.',
  },
  'pieces-left': {
    title: 'Not all pieces have room on the plate',
    meaning:
      'The finding says how many of the pieces found no place. The layout is whole and can be cut; what is left needs another plate.',
    matters:
      'The yield beside the bound shows whether there is more to gain: the bound is what area alone would allow. Layouts of mixed shapes seldom come nearer to it than eight or nine tenths.',
    remedy:
      'Plan a further plate with what is left, take a larger one, or gain room: a narrower web or border, more turns, or more work for the search.',
  },
  'pieces-too-many': {
    title: 'More pieces are asked for than are laid at once',
    meaning: 'The search keeps every piece in view, and beyond the number named it would take too long to be of use.',
    remedy:
      'Ask for one plateful at a time. The yield of one full plate holds for all plates like it, so the number of plates is quickly worked out.',
  },
  'nest-stopped': {
    title: 'The search for a better layout was stopped',
    meaning: 'The search was ended before its work was done. The layout is the best one found by then.',
    matters: 'It keeps all webs and margins and can be cut; a longer search may gain some of the plate.',
    remedy: 'Nothing, if the yield is good enough. Otherwise ask again and let it run: the same question always gives the same layout.',
  },
  'stack-sheets': {
    title: 'How many sheets are cut in one stack, and what sets the limit',
    meaning:
      'The height counts more than the sheets: between every two, and under the lowest, lie a burr and what is left of the bow. The stack must pass under the upper guide with all of that.',
    matters: 'A high stack saves time per piece as long as water reaches the cut. The gaps between sheets cost height and give nothing.',
    remedy: 'Nothing. If more sheets would pay, the finding says what limits them.',
  },
  'stack-too-high': {
    title: 'Not even one sheet has room under the upper guide',
    meaning: 'One sheet with its burr and its bow stands higher than the machine takes.',
    matters: 'Burr and bow count because the guide would touch the highest place.',
    remedy: 'Flatten the sheet, take the burr off, or cut on a machine with more height. Check the unit of the thickness.',
  },
  'stack-flush': {
    title: 'Sheets would lie too far apart to be flushed in a stack',
    meaning:
      'Water from the nozzles must run down the cut. Where sheets stand apart it escapes sideways; some tenths of a millimetre are enough (common practice, no source). So the sheets are cut one by one, which is slower but sure.',
    matters: 'The spark runs dry there, and the wire may break.',
    remedy:
      'Take the burrs off, flatten the sheets, or bolt or weld the stack between two plates, and state what share of the bow that presses out.',
  },
  'stack-value-unusable': {
    title: 'A number of the stack is missing, negative or too large',
    meaning:
      'Thickness and the height of the machine are lengths above 0 mm; burr and flatness 0 mm or more; the sheets wanted a whole number; the share of the bow that is pressed out lies between 0 and 1. The finding names the one that does not comply.',
    remedy: 'Correct that value. Flatness is how far one sheet lying free is out of flat, in mm, not a class.',
  },
  'stack-uneven': {
    title: 'Much of the height of the stack is bow and burr, not sheet',
    meaning: 'More than a tenth of the height is air.',
    matters:
      'The water loses pressure at each gap, the cut is slower and less even than in solid metal of that height, and small pieces may shift when they come free.',
    remedy: 'Take the burrs off before stacking, lay all sheets with the burr on the same side, or press them flat between plates.',
  },
};

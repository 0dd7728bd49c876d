/** What the manual says of letters. */
import type { Manual } from '../../text/manual.ts';
import type { catalogue } from './findings.ts';

export const manual: Manual<typeof catalogue> = {
  'font-unusable': {
    title: 'The font cannot be read, or lacks what is needed',
    meaning:
      'The file is not there, is no TrueType or OpenType font, is packed for the web, is a collection, is damaged, or has no capital H by which a height could be measured.',
    matters:
      'Letters are cut from the outlines in this file. Each of its tables is checked against its checksum, since a letter from a damaged file would be cut wrong without anyone seeing why.',
    remedy:
      'Take the .ttf or .otf file itself; save it anew with the program that made it; or take one of the built-in faces. Font files of your own are read on the command line only: server and page know the built-in faces.',
  },
  'letter-missing': {
    title: 'The font has no such character',
    meaning:
      'A character of the text has no outline in this font. Line and place in the line are counted from 1, after accents were joined to their letters.',
    matters: 'Most programs put an empty box in its place, and the box would be cut.',
    remedy: 'Write it otherwise, choose another face, or name a font that has it.',
  },
  'letters-need-shaping': {
    title: 'The script is not set letter by letter from left to right',
    meaning:
      'Letters are placed one after the other from left to right. In some scripts they change with their neighbours, run from right to left or stand over one another; an accent for which there is no combined letter stands over its letter as well.',
    matters: 'Set one by one, such a text would be misspelt, and cut so.',
    remedy: 'Have the text drawn by someone who reads it, turned into outlines, and cut the drawing.',
  },
  'text-without-letters': {
    title: 'The text leaves nothing to cut',
    meaning: 'The text has nothing but spaces and line breaks.',
    matters: 'There is no contour, so there is neither a program nor a price.',
    remedy: 'Give the text that is to be read.',
  },
  'letter-without-room': {
    title: 'The clearance, or a fine detail, leaves nothing of a letter',
    meaning:
      'Each wall of a letter stands back by its share of the clearance. Here a stroke is thinner than what both walls take, or the walls run into each other in a way that leaves no clean contour.',
    matters: 'A part of a letter would vanish without being seen on the sheet.',
    remedy: 'Give less clearance, let the mate take more of it (`share`), or make the letters larger or bolder.',
  },
  'letters-too-fine': {
    title: 'The text comes to too many lines and arcs',
    meaning:
      'The curves of all letters, followed as closely as asked for, come to more lines and arcs than are worth waiting for. Usual lettering has about a hundred for each letter.',
    matters: 'Every arc is a block of the program, and a control slows down where blocks are shorter than it can read.',
    remedy: 'Make `fit` larger. 5 µm cannot be seen in a letter; 0.5 µm are for involutes. Or cut the text in parts.',
  },
  'letter-islands-fall': {
    title: 'The middles of letters are loose islands that fall out',
    meaning:
      'Where letters are openings in a plate, what is inside an O or A hangs on nothing: once the outline is cut it falls out together with the slug, and the letter loses its counter. So only the outlines around are drawn.',
    matters: 'A plate with O cut so shows a solid oval, and an 8 is hard to tell from a blot. Nothing can be repaired after the cut.',
    remedy:
      'Give `bridge` a width. Bars of this width then tie every middle to the plate on two sides, as on a stencil. About a fifteenth of the height of the letters is usual (common practice, no source); bridges narrower than the plate is thick bend. Or leave it so, where the counters are to be open.',
  },
  'letter-bridge-impossible': {
    title: 'A bridge cannot connect the middle of a letter to the plate',
    meaning: 'No straight bar of the width asked for leads from the middle of a letter to the plate, or the bars contradict the outline.',
    matters: 'This middle still falls out, and the counter of the letter is lost.',
    remedy: 'Make bridges narrower, let them run the other way (`bridgeWay`), or choose a plainer face.',
  },
  'letter-bridge-wide': {
    title: 'A bridge is wider than the middle of the letter it holds',
    meaning:
      'The largest disc that fits into the counter is smaller than the bridge is wide: the bridges take most of the counter, or all of it.',
    matters: 'The letter is held, but can hardly be read as one with a counter.',
    remedy: 'Make bridges narrower, or the letters larger.',
  },
  'letters-run-together': {
    title: 'Letters run into each other and become one',
    meaning: 'Outlines of neighbours overlap or touch. They are cut as one opening, or stand as one piece.',
    matters: 'It may be meant, as for a name that is to hang together, or be an accident of narrow spacing, kerning or tight lines.',
    remedy: 'If they are to stay apart, give more `spacing` or `lineSpacing`, or set `kerning` to no.',
  },
  'letters-in-parts': {
    title: 'A letter is more than one piece',
    meaning:
      'Letters such as i, j, % or Ä consist of parts that hang on nothing but the plate they are cut from. As standing pieces each part is cut, falls and has to be placed by itself.',
    matters: 'A dot of a few millimetres is lost in the tank, and there are more stops than letters.',
    remedy: 'Count the parts in the quotation; have an operator catch small ones; or take capitals.',
  },
};

/** The one table of all that the page itself says, by part of the page. */
import { choiceWords, fieldWords, noneWords, typedWords } from './fields.ts';
import { jobsWords, pageWords } from './page.ts';
import { paperWords } from './papers.ts';
import { pictureWords } from './picture.ts';
import { deviationWords, glassWords, priceWords, programWords, replayWords, stripWords } from './replay.ts';
import { runWords } from './run.ts';
import { shapeWords } from './shape.ts';
import { sheetWords } from './sheet.ts';
import { shopWords } from './shop.ts';

export const messages = {
  page: pageWords,
  jobs: jobsWords,
  sheet: sheetWords,
  fields: fieldWords,
  choices: choiceWords,
  leftOut: noneWords,
  typed: typedWords,
  picture: pictureWords,
  papers: paperWords,
  run: runWords,
  shape: shapeWords,
  shop: shopWords,
  strip: stripWords,
  replay: replayWords,
  program: programWords,
  deviation: deviationWords,
  glass: glassWords,
  price: priceWords,
} as const;

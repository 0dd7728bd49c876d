/** Rough times of other processes: the jet by its published law, the thermal ones by what is commonly said of good machines. */

import { type Figure, given } from '../../quantity/figure.ts';
import { apply, type Formula } from '../../quantity/formula.ts';
import { saidBy } from '../../quantity/source.ts';
import { say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { familyWords } from '../material/family-words.ts';
import type { OtherQuestion } from './other-question.ts';
import { commonJet, jetNumbers, type ProcessRow } from './process-table.ts';
import { cuts, processWords } from './process-words.ts';
import { waterJetFeed } from './thermal-and-jet-laws.ts';

export const thermalFeed: Formula<'atTen' | 'power' | 'most' | 'thickness'> = {
  name: say('other-process.thermal-feed')`feed of a thermal cut`,
  text: say('other-process.thermal-feed.by')`feed = feed at 10 mm · (10 / a)^power, at most the fastest`,
  source: 'common-practice',
  unit: 'mm/min',
  inputs: {
    atTen: { unit: 'mm/min', name: 'feed at 10 mm' },
    power: { unit: '1', name: 'power by which it falls' },
    most: { unit: 'mm/min', name: 'fastest feed' },
    thickness: { unit: 'mm', name: 'thickness' },
  },
  compute: ({ atTen, power, most, thickness }) => Math.min(most, atTen * (10 / thickness) ** power),
  bends: true,
};

export const otherMinutes: Formula<'length' | 'feed' | 'contours' | 'pierce' | 'thickness'> = {
  name: say('other-process.other-minutes')`cutting and piercing`,
  text: say('other-process.other-minutes.by')`time = length / feed + contours · piercing of 10 mm · a / 10`,
  source: 'definition',
  unit: 'min',
  inputs: {
    length: { unit: 'mm', name: 'length of all contours' },
    feed: { unit: 'mm/min', name: 'feed' },
    contours: { unit: '1', name: 'contours' },
    pierce: { unit: 'min', name: 'piercing of 10 mm' },
    thickness: { unit: 'mm', name: 'thickness' },
  },
  compute: ({ length, feed, contours, pierce, thickness }) => length / feed + (contours * pierce * thickness) / 10,
};

export const thermalFeedFor = (question: OtherQuestion, thickness: Figure, row: ProcessRow): Figure => {
  const { atTen, power, most } = row.feed;
  const feed = apply(
    thermalFeed,
    {
      atTen: practice(row, 'feed-at-ten', say('other-process.feed-at-ten')`feed at 10 mm`, atTen, 'mm/min', atTen * 0.4),
      power: practice(row, 'feed-power', say('other-process.feed-power')`power by which it falls`, power, '1'),
      most: practice(row, 'feed-most', say('other-process.feed-most')`fastest feed`, most, 'mm/min'),
      thickness,
    },
    { key: keyOf(row, 'feed'), name: cuts.feed(processWords[row.name]) },
  );
  return minutesWith(feed, question, thickness, row);
};

/** The family must be one that jets cut. */
export const jetFeedFor = (question: OtherQuestion, thickness: Figure, row: ProcessRow): Figure => {
  const { value, published } = jetNumbers[question.material.family] ?? { value: 80, published: false };
  const number = given({
    key: keyOf(row, 'machinability'),
    name: say('other-process.machinability')`machinability number of ${{ family: familyWords[question.material.family] }}`,
    value,
    unit: '1',
    deviation: value * (published ? 0.05 : 0.2),
    basis: 'assumed',
    source: { file: published ? 'zeng-kim' : 'common-practice' },
    warnings: published ? [] : [say('other-process.from-memory')`from memory, or from a similar metal`],
  });
  const jet = (key: keyof typeof commonJet, name: Text, unit: Figure['unit']): Figure => practice(row, key, name, commonJet[key], unit);
  const feed = apply(
    waterJetFeed,
    {
      abrasive: jet('abrasive', say('other-process.abrasive')`abrasive factor, garnet 1`, '1'),
      machinability: number,
      pressure: jet('pressure', say('other-process.pressure')`water pressure`, 'MPa'),
      orifice: jet('orifice', say('other-process.orifice')`orifice`, 'mm'),
      abrasiveFlow: jet('abrasiveFlow', say('other-process.abrasive-flow')`abrasive, g/min`, '1'),
      quality: jet('quality', say('other-process.quality')`quality level, the best`, '1'),
      thickness,
      tube: jet('tube', say('other-process.tube')`mixing tube`, 'mm'),
    },
    { key: keyOf(row, 'feed') },
  );
  return minutesWith(feed, question, thickness, row);
};

const minutesWith = (feed: Figure, { length, contours }: OtherQuestion, thickness: Figure, row: ProcessRow): Figure =>
  apply(
    otherMinutes,
    {
      length: drawn('other.length', say('other-process.other-length')`length of all contours`, length, 'mm'),
      feed,
      contours: drawn('other.contours', say('other-process.other-contours')`contours`, contours, '1'),
      pierce: practice(row, 'pierce', say('other-process.pierce')`piercing of 10 mm`, row.pierce, 'min', row.pierce / 2),
      thickness,
    },
    { key: keyOf(row, 'minutes'), name: cuts.time(processWords[row.name]) },
  );

const keyOf = (row: ProcessRow, what: string): string => `other.${row.name.replace(' ', '-')}.${what}`;

const drawn = (key: string, name: Text, value: number, unit: Figure['unit']): Figure =>
  given({ key, name, value, unit, basis: 'drawing', source: saidBy.drawing });

const practice = (row: ProcessRow, what: string, name: Text, value: number, unit: Figure['unit'], deviation = 0): Figure =>
  given({ key: keyOf(row, what), name, value, unit, deviation, basis: 'common practice', source: { file: 'common-practice' } });

/** A remedy is data: the button fills the field in with its value where there is one, else it leads to the field. */
import { describe, expect, it } from 'vitest';
import { type RemedyValue, remedy } from '../../text/finding.ts';
import { mm } from '../../text/part.ts';
import { numbersIn } from '../../text/print/reader.ts';
import { HOUSE } from '../../text/reader.ts';
import { say } from '../../text/say.ts';
import { wordsFor } from '../words/words-for.ts';
import { foundView } from '../work/finding-view.ts';
import { listsOf } from './lists.ts';
import { fillingOf, helpingFields } from './remedies.ts';

const numbers = numbersIn({ lengthUnit: 'mm', finishUnit: 'µm', locale: 'en-US' });
const means = { input: { drawing: 'plate.dxf' }, numbers, lists: listsOf(undefined, HOUSE), words: wordsFor(HOUSE) };

const found = (field: string, value?: RemedyValue) =>
  foundView({
    code: 'planted',
    severity: 'warning',
    text: say('planted')`Too coarse.`,
    remedy: remedy(say('planted.remedy')`${{ wire: mm(0.2) }} would do.`, { field, value }),
  });

describe('what a remedy fills in', () => {
  it('is its value in its field, as a step of undo with a name', () => {
    expect(fillingOf(found('height', 40), means)).toEqual({
      path: 'height',
      said: 'Set thickness to 40 mm',
      step: 'thickness 40 mm',
      change: { height: 40 },
    });
  });

  it('is a place in the drawing, as for program zero', () => {
    const filled = fillingOf(found('datum', { x: 251_320, y: 412_200 }), means);
    expect(filled?.change).toEqual({ datum: { x: 251_320, y: 412_200 } });
    expect(filled?.said).toMatch(/251,?320.*412,?200/);
  });

  it('names a wire as the shop calls it', () => {
    expect(fillingOf(found('wire', 'brass-0.25'), means)).toMatchObject({
      said: 'Set wire to 0.25 mm brass',
      change: { wire: 'brass-0.25' },
    });
  });

  it('is told in the units of the reader, and kept in mm', () => {
    const inch = { ...means, numbers: numbersIn({ lengthUnit: 'inch', finishUnit: 'µin', locale: 'en-US' }) };
    expect(fillingOf(found('tolerance', 0.0254), inch)).toMatchObject({
      said: 'Set tolerance, either side to 0.001 in',
      change: { tolerance: 0.0254 },
    });
  });

  it('reaches the numbers of a part by numbers', () => {
    const gear = { ...means, input: { drawing: 'x', shape: { kind: 'gear', module: 2, teeth: 9 } } };
    expect(fillingOf(found('shape.shift', 0.47), gear)).toMatchObject({ said: 'Set shift to 0.47', change: { 'shape.shift': 0.47 } });
  });

  it('adds to a list what answers a second question', () => {
    const asked = { ...means, input: { drawing: 'plate.dxf', without: ['L1'] } };
    expect(fillingOf(found('without', ['L1', 'L4']), asked)).toMatchObject({
      said: 'Set contours left out to L1; L4',
      change: { without: ['L1', 'L4'] },
    });
  });

  it('is nothing without a value, for a field that is not there, and for a value that the job does not take', () => {
    expect(fillingOf(found('height'), means)).toBeUndefined();
    expect(fillingOf(found('shape.shift', 0.47), means)).toBeUndefined();
    expect(fillingOf(found('height', -3), means)).toBeUndefined();
  });
});

describe('the fields that a finding leads to', () => {
  it('begin with the one that its remedy names', () => {
    expect(helpingFields({ ...found('tolerance'), code: 'wire-unknown' })).toEqual(['tolerance', 'wire']);
  });

  it('are those of its kind where the remedy names none', () => {
    expect(helpingFields({ code: 'wire-unknown' })).toEqual(['wire']);
  });
});

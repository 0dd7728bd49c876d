/** Steps of undo and values by path. */
import { describe, expect, it } from 'vitest';
import type { JobRecord } from '../../server/message/job-record.ts';
import { changed, inputOf, redoName, redone, undoName, undone, valueAt, withStep } from './input.ts';

const record: JobRecord = {
  id: 'abcdefgh',
  revision: 3,
  name: 'a plate',
  drawingName: 'plate.dxf',
  changed: '2026-11-25T08:00:00Z',
  steps: [{ name: 'came in', input: { drawing: 'plate.dxf', kept: { L1: 'die' } } }],
  cursor: 0,
  log: [],
};

describe('named steps of undo', () => {
  it('an edit is a step that undo takes back and redo brings again', () => {
    const edited = withStep(record, 'finish Ra 0.8', { finish: 0.8 });
    expect(inputOf(edited)).toEqual({ drawing: 'plate.dxf', kept: { L1: 'die' }, finish: 0.8 });
    expect(undoName(edited)).toBe('finish Ra 0.8');
    const back = undone(edited);
    expect(inputOf(back)).toEqual(inputOf(record));
    expect([undoName(back), redoName(back)]).toEqual([undefined, 'finish Ra 0.8']);
    expect(inputOf(redone(back))).toEqual(inputOf(edited));
  });

  it('an edit after undo drops what was undone', () => {
    const other = withStep(undone(withStep(record, 'height 40', { height: 40 })), 'height 30', { height: 30 });
    expect(other.steps.map((s) => s.name)).toEqual(['came in', 'height 30']);
  });

  it('an edit that changes nothing is no step', () => {
    expect(withStep(record, 'kept', { 'kept.L1': 'die' })).toBe(record);
  });

  it('the first step stays when old ones are let go', () => {
    const many = Array.from({ length: 500 }, (_, i) => i + 1).reduce((r, height) => withStep(r, `height ${height}`, { height }), record);
    expect(many.steps).toHaveLength(200);
    expect(many.steps[0]?.name).toBe('came in');
    expect(inputOf(many)['height']).toBe(500);
  });
});

describe('values by dotted path', () => {
  it('reach into groups, make them where they are missing, and take them away when they are empty', () => {
    const one = changed({}, { 'overrides.L2.tab': 2 });
    expect(one).toEqual({ overrides: { L2: { tab: 2 } } });
    expect(valueAt(one, 'overrides.L2.tab')).toBe(2);
    expect(changed(one, { 'overrides.L2.tab': undefined })).toEqual({});
  });

  it('keep the order of the keys', () => {
    expect(Object.keys(changed({ a: 1, b: 2, c: 3 }, { b: 5 }))).toEqual(['a', 'b', 'c']);
  });

  it('do not find what every object has', () => {
    expect(valueAt({}, 'constructor.name')).toBeUndefined();
  });
});

import { describe, expect, it } from 'vitest';
import { applyChanges, invertChanges } from '../../src/app/casebook/apply-changes.ts';
import type { CaseState } from '../../src/app/casebook/case-state.ts';
import type { Change, Json } from '../../src/app/casebook/change.ts';
import { takeEdit } from '../../src/app/casebook/take-edit.ts';
import { newCase } from '../../src/app/new-case.ts';

const PORT = { id: 'out', kind: 'usbA', levels: [{ id: 'five', voltage: '5 V', printed: '2 A' }] };
const SWEEP = {
  id: 'sweep-1',
  kind: 'sweep',
  port: 'out',
  order: 'up',
  sense: 'socket',
  table: {
    columns: [
      { id: 'i', role: 'outputCurrent', unit: 'A' },
      { id: 'v', role: 'outputVoltage', unit: 'V' },
    ],
    rows: [{ id: 'r1', cells: ['0', '5.1'] }],
  },
};

function stateWith(more: Record<string, Json>): CaseState {
  return { case: { ...(newCase('cube') as unknown as CaseState['case']), ...more }, drafts: {} };
}

const VOLTAGE = '/case/ports/out/levels/five/voltage';
const FULL = stateWith({ ports: [PORT], exhibits: [SWEEP] });

function taken(state: CaseState, changes: readonly Change[]) {
  const result = takeEdit(state, changes);
  if (Array.isArray(result)) throw new Error(JSON.stringify(result));
  return result;
}

describe('an edit', () => {
  it('changes one cell and leaves the rest of the case as it was', () => {
    const { state } = taken(FULL, [{ at: '/case/exhibits/sweep-1/table/rows/r1/cells/1', was: '5.1', to: '5.08' }]);
    expect(state.case['exhibits']).toEqual([{ ...SWEEP, table: { ...SWEEP.table, rows: [{ id: 'r1', cells: ['0', '5.08'] }] } }]);
    expect(state.case['ports']).toBe(FULL.case['ports']);
  });

  it('keeps a text that cannot be read as a draft at its place, and leaves the reading as it was', () => {
    const { state, conflicts } = taken(FULL, [{ at: VOLTAGE, was: '5 V', to: '4,l' }]);
    expect(conflicts).toEqual([]);
    expect(state.case).toEqual(FULL.case);
    expect(state.drafts[VOLTAGE]).toMatchObject({ text: '4,l' });
  });

  it('keeps what a meter showed in a table as typed, whatever it is', () => {
    const at = '/case/exhibits/sweep-1/table/rows/r1/cells/1';
    const { state } = taken(FULL, [{ at, was: '5.1', to: 'OL' }]);
    expect(state.drafts).toEqual({});
  });

  it('takes an item in whose one text cannot be read, as nobody looked there, with the text as a draft', () => {
    const ripple = { id: 'ripple-1', kind: 'ripple', port: 'out', value: '12 mm', bandwidth: '20 MHz', fixture: 'short leads', note: 'x' };
    const { state } = taken(FULL, [{ at: '/case/exhibits/ripple-1', to: ripple }]);
    expect((state.case['exhibits'] as Json[])[1]).toEqual({ ...ripple, value: { state: 'notLooked' } });
    expect(state.drafts['/case/exhibits/ripple-1/value']).toMatchObject({ text: '12 mm' });
  });

  it('leaves a member out whose text cannot be read and that has no states', () => {
    const cold = { id: 'cold-1', kind: 'cold', quantity: 'insulation', between: ['pins', 'out'], value: '2 GOhm', testVoltage: 'five' };
    const conductors = ['pins', 'out'].map((id) => ({ id, name: id, side: 'output' }));
    const { state } = taken(stateWith({ conductors }), [{ at: '/case/exhibits/cold-1', to: cold }]);
    const { testVoltage, ...rest } = cold;
    expect(state.case['exhibits']).toEqual([rest]);
    expect(state.drafts['/case/exhibits/cold-1/testVoltage']).toMatchObject({ text: testVoltage });
  });

  it('drops the draft when the place can be read at last, and when its item goes', () => {
    const draft = taken(FULL, [{ at: VOLTAGE, was: '5 V', to: '4,l' }]).state;
    expect(taken(draft, [{ at: VOLTAGE, was: '5 V', to: '5.1 V' }]).state.drafts).toEqual({});
    const alone = stateWith({ ports: [PORT] });
    const other = taken(alone, [{ at: VOLTAGE, was: '5 V', to: '4,l' }]).state;
    expect(taken(other, [{ at: '/case/ports/out', was: PORT as unknown as Json }]).state.drafts).toEqual({});
  });

  it('keeps an item that lacks something apart until it is complete', () => {
    const at = '/case/ports/out/levels/nine';
    const first = taken(FULL, [{ at, to: { id: 'nine' } }]).state;
    expect(first.case).toEqual(FULL.case);
    expect(first.drafts[at]).toMatchObject({ item: { id: 'nine' } });
    const unread = taken(first, [{ at, to: { id: 'nine', voltage: '9 m' } }]).state;
    expect(unread.drafts[`${at}/voltage`]).toMatchObject({ text: '9 m' });
    const whole = taken(unread, [{ at, to: { id: 'nine', voltage: '9 V' } }]).state;
    expect(whole.drafts).toEqual({});
    expect((whole.case['ports'] as unknown as (typeof PORT)[])[0]?.levels).toHaveLength(2);
  });

  it('is refused whole, with the place, when it takes away what something else names', () => {
    const result = takeEdit(FULL, [{ at: '/case/ports/out', was: PORT as unknown as Json }]);
    expect(result).toMatchObject([{ code: 'no-such-id', place: '/exhibits/sweep-1/port' }]);
  });

  it('of two tabs on different fields takes both, on the same field refuses the later one with both values', () => {
    const first = taken(FULL, [{ at: '/case/sample', was: 'A', to: 'B' }]).state;
    const other = taken(first, [{ at: '/case/examinedBy', to: 'J. Bench' }]);
    expect(other.state.case).toMatchObject({ sample: 'B', examinedBy: 'J. Bench' });
    const same = taken(first, [{ at: '/case/sample', was: 'A', to: 'C' }]);
    expect(same.conflicts).toEqual([{ at: '/case/sample', mine: 'C', theirs: 'B' }]);
    expect(same.state.case['sample']).toBe('B');
  });

  it('taken back puts everything where it was, a removed row in its old place and a draft too', () => {
    const at = '/case/exhibits/sweep-1/table/rows';
    const two = taken(FULL, [{ at: `${at}/r2`, to: { id: 'r2', cells: ['1', '5.0'] } }]);
    const removed = taken(two.state, [{ at: `${at}/r1`, was: { id: 'r1', cells: ['0', '5.1'] } }]);
    expect(taken(removed.state, invertChanges(removed.done)).state).toEqual(two.state);
    const draft = taken(FULL, [{ at: VOLTAGE, was: '5 V', to: 'x' }]);
    expect(taken(draft.state, invertChanges(draft.done)).state).toEqual(FULL);
  });
});

describe('places', () => {
  it('never count a list item by its number when it has an id', () => {
    const { conflicts } = applyChanges(FULL, [{ at: '/case/ports/0/kind', was: 'usbA', to: 'usbC' }]);
    expect(conflicts).toHaveLength(1);
  });

  it('do not reach what every object inherits', () => {
    const { conflicts, state } = applyChanges(FULL, [{ at: '/case/constructor/x', to: 1 }]);
    expect(conflicts).toHaveLength(1);
    expect(state).toEqual(FULL);
  });
});

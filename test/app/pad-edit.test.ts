import { describe, expect, it } from 'vitest';
import { applyChanges } from '../../src/app/casebook/apply-changes.ts';
import type { CaseState } from '../../src/app/casebook/case-state.ts';
import { padChanges, type SaidPad, withoutPad } from '../../src/app/casebook/pad-edit.ts';
import { circuitLines, traceChanges } from '../../src/app/casebook/trace-edit.ts';
import { parseCase } from '../../src/core/evidence/parse-case.ts';
import { isRefusal } from '../../src/core/quantity/refusal.ts';

const EMPTY: CaseState = {
  case: {
    format: 'mainsworthy-case/1',
    id: 'board',
    product: { id: 'board', name: 'Board' },
    sample: 'A',
    setting: { market: 'EU' },
    instruments: [],
    days: [],
    events: [],
    ports: [],
    conductors: [],
    parts: [],
    places: [],
    files: [{ id: 'top', path: 'files/top.png', sha256: 'a'.repeat(64), bytes: 1, media: 'image/png' }],
    exhibits: [{ id: 'photo-1', kind: 'photo', file: 'top', of: 'top' }],
  },
  drafts: {},
};

/** The state after pads were said one after the other; each has to be taken. */
function withPads(state: CaseState, ...said: readonly Partial<SaidPad>[]): CaseState {
  return said.reduce<CaseState>((now, one, index) => {
    const changes = padChanges(now, { id: `pad-${index + 1}`, photo: 'photo-1', at: [10 * index, 5], pin: '', net: '', ...one });
    if (isRefusal(changes)) throw new Error(changes.expected);
    const { state: next, conflicts } = applyChanges(now, changes);
    expect(conflicts).toEqual([]);
    return next;
  }, state);
}

function linesOf(state: CaseState): string {
  const one = parseCase(state.case);
  if (Array.isArray(one)) throw new Error(JSON.stringify(one));
  return circuitLines(one);
}

const refused = (state: CaseState, said: Partial<SaidPad>): string => {
  const changes = padChanges(state, { id: 'pad-9', photo: 'photo-1', at: [0, 0], pin: '', net: '', ...said });
  return isRefusal(changes) ? `${changes.code}: ${changes.got}` : 'taken';
};

describe('pads that are clicked on photos', () => {
  it('become the same lines as if they had been typed, part by part as they are named', () => {
    const state = withPads(
      EMPTY,
      { pin: 'R7 1', net: 'OUT+' },
      { pin: 'r7', net: 'REF' },
      { pin: 'U3 K', net: 'KA' },
      { pin: 'T1 P.1', net: 'HV+' },
    );
    expect(linesOf(state)).toBe('R7: OUT+, REF\nU3: K=KA\nT1 P: HV+, ?\n');
    const { changes } = traceChanges(state, linesOf(state));
    expect(applyChanges(state, changes).state.case['pads']).toEqual(state.case['pads']);
  });

  it('tell what a part is as soon as its pins do', () => {
    const state = withPads(EMPTY, { pin: 'U3 R', net: 'REF' }, { pin: 'U3 A', net: 'OUT-' }, { pin: 'U3 K', net: 'KA' });
    expect(linesOf(state)).toBe('U3: R=REF, A=OUT-, K=KA\n');
    expect(state.case['parts']).toMatchObject([{ kind: 'shuntReference' }]);
  });

  it('say what is not known as not known: a track that was not followed, a part that nobody named', () => {
    const state = withPads(EMPTY, { pin: 'R7 1', net: 'OUT+' }, { net: 'OUT+' }, {});
    expect(linesOf(state)).toBe('R7: OUT+, ?\n');
    expect(state.case['pads']).toEqual([
      { id: 'pad-1', photo: 'photo-1', at: [0, 5], part: 'r7', pin: '1' },
      { id: 'pad-2', photo: 'photo-1', at: [10, 5], net: 'out-plus' },
      { id: 'pad-3', photo: 'photo-1', at: [20, 5] },
    ]);
  });

  it('have one truth: two pads of one pin move together, and a line that is typed moves them too', () => {
    const both = withPads(EMPTY, { pin: 'R7 1', net: 'A' }, { pin: 'R7 1', net: 'A' }, { id: 'pad-2', pin: 'R7 1', net: 'B' });
    expect(linesOf(both)).toBe('R7: B, ?\n');
    const typed = applyChanges(both, traceChanges(both, 'R7 4k7: C, D').changes).state;
    expect(linesOf(typed)).toBe('R7 4k7: C, D\n');
    expect(linesOf(withPads(typed, { id: 'pad-1', pin: 'R7 1' }))).toBe('R7 4k7: C, D\n'); // saying no net changes none
  });

  it('keep what a part had when it gets its first pad, and leave the circuit alone when they go', () => {
    const measured = withPads(
      { ...EMPTY, case: { ...EMPTY.case, parts: [{ id: 'r7', ref: 'R7', kind: 'resistor', measured: '4.68 kΩ' }] } },
      { pin: 'R7 2', net: 'REF' },
    );
    expect(measured.case['parts']).toMatchObject([{ measured: '4.68 kΩ', pins: [{ pin: '1' }, { pin: '2', net: 'ref' }] }]);
    const gone = withoutPad(measured, 'pad-1');
    if (isRefusal(gone)) throw new Error('refused');
    const left = applyChanges(measured, gone).state;
    expect(left.case['pads']).toEqual([]);
    expect(linesOf(left)).toBe(linesOf(measured));
  });

  it('refuse a pin that the part does not have, more pins than there are, and what is no reference or net', () => {
    const state = withPads(EMPTY, { pin: 'R7', net: 'A' }, { pin: 'R7', net: 'B' });
    expect(refused(state, { pin: 'R7 3' })).toBe('no-such-pin: R7 3');
    expect(refused(state, { pin: 'R7' })).toBe('which-pin: R7');
    expect(refused(state, { pin: 'U1' })).toBe('which-pin: U1');
    expect(refused(state, { pin: 'T1 1' })).toBe('no-winding: T1 1');
    expect(refused(state, { pin: 'the left one' })).toBe('not-a-pin: the left one');
    expect(refused(state, { net: 'OUT +' })).toBe('not-a-net: OUT +');
    expect(isRefusal(withoutPad(state, 'pad-7'))).toBe(true);
  });

  it('that name a photo, a part or a net that is not there are refused with their place', () => {
    const pads = [{ id: 'p', photo: 'photo-9', at: [0, 0], part: 'r9', pin: '1', net: 'nowhere' }];
    const refusals = parseCase({ ...EMPTY.case, pads: [...pads, ...pads] });
    const places = Array.isArray(refusals) ? refusals.map(({ place }) => place) : [];
    expect(places.toSorted()).toEqual(expect.arrayContaining(['/pads/p/id', '/pads/p/net', '/pads/p/part', '/pads/p/photo']));
  });
});

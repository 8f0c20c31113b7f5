import { describe, expect, it } from 'vitest';
import { CAUSES, type Cause, decideCause, type Evidence } from '../../../src/core/working/cause/find-cause.ts';

/** A knee of which nothing is known but its mains. */
const NOTHING: Evidence = {
  atMains: 230,
  other: null,
  hotOverCold: null,
  limitKind: null,
  corePowerShare: null,
  cut: null,
  heldShare: null,
  flux: null,
  socketHolds: null,
  offersLess: null,
  idleOutside: false,
};
const COOL = { flux: 0.25, hotOverCold: 1 } as const;

/** The decision table of the bench, row by row: deciding number, what else is known, what may be said. */
const ROWS: readonly (readonly [title: string, evidence: Partial<Evidence>, named: Cause | null, how?: 'shown' | 'consistent'])[] = [
  ['the socket holds and the end of the cable does not', { socketHolds: true }, 'cable', 'shown'],
  ['neither holds: not the cable', { socketHolds: false }, null],
  ['it offers less than is printed', { offersLess: true }, 'negotiation', 'shown'],
  ['it starts outside its window', { idleOutside: true }, 'setPoint', 'shown'],
  [
    'core power within a tenth, knee the same at 264 V',
    { corePowerShare: 0.97, cut: false, other: { mains: 264, ratio: 1.01 }, ...COOL },
    'powerLimit',
    'shown',
  ],
  [
    'core power within a tenth and no other mains: by calculation',
    { corePowerShare: 0.97, cut: false, ...COOL },
    'powerLimit',
    'consistent',
  ],
  ['core power a quarter off: not it', { corePowerShare: 0.75, cut: false, ...COOL }, null],
  ['stroke cut at the valley and its power agrees', { atMains: 90, corePowerShare: 1.04, cut: true, ...COOL }, 'bulkValley', 'consistent'],
  [
    'and raising the mains from 90 to 115 V moves the knee by the square',
    { atMains: 90, corePowerShare: 1.04, cut: true, other: { mains: 115, ratio: 1.6 }, ...COOL },
    'bulkValley',
    'shown',
  ],
  ['230 to 264 V moves the knee by 1.32: the rail, without any transformer', { other: { mains: 264, ratio: 1.32 } }, 'bulkValley', 'shown'],
  ['230 to 264 V moves it by 1.1 only: open', { other: { mains: 264, ratio: 1.1 } }, null],
  [
    'a wall of constant current whose number agrees',
    { limitKind: 'constantCurrent', heldShare: 1.05, corePowerShare: 1.4, cut: false, ...COOL },
    'setCurrent',
    'consistent',
  ],
  [
    'the same wall, but the power limit agrees too',
    { limitKind: 'constantCurrent', heldShare: 1.05, corePowerShare: 1.05, cut: false, ...COOL },
    null,
  ],
  ['flux of 0.36 T and nobody tried it hot: fold-back is not excluded', { flux: 0.36, corePowerShare: 1.4, cut: false }, null],
  ['flux of 0.36 T and the same when hot', { flux: 0.36, hotOverCold: 0.97, corePowerShare: 1.4, cut: false }, 'saturation', 'consistent'],
  [
    'four fifths when hot, core far from saturation',
    { flux: 0.2, hotOverCold: 0.8, corePowerShare: 1.4, cut: false },
    'thermalFoldback',
    'consistent',
  ],
  ['four fifths when hot, flux not known', { hotOverCold: 0.8, corePowerShare: 1.4, cut: false }, null],
];

describe('why a claim is missed', () => {
  it.each(ROWS.map(([title, ...rest]) => [title, rest] as const))('%s', (_, [evidence, named, how]) => {
    const verdict = decideCause({ ...NOTHING, ...evidence });
    expect(verdict.named).toBe(named);
    if (verdict.named !== null) expect(verdict.how).toBe(how);
  });

  it('with nothing known nothing is named, and what needs a reading of its own is not listed', () => {
    expect(decideCause(NOTHING)).toEqual({
      named: null,
      possible: ['bulkValley', 'powerLimit', 'setCurrent', 'saturation', 'thermalFoldback'],
    });
  });

  it('two voltages of the mains may have two causes', () => {
    const flat = { mains: 264, ratio: 1 };
    expect(decideCause({ ...NOTHING, ...COOL, corePowerShare: 1, cut: false, other: flat }).named).toBe('powerLimit');
    expect(decideCause({ ...NOTHING, ...COOL, atMains: 90, corePowerShare: 1, cut: true, other: { mains: 115, ratio: 1.5 } }).named).toBe(
      'bulkValley',
    );
  });

  it('no single reading names every cause: each is reached by some row, and each is left open by another', () => {
    const named = new Set(ROWS.map(([, , cause]) => cause));
    for (const cause of CAUSES) expect(named, cause).toContain(cause);
  });
});

import { describe, expect, it } from 'vitest';
import { CAUSES, type Cause, decideCause, type Evidence } from '../../../src/core/working/cause/decide-cause.ts';

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
  onlyAtCableEnd: false,
  setOutside: null,
  sag: null,
  copperShare: null,
  rectifierHottest: null,
  capacitorShare: null,
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
  ['read at the end of the cable only: perhaps the cable', { onlyAtCableEnd: true }, null],
  ['its parts set 4.5 V for a window from 4.75 V: by calculation', { setOutside: true }, 'setPoint', 'consistent'],
  ['and it does start there: shown', { setOutside: true, idleOutside: true }, 'setPoint', 'shown'],
  ['it starts inside, and its parts agree: not the set point', { setOutside: false }, null],
  [
    'a straight sag that the copper of the secondary explains',
    { sag: 0.5, copperShare: 0.8, corePowerShare: 1.4, cut: false, ...COOL },
    'secondaryDrop',
    'consistent',
  ],
  [
    'a straight sag, and the rectifier is the hottest part while the primary is at its limit',
    { sag: 0.45, rectifierHottest: true, corePowerShare: 1.05, cut: false, ...COOL },
    null, // the power limit agrees too
  ],
  [
    'a straight sag, hot rectifier, and the primary is known to be far below what it could pass, but not the copper',
    { sag: 0.45, rectifierHottest: true, corePowerShare: 1.4, cut: false, ...COOL },
    null, // the loop is not excluded
  ],
  [
    'a straight sag, but 264 V moves the knee by 1.3: the rail, and no drop',
    { sag: 0.5, copperShare: 0.8, other: { mains: 264, ratio: 1.3 } },
    'bulkValley',
    'shown',
  ],
  ['a wall of constant power behind a flat curve: no drop', { sag: 0.05, limitKind: 'constantPower', copperShare: 0.9 }, null],
  ['the same sag before a wall: no drop', { sag: 0.5, limitKind: 'constantCurrent', copperShare: 0.9 }, null],
  [
    'a straight sag, little copper, a cool rectifier, and the primary could pass half as much again',
    { sag: 0.5, copperShare: 0.1, rectifierHottest: false, corePowerShare: 1.5, cut: false, ...COOL },
    'feedback',
    'consistent',
  ],
  ['the same, but nobody read how hot the rectifier is', { sag: 0.5, copperShare: 0.1, corePowerShare: 1.5, cut: false, ...COOL }, null],
  [
    'an output capacitor of half its marking, the same knee at another mains',
    { capacitorShare: 0.5, other: { mains: 264, ratio: 1.02 } },
    'outputCapacitor',
    'consistent',
  ],
  ['and better when hot', { capacitorShare: 0.5, hotOverCold: 1.1, other: { mains: 264, ratio: 1.02 } }, 'outputCapacitor', 'shown'],
  ['half its marking, and nobody swept at another mains: the rail is not excluded', { capacitorShare: 0.5 }, null],
  ['nine tenths of its marking: not the capacitor', { capacitorShare: 0.9, other: { mains: 264, ratio: 1.02 } }, null],
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

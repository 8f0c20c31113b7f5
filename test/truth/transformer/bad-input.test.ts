import { describe, expect, it } from 'vitest';
import { parseCase } from '../../../src/core/evidence/parse-case.ts';
import { caseOf, mm, SOUND, stackOf, tape, winding } from '../barrier/hand-solved.ts';
import { buildCase, caseJson, findingOf, judge } from '../build-case.ts';

const at = (stack: typeof SOUND) => caseOf({ title: '', outcome: 'pass', stack });
const warningsOf = (stack: typeof SOUND): [string, string][] => judge(at(stack)).warnings.map(({ key, at: place }) => [key, place]);

describe('what cannot be right in a stack', () => {
  it('a sound stack has nothing to warn of', () => expect(warningsOf(SOUND)).toEqual([]));

  it('zero turns: one sentence at the field, and the insulation is judged all the same', () => {
    const stack = stackOf([winding('s', 'output', { turns: '0' }), tape('tape', '3'), winding('p', 'mains')]);
    expect(warningsOf(stack)).toEqual([['turnsNotPositive', '/exhibits/stack-1/outsideIn/s/turns']]);
    expect(findingOf(judge(at(stack)), 'shock/winding-insulation@t1:p~s').outcome).toBe('pass');
  });

  it('a core that is not in the table, without a measured area', () => {
    expect(warningsOf({ ...SOUND, core: 'XX 99' })).toEqual([['coreNotInTable', '/exhibits/stack-1/core']]);
    expect(warningsOf({ ...SOUND, core: 'XX 99', coreArea: '20 mm²' })).toEqual([]);
    expect(warningsOf({ ...SOUND, core: 'ee 16' })).toEqual([]);
  });

  it('a lead-out over a layer that is not in the stack', () => {
    const stack = stackOf([
      winding('s', 'output', { leads: [{ id: 'start', crosses: ['nowhere'] }] }),
      tape('tape', '3'),
      winding('p', 'mains'),
    ]);
    expect(warningsOf(stack)).toEqual([['layerOutsideStack', '/exhibits/stack-1/outsideIn/s/leads/start/crosses']]);
  });

  it('a winding with one pin on either side of the barrier is on the map of neither, and the barrier stays open', () => {
    const patch = at(stackOf([winding('s', 'output'), tape('tape', '3'), winding('p', 'mains', { pins: ['1', '2'] })]));
    const parts = [
      {
        id: 't1',
        ref: 'T1',
        kind: 'transformer' as const,
        pins: [
          { pin: '1', net: 'hv-minus' },
          { pin: '2', net: 'out-minus' },
        ],
      },
    ];
    const assessment = judge({ ...patch, parts });
    expect(assessment.warnings.map(({ key }) => key)).toEqual(['windingOnBothSides']);
    expect(findingOf(assessment, 'shock/barrier@hand').outcome).toBe('notAssessed');
  });

  it('a winding whose ends go to conductors on both sides of the barrier is told by them, without any pin of the part', () => {
    const ends = (pins: [string, string]) =>
      judge(at(stackOf([winding('s', 'output'), tape('tape', '3'), winding('p', 'mains', { pins })]))).warnings.map(({ key }) => key);
    expect(ends(['hv-minus', 'out-minus'])).toEqual(['windingOnBothSides']);
    expect(ends(['hv-minus', 'hv-minus'])).toEqual([]);
  });

  it('a wire of no thickness, tape in no layers, no inductance: each is told at its place and taken as not read', () => {
    const stack = stackOf([winding('s', 'output', { wire: '0 mm' }), tape('tape', '0'), winding('p', 'mains')], { inductance: '0 mH' });
    expect(warningsOf(stack)).toEqual([
      ['notAboveZero', '/exhibits/stack-1/inductance'],
      ['notAboveZero', '/exhibits/stack-1/outsideIn/s/wire'],
      ['notAboveZero', '/exhibits/stack-1/outsideIn/tape/layers'],
    ]);
    expect(findingOf(judge(at(stack)), 'shock/winding-insulation@t1:p~s').outcome).not.toBe('pass');
    // a wire on the wall of the former, and a core without a gap, are readings
    expect(warningsOf(stackOf([winding('s', 'output', { margins: ['0 mm', '0 mm'], toCore: '0 mm' })], { gap: '0 mm' }))).toEqual([]);
  });

  it('a wire that is thinner over its cover than bare', () => {
    const stack = stackOf([winding('s', 'output', { wire: mm(0.4), overall: mm(0.3) }), tape('tape', '3'), winding('p', 'mains')]);
    expect(warningsOf(stack)).toEqual([['coverThinnerThanWire', '/exhibits/stack-1/outsideIn/s/overall']]);
  });

  it('a negative thickness is refused at the field', () => {
    const stack = stackOf([winding('s', 'output'), tape('tape', '3', { each: '-0.05 mm' }), winding('p', 'mains')]);
    expect(parseCase(caseJson(at(stack)))).toMatchObject([{ place: '/exhibits/stack-1/outsideIn/tape/each' }]);
  });

  it('a stack of an earlier version, with nothing of what came later, is still read', () => {
    const old = {
      id: 'stack-1',
      kind: 'stack' as const,
      part: 't1',
      core: 'EE16',
      outsideIn: [{ id: 'p', is: 'winding' as const, name: 'P', turns: '90', wireKind: 'enamelled' as const }],
    };
    expect(buildCase({ parts: [{ id: 't1', ref: 'T1', kind: 'transformer' }], exhibits: [old] }).exhibits).toHaveLength(1);
  });
});

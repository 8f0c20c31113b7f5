import { describe, expect, it } from 'vitest';
import type { Finding } from '../../../src/core/result/assessment.ts';
import { findingOf, findingsOf, judge, noteKeys } from '../build-case.ts';
import { HOT_ROOM, itIsNotComparedWhen, onPart } from '../component-rows.ts';
import type { PartInput } from '../evidence-pieces.ts';

// Junction 150 °C, some types 175 °C: memory. The junction is at least as hot as the case, so a reading of the case is a lower bound.
const CHECK = 'fire/semiconductor-temperature';
const MOSFET: PartInput = { id: 'q1', ref: 'Q1', kind: 'mosfet' };
const rated = (temperature: string): PartInput => ({ ...MOSFET, rating: { temperature } });
const judged = (value: string, part: PartInput = MOSFET, under: typeof HOT_ROOM = HOT_ROOM): Finding =>
  findingOf(judge(onPart(part, value, { under })), `${CHECK}@spot`);

describe('the case of a semiconductor', () => {
  it('never passes, however cool: nobody gave its loss and thermal resistance', () => {
    for (const part of [MOSFET, rated('150 °C')])
      expect(judged('60 °C ± 1 K', part)).toMatchObject({ outcome: 'inconclusive', reason: 'oneSided' });
    expect(noteKeys(judged('60 °C ± 1 K'))).toContain('insideNotKnown');
    expect(judged('< 60 °C', rated('150 °C')).outcome).toBe('inconclusive');
  });

  it('fails where the case alone is beyond the rated junction: 152 °C at 150 °C, two standard uncertainties', () => {
    expect(judged('152 °C ± 2 K', rated('150 °C'))).toMatchObject({ outcome: 'fail', consequence: 'injurious', headline: true });
    expect(judged('150 °C ± 2 K', rated('150 °C')).outcome).toBe('inconclusive');
    expect(judged('148 °C ± 2 K', rated('150 °C')).outcome).toBe('inconclusive');
  });

  it('without a rating it fails only beyond what the hardiest bear: a doubtful word at 178 °C, a headline at 225 °C', () => {
    expect(judged('160 °C ± 2 K').outcome).toBe('inconclusive');
    const assessment = judge(onPart(MOSFET, '178 °C ± 2 K', { under: HOT_ROOM }));
    expect(findingOf(assessment, `${CHECK}@spot`)).toMatchObject({ outcome: 'fail', headline: false, limit: { grade: 'memory' } });
    expect(assessment.verdict.doubtful).toBe('Unsafe');
    expect(judged('225 °C ± 2 K')).toMatchObject({ outcome: 'fail', headline: true }); // rise 185 over 135: 1.37
  });

  it('a doubt of forty kelvin decides nothing; a doubt nobody knows nothing near the limit', () => {
    expect(judged('160 °C ± 40 K', rated('150 °C')).outcome).toBe('inconclusive');
    expect(judged('152 °C', rated('150 °C')).outcome).toBe('inconclusive');
    expect(judged('> 170 °C', rated('150 °C')).outcome).toBe('fail');
  });

  it.each(['diode', 'bridgeRectifier', 'bipolarTransistor', 'controller'] as const)('a %s is asked too', (kind) => {
    expect(judged('160 °C ± 2 K', { ...rated('150 °C'), kind }).outcome).toBe('fail');
  });

  it('the same place is asked by one check only', () => {
    const assessment = judge(onPart(MOSFET, '60 °C ± 1 K'));
    expect(assessment.findings.filter(({ subject }) => subject === 'spot').map(({ check }) => check)).toEqual([CHECK]);
    expect(findingsOf(assessment, CHECK)).toHaveLength(1);
  });

  itIsNotComparedWhen(CHECK, MOSFET);
});

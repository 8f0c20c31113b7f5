import { derive } from '../formula/derive.ts';
import { leastSlotWidth } from '../formula/insulation/least-slot-width.ts';
import { grooveWidth } from '../table/iec-60664-1/2007/groove-width.ts';
import { getCell } from '../table/look-up.ts';
import type { Derived } from '../trace/derived.ts';
import type { Note } from '../trace/step.ts';
import type { DistanceLimits } from '../working/insulation/clearance-limits.ts';
import type { DistanceReading, PairFacts, SlotReading } from '../working/insulation/pair-facts.ts';
import { atLeast, type DecisionRule, limitLine, undecided } from './decide.ts';
import type { Answer } from './define-check.ts';
import { judgeDistance } from './judge-barrier.ts';

/** Where a distance stands: the limits of its pair, the clearance and the pollution degree that rule how wide a slot must be. */
export interface SurfaceLimits {
  /** Names the steps; one pair has several when its readings differ in material or dirt. */
  readonly key: string;
  readonly degree: string;
  readonly creepage: DistanceLimits;
  readonly clearance: DistanceLimits;
}

/**
 * Judges a way along a surface. A slot or groove on it lengthens it only when it is wide enough; else the way straight across its mouth
 * counts, and where nobody gave that, the length along the walls is an upper bound: it can fail and never pass.
 */
export function judgePastSlot(pair: PairFacts, reading: DistanceReading, limits: SurfaceLimits, rule: DecisionRule): Answer {
  const { slot, distance } = reading;
  if (slot === null || distance === null) return judgeDistance(pair, reading, limits.creepage, rule);
  const least = leastWidth(pair, limits);
  const width = slot.width === null ? null : atLeast(slot.width, limitLine('slotWidth', 'atLeast', least), rule);
  const beside = [least.step, ...(slot.width === null ? [] : [slot.width.step])];
  const dressed = (answer: Answer, notes: readonly Note[]): Answer => ({ ...answer, beside, notes: [...(answer.notes ?? []), ...notes] });
  const found = noteOf(slot, least);
  if (width?.outcome === 'pass') return dressed(judgeDistance(pair, reading, limits.creepage, rule), [{ key: 'slotCounts', args: found }]);
  const why = width === null ? 'slotWidthUnknown' : width.outcome === 'fail' ? 'slotTooNarrow' : 'slotWidthUndecided';
  if (slot.straight !== null) {
    const across = { ...reading, field: `${slot.field}/straight`, distance: slot.straight };
    return dressed(judgeDistance(pair, across, limits.creepage, rule), [
      { key: why, args: found },
      { key: 'slotBridged', args: {} },
    ]);
  }
  const bound: Derived = { ...distance, side: distance.side === undefined || distance.side === 'below' ? 'below' : 'anywhere' };
  const atBest = judgeDistance(pair, { ...reading, distance: bound }, limits.creepage, rule);
  if (atBest.judgement.outcome === 'fail') return dressed(atBest, [{ key: why, args: found }]);
  const fields = [reading.field, slot.field];
  const notes = [
    { key: why, args: found },
    { key: 'straightMissing', args: {} },
  ];
  if (why === 'slotTooNarrow') return { judgement: undecided('notAssessed', 'refusedEvidence', { fields, notes }), beside };
  return { judgement: undecided('inconclusive', width === null ? 'unknownValue' : width.reason, { fields, notes }), beside };
}

function leastWidth(pair: PairFacts, { key, degree, clearance }: SurfaceLimits): Derived {
  const printed = getCell(grooveWidth, degree, 'X', `insulation/groove-width/degree-${degree}`, 'X');
  const required = pair.insulation === 'basic' ? clearance.basic : clearance.reinforced;
  return derive(leastSlotWidth, { printed, clearance: required }, `insulation/${key}/least-slot-width`);
}

function noteOf(slot: SlotReading, least: Derived): Note['args'] {
  return slot.width === null ? { least: least.value } : { width: slot.width.value, least: least.value };
}

import { derive } from '../formula/derive.ts';
import { leastSlotWidth } from '../formula/insulation/least-slot-width.ts';
import { grooveWidth } from '../table/iec-60664-1/2007/groove-width.ts';
import { getCell } from '../table/look-up.ts';
import type { Derived } from '../trace/derived.ts';
import type { Note } from '../trace/step.ts';
import type { DistanceLimits } from '../working/insulation/clearance-limits.ts';
import type { DistanceReading, PairFacts, SlotReading } from '../working/insulation/pair-facts.ts';
import { atLeast, type DecisionRule, limitLine } from './decide.ts';
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
  const notes: Note[] = [{ key: why, args: found }];
  if (slot.straight !== null && slot.straight.value > distance.value) notes.push({ key: 'straightLonger', args: {} });
  else if (slot.straight !== null) {
    const across = judgeDistance(pair, { ...reading, field: `${slot.field}/straight`, distance: slot.straight }, limits.creepage, rule);
    // where the width cannot be told, a way across that is long enough settles it; one that is too short does not
    if (why === 'slotTooNarrow' || across.judgement.outcome === 'pass')
      return dressed(across, [...notes, { key: 'slotBridged', args: {} }]);
  } else notes.push({ key: 'straightMissing', args: {} });
  const bound: Derived = { ...distance, side: distance.side === undefined || distance.side === 'below' ? 'below' : 'anywhere' };
  // still a judgement and not a refusal: another path of the pair that is long enough must not cover this one
  return dressed(judgeDistance(pair, { ...reading, distance: bound }, limits.creepage, rule), notes);
}

function leastWidth(pair: PairFacts, { key, degree, clearance }: SurfaceLimits): Derived {
  const printed = getCell(grooveWidth, degree, 'X', `insulation/groove-width/degree-${degree}`, 'X');
  const required = pair.insulation === 'basic' ? clearance.basic : clearance.reinforced;
  return derive(leastSlotWidth, { printed, clearance: required }, `insulation/${key}/least-slot-width`);
}

function noteOf(slot: SlotReading, least: Derived): Note['args'] {
  return slot.width === null ? { least: least.value } : { width: slot.width.value, least: least.value };
}

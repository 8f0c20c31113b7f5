import type { ExhibitOf } from '../../evidence/case.ts';
import type { Part } from '../../evidence/sample.ts';
import { energyInLimiter } from '../../formula/board/energy-in-limiter.ts';
import { inrushIntegral } from '../../formula/board/inrush-integral.ts';
import { inrushPeak } from '../../formula/board/inrush-peak.ts';
import { loopResistance } from '../../formula/board/loop-resistance.ts';
import { derive } from '../../formula/derive.ts';
import { peakOfMains } from '../../formula/touch/peak-of-mains.ts';
import { cite } from '../../source/source.ts';
import { type Derived, doubtOf, given } from '../../trace/derived.ts';
import { rectangular } from '../../uncertainty/half-width.ts';
import type { Bench } from '../bench/bench.ts';
import { findRead } from '../bench/open-value.ts';
import type { SettingFacts } from '../setting/setting-facts.ts';
import { bulkCapacitance, type NoCapacitance } from './bulk-capacitance.ts';
import { bestValue } from './part-quantity.ts';

export interface Inrush {
  readonly limiter: Part;
  readonly peak: Derived;
  readonly integral: Derived;
  readonly energy: Derived;
  /** The limiter grows conductive when warm: these figures are for a cold start. */
  readonly coldOnly: boolean;
}

const LINE_OHM = 0.65; // middle of what a socket lets through into a short: 200 to 1500 A at 230 V
const LINE_HALF_WIDTH_OHM = 0.5;

/** What plugging in at the crest of the highest mains does, from the part that limits it and the bulk capacitance. */
export function inrushFacts(bench: Bench, setting: SettingFacts, board: ExhibitOf<'board'>, limiter: Part): Inrush | NoCapacitance {
  const resistance = bestValue(bench, limiter, 'resistance', 'resistance', 'R_s');
  if (resistance.at === null) return { because: 'value', opened: resistance.opened, field: resistance.field };
  const capacitance = bulkCapacitance(bench);
  if ('because' in capacitance) return capacitance;
  const crest = derive(peakOfMains, { rms: setting.high }, 'board/crest-of-highest-mains');
  const line = lineResistance();
  const at = `board/${board.id}/inrush`;
  const loop = derive(loopResistance, { limiter: resistance.at, line }, `${at}/loop`);
  return {
    limiter,
    peak: derive(inrushPeak, { crest, resistance: loop }, `${at}/peak`),
    integral: derive(inrushIntegral, { crest, capacitance, resistance: loop }, `${at}/integral`),
    energy: derive(energyInLimiter, { capacitance, crest, limiter: resistance.at, line }, `${at}/energy`),
    coldOnly: findRead(limiter.kind) === 'ntc',
  };
}

function lineResistance(): Derived {
  const source = cite('bench', 'prospective current of household sockets, 200 to 1500 A at 230 V', 'common-practice');
  return given(
    'constant',
    LINE_OHM,
    'Ω',
    { id: 'board/line-resistance', name: 'estimate-line-resistance', symbol: 'R_l', source },
    { form: doubtOf({ id: 'estimate/line-resistance', u: rectangular(LINE_HALF_WIDTH_OHM), means: 'lineResistance' }) },
  );
}

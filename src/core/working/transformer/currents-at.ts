import { derive } from '../../formula/derive.ts';
import { boundaryCurrent } from '../../formula/magnetics/boundary-current.ts';
import { capacitorRms } from '../../formula/magnetics/capacitor-rms.ts';
import { continuousRms } from '../../formula/magnetics/continuous-rms.ts';
import { middleOfStroke } from '../../formula/magnetics/middle-of-stroke.ts';
import { peakOfPower } from '../../formula/magnetics/peak-of-power.ts';
import { railCurrent } from '../../formula/magnetics/rail-current.ts';
import { secondaryPeak } from '../../formula/magnetics/secondary-peak.ts';
import { strokeRms } from '../../formula/magnetics/stroke-rms.ts';
import { strokeTime } from '../../formula/magnetics/stroke-time.ts';
import type { Derived } from '../../trace/derived.ts';
import { nameplateOf } from '../load/power-facts.ts';
import type { LevelFacts } from '../load/sweep-facts.ts';
import type { ConverterInputs, OperatingPoint } from './converter-facts.ts';
import type { NumberList } from './number-list.ts';

export interface RmsCurrents {
  readonly primary: Derived | null;
  readonly secondary: Derived | null;
}

/** Currents of both sides at an operating point; the secondary's need a ratio. */
export function rmsAt(at: OperatingPoint | null, ratio: Derived | null, id: string): RmsCurrents {
  if (at === null) return { primary: null, secondary: null };
  const of = (peak: Derived, share: Derived, rise: Derived | null, name: string): Derived =>
    rise === null ? derive(strokeRms, { peak, share }, `${id}/${name}`) : derive(continuousRms, { peak, rise, share }, `${id}/${name}`);
  const primary = of(at.peak, at.on, at.rise, 'primary-rms');
  if (ratio === null) return { primary, secondary: null };
  const peakOut = derive(secondaryPeak, { ratio, peak: at.peak }, `${id}/secondary-peak`);
  const riseOut = at.rise === null ? null : derive(secondaryPeak, { ratio, peak: at.rise }, `${id}/secondary-rise`);
  return { primary, secondary: of(peakOut, at.off, riseOut, 'secondary-rms') };
}

/** Frequency, shares of a period and currents at an operating point. */
export function tellCurrents(list: NumberList, at: OperatingPoint, inputs: ConverterInputs, level: LevelFacts | null, id: string): void {
  const { law, inductance, reflected, ratio } = inputs;
  list.tell('frequency', at.frequency, []);
  list.tell('onShare', at.on, []);
  list.tell('offShare', at.off, []);
  list.tell('onTime', derive(strokeTime, { share: at.on, frequency: at.frequency }, `${id}/on-time`), []);
  const mean = derive(railCurrent, { power: at.power, rail: at.rail }, `${id}/rail-current`);
  list.tell('railCurrent', mean, []);
  // where a stroke starts from nothing its middle is half of its peak, and says no more
  if (at.rise !== null) list.tell('middleOfStroke', derive(middleOfStroke, { mean, share: at.on }, `${id}/middle-of-stroke`), []);
  if (law === 'fixedFrequency' && inductance !== null && reflected !== null)
    list.tell('boundary', derive(boundaryCurrent, { rail: at.rail, reflected, inductance, frequency: at.frequency }, `${id}/boundary`), []);
  const claimed = level === null ? null : nameplateOf(level);
  if (law === 'fixedFrequency' && at.mode === 'discontinuous' && inductance !== null && claimed !== null)
    list.tell('peakForClaim', derive(peakOfPower, { power: claimed, inductance, frequency: at.frequency }, `${id}/peak-for-claim`), []);
  const { primary, secondary } = rmsAt(at, ratio, id);
  list.tell('primaryRms', primary, []);
  if (ratio !== null) list.tell('secondaryPeak', derive(secondaryPeak, { ratio, peak: at.peak }, `${id}/secondary-peak`), []);
  list.tell('secondaryRms', secondary, []);
  const current = level?.claim ?? null;
  if (secondary !== null && current !== null && secondary.value > current.value)
    list.tell('capacitorRms', derive(capacitorRms, { rms: secondary, mean: current }, `${id}/capacitor-rms`), []);
}

import type { Recognised } from '../../circuit/recognise/recognise.ts';
import { derive } from '../../formula/derive.ts';
import { greatestLedResistor } from '../../formula/feedback/greatest-led-resistor.ts';
import { leastLedResistor } from '../../formula/feedback/least-led-resistor.ts';
import { pulledCurrent } from '../../formula/feedback/pulled-current.ts';
import { cite } from '../../source/source.ts';
import { feedbackRating } from '../../table/bench/2026/feedback-rating.ts';
import { transferRatio } from '../../table/bench/2026/transfer-ratio.ts';
import { findCell, getCell } from '../../table/look-up.ts';
import { type Derived, given } from '../../trace/derived.ts';
import type { Bench } from '../bench/bench.ts';
import { findRead } from '../bench/open-value.ts';
import { dropOf } from './drops.ts';
import { lawFigure } from './law-of.ts';
import type { SetPoint, SetPoints } from './set-points.ts';

const SATURATION_V = 0.2; // left across the transistor of the optocoupler; memory of data sheets

/**
 * Greatest resistor of the feedback LED with which the weakest optocoupler of its grade still pulls the feedback pin down, at one output voltage.
 * Needs what the sheet of the controller says of that pin (`pullVoltage` and `pullResistance` of its law); null without.
 */
export function greatestResistor(
  bench: Bench,
  { regulation }: Recognised,
  all: SetPoints,
  { id, value, divider }: SetPoint,
): Derived | null {
  const controller = regulation?.controller == null ? undefined : bench.parts.get(regulation.controller.id);
  const optocoupler = regulation?.optocoupler == null ? undefined : bench.parts.get(regulation.optocoupler.id);
  const cathode = divider?.reference.cathodeLeast ?? null;
  if (controller === undefined || optocoupler === undefined || cathode === null) return null;
  const supply = lawFigure(controller, 'pullVoltage', 'voltage', 'V_dd');
  const resistance = lawFigure(controller, 'pullResistance', 'resistance', 'R_p');
  if (supply === null || resistance === null || resistance.value <= 0) return null;
  const grade = /817([ABCD])?/.exec((findRead<string>(optocoupler.marking) ?? '').toUpperCase());
  if (grade === null) return null;
  const ratio = findCell(transferRatio, `817${grade[1] ?? ''}`, 'least', `circuit/${optocoupler.id}/transfer-ratio`, 'k');
  if (ratio === null) return null;
  const saturation = given('constant', SATURATION_V, 'V', {
    id: 'circuit/saturation',
    name: 'estimate-saturation',
    symbol: 'V_s',
    source: cite('bench', 'voltage left across a transistor that is fully on', 'memory'),
  });
  const collector = derive(pulledCurrent, { supply, saturation, resistance }, 'circuit/pulled-current');
  if (collector.value <= 0) return null; // nothing has to be pulled down
  const bias = all.bypass ?? given('constant', 0, 'A', { id: 'circuit/no-bypass', name: 'noBypass', symbol: 'I_b' });
  return derive(
    greatestLedResistor,
    { output: value, drop: dropOf('led'), cathode, ratio, collector, bias },
    `circuit/greatest-led-resistor/${id}`,
  );
}

/**
 * Least resistor of the feedback LED at one output voltage: with less, an LED of the 817 kind or the reference would carry more than its rating
 * while the loop pulls as hard as it can. Null where the optocoupler is of another kind, or LED and reference need more than the output has.
 */
export function leastResistor(bench: Bench, { regulation }: Recognised, { id, value, divider }: SetPoint): Derived | null {
  const optocoupler = regulation?.optocoupler == null ? undefined : bench.parts.get(regulation.optocoupler.id);
  const cathode = divider?.reference.cathodeLeast ?? null;
  if (optocoupler === undefined || cathode === null || !/817/.test(findRead<string>(optocoupler.marking) ?? '')) return null;
  const led = getCell(feedbackRating, '817', 'current', `circuit/${optocoupler.id}/rating`, 'I_F');
  const reference = getCell(feedbackRating, '431', 'current', `circuit/${regulation?.reference?.id}/rating`, 'I_k');
  const most = led.value <= reference.value ? led : reference;
  const least = derive(leastLedResistor, { output: value, drop: dropOf('led'), cathode, most }, `circuit/least-led-resistor/${id}`);
  return least.value > 0 ? least : null;
}

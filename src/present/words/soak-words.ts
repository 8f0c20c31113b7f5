import type { HeatingChannel } from '../../core/evidence/computed/heating-curves.ts';
import { sentence } from '../../core/quantity/refusal.ts';
import type { SoakCurve } from '../../core/result/assessment.ts';
import { amountText } from './amount-text.ts';

const MINUTE_S = 60;
const HOUR_MIN = 60;

/** "95 min", "3 h 20 min". */
export function durationText(seconds: number): string {
  const minutes = Math.round(seconds / MINUTE_S);
  return minutes < 2 * HOUR_MIN ? `${minutes} min` : `${Math.floor(minutes / HOUR_MIN)} h ${minutes % HOUR_MIN} min`;
}

export const kelvinText = (value: number, u: number | null): string => amountText({ value, unit: 'K', u });

const CHANGED: Readonly<Record<HeatingChannel['changes'][number]['of'], string>> = {
  load: 'the load was changed',
  ambient: 'the room changed by more than 1 K either way',
  cooling: 'something that was not logged changed (load or cooling)',
};

/** What happened on the way, and that only what follows was used. */
export function changesText(changes: HeatingChannel['changes']): string {
  return changes
    .map(({ of, atS }) => (of === 'ambient' ? `${CHANGED[of]}.` : `At ${durationText(atS)} ${CHANGED[of]}: only what follows is used.`))
    .join(' ');
}

export const RISING =
  'The slope grows: a loss that grows with temperature, or a load that was raised. End the test at once; nothing is extrapolated from it.';

/** Why a log does not say where it is going. */
export function refusalText(refusal: { readonly code: string; readonly got: string; readonly expected: string }): string {
  return `Does not say: ${sentence({ refused: true, place: '', ...refusal })}.`;
}

/** What a kept curve says, in sentences. */
export function soakSentence({ name, outcome, refusal, fit, stop, endNow, changes }: SoakCurve): string {
  const changed = changes.length === 0 ? '' : ` ${changesText(changes)}`;
  if (outcome === 'rising') return `${name}: ${RISING}${changed}`;
  if (fit === null) return `${name}: ${refusal === null ? 'does not say.' : refusalText(refusal)}${changed}`;
  const said = `${name} is heading for ${kelvinText(fit.end, fit.U === null ? null : fit.U / 2)}`;
  const now = endNow ? ' It climbs by more than 5 K a minute: end the test.' : '';
  return `${said}; ${needText(fit.stillNeededS, fit.withinK)}.${stopText(stop)}${now}${changed}`;
}

export function needText(seconds: number | null, withinK: number): string {
  const wanted = `± ${withinK} K`;
  if (seconds === null) return `no length of log at this pace gives its end to ${wanted}`;
  return seconds === 0 ? `long enough for ${wanted}` : `${durationText(seconds)} more for ${wanted}`;
}

function stopText(stop: SoakCurve['stop']): string {
  if (stop === null) return '';
  const at = kelvinText(stop.at, null);
  return stop.reachedAtS === null
    ? ` It stays below ${at}, where the soak would be ended.`
    : ` End the soak at ${at}, reached ${durationText(stop.reachedAtS)} into the log.`;
}

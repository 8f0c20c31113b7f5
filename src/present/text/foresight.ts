import type { HeatingCurves } from '../../core/evidence/computed/heating-curves.ts';
import { changesText, durationText, kelvinText, needText, RISING, refusalText } from '../words/soak-words.ts';

const COVER = 2;

/** Where the temperatures of one soak are going, a line or two for each place, for a terminal. */
export function foresightText({ channels }: HeatingCurves, nameOf: (place: string) => string): string {
  return channels
    .map(({ place, outcome, fit, refusal, changes }) => {
      const changed = changes.length === 0 ? '' : ` ${changesText(changes)}`;
      if (outcome === 'rising') return `${nameOf(place)}: ${RISING}${changed}`;
      if (fit === undefined) return `${nameOf(place)}: ${refusal === undefined ? '' : refusalText(refusal)}${changed}`;
      const of = (name: string): number => fit.outputs.find((output) => output.name === name)?.value ?? Number.NaN;
      const constants =
        fit.shape === 'two'
          ? `${durationText(of('timeConstant'))} and ${durationText(of('fastTimeConstant'))}`
          : durationText(of('timeConstant'));
      return `${nameOf(place)}: heading for ${kelvinText(of('end'), fit.endWithin / COVER)} by the fit alone, time constant ${constants}; ${needText(fit.stillNeededS, fit.withinK)}.${changed}`;
    })
    .join('\n');
}

import type { Part } from '../../evidence/sample.ts';
import { derive } from '../../formula/derive.ts';
import { rectifierLoss } from '../../formula/thermal/rectifier-loss.ts';
import { runawayLeakage } from '../../formula/thermal/runaway-leakage.ts';
import { runawayTemperature } from '../../formula/thermal/runaway-temperature.ts';
import { switchedRectifierLoss } from '../../formula/thermal/switched-rectifier-loss.ts';
import { cite } from '../../source/source.ts';
import { schottkyLeakage } from '../../table/diode-makers/2026/schottky-leakage.ts';
import { findCell } from '../../table/look-up.ts';
import { type Derived, doubtOf, given } from '../../trace/derived.ts';
import { rectangular } from '../../uncertainty/half-width.ts';
import { findRead } from '../bench/open-value.ts';

const GROWTH_PER_K = 0.055; // doubles every 12.6 K
const GROWTH_HALF = 0.005;
const BLOCKS = 0.6; // of the time, in a flyback between light and full load
const BLOCKS_HALF = 0.2;
const SWITCHED_OHM = 0.015; // of a small synchronous rectifier, hot
const SWITCHED_HALF = 0.008;

/** Junction temperature at which the rectifier would run away, at the least; null for a type that is not in the table. `reverse`: what it blocks. */
export function runawayOf(part: Part, reverse: Derived, id: string): Derived | null {
  const type = (findRead<string>(part.marking) ?? findRead<string>(part.value) ?? '').toUpperCase().replace(/[^A-Z0-9]/g, '');
  const cell = (column: 'leakage' | 'at' | 'toAmbient', symbol: string): Derived | null =>
    findCell(schottkyLeakage, type, column, `${id}/${column}`, symbol);
  const [leakage, known, resistance] = [cell('leakage', 'I_0'), cell('at', 'T_0'), cell('toAmbient', 'R_th')];
  if (leakage === null || known === null || resistance === null) return null;
  const growth = estimate('leakage-growth', 'c', GROWTH_PER_K, GROWTH_HALF, '1');
  const brink = derive(runawayLeakage, { reverse, share: blockingShare(), growth, resistance }, `${id}/brink`);
  return derive(runawayTemperature, { known, brink, leakage, growth }, id);
}

/** What it loses, and what a switched rectifier would lose in its place. */
export function rectifierLosses(forward: Derived, current: Derived, id: string): { readonly now: Derived; readonly switched: Derived } {
  const resistance = estimate('switched-resistance', 'R', SWITCHED_OHM, SWITCHED_HALF, 'Ω');
  return {
    now: derive(rectifierLoss, { forward, current }, `${id}/loss`),
    switched: derive(switchedRectifierLoss, { current, share: blockingShare(), resistance }, `${id}/switched-loss`),
  };
}

function blockingShare(): Derived {
  return estimate('blocking-share', 's', BLOCKS, BLOCKS_HALF, '1');
}

const SOURCES = {
  'leakage-growth': cite('diode-makers', 'a maker’s note: about 0.055 for each kelvin', 'secondary'),
  'blocking-share': cite('bench', 'rectifiers of flybacks block 40 to 80 % of the time', 'common-practice'),
  'switched-resistance': cite('bench', 'switched rectifiers of small adapters, 7 to 23 mΩ hot', 'common-practice'),
} as const;

function estimate(name: keyof typeof SOURCES, symbol: string, value: number, half: number, unit: '1' | 'Ω'): Derived {
  return given(
    'constant',
    value,
    unit,
    { id: `heat/${name}`, name: `estimate-${name}`, symbol, source: SOURCES[name] },
    { form: doubtOf({ id: `estimate/${name}`, u: rectangular(half), means: 'estimate' }) },
  );
}

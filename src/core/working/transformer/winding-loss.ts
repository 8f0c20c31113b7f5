import { derive } from '../../formula/derive.ts';
import { copperInWindow } from '../../formula/magnetics/copper-in-window.ts';
import { copperResistance } from '../../formula/magnetics/copper-resistance.ts';
import { heatInResistance } from '../../formula/magnetics/heat-in-resistance.ts';
import { layerFactor } from '../../formula/magnetics/layer-factor.ts';
import { ringFactor } from '../../formula/magnetics/ring-factor.ts';
import { skinDepth } from '../../formula/magnetics/skin-depth.ts';
import { cite } from '../../source/source.ts';
import { combine } from '../../trace/combine.ts';
import { type Derived, given } from '../../trace/derived.ts';
import type { StackFacts, Winding } from './stack-facts.ts';

const COLD_K = 293.15;
const HOT_K = 373.15;
const source = cite('house', 'cold 20 °C and hot 100 °C, at which windings are worked out', 'common-practice');
const at = (kelvin: number, name: string): Derived =>
  given('constant', kelvin, 'K', { id: `transformer/${name}`, name: `setting-${name}`, symbol: 'T', source });

export interface WindingLoss {
  readonly winding: Winding;
  readonly cold: Derived | null;
  readonly hot: Derived | null;
  /** Resistance at the frequency over that to direct current, hot. */
  readonly factor: Derived | null;
  readonly loss: Derived | null;
  readonly missing: readonly string[];
}

/** Resistance of one winding, cold and hot, how much more it resists at the frequency, and its heat at an rms current. */
export function windingLoss(
  stack: StackFacts,
  winding: Winding,
  meanTurn: Derived | null,
  frequency: Derived | null,
  rms: Derived | null,
): WindingLoss {
  const id = `transformer/${stack.part.id}/${winding.id}`;
  const { turns, wire, layers } = winding;
  const strands = winding.strands.at ?? given('constant', 1, '1', { id: `${id}/one-strand`, name: 'oneStrand', symbol: 's' });
  const missing = [
    ...(turns.at === null ? ['turns'] : []),
    ...(wire.at === null ? ['wireDiameter'] : []),
    ...(meanTurn === null ? ['meanTurn'] : []),
  ];
  if (turns.at === null || wire.at === null || meanTurn === null)
    return { winding, cold: null, hot: null, factor: null, loss: null, missing };
  const of = (temperature: Derived, name: string): Derived =>
    derive(copperResistance, { turns: turns.at!, meanTurn, strands, diameter: wire.at!, temperature }, `${id}/resistance-${name}`);
  const hotAt = at(HOT_K, 'hot');
  const cold = of(at(COLD_K, 'cold'), 'cold');
  const hot = of(hotAt, 'hot');
  if (frequency === null) return { winding, cold, hot, factor: null, loss: null, missing: ['frequency'] };
  const depth = derive(skinDepth, { temperature: hotAt, frequency }, `${id}/skin-depth`);
  const factor =
    layers.at === null
      ? derive(ringFactor, { diameter: wire.at, depth }, `${id}/factor`)
      : derive(
          layerFactor,
          {
            diameter: wire.at,
            depth,
            layers: layers.at,
            filled: given('constant', 1, '1', { id: `${id}/filled`, name: 'layerFilled', symbol: 'η' }),
          },
          `${id}/factor`,
        );
  if (rms === null) return { winding, cold, hot, factor, loss: null, missing: ['current'] };
  const resistance = combine(
    {
      kind: 'reduce',
      unit: 'Ω',
      formula: null,
      symbols: { hot: 'R', factor: 'F' },
      moves: { hot: 'up', factor: 'up' },
      compute: (plain) => plain.hot * plain.factor,
    },
    { hot, factor },
    { id: `${id}/resistance-at-frequency`, name: 'resistanceAtFrequency', symbol: 'R_f' },
  );
  return { winding, cold, hot, factor, loss: derive(heatInResistance, { rms, resistance }, `${id}/loss`), missing: [] };
}

/** Share of the window that copper fills; null where a wire, a count or the window is not known. */
export function fillOf(stack: StackFacts, window: Derived | null): Derived | null {
  if (window === null || stack.windings.length === 0) return null;
  const shares = stack.windings.map((winding) => {
    const id = `transformer/${stack.part.id}/${winding.id}`;
    const strands = winding.strands.at ?? given('constant', 1, '1', { id: `${id}/one-strand`, name: 'oneStrand', symbol: 's' });
    return winding.turns.at === null || winding.wire.at === null
      ? null
      : derive(copperInWindow, { turns: winding.turns.at, strands, diameter: winding.wire.at, window }, `${id}/in-window`);
  });
  if (shares.includes(null)) return null;
  const named = Object.fromEntries(shares.map((share, index) => [`k${index + 1}`, share!]));
  return combine(
    {
      kind: 'reduce',
      unit: '1',
      formula: null,
      symbols: Object.fromEntries(Object.keys(named).map((key, index) => [key, `k_${index + 1}`])),
      moves: Object.fromEntries(Object.keys(named).map((key) => [key, 'up' as const])),
      compute: (plain) => Object.values(plain).reduce((sum, one) => sum + one, 0),
    },
    named,
    { id: `transformer/${stack.part.id}/fill`, name: 'copperFill', symbol: 'k', show: 'percent' },
  );
}

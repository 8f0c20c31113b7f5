import { solidInsulation as householdSolidTable } from '../../table/iec-60335-1/2010/solid-insulation.ts';
import { thinSheet as householdSheet } from '../../table/iec-60335-1/2010/thin-sheet.ts';
import { solidInsulation } from '../../table/iec-62368-1/2018/solid-insulation.ts';
import { thinSheet } from '../../table/iec-62368-1/2018/thin-sheet.ts';
import { getCell } from '../../table/look-up.ts';
import type { StackFacts, Tape, Winding } from '../transformer/stack-facts.ts';
import { bandOf, fixed, open, type Strength } from './strength.ts';

/** Insulation that lies between two windings of a stack, in order. */
export function tapesBetween({ order }: StackFacts, a: Winding, b: Winding): Tape[] {
  const [from, to] = [order.indexOf(a), order.indexOf(b)].sort((x, y) => x - y) as [number, number];
  return order.slice(from + 1, to).filter((layer) => layer.is === 'insulation');
}

const ROWS = ['none', 'one', 'two', 'three or more'] as const;
type Row = (typeof ROWS)[number];
const rowOf = (count: number): Row => ROWS[Math.min(Math.floor(count), ROWS.length - 1)] ?? 'none';

/** Layers between two windings that really cover them, and what they stand for. */
export function throughStrength(stack: StackFacts, a: Winding, b: Winding, passAt: number): Strength {
  const id = `barrier/${stack.part.id}/${a.id}~${b.id}/through`;
  const tapes = tapesBetween(stack, a, b);
  const least = getCell(solidInsulation, 'reinforced', 'least', 'barrier/solid', 't');
  const fields = tapes.flatMap(({ field }) => [`${field}/layers`, `${field}/covers`]);
  let [low, high] = [0, 0];
  let notLooked = false;
  for (const tape of tapes) {
    const covers = coverOf(tape, a, b, passAt);
    notLooked ||= covers === 'notLooked' || tape.layers.opened.state === 'notLooked';
    const thick = tape.each.at === null ? null : bandOf(tape.each.at, passAt);
    if (covers === 'whole' && thick !== null && thick.low >= least.value && tape.layers.at !== null)
      return fixed(2, 2, {
        layers: getCell(thinSheet, 'three or more', 'least', `${id}/solid`, 'n'),
        fields: [`${tape.field}/each`],
        notes: [{ key: 'solidPiece', args: { thickness: tape.each.at!.value } }, ...householdSolid(thick.low)],
      });
    if (covers === 'no') continue;
    const count = tape.layers.at === null ? null : bandOf(tape.layers.at, passAt);
    low += covers === 'whole' && count !== null ? Math.floor(count.low) : 0;
    high += count === null ? ROWS.length : Math.ceil(count.high);
  }
  const strength = {
    low: getCell(thinSheet, rowOf(low), 'least', `${id}/least-at-${low}`, 'n').value,
    high: getCell(thinSheet, rowOf(high), 'most', `${id}/most-at-${high}`, 'n').value,
  };
  const count = low === high ? [{ key: 'layersBetween', args: { layers: low } }] : [{ key: 'layersUncertain', args: { least: low } }];
  const tested = low === high && strength.low < strength.high ? [{ key: 'layersNotTested', args: {} }] : [];
  const household = getCell(householdSheet, 'reinforced', 'layers', 'barrier/household-layers', 'n').value;
  const fewer = low === high && low < household && strength.high > 1 ? [{ key: 'householdLayers', args: { layers: household } }] : [];
  if (low !== high && notLooked) return open({ ...strength, notLooked, fields, notes: count });
  return fixed(strength.low, strength.high, {
    layers: getCell(thinSheet, rowOf(low), 'least', `${id}/layers`, 'n'),
    fields,
    notes: [...count, ...tested, ...fewer],
  });
}

/** What the standard for household appliances asks of one solid piece where this is less. */
function householdSolid(thicknessM: number): Strength['notes'] {
  const whole = getCell(householdSolidTable, 'reinforced', 'least', 'barrier/household-solid', 't');
  const tested = getCell(householdSolidTable, 'reinforced', 'tested', 'barrier/household-solid-tested', 't');
  return thicknessM >= whole.value ? [] : [{ key: 'householdSolid', args: { whole: whole.value, tested: tested.value } }];
}

/** Whether a layer lies between the turns of both windings up to their ends. */
function coverOf(tape: Tape, a: Winding, b: Winding, passAt: number): 'whole' | 'no' | 'open' | 'notLooked' {
  if (tape.covers.state === 'absent') return 'no';
  if (tape.covers.state !== 'read') return tape.covers.state === 'unknown' ? 'open' : 'notLooked';
  if (tape.covers.v === 'whole') return 'whole';
  const margins = [a.margins, b.margins].flatMap((pair) => (pair === null ? [null, null] : pair.map(({ at }) => at)));
  if (tape.short.at === null || margins.includes(null)) return 'open';
  const short = bandOf(tape.short.at, passAt);
  const bands = margins.map((margin) => bandOf(margin!, passAt));
  if (bands.every(({ low }) => low >= short.high)) return 'whole';
  return bands.some(({ high }) => high < short.low) ? 'no' : 'open';
}

import { solidInsulation } from '../../table/iec-62368-1/2018/solid-insulation.ts';
import { getCell } from '../../table/look-up.ts';
import type { Bench } from '../bench/bench.ts';
import { openValue } from '../bench/open-value.ts';
import type { StackFacts, Winding } from '../transformer/stack-facts.ts';
import { readStackValue } from '../transformer/stack-value.ts';
import { BASIC, type BarrierWay, bandOf, DOUBLE, fixed, open, type Strength } from './strength.ts';
import { facesOf, nodeOf } from './winding-place.ts';
import { withWires } from './wire-strength.ts';

/** Where a lead-out passes over a winding of the other side: a place of its own, with a sleeve or without. */
export function leadWays(bench: Bench, stack: StackFacts, passAt: number): BarrierWay[] {
  return stack.windings.flatMap((winding) =>
    (winding.evidence.leads ?? []).flatMap((lead) =>
      lead.crosses.flatMap((id): BarrierWay[] => {
        const other = stack.windings.find((one) => one.id === id);
        if (other === undefined || other === winding || (facesOf(other) === facesOf(winding) && facesOf(other) !== 'between')) return [];
        return [
          {
            id: `lead:${stack.part.id}:${winding.id}:${lead.id}:${id}`,
            ends: [nodeOf(stack, winding), nodeOf(stack, other)],
            kind: 'lead',
            about: `${stack.part.ref}: lead-out of ${winding.name} over ${other.name}`,
            strength: withWires(sleeveStrength(bench, stack, winding, lead, passAt), [winding, other]),
          },
        ];
      }),
    ),
  );
}

type Lead = NonNullable<Winding['evidence']['leads']>[number];

function sleeveStrength(bench: Bench, stack: StackFacts, winding: Winding, lead: Lead, passAt: number): Strength {
  const field = `${winding.field}/leads/${lead.id}`;
  const sleeved = openValue(lead.sleeved);
  const fields = [`${field}/sleeved`];
  if (sleeved.state === 'absent' || (sleeved.state === 'read' && !sleeved.v))
    return fixed(0, 0, { fields, notes: [{ key: 'leadBare', args: {} }] });
  if (sleeved.state !== 'read') return open({ fields, notLooked: sleeved.state !== 'unknown' });
  const wall = readStackValue(bench, stack.exhibit, lead.wall, `${field}/wall`, 'length', 't');
  if (wall.at === null) return fixed(BASIC, DOUBLE, { fields: [wall.field], notes: [{ key: 'sleeveNotRead', args: {} }] });
  const least = getCell(solidInsulation, 'reinforced', 'least', 'barrier/solid', 't').value;
  const band = bandOf(wall.at, passAt);
  const notes = [{ key: 'leadSleeved', args: { wall: wall.at.value, least } }];
  if (band.low >= least) return fixed(DOUBLE, DOUBLE, { fields: [wall.field], notes });
  return fixed(BASIC, band.high < least ? BASIC : DOUBLE, { fields: [wall.field], notes });
}

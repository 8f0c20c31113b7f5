import type { Part } from '../solver/circuit.ts';
import type { Probe } from '../solver/request.ts';
import { BODY_REF, LOAD_REF, MAINS_REF, type Model } from './model.ts';

/** What is looked at in a run, and which part's rating it is held against. */
export interface Look {
  readonly probe: Probe;
  readonly unit: 'V' | 'A';
  /** What a part is asked: the largest voltage it blocks, or the largest current it carries. */
  readonly stress: { readonly part: string; readonly of: 'most' | 'least' | 'either'; readonly limit: number | null } | null;
  /** Drawn as a line. */
  readonly drawn: boolean;
}

/** Output first, then the supply current; the rest by what the circuit has. */
export function looksOf(model: Model): Look[] {
  const { circuit } = model;
  const part = (ref: string | null): Part | undefined => circuit.parts.find((one) => one.ref === ref);
  const looks: Look[] = [
    look('output', 'V', { volts: model.output }, true),
    look('mains-current', 'A', { ampsInto: MAINS_REF }, true),
    look('output-current', 'A', { ampsInto: LOAD_REF }, false),
    look('touch', 'A', { touchOf: BODY_REF }, false),
  ];
  const own = part(model.switch);
  if (own?.kind === 'switch' || own?.kind === 'bipolar') {
    const pins = own.kind === 'switch' ? own.pins : ([own.collector, own.emitter] as const);
    looks.push(look('switch', 'V', { volts: pins }, true, { part: own.ref, of: 'most', limit: own.breakdown.volts }));
  }
  const transformer = part(model.primary?.ref ?? null);
  if (model.primary !== null && transformer?.kind === 'transformer')
    looks.push(
      look('primary-current', 'A', { ampsInto: model.primary.ref, winding: model.primary.winding }, true, {
        part: transformer.ref,
        of: 'most',
        limit: transformer.saturation?.amps ?? null,
      }),
    );
  for (const ref of [...model.rectifiers, ...model.mainsRectifiers.slice(0, 1)]) {
    const diode = part(ref);
    if (diode?.kind === 'diode')
      looks.push(
        look(`reverse-${ref}`, 'V', { volts: diode.pins }, model.rectifiers.includes(ref), {
          part: ref,
          of: 'least',
          limit: diode.breakdown?.volts ?? null,
        }),
      );
  }
  if (model.bulk !== null) looks.push(look('bulk', 'V', { volts: model.bulk }, true));
  for (const one of circuit.parts)
    if (one.kind === 'capacitor' && one.ratedV !== undefined)
      looks.push(look(`across-${one.ref}`, 'V', { volts: one.pins }, false, { part: one.ref, of: 'either', limit: one.ratedV }));
  return looks;
}

function look(id: string, unit: Look['unit'], of: Probe['of'], drawn: boolean, stress: Look['stress'] = null): Look {
  return { probe: { id, of }, unit, stress, drawn };
}

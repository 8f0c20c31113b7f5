import type { CircuitPart } from '../circuit/circuit.ts';
import { netOf, partsAt } from '../circuit/graph/graph.ts';
import { transferRatio } from '../table/bench/2026/transfer-ratio.ts';
import { findCell } from '../table/look-up.ts';
import { lawFigure } from '../working/circuit/law-of.ts';
import { referenceOf } from '../working/circuit/reference-of.ts';
import { setPoints } from '../working/circuit/set-points.ts';
import type { Draft } from './draft.ts';
import { curveFor } from './junction-law.ts';
import type { Level } from './model.ts';

const LEAST_OHMS = 10;
const LEAST_V = 1.9; // cathode voltage at which a 431 has no more gain; from sheets, memory
const SATURATED_OHMS = 200;
const LIGHT_A = 0.01;
/** A leg or a sink is drawn from here on, volts. */
const SINK_FROM_V = 0.3;
/** How near what the parts set must lie to the level, as a share. House choice. */
const NEAR = 0.1;

export function addShuntReference(draft: Draft, part: CircuitPart): void {
  const reference = referenceOf(draft.evidence(part));
  if ('opened' in reference) {
    draft.lack('value', part.ref);
    return;
  }
  draft.add({
    kind: 'shuntRegulator',
    ref: part.ref,
    cathode: draft.net(part, 'K'),
    anode: draft.net(part, 'A'),
    reference: draft.net(part, 'R'),
    refV: reference.voltage.value,
    siemens: draft.assume('referenceGain', part.ref),
    leastV: Math.min(LEAST_V, reference.cathodeLeast?.value ?? LEAST_V),
    leastOhms: LEAST_OHMS,
  });
}

export function addOptocoupler(draft: Draft, part: CircuitPart): void {
  const letter = /817([A-D])/.exec(draft.marking(part))?.[1] ?? '';
  const bound = (column: 'least' | 'most'): number =>
    findCell(transferRatio, `817${letter}`, column, `model/${part.id}/${column}`, 'k')?.value ?? 1;
  const ratio = draft.assume('transferRatio', part.ref, Math.sqrt(bound('least') * bound('most')));
  const forward = curveFor('light', LIGHT_A);
  draft.add({
    kind: 'optocoupler',
    ref: part.ref,
    led: [draft.net(part, 'A'), draft.net(part, 'K')],
    transistor: [draft.net(part, 'C'), draft.net(part, 'E')],
    forward,
    collectorA: forward.map(([amps]) => amps * ratio),
    poleHz: draft.assume('optocouplerPole', part.ref),
    saturationOhms: SATURATED_OHMS,
  });
}

/** What the negotiation chip does for a level: joins in a leg of the divider, draws a current from the reference, opens the way out. */
export function addChip(draft: Draft, part: CircuitPart, level: Level): void {
  const { regulation } = draft.recognised;
  const reference = regulation?.reference ?? null;
  const ground = [...(draft.recognised.converter?.outputReturn ?? [])][0] ?? '';
  const sink = lawFigure(draft.evidence(part), `sinks/${level.id}`, 'current', 'I_s')?.value ?? null;
  const at = reference === null ? null : netOf(reference, 'R');
  if (sink !== null && at !== null) {
    draft.add({ kind: 'load', ref: `${part.ref}/sink`, pins: [at, ground], draw: { amps: sink, fromV: SINK_FROM_V } });
    return;
  }
  const points = setPoints(draft.bench, draft.recognised);
  if ('because' in points) return;
  const fitting = points.points
    .filter((point) => Math.abs(point.value.value - level.volts) < NEAR * level.volts)
    .sort((a, b) => Math.abs(a.value.value - level.volts) - Math.abs(b.value.value - level.volts))[0];
  for (const id of fitting?.legs ?? []) {
    const leg = draft.recognised.graph.parts.get(id);
    const free = leg?.pins
      .map(({ net }) => net)
      .find((net) => net !== null && partsAt(draft.recognised.graph, [net], ['negotiationChip']).length > 0);
    if (free == null) continue;
    draft.add({ kind: 'resistor', ref: `${part.ref}/${id}`, pins: [free, ground], ohms: draft.assume('chipLeg', part.ref) });
  }
}

/** A switch between the rectified output and the socket: on. */
export function addOutputSwitch(draft: Draft, part: CircuitPart): void {
  const ohms = draft.assume('outputSwitchOn', part.ref);
  draft.add({ kind: 'resistor', ref: `${part.ref}/on`, pins: [draft.net(part, 'D'), draft.net(part, 'S')], ohms });
}

import type { CircuitPart } from '../circuit/circuit.ts';
import { netOf } from '../circuit/graph/graph.ts';
import { between } from '../circuit/graph/rail.ts';
import type { Recognised } from '../circuit/recognise/recognise.ts';
import type { Part as SolverPart } from '../solver/circuit.ts';
import { pinsOf, withPin } from '../solver/pins-of.ts';
import { netsOf } from '../solver/validate-request.ts';
import type { Facts } from '../working/facts.ts';
import { addController, pinNet } from './controller-part.ts';
import { addBridge, addDiode, addLamp, addZener } from './diode-parts.ts';
import { Draft } from './draft.ts';
import { addChip, addOptocoupler, addOutputSwitch, addShuntReference } from './feedback-parts.ts';
import { BODY_REF, type Level, LOAD_REF, MAINS_REF, type MainsChoice, type Model, type NoModel, TRACK_REF } from './model.ts';
import { addCapacitor, addChoke, addFuse, addInductor, addLink, addResistor, addThermistor, addVaristor } from './passive-parts.ts';
import { addSurroundings } from './surroundings.ts';
import { addTransformer } from './transformer-part.ts';
import { addBipolar, addSwitch } from './transistor-parts.ts';

/** The bulk capacitor starts a little below the crest, and the supply of the chip a little above its start. House choices: they settle. */
const CHARGED = 0.97;
const ABOVE_START_V = 0.5;

/** The traced circuit as the solver runs it, at one level and one mains; or what is missing. */
export function toModel({ bench, circuit, setting }: Facts, level: Level, mains: MainsChoice): Model | NoModel {
  if (circuit === null) return { because: 'noCircuit', missing: [] };
  const { recognised } = circuit;
  if (recognised.converter?.kind !== 'flyback') return { because: 'notAFlyback', missing: [] };
  const draft = new Draft(bench, recognised, driveNetsOf(recognised));
  const portIndex = Math.max(
    0,
    bench.one.ports.findIndex(({ id }) => id === level.port),
  );
  const around = addSurroundings(draft, setting, level, mains, portIndex);
  const first = draft.parts.length;
  const leftOut: string[] = [];
  for (const part of circuit.circuit.parts) if (!addPart(draft, part, level, mains)) leftOut.push(part.ref);
  if (around === null || draft.missing.length > 0) return { because: 'missing', missing: draft.missing };
  const own = draft.parts.slice(first).map((part) => renamed(part, around.renamed));
  const parts = startSupply([...draft.parts.slice(0, first), ...own]);
  const { converter } = recognised;
  const rail = (nets: ReadonlySet<string>): string | undefined => [...nets].find((net) => parts.some((part) => netsOf(part).includes(net)));
  const [plus, minus] = [rail(converter.plus), rail(converter.minus)];
  const refOf = (id: string): string => recognised.graph.parts.get(id)?.ref ?? id;
  const has = (ref: string): boolean => parts.some((part) => part.ref === ref);
  const fuses = parts.flatMap(({ kind, ref }) => (kind === 'fuse' ? ref : []));
  const switchRef =
    converter.switch === null ? null : converter.switch.kind === 'controller' ? `${converter.switch.ref}-switch` : converter.switch.ref;
  return {
    circuit: { title: bench.one.product.name, earth: around.earth, parts },
    level,
    source: MAINS_REF,
    load: LOAD_REF,
    body: BODY_REF,
    output: around.output,
    bulk: plus === undefined || minus === undefined ? null : [plus, minus],
    switch: switchRef !== null && has(switchRef) ? switchRef : null,
    rectifiers: converter.secondaries.flatMap(({ rectifiers }) => rectifiers.map(refOf)).filter(has),
    mainsRectifiers: (recognised.input?.rectifier?.parts ?? [])
      .map(refOf)
      .flatMap((ref) => (has(ref) ? [ref] : [1, 2, 3, 4].map((arm) => `${ref}-${arm}`).filter(has))),
    primary: converter.primary === null ? null : { ref: refOf(converter.primary.part), winding: converter.primary.name },
    fuses,
    windowS: (recognised.input?.rectifier?.kind === 'bridge' ? 0.5 : 1) / mains.hertz,
    assumptions: draft.assumptions,
    leftOut,
    tripKnown: !draft.assumptions.some(({ key }) => key === 'noTrip'),
  };
}

/** Gate and drive pin of a controlled field-effect switch: what stands there only shapes edges, which the model takes as steep. */
function driveNetsOf({ regulation, converter }: Recognised): Set<string> {
  const own = converter?.switch ?? null;
  if (regulation?.drive !== 'controller' || own?.kind !== 'mosfet') return new Set();
  const drive = regulation.controller === null ? null : pinNet(regulation.controller, 'drive');
  return new Set([netOf(own, 'G'), drive].flatMap((net) => net ?? []));
}

const SHAPES_EDGES = new Set(['resistor', 'diode', 'ceramicCapacitor', 'capacitor', 'zener', 'bipolarTransistor']);

/** Adds one part; false where it stands for nothing in the run. */
function addPart(draft: Draft, part: CircuitPart, level: Level, mains: MainsChoice): boolean {
  if (part.kind !== null && SHAPES_EDGES.has(part.kind) && part.pins.some(({ net }) => net !== null && draft.driveNets.has(net)))
    return false;
  switch (part.kind) {
    case 'resistor':
    case 'fusibleResistor':
      addResistor(draft, part);
      return true;
    case 'fuse':
      addFuse(draft, part);
      return true;
    case 'ntc':
      addThermistor(draft, part);
      return true;
    case 'varistor':
      addVaristor(draft, part);
      return true;
    case 'ceramicCapacitor':
    case 'filmCapacitor':
    case 'capacitor':
    case 'electrolyticCapacitor':
      addCapacitor(draft, part, startOf(draft, part, level, mains));
      return true;
    case 'inductor':
      addInductor(draft, part);
      return true;
    case 'commonModeChoke':
      addChoke(draft, part);
      return true;
    case 'jumper':
      addLink(draft, part);
      return true;
    case 'diode':
      addDiode(draft, part);
      return true;
    case 'bridgeRectifier':
      addBridge(draft, part);
      return true;
    case 'zener':
      addZener(draft, part);
      return true;
    case 'led':
      addLamp(draft, part);
      return true;
    case 'transformer':
      addTransformer(draft, part);
      return true;
    case 'mosfet':
      if (draft.job(part) === 'outputSwitch') addOutputSwitch(draft, part);
      else if (draft.job(part) === 'outputRectifier') addRectifyingSwitch(draft, part);
      else addSwitch(draft, part, part.ref, [draft.net(part, 'D'), draft.net(part, 'S')]);
      return true;
    case 'bipolarTransistor':
      addBipolar(draft, part);
      return true;
    case 'controller':
      addController(draft, part);
      return true;
    case 'shuntReference':
      addShuntReference(draft, part);
      return true;
    case 'optocoupler':
      addOptocoupler(draft, part);
      return true;
    case 'negotiationChip':
      addChip(draft, part, level);
      return true;
    case 'connector':
    case 'heatSink':
    case 'load':
      return true;
    default:
      draft.assume('partLeftOut', part.ref);
      return false;
  }
}

/** A transistor as rectifier: its inner diode, which is what is left when nothing drives it. */
function addRectifyingSwitch(draft: Draft, part: CircuitPart): void {
  addDiode(draft, {
    ...part,
    pins: [
      { pin: 'A', net: netOf(part, 'S') },
      { pin: 'K', net: netOf(part, 'D') },
    ],
  });
}

/** Voltage to begin with: near where the circuit settles, so that it need not be waited for. */
function startOf(draft: Draft, part: CircuitPart, level: Level, mains: MainsChoice): number {
  const { converter, graph } = draft.recognised;
  const link = graph.links.find(({ parts, family }) => family === 'capacitor' && parts.includes(part.id));
  if (link === undefined || converter === null) return 0;
  const sign = (plus: ReadonlySet<string>): number => (plus.has(draft.ends(part, '+', '-')[0]) ? 1 : -1);
  if (between(link, converter.plus, converter.minus)) return sign(converter.plus) * CHARGED * Math.SQRT2 * mains.rmsV;
  if (between(link, converter.output, converter.outputReturn)) return sign(converter.output) * level.volts;
  return 0;
}

/** Charges what feeds a controller to a little above its start, so that the run begins with it awake. */
function startSupply(parts: readonly SolverPart[]): SolverPart[] {
  const controllers = parts.flatMap((part) => (part.kind === 'controller' ? [part] : []));
  return parts.map((part) => {
    if (part.kind !== 'capacitor') return part;
    const fed = controllers.find(({ supply, ground }) => part.pins.includes(supply) && part.pins.includes(ground));
    if (fed === undefined) return part;
    const volts = fed.lockout.startV + ABOVE_START_V;
    return { ...part, initialV: part.pins[0] === fed.supply ? volts : -volts };
  });
}

/** The same part with nets moved behind what was put between. */
function renamed(part: SolverPart, names: ReadonlyMap<string, string>): SolverPart {
  if (part.ref === TRACK_REF) return part;
  return pinsOf(part).reduce((now, { name, net }) => {
    const other = names.get(net);
    return other === undefined ? now : withPin(now, name, other);
  }, part);
}

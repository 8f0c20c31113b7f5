import { findPath } from '../graph/find-path.ts';
import { type Graph, netOf } from '../graph/graph.ts';
import type { Link } from '../graph/links.ts';
import { between, otherEnd } from '../graph/rail.ts';
import type { Converter } from './converter.ts';
import type { Jobs } from './job.ts';
import type { MainsInput } from './mains-input.ts';
import type { Regulation } from './regulation.ts';

/** Jobs of switch, transformer, clamp, drive and auxiliary rail. */
export function giveSwitchingJobs(jobs: Jobs, graph: Graph, input: MainsInput, converter: Converter, regulation: Regulation): void {
  const { switch: own, switchNode: node, plus, minus, primary } = converter;
  const windings = primary ?? input.mainsWinding;
  if (windings !== null)
    jobs.give(
      [windings.part],
      'transformer',
      [windings.dot, windings.end].flatMap((net) => net ?? []),
    );
  if (own !== null) jobs.give([own.id], own.kind === 'controller' ? 'controllerWithSwitch' : 'switch', node === null ? [] : [node]);
  if (regulation.controller !== null) jobs.give([regulation.controller.id], 'controller', [], own === null ? [] : [own.id]);
  jobs.give(converter.sense, 'switchSense', [...minus].slice(0, 1), own === null ? [] : [own.id]);
  jobs.give(
    regulation.limiters.map(({ id }) => id),
    'limitTransistor',
    [],
    own === null ? [] : [own.id],
  );
  for (const link of regulation.drivePath) jobs.give(link.parts, 'drivePath', [link.a, link.b], own === null ? [] : [own.id]);
  for (const { rectifiers, series, rail } of converter.auxiliaries) {
    jobs.give(rectifiers, 'auxiliaryRectifier', [rail]);
    jobs.give(series, 'auxiliaryResistor', [rail], rectifiers);
  }
  jobs.give(converter.freewheel, 'freewheel', node === null ? [] : [node], converter.choke);
  jobs.give(converter.choke, 'outputChoke', node === null ? [] : [node]);
  if (node !== null && converter.kind !== 'buck') giveClamp(jobs, graph, node, plus);
  giveDrive(jobs, graph, converter, regulation);
}

/** Diode, capacitor, resistor and Zener between the switch node and the upper rail. */
function giveClamp(jobs: Jobs, graph: Graph, node: string, plus: ReadonlySet<string>): void {
  for (const link of graph.links) {
    const far = otherEnd(link, node);
    if (far === null || plus.has(far) || (link.family !== 'diode' && link.family !== 'zener')) continue;
    const inner = new Set([far]);
    const stores = graph.links.filter(
      (one) => (one.family === 'capacitor' || one.family === 'resistor' || one.family === 'resistorCapacitor') && between(one, inner, plus),
    );
    const damped = findPath(graph, [far], plus, ['resistor', 'capacitor', 'zener', 'resistorCapacitor', 'diode'], 2);
    if (stores.length === 0 && damped === null) continue;
    jobs.give(link.parts, link.family === 'diode' ? 'clampDiode' : 'clampZener', [node, far]);
    for (const one of [...stores, ...(damped ?? [])])
      jobs.give(
        one.parts,
        one.family === 'zener' ? 'clampZener' : one.family === 'diode' ? 'clampDiode' : 'clampStore',
        [one.a, one.b],
        link.parts,
      );
    // a second resistor may stand between the diode and the stores
    for (const one of damped ?? []) {
      const middle = plus.has(one.a) ? one.b : one.a;
      for (const more of graph.links)
        if ((more.family === 'capacitor' || more.family === 'resistor') && between(more, new Set([middle]), plus))
          jobs.give(more.parts, 'clampStore', [more.a, more.b], link.parts);
    }
  }
}

function giveDrive(jobs: Jobs, graph: Graph, converter: Converter, { controller, limiters }: Regulation): void {
  const { switch: own, plus, minus } = converter;
  const drive = own === null ? null : netOf(own, own.kind === 'mosfet' ? 'G' : 'B');
  const foot = own === null || own.kind === 'controller' ? null : netOf(own, own.kind === 'mosfet' ? 'S' : 'E');
  const supplied = new Set([
    ...(controller?.pins.flatMap(({ net }) => net ?? []) ?? []),
    ...(drive === null ? [] : [drive]),
    ...limiters.flatMap((part) => netOf(part, 'B') ?? []),
  ]);
  const rails = new Set([...plus, ...minus]);
  const auxiliary = new Set(converter.auxiliaries.map(({ rail }) => rail));
  for (const link of graph.links) {
    const at: readonly string[] = [link.a, link.b];
    const fromPlus = plus.has(link.a) ? link.b : plus.has(link.b) ? link.a : null;
    if (link.family === 'resistor' && fromPlus !== null && !minus.has(fromPlus) && (supplied.has(fromPlus) || auxiliary.has(fromPlus)))
      jobs.give(link.parts, 'startResistor', at, own === null ? [] : [own.id]);
    if (link.family === 'capacitor' && at.some((net) => auxiliary.has(net)) && !at.some((net) => plus.has(net)))
      jobs.give(link.parts, 'auxiliaryStore', at);
    // from the foot of the switch to the pin that ends its pulse
    if (
      link.family === 'resistor' &&
      foot !== null &&
      !rails.has(foot) &&
      at.includes(foot) &&
      at.some((net) => net !== foot && supplied.has(net))
    )
      jobs.give(link.parts, 'senseResistor', at, [...limiters.map(({ id }) => id), ...(controller === null ? [] : [controller.id])]);
    if (link.family === 'resistor' && drive !== null && at.includes(drive) && !at.some((net) => plus.has(net)) && own !== null)
      jobs.give(link.parts, 'driveResistor', at, [own.id]);
    if (isSignal(link) && at.some((net) => supplied.has(net) && !rails.has(net)) && at.some((net) => minus.has(net)))
      jobs.give(link.parts, 'signalDecoupling', at, controller === null ? [] : [controller.id]);
  }
}

const isSignal = ({ family }: Link): boolean => family === 'capacitor';

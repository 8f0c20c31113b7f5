import type { Graph } from '../graph/graph.ts';
import { between } from '../graph/rail.ts';
import type { Converter } from './converter.ts';
import type { Jobs } from './job.ts';
import type { MainsInput } from './mains-input.ts';

/** Jobs of what stands between the plug and the bulk capacitor, by which rails a part joins. */
export function giveMainsJobs(jobs: Jobs, graph: Graph, input: MainsInput, converter: Converter): void {
  const [one, two] = input.poles;
  const poles = new Set([...one, ...two]);
  const rectifiers = input.rectifier?.parts ?? [];
  for (const part of graph.circuit.parts) {
    const nets = part.pins.flatMap(({ net }) => net ?? []);
    const inPole = (): boolean => nets.some((net) => poles.has(net));
    const onRail = (): boolean => nets.some((net) => converter.plus.has(net) || converter.minus.has(net));
    if (part.kind === 'connector') jobs.give([part.id], nets.some((net) => graph.inlet.includes(net)) ? 'inlet' : 'outlet', nets);
    else if (part.kind === 'heatSink') jobs.give([part.id], 'heatSink', nets);
    else if (part.kind === 'jumper') jobs.give([part.id], 'link', nets);
    else if (part.kind === 'load') jobs.give([part.id], 'load', nets);
    else if ((part.kind === 'fuse' || part.kind === 'fusibleResistor') && (inPole() || onRail())) jobs.give([part.id], 'fuse', nets);
    else if (part.kind === 'ntc' && (inPole() || onRail())) jobs.give([part.id], 'inrushLimiter', nets);
    else if (part.kind === 'commonModeChoke' && inPole()) jobs.give([part.id], 'commonModeChoke', nets);
  }
  jobs.give(rectifiers, 'mainsRectifier', input.rectifier === null ? [] : [input.rectifier.plus, input.rectifier.minus]);
  jobs.give(input.series, 'inrushLimiter', [], rectifiers);
  if (input.dropper !== null) jobs.give(input.dropper.parts, 'droppingCapacitor', [input.dropper.a, input.dropper.b], rectifiers);
  for (const link of graph.links) {
    const at = [link.a, link.b];
    if (between(link, one, two)) {
      if (link.family === 'varistor') jobs.give(link.parts, 'surgeLimiter', at);
      if (link.family === 'capacitor' || link.family === 'resistorCapacitor') jobs.give(link.parts, 'acrossMains', at);
      if (link.family === 'resistor') jobs.give(link.parts, 'mainsBleeder', at);
    }
    if (link.family === 'resistor' && input.dropper !== null && sameEnds(at, [input.dropper.a, input.dropper.b]))
      jobs.give(link.parts, 'mainsBleeder', at, input.dropper.parts);
    if (
      link.family === 'inductor' &&
      one.has(link.a) === one.has(link.b) &&
      (poles.has(link.a) || poles.has(link.b)) &&
      poles.has(link.a) === poles.has(link.b)
    )
      jobs.give(link.parts, 'mainsFilter', at);
    if (input.mainsWinding !== null || converter.kind === 'capacitiveDropper') continue;
    if (link.family === 'capacitor' && between(link, converter.plus, converter.minus))
      jobs.give(link.parts, link.polarised ? 'bulk' : 'bulkDecoupling', at, rectifiers);
    if (
      link.family === 'capacitor' &&
      input.rectifier?.kind === 'doubler' &&
      (between(link, converter.plus, poles) || between(link, converter.minus, poles))
    )
      jobs.give(link.parts, 'bulk', at, rectifiers);
    if (link.family === 'varistor' && between(link, converter.plus, converter.minus)) jobs.give(link.parts, 'surgeLimiter', at);
    if (link.family === 'inductor' && (both(link, converter.plus) || both(link, converter.minus))) jobs.give(link.parts, 'bulkFilter', at);
    if (link.family === 'resistor' && between(link, converter.plus, converter.minus)) jobs.give(link.parts, 'bulkBleeder', at);
  }
}

const both = ({ a, b }: { a: string; b: string }, rail: ReadonlySet<string>): boolean => rail.has(a) && rail.has(b);

function sameEnds(one: readonly string[], two: readonly string[]): boolean {
  return one.every((net) => two.includes(net));
}

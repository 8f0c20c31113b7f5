import type { Part } from './circuit.ts';

export interface Pin {
  readonly name: string;
  readonly net: string;
}

/** Pins of a part that a fault can open or short, by name; sources, loads and the body network have none. */
export function pinsOf(part: Part): Pin[] {
  const pin = (name: string, net: string): Pin => ({ name, net });
  switch (part.kind) {
    case 'dcSource':
    case 'mains':
    case 'load':
    case 'bodyNetwork':
      return [];
    case 'transformer':
      return part.windings.flatMap(({ name, pins }) => [pin(`${name}.1`, pins[0]), pin(`${name}.2`, pins[1])]);
    case 'bipolar':
      return [pin('collector', part.collector), pin('base', part.base), pin('emitter', part.emitter)];
    case 'shuntRegulator':
      return [pin('cathode', part.cathode), pin('anode', part.anode), pin('reference', part.reference)];
    case 'optocoupler':
      return [
        pin('led.1', part.led[0]),
        pin('led.2', part.led[1]),
        pin('transistor.1', part.transistor[0]),
        pin('transistor.2', part.transistor[1]),
      ];
    case 'controller':
      return [
        pin('supply', part.supply),
        pin('ground', part.ground),
        pin('sense', part.law.sense),
        ...('feedback' in part.law ? [pin('feedback', part.law.feedback)] : []),
        ...('auxiliary' in part.law ? [pin('auxiliary', part.law.auxiliary)] : []),
      ];
    default:
      return [pin('1', part.pins[0]), pin('2', part.pins[1])];
  }
}

/** The same part with one pin on another net. */
export function withPin(part: Part, name: string, net: string): Part {
  const moved = (pins: readonly [string, string], first: string, second: string): readonly [string, string] => [
    name === first ? net : pins[0],
    name === second ? net : pins[1],
  ];
  switch (part.kind) {
    case 'transformer':
      return { ...part, windings: part.windings.map((one) => ({ ...one, pins: moved(one.pins, `${one.name}.1`, `${one.name}.2`) })) };
    case 'bipolar':
    case 'shuntRegulator':
      return { ...part, [name]: net };
    case 'optocoupler':
      return { ...part, led: moved(part.led, 'led.1', 'led.2'), transistor: moved(part.transistor, 'transistor.1', 'transistor.2') };
    case 'controller':
      return name === 'supply' || name === 'ground' ? { ...part, [name]: net } : { ...part, law: { ...part.law, [name]: net } };
    default:
      return { ...part, pins: moved(part.pins, '1', '2') };
  }
}

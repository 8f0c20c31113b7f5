import { noiseFor } from '../../scripts/demo/noise.ts';
import { CIRCUIT_KINDS, type Circuit, type CircuitKind, type CircuitPart } from '../../src/core/circuit/circuit.ts';
import { pinsOf } from '../../src/core/circuit/pin-names.ts';

/** Kinds drawn as often as boards have them. */
const OFTEN: readonly CircuitKind[] = [
  'resistor',
  'resistor',
  'resistor',
  'resistor',
  'ceramicCapacitor',
  'electrolyticCapacitor',
  'diode',
  'zener',
];
const CHIP_PINS = ['VDD', 'GND', 'FB', 'CS', 'DRV', 'COMP', 'HV', 'SW'];

/** Parts joined at random, makes no sense as a supply and need not: any drawing must hold. Same number, same circuit. */
export function randomCircuit(number: number, most = 30): Circuit {
  const noise = noiseFor('schematic', String(number));
  const pick = (below: number): number => Math.floor(noise.uniform() * below);
  const of = <T>(list: readonly T[]): T => list[pick(list.length)]!;
  const count = 3 + pick(most - 2);
  const perSide = Math.max(3, Math.ceil(count * (0.4 + noise.uniform() * 0.4)));
  const nets = (['mains', 'output'] as const).flatMap((side) =>
    Array.from({ length: perSide }, (_, index) => ({ id: `${side}-${index}`, name: `${side === 'mains' ? 'M' : 'S'}${index}`, side })),
  );
  const [mains, output] = [nets.slice(0, perSide).map(({ id }) => id), nets.slice(perSide).map(({ id }) => id)];
  const parts: CircuitPart[] = [
    {
      id: 'j1',
      ref: 'J1',
      kind: 'connector',
      pins: [
        { pin: 'L', net: mains[0]! },
        { pin: 'N', net: mains[1]! },
      ],
    },
    {
      id: 'j2',
      ref: 'J2',
      kind: 'connector',
      pins: [
        { pin: '+', net: output[0]! },
        { pin: '-', net: output[1]! },
      ],
    },
  ];
  for (let index = 0; index < count; index += 1) {
    const kind = noise.uniform() < 0.7 ? of(OFTEN) : of(CIRCUIT_KINDS);
    const own = noise.uniform() < 0.55 ? mains : output;
    const net = (from: readonly string[] = own): string | null => (noise.uniform() < 0.03 ? null : of(from));
    const id = `p${index}`;
    const part = { id, ref: `${kind.slice(0, 2).toUpperCase()}${index}`, kind };
    if (kind === 'transformer') {
      const windings = ['P', ...(pick(2) === 0 ? ['A'] : []), 'S'];
      parts.push({
        ...part,
        pins: windings.flatMap((name) => [1, 2].map((end) => ({ pin: `${name}.${end}`, net: net(name === 'S' ? output : mains) }))),
      });
    } else if (kind === 'optocoupler')
      parts.push({
        ...part,
        pins: [
          { pin: 'A', net: net(output) },
          { pin: 'K', net: net(output) },
          { pin: 'C', net: net(mains) },
          { pin: 'E', net: net(mains) },
        ],
      });
    else if (kind === 'ceramicCapacitor' && noise.uniform() < 0.1)
      parts.push({
        ...part,
        pins: [
          { pin: '1', net: of(mains) },
          { pin: '2', net: of(output) },
        ],
      });
    else parts.push({ ...part, pins: (pinsOf(kind) ?? CHIP_PINS.slice(0, 2 + pick(6))).map((pin) => ({ pin, net: net() })) });
  }
  return { parts, nets };
}

import type { Noise } from '../../scripts/demo/noise.ts';

/** Things a person might leave, type or paste somewhere in a case. */
const PUT: readonly unknown[] = [
  { state: 'notLooked' },
  { state: 'absent', because: 'looked' },
  { state: 'unknown', because: 'burnt' },
  { state: 'cannotNow', since: 'opened' },
  '0 V',
  '0 mm',
  '0 A',
  '< 0.1 mm',
  '> 9 mm',
  '-3 V',
  '1e300 V',
  '1e-300 m',
  '5 V',
  '12 V',
  '20 V',
  '0.5 A',
  '2 A ± 0.4 A',
  '4.0(3) mm',
  '3.0 mm ± 2 mm',
  '0 °C',
  '-400 °C',
  '300 °C',
  '0',
  '1',
  'OL',
  '',
  ' ',
  'usbA',
  'usbC',
  'barrel',
  'mains',
  'output',
  'floating',
  'earth',
  'Y1',
  'Y2',
  'X2',
  'direct',
  'isolating',
  'A',
  'B',
  'open',
  'closed',
  'transformer',
  'jumper',
  0,
  1,
  -1,
  true,
  null,
  [],
  {},
];

/** A copy of a JSON value with a few random changes: keys dropped, values put elsewhere, list items doubled, dropped or swapped. */
export function mutate(value: unknown, noise: Noise, changes: number): unknown {
  const copy = structuredClone(value);
  for (let change = 0; change < changes; change += 1) {
    const spots = spotsOf(copy);
    const spot = spots[Math.floor(noise.uniform() * spots.length)];
    if (spot === undefined) return copy;
    const { holder, key } = spot;
    const roll = noise.uniform();
    if (Array.isArray(holder)) {
      const index = key as number;
      if (roll < 0.3) holder.splice(index, 1);
      else if (roll < 0.5) holder.splice(index, 0, structuredClone(holder[index]));
      else if (roll < 0.7) holder[index] = structuredClone(holder[Math.floor(noise.uniform() * holder.length)]);
      else holder[index] = pick(noise);
    } else if (roll < 0.4) delete holder[key as string];
    else holder[key as string] = pick(noise);
  }
  return copy;
}

function pick(noise: Noise): unknown {
  return structuredClone(PUT[Math.floor(noise.uniform() * PUT.length)]);
}

interface Spot {
  readonly holder: Record<string, unknown> | unknown[];
  readonly key: string | number;
}

function spotsOf(value: unknown, found: Spot[] = []): Spot[] {
  if (Array.isArray(value)) {
    value.forEach((item, index) => {
      found.push({ holder: value, key: index });
      spotsOf(item, found);
    });
  } else if (typeof value === 'object' && value !== null) {
    for (const [key, item] of Object.entries(value)) {
      found.push({ holder: value as Record<string, unknown>, key });
      spotsOf(item, found);
    }
  }
  return found;
}

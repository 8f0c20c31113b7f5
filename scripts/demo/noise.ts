import { digestOf } from '../../src/core/result/digest.ts';

/** Seeded, repeatable noise: the seed is a hash of the unit and of the name of the reading, so that one reading more moves no other. */
export interface Noise {
  /** Uniform in 0 to 1. */
  uniform(): number;
  /** Standard normal. */
  normal(): number;
}

/** xoshiro128** (Blackman and Vigna, 2018), seeded with 128 bits of a SHA-256. */
export function noiseFor(seed: string, reading: string): Noise {
  const hash = digestOf({ seed, reading });
  const state = Uint32Array.from([0, 1, 2, 3].map((word) => Number.parseInt(hash.slice(word * 8, word * 8 + 8), 16)));
  const rotate = (x: number, k: number): number => ((x << k) | (x >>> (32 - k))) >>> 0;
  const next = (): number => {
    const result = (Math.imul(rotate(Math.imul(state[1]!, 5) >>> 0, 7), 9) >>> 0) as number;
    const t = (state[1]! << 9) >>> 0;
    state[2]! ^= state[0]!;
    state[3]! ^= state[1]!;
    state[1]! ^= state[2]!;
    state[0]! ^= state[3]!;
    state[2]! ^= t;
    state[3] = rotate(state[3]!, 11);
    return result;
  };
  const uniform = (): number => next() / 4294967296;
  return {
    uniform,
    normal: () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform()),
  };
}

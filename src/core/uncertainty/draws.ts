/**
 * Seeded draws: the same text gives the same numbers on every engine. xoshiro128** (Blackman and Vigna, Scrambled linear pseudorandom number
 * generators, 2018); the state is filled by a 32-bit FNV-1a hash of the text (Fowler, Noll and Vo), whitened four times.
 */
export function drawsFor(seed: string): () => number {
  const state = new Uint32Array(STATE_WORDS);
  for (let word = 0; word < STATE_WORDS; word += 1) state[word] = hashOf(`${word}/${seed}`);
  if (state.every((word) => word === 0)) state[0] = 1; // the one state that the generator never leaves
  const next = xoshiro(state);
  return () => next() / TWO_TO_32;
}

/** The bare generator over its state of four words; it changes the state it is given. */
export function xoshiro(state: Uint32Array): () => number {
  return () => {
    const result = Math.imul(rotate(Math.imul(state[1]!, 5), 7), 9) >>> 0;
    const shifted = state[1]! << 9;
    state[2]! ^= state[0]!;
    state[3]! ^= state[1]!;
    state[1]! ^= state[2]!;
    state[0]! ^= state[3]!;
    state[2]! ^= shifted;
    state[3] = rotate(state[3]!, 11);
    return result;
  };
}

const STATE_WORDS = 4;
const TWO_TO_32 = 4_294_967_296;
const FNV_START = 0x811c9dc5;
const FNV_PRIME = 0x01000193;

function rotate(x: number, by: number): number {
  return (x << by) | (x >>> (32 - by));
}

function hashOf(text: string): number {
  let hash = FNV_START;
  for (let index = 0; index < text.length; index += 1) hash = Math.imul(hash ^ text.charCodeAt(index), FNV_PRIME);
  hash = Math.imul(hash ^ (hash >>> 16), 0x85ebca6b); // finaliser of MurmurHash3 (Appleby), public domain
  hash = Math.imul(hash ^ (hash >>> 13), 0xc2b2ae35);
  return (hash ^ (hash >>> 16)) >>> 0;
}

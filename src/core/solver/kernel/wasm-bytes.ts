/**
 * Just enough of WebAssembly's binary format to write a handful of loops by hand: integers in LEB128, sections, and the instructions that
 * kernel-code.ts uses. Source: WebAssembly Core Specification 2.0 (W3C), chapter 5, binary format.
 */
export type Code = readonly number[];

/** Unsigned LEB128. */
export function unsigned(value: number): Code {
  const out: number[] = [];
  let rest = value;
  do {
    const low = rest & 0x7f;
    rest >>>= 7;
    out.push(rest === 0 ? low : low | 0x80);
  } while (rest !== 0);
  return out;
}

/** Signed LEB128. */
function signed(value: number): Code {
  const out: number[] = [];
  let rest = value;
  for (;;) {
    const low = rest & 0x7f;
    rest >>= 7;
    if ((rest === 0 && (low & 0x40) === 0) || (rest === -1 && (low & 0x40) !== 0)) return [...out, low];
    out.push(low | 0x80);
  }
}

const vector = (items: readonly Code[]): Code => [...unsigned(items.length), ...items.flat()];
const sized = (body: Code): Code => [...unsigned(body.length), ...body];
const name = (text: string): Code => sized([...text].map((letter) => letter.charCodeAt(0)));
const section = (id: number, body: Code): Code => [id, ...sized(body)];

/** Value types. */
export const TYPE = { i32: 0x7f, v128: 0x7b } as const;
const EMPTY = 0x40;
/** Alignment hint of an access, log2 of bytes: all are of eight bytes. */
const ALIGN = 3;

export const get = (local: number): Code => [0x20, ...unsigned(local)];
export const set = (local: number): Code => [0x21, ...unsigned(local)];
export const constant = (value: number): Code => [0x41, ...signed(value)];
export const add: Code = [0x6a];
export const multiply: Code = [0x6c];
export const and: Code = [0x71];
export const lessThan: Code = [0x49]; // unsigned
export const call = (index: number): Code => [0x10, ...unsigned(index)];
const simd = (op: number): Code => [0xfd, ...unsigned(op)];
export const loadPair = (offset: number): Code => [...simd(0x00), ALIGN, ...unsigned(offset)];
export const storePair = (offset: number): Code => [...simd(0x0b), ALIGN, ...unsigned(offset)];
/** Loads one number into both halves. */
export const loadTwice = (offset: number): Code => [...simd(0x0a), ALIGN, ...unsigned(offset)];
export const addPairs: Code = simd(0xf0);
export const timesPairs: Code = simd(0xf2);

/** Runs the body again while the condition that it leaves on the stack is true. */
export const repeatWhile = (body: Code): Code => [0x03, EMPTY, ...body, 0x0d, 0, 0x0b];
/** Runs the body when the condition before it is true. */
export const when = (body: Code): Code => [0x04, EMPTY, ...body, 0x0b];
/** local += value */
export const grow = (local: number, by: Code): Code => [...get(local), ...by, ...add, ...set(local)];

export interface Procedure {
  readonly name: string;
  /** All arguments are 32-bit integers: addresses in bytes, or counts. */
  readonly arguments: number;
  /** Further integers, then pairs of numbers. */
  readonly integers: number;
  readonly pairs: number;
  readonly body: Code;
}

/** A module that imports a shared memory as `solver.memory` and exports its procedures. */
export function moduleOf(procedures: readonly Procedure[], pages: { readonly least: number; readonly most: number }): Uint8Array {
  const SHARED = 0x03;
  const MEMORY = 0x02;
  const FUNCTION = 0x60;
  const signature = (one: Procedure): Code => [FUNCTION, ...vector(Array.from({ length: one.arguments }, () => [TYPE.i32])), 0];
  const body = (one: Procedure): Code =>
    sized([
      ...vector([
        [...unsigned(one.integers), TYPE.i32],
        [...unsigned(one.pairs), TYPE.v128],
      ]),
      ...one.body,
      0x0b,
    ]);
  return new Uint8Array([
    ...[0x00, 0x61, 0x73, 0x6d, 1, 0, 0, 0],
    ...section(1, vector(procedures.map(signature))),
    ...section(2, vector([[...name('solver'), ...name('memory'), MEMORY, SHARED, ...unsigned(pages.least), ...unsigned(pages.most)]])),
    ...section(3, vector(procedures.map((_, index) => unsigned(index)))),
    ...section(7, vector(procedures.map((one, index) => [...name(one.name), 0, ...unsigned(index)]))),
    ...section(10, vector(procedures.map(body))),
  ]);
}

import { kernelModule, LANES, PAGES } from './kernel-code.ts';

/** Numbers in the memory that the kernels see: their address in bytes, and a view of them. */
export interface Block {
  readonly at: number;
  readonly data: Float64Array;
}
/** What is used of WebAssembly, which the language's own library does not describe. Source: WebAssembly JavaScript Interface (W3C). */
interface Host {
  readonly Module: new (bytes: Uint8Array) => object;
  readonly Instance: new (module: object, imports: object) => { readonly exports: unknown };
  readonly Memory: new (size: { initial: number; maximum: number; shared: true }) => Memory;
}
interface Memory {
  readonly buffer: SharedArrayBuffer;
  grow(pages: number): number;
}
const { WebAssembly: host } = globalThis as unknown as { readonly WebAssembly: Host };

interface Procedures {
  readonly times: (m: number, stride: number, rows: number, columns: number, x: number, init: number, out: number) => void;
  readonly product: (a: number, stride: number, rows: number, columns: number, b: number, init: number, out: number) => void;
  readonly outer: (s: number, stride: number, columns: number, x: number) => void;
}

const BYTES = Float64Array.BYTES_PER_ELEMENT;
const PAGE = 65536;
/** Blocks begin at whole cache lines. */
const LINE = 64;

export const padded = (count: number): number => Math.ceil(count / LANES) * LANES;

let compiled: object | null = null;
/** Memories that nobody uses now: a run takes one and gives it back, so that a campaign of thousands of runs needs one. */
const free: Arena[] = [];

/** The memory of one run and the kernels that work in it. It grows while the run meets topologies, and is emptied for the next run. */
export class Arena {
  readonly #memory: Memory;
  readonly #do: Procedures;
  #next = LINE;

  private constructor() {
    compiled ??= new host.Module(kernelModule());
    // shared, so that views stay valid while it grows
    this.#memory = new host.Memory({ initial: PAGES.least, maximum: PAGES.most, shared: true });
    this.#do = new host.Instance(compiled, { solver: { memory: this.#memory } }).exports as Procedures;
  }

  static take(): Arena {
    return free.pop() ?? new Arena();
  }
  /** Nothing in this arena may be used afterwards. */
  giveBack(): void {
    this.#next = LINE;
    free.push(this);
  }

  /** That many zeros. */
  block(count: number): Block {
    const at = this.#next;
    this.#next = Math.ceil((at + count * BYTES) / LINE) * LINE;
    const have = this.#memory.buffer.byteLength;
    if (this.#next > have) this.#memory.grow(Math.max(Math.ceil((this.#next - have) / PAGE), Math.ceil(have / PAGE / 2)));
    const data = new Float64Array(this.#memory.buffer, at, count);
    data.fill(0);
    return { at, data };
  }

  /** out = init + M x; M has `rows` rows (whole groups of four) and `columns` columns. */
  times(m: Block, rows: number, columns: number, x: Block, init: Block, out: Block): void {
    this.#do.times(m.at, rows * BYTES, rows, columns, x.at, init.at, out.at);
  }
  /** out = init + A B, all of the same shape; out is neither A nor B. */
  product(a: Block, rows: number, columns: number, b: Block, init: Block, out: Block): void {
    this.#do.product(a.at, rows * BYTES, rows, columns, b.at, init.at, out.at);
  }
  /** S += x xᵀ, of which only what stands on the diagonal and below it is meant. */
  outer(s: Block, rows: number, columns: number, x: Block): void {
    this.#do.outer(s.at, rows * BYTES, columns, x.at);
  }
}

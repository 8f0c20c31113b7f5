import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CIRCUIT_KINDS, CIRCUIT_SIDES } from '../../src/core/circuit/circuit.ts';
import { pinsOf } from '../../src/core/circuit/pin-names.ts';
import { KIND_WORDS, kindOfWord } from '../../src/core/circuit/trace/kind-words.ts';
import { parseTrace } from '../../src/core/circuit/trace/parse-trace.ts';
import { printTrace } from '../../src/core/circuit/trace/print-trace.ts';
import { toCircuit, toSlug } from '../../src/core/circuit/trace/to-circuit.ts';
import type { Trace, TracedPart } from '../../src/core/circuit/trace/traced.ts';
import { FEW, SEED } from '../property/seed.ts';
import { INVENTED_CIRCUITS } from './invented-circuits.ts';

const only = (line: string): TracedPart => {
  const { trace, refusals } = parseTrace(line);
  expect(refusals).toEqual([]);
  return trace.parts[0]!;
};

describe('a table that is pasted', () => {
  it('reads row by row like the lines that say the same, and its heading says nothing', () => {
    const table = [
      'Ref\tValue\tRating\tNet 1\tNet 2',
      'R7\t4k7\t1%\tFB\tOUT-',
      'C5\t2.2 nF\tY1\tHV-\tOUT-',
      'R9\t?\t\tFB\t?',
      'U3 (reference)\t431A\tR=REF\tA=OUT-\tK=KA',
      'BD1\t600V\tL1\tN\tHV+\tHV-',
      'T1\tP\t72\tHV+\tDRAIN',
      'T1\tS\t-\tOUT-\tSEC',
    ].join('\n');
    const lines =
      'R7 4k7 1%: FB, OUT-\nC5 2.2nF Y1: HV-, OUT-\nR9 ?: FB, ?\nU3 (reference) 431A: R=REF, A=OUT-, K=KA\nBD1 600V: L1, N, HV+, HV-\nT1 P 72: HV+, DRAIN\nT1 S: OUT-, SEC';
    const read = parseTrace(table);
    expect(read.refusals).toEqual([]);
    expect(read.trace).toEqual(parseTrace(lines).trace);
  });

  it('refuses a row with its number, and keeps the others', () => {
    const { trace, refusals } = parseTrace('Part\tValue\tA\tB\nR1\t10 V\tX\tY\nR2\t1k\tX\tY');
    // "10 V" is a rating and no value: the row stands; one net is too few
    expect(trace.parts.map(({ ref }) => ref)).toEqual(['R1', 'R2']);
    expect(refusals).toEqual([]);
    expect(parseTrace('R1\tX\nR2\t1k\tX\tY').refusals).toMatchObject([{ code: 'too-few-pins', place: 'line 1' }]);
  });
});

describe('a line says what a part is', () => {
  it('value, rating, tolerance, class and marking are told apart by their form', () => {
    expect(only('R7 4k7 1% 0.25W: FB, OUT-')).toMatchObject({
      kind: 'resistor',
      value: '4k7',
      tolerance: '1%',
      power: '0.25W',
      marking: null,
    });
    expect(only('C5 2.2 nF Y1 TCY222M !: HV-, OUT-')).toMatchObject({
      kind: 'capacitor',
      value: '2.2nF',
      safetyClass: 'Y1',
      marking: 'TCY222M',
      crosses: true,
    });
    expect(only('EC1 22uF 400V: HV+, HV-')).toMatchObject({
      kind: 'electrolyticCapacitor',
      value: '22uF',
      voltage: '400V',
      pins: [
        { pin: '+', net: 'HV+' },
        { pin: '-', net: 'HV-' },
      ],
    });
    expect(only('ZD1 6V2: NEG, BASE')).toMatchObject({
      kind: 'zener',
      value: '6V2',
      pins: [
        { pin: 'A', net: 'NEG' },
        { pin: 'K', net: 'BASE' },
      ],
    });
    expect(only('D1 1N4007 1A: L, HV+')).toMatchObject({ kind: 'diode', value: null, current: '1A', marking: '1N4007' });
  });

  it('a question mark is a value that was not read, or a track that could not be followed', () => {
    expect(only('R9 ?: FB, ?')).toMatchObject({ value: '?', pins: [{ net: 'FB' }, { net: null }] });
  });

  it('the pins of a transistor or a chip tell what it is when the reference does not', () => {
    expect(only('Q1: B=X, C=Y, E=Z').kind).toBe('bipolarTransistor');
    expect(only('Q2: G=X, D=Y, S=Z').kind).toBe('mosfet');
    expect(only('U3 431: R=REF, A=OUT-, K=KA').kind).toBe('shuntReference');
    expect(only('U1: VDD=V, GND=G').kind).toBeNull();
    expect(only('U1 (controller): VDD=V, GND=G').kind).toBe('controller');
  });

  it('a transformer takes one line a winding, dot end first', () => {
    const { trace, refusals } = parseTrace('T1 P 72: HV+, DRAIN\nT1 S ?: OUT-, SEC # secondary');
    expect(refusals).toEqual([]);
    expect(trace.parts).toHaveLength(1);
    expect(trace.parts[0]).toMatchObject({
      kind: 'transformer',
      windings: [
        { name: 'P', turns: '72' },
        { name: 'S', turns: '?' },
      ],
      pins: [{ pin: 'P.1', net: 'HV+' }, { pin: 'P.2', net: 'DRAIN' }, { pin: 'S.1' }, { pin: 'S.2' }],
    });
  });
});

describe('a bad line is refused where it stands and the others are kept', () => {
  it.each([
    ['R7 4k7 FB, OUT-', 'no-colon'],
    ['7 4k7: FB, OUT-', 'not-a-reference'],
    ['R7 4u7: FB, OUT-', 'wrong-dimension'],
    ['C7 4k7: FB, OUT-', 'wrong-dimension'],
    ['R7 4k7 5k: FB, OUT-', 'said-twice'],
    ['R7 4k7: FB', 'too-few-pins'],
    ['R7 4k7: FB, OUT-, X', 'too-many-pins'],
    ['R7 4k7: FB, FB', 'net-twice'],
    ['D1: A=X, Q=Y', 'no-such-pin'],
    ['D1: A=X, A=Y', 'pin-twice'],
    ['D1: A X, Y', 'not-a-net'],
    ['R7 4k7: FB,', 'not-a-net'],
    ['U1 (gadget): 1=X', 'unknown-kind'],
    ['T1: X, Y', 'no-winding'],
    ['T1 P 72: X', 'not-two-ends'],
    ['T1 P 72: X, X', 'net-twice'],
    ['T1 P lots: X, Y', 'not-turns'],
    ['output: ?', 'no-net'],
    ['R1 1k: A, B', 'reference-twice'],
    ['output: L', 'two-sides'],
  ])('%s: %s', (line, code) => {
    const { trace, refusals } = parseTrace(`mains: L\nR1 1k: L, M\n${line}\nR2 2k: M, N`);
    expect(refusals).toMatchObject([{ code, place: 'line 3' }]);
    expect(refusals[0]!.expected).not.toBe('');
    expect(trace.parts.map(({ ref }) => ref)).toEqual(['R1', 'R2']);
  });

  it('a winding twice is refused, and the first one stays', () => {
    const { trace, refusals } = parseTrace('T1 P 72: A, B\nT1 P 70: A, C');
    expect(refusals).toMatchObject([{ code: 'winding-twice', place: 'line 2' }]);
    expect(trace.parts[0]?.windings).toEqual([{ name: 'P', turns: '72' }]);
  });

  it('two pins that are really joined are written by name and kept', () => {
    expect(only('U3 (reference): R=K, K=K, A=OUT-').pins).toHaveLength(3);
    expect(only('R1 0R: 1=A, 2=A').pins).toHaveLength(2);
  });

  it('any text at all gives parts or refusals and never fails', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 200, unit: 'binary' }), (text) => {
        const { trace, refusals } = parseTrace(text);
        expect(parseTrace(printTrace(trace))).toEqual({ trace, refusals: [] });
        for (const { place } of refusals) expect(place).toMatch(/^line \d+$/);
      }),
      { seed: SEED, numRuns: FEW },
    );
  });
});

const net = fc.constantFrom('HV+', 'HV-', 'OUT+', 'OUT-', 'FB', 'N1', 'a', 'x_y', null);
const partArbitrary: fc.Arbitrary<TracedPart> = fc
  .record({
    kind: fc.constantFrom(...CIRCUIT_KINDS.filter((kind) => kind !== 'transformer'), null),
    number: fc.integer({ min: 1, max: 99 }),
    letters: fc.constantFrom('R', 'C', 'U', 'Q', 'X', 'D', 'EC'),
    nets: fc.array(net, { minLength: 2, maxLength: 5 }),
    crosses: fc.boolean(),
    tolerance: fc.constantFrom('1%', null),
    marking: fc.constantFrom('817C', 'TL431 A', null),
    power: fc.constantFrom('0.25W', null),
  })
  .map(({ kind, number, letters, nets, crosses, tolerance, marking, power }) => {
    const known = kind === null ? null : pinsOf(kind);
    const pins = (known ?? nets.map((_one, index) => String(index + 1))).map((pin, index) => ({ pin, net: nets[index] ?? null }));
    return {
      ref: `${letters}${number}`,
      kind,
      value: null,
      voltage: null,
      current: null,
      power,
      tolerance,
      safetyClass: null,
      marking,
      crosses,
      pins,
      windings: [],
    };
  });
const traceArbitrary: fc.Arbitrary<Trace> = fc.record({
  parts: fc.uniqueArray(partArbitrary, { selector: ({ ref }) => ref, maxLength: 12 }),
  sides: fc.uniqueArray(fc.record({ side: fc.constantFrom(...CIRCUIT_SIDES), nets: fc.constantFrom(['L'], ['P', 'Q+'], ['OUT-']) }), {
    selector: ({ nets }) => nets[0],
    maxLength: 3,
  }),
});

describe('what is printed reads back', () => {
  it('any parts with any pins', () => {
    fc.assert(
      fc.property(traceArbitrary, (trace) => {
        expect(parseTrace(printTrace(trace))).toEqual({ trace, refusals: [] });
      }),
      { seed: SEED, numRuns: FEW },
    );
  });

  it.each(INVENTED_CIRCUITS)('$name', ({ lines }) => {
    const { trace } = parseTrace(lines);
    expect(parseTrace(printTrace(trace))).toEqual({ trace, refusals: [] });
  });

  it('every kind has a word of its own that leads back to it', () => {
    for (const kind of CIRCUIT_KINDS) expect(kindOfWord(KIND_WORDS[kind])).toBe(kind);
    expect(new Set(Object.values(KIND_WORDS)).size).toBe(CIRCUIT_KINDS.length);
  });
});

describe('names become ids', () => {
  it('poles keep their sign, and two names never share an id', () => {
    expect([toSlug('HV+'), toSlug('OUT-'), toSlug('Vcc 2')]).toEqual(['hv-plus', 'out-minus', 'vcc-2']);
    const { circuit } = toCircuit(parseTrace('R1 1k: a.b, a_b').trace);
    expect(new Set(circuit.nets.map(({ id }) => id)).size).toBe(2);
  });
});

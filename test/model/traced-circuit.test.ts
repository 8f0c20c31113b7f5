import { describe, expect, test } from 'vitest';
import { beck } from '../../scripts/demo/unit/beck.ts';
import { fell } from '../../scripts/demo/unit/fell.ts';
import { tarn } from '../../scripts/demo/unit/tarn.ts';
import { type Case, type CaseInput, caseDocument } from '../../src/core/evidence/case.ts';
import { findLevel, mainsOf } from '../../src/core/model/choices.ts';
import { faultsOf } from '../../src/core/model/faults-of.ts';
import { toRefusals } from '../../src/core/model/missing-text.ts';
import { isOwn, type Level, type Model } from '../../src/core/model/model.ts';
import { planPoint } from '../../src/core/model/plans.ts';
import { toModel } from '../../src/core/model/to-model.ts';
import { isRefusal, sentence } from '../../src/core/quantity/refusal.ts';
import { applyFault, faultId } from '../../src/core/solver/fault.ts';
import { type PointResult, runPoint } from '../../src/core/solver/operating-point.ts';
import { validateRequest } from '../../src/core/solver/validate-request.ts';
import { openBench } from '../../src/core/working/bench/bench.ts';
import { type Facts, gatherFacts } from '../../src/core/working/facts.ts';

const UNITS = { fell, beck, tarn };
type Input = CaseInput;

function factsOf(unit: keyof typeof UNITS, change: (input: Input) => Input = (input) => input): Facts {
  return gatherFacts(openBench(caseDocument.parse(change(structuredClone(UNITS[unit]().document as Input))) as Case, new Map()));
}

function modelOf(facts: Facts, level: string | null = null): Model {
  const found = findLevel(facts, level);
  if (isRefusal(found)) throw new Error(sentence(found));
  const model = toModel(facts, found, mainsOf(facts).nominal);
  if ('because' in model) throw new Error(JSON.stringify(model));
  return model;
}

const partOf = (model: Model, ref: string) => model.circuit.parts.find((part) => part.ref === ref);

function changedPart(
  input: Input,
  id: string,
  change: (part: NonNullable<Input['parts']>[number]) => NonNullable<Input['parts']>[number],
): Input {
  return { ...input, parts: (input.parts ?? []).map((part) => (part.id === id ? change(part) : part)) };
}

describe('a traced circuit as the solver runs it', () => {
  test.each(Object.keys(UNITS) as (keyof typeof UNITS)[])('%s is a circuit that can be run, and what was assumed has a source', (unit) => {
    const model = modelOf(factsOf(unit));
    const point = planPoint(model, { id: 'one', mains: 'nominal', load: 1 }, { rmsV: 230, hertz: 50 });
    const { circuit, probes } = point.plan;
    const most = { steps: 1, topologies: 1 };
    expect(
      validateRequest({ circuit, probes, start: 'given', stopS: 1e-3, fromS: 0, accuracy: 'report', most, endAtRating: false }),
    ).toEqual([]);
    expect(model.assumptions.length).toBeGreaterThan(10);
    for (const { source } of model.assumptions) expect(source.place).not.toBe('');
  });

  test('its transformer has the inductance of the stack and the turns of the tracing', () => {
    const transformer = partOf(modelOf(factsOf('fell')), 'T1');
    if (transformer?.kind !== 'transformer') throw new Error('no transformer');
    // 550 µH and 12 µH of leakage were measured: magnetising is what half of the leakage leaves
    expect(transformer.magnetisingH + (transformer.windings[0]?.leakageH ?? 0)).toBeCloseTo(550e-6, 5);
    expect(transformer.windings.map(({ turns }) => turns)).toEqual([72, 14, 12]);
  });

  test('a bridge in one package is four diodes, and the mains lies across its two poles', () => {
    const model = modelOf(factsOf('fell'));
    const arms = [1, 2, 3, 4].map((arm) => partOf(model, `BD1-${arm}`));
    expect(arms.map((arm) => arm?.kind)).toEqual(['diode', 'diode', 'diode', 'diode']);
    expect(model.windowS).toBeCloseTo(0.01, 6);
  });

  test('with one diode the pole that the bulk minus hangs on is the live one: the worse plug way', () => {
    const model = modelOf(factsOf('beck'));
    const mains = partOf(model, 'mains');
    if (mains?.kind !== 'mains') throw new Error('no mains');
    expect(mains.pins[0]).toBe('neutral');
    expect(model.circuit.earth).toBe('line');
    expect(model.windowS).toBeCloseTo(0.02, 6);
  });

  test('a printed track that is the first part melts like a fuse', () => {
    const track = partOf(modelOf(factsOf('beck')), 'track');
    if (track?.kind !== 'fuse') throw new Error('no track');
    // practice.md row 8, worked there for 0.3 mm x 35 µm: 9.2 A²s at 25 °C; a track of 0.4 mm has (4/3)² of it, less for the warmer room
    expect(track.meltingA2s).toBeGreaterThan(13);
    expect(track.meltingA2s).toBeLessThan(17);
  });

  test('a level that the chip sets joins its leg in, and the others stay open', () => {
    const legs = (level: string): string[] =>
      modelOf(factsOf('tarn'), level)
        .circuit.parts.map(({ ref }) => ref)
        .filter((ref) => ref.startsWith('U4/'));
    expect(legs('5v')).toEqual([]);
    expect(legs('9v')).toEqual(['U4/r14']);
    expect(legs('20v')).toEqual(['U4/r16']);
  });

  test('what is missing is named, and nothing is run', () => {
    const without = factsOf('fell', (input) => ({
      ...changedPart(input, 'r6', ({ value: _none, ...part }) => part),
      exhibits: (input.exhibits ?? []).map((one) => {
        if (one.kind !== 'stack') return one;
        const { inductance: _gone, frequency: _too, law: _law, ...rest } = one;
        return rest;
      }),
    }));
    const level = findLevel(without, null) as Level;
    const none = toModel(without, level, mainsOf(without).nominal);
    if (!('because' in none)) throw new Error('it was run');
    expect(toRefusals(none).map(({ expected }) => expected)).toEqual([
      'the primary inductance of T1',
      'the value of R6',
      'the current limit of U1',
    ]);
  });

  test('a controller whose law nobody named is not guessed', () => {
    const without = factsOf('fell', (input) => ({
      ...input,
      exhibits: (input.exhibits ?? []).map((one) =>
        one.kind === 'stack' ? { ...one, law: { state: 'unknown' as const, because: 'no mark' } } : one,
      ),
    }));
    const none = toModel(without, findLevel(without, null) as Level, mainsOf(without).nominal);
    expect('because' in none && none.missing).toContainEqual({ key: 'law', part: 'U1' });
  });

  test('a circuit that nobody traced is no circuit', () => {
    const bare = factsOf('fell', (input) => ({ ...input, parts: (input.parts ?? []).map(({ pins: _none, ...part }) => part) }));
    const none = toModel(bare, findLevel(bare, null) as Level, mainsOf(bare).nominal);
    expect('because' in none && toRefusals(none)[0]?.code).toBe('no-circuit');
  });

  test('every part of the board has its faults, what surrounds it has none, and the barrier is not shorted for nothing', () => {
    const facts = factsOf('fell');
    const model = modelOf(facts);
    const list = faultsOf(model, facts.bench, facts.circuit!.recognised.graph.sideOf);
    const ids = list.run.map(faultId);
    expect(ids).toContain('U2 open led.1');
    expect(ids).toContain('R7 worn');
    expect(ids).toContain('C7 short 1-2');
    expect(list.run.some(({ ref }) => isOwn(ref))).toBe(false);
    expect(list.acrossBarrier.every(({ ref }) => ref === 'T1' || ref === 'U2')).toBe(true);
    expect(list.acrossBarrier.length).toBeGreaterThan(0);
    // C5 is a Y1 capacitor whose identity was established: its short is listed, its opening is run
    expect(list.certified.map(faultId)).toEqual(['C5 short 1-2']);
    expect(ids).toContain('C5 open 1');
  });

  test.each(Object.keys(UNITS) as (keyof typeof UNITS)[])('no fault of %s makes a circuit that cannot be run', (unit) => {
    const facts = factsOf(unit);
    const model = modelOf(facts);
    const { run } = faultsOf(model, facts.bench, facts.circuit!.recognised.graph.sideOf);
    const request = {
      start: 'given',
      stopS: 1e-3,
      fromS: 0,
      probes: [],
      accuracy: 'screening',
      endAtRating: true,
      most: { steps: 1, topologies: 1 },
    } as const;
    const refused = run.filter((fault) => validateRequest({ ...request, circuit: applyFault(model.circuit, fault) }).length > 0);
    expect(refused.map(faultId)).toEqual([]);
    expect(run.length).toBeGreaterThan(60);
  });

  test('a link can come off, and does not wear', () => {
    const facts = factsOf('beck');
    const ids = faultsOf(modelOf(facts), facts.bench, facts.circuit!.recognised.graph.sideOf).ids;
    expect(ids.filter((id) => id.startsWith('W1 '))).toEqual(['W1 open 1']);
  });

  test('the same ordinary capacitor across the barrier is faulted, since nobody established what it is', () => {
    const facts = factsOf('beck');
    const list = faultsOf(modelOf(facts), facts.bench, facts.circuit!.recognised.graph.sideOf);
    expect(list.run.map(faultId)).toContain('C3 short 1-2');
  });
});

describe('a demo circuit that is run without load', () => {
  // set points by the divider of the demo boards, 2.495 V (1 + 38.3 / 10), and by the Zener diode (5.6 V + 0.7 V - 0.7 V) 9 / 9 - 0.4 V
  test.each([
    ['fell', 12.05, 0.15],
    ['tarn', 4.99, 0.1],
    ['beck', 5.2, 0.3],
  ] as const)(
    '%s holds what its parts set, and its energy balances',
    (unit, volts, within) => {
      const model = modelOf(factsOf(unit));
      const { plan } = planPoint(model, { id: 'none', mains: 'nominal', load: 'none' }, { rmsV: 230, hertz: 50 });
      const result = runPoint({ ...plan, mostS: 0.05 }) as PointResult;
      expect(result.outcome).toBe('completed');
      expect(result.balanced).toBe(true);
      expect(Math.abs(result.probes['output']!.mean - volts)).toBeLessThan(within);
      expect(result.waveform?.timeS.length).toBeGreaterThan(100);
    },
    60_000,
  );
});

import { describe, expect, it } from 'vitest';
import { adapter } from '../../bench/solver/adapter.ts';
import { isRefusal } from '../../src/core/quantity/refusal.ts';
import { type CampaignPlan, type FaultResult, runFault, settleHealthy, worstByFault } from '../../src/core/solver/campaign.ts';
import type { Part } from '../../src/core/solver/circuit.ts';
import { applyFault, enumerateFaults, type Fault, faultId } from '../../src/core/solver/fault.ts';
import type { Snapshot } from '../../src/core/solver/request.ts';
import { BUDGET, battery, capacitor, numberOf, resistor, runCircuit } from './run-circuit.ts';

const { circuit } = adapter();
const PLAN: CampaignPlan = {
  circuit,
  load: 'RL',
  loads: [
    { name: 'full', draw: { ohms: 2.5 } },
    { name: 'light', draw: { amps: 0.05, fromV: 1 } },
  ],
  source: 'V1',
  nominalV: 5,
  harmV: 6,
  body: 'B1',
  windowS: 5e-3,
  mostS: 30e-3,
  most: BUDGET,
};
const healthy = new Map<string, Snapshot>();
function become(fault: Fault, load = 'full', plan = PLAN): FaultResult {
  const known = healthy.get(load) ?? settleHealthy(plan, load);
  if (Array.isArray(known))
    throw new Error(
      known
        .filter(isRefusal)
        .map((one) => one.code)
        .join(),
    );
  healthy.set(load, known as Snapshot);
  return runFault(plan, { load, fault }, known as Snapshot);
}

/** Outcomes that can be reasoned out from the circuit alone. */
describe('a fault in the feedback', () => {
  it.each<[string, Fault]>([
    ['the optocoupler open', { ref: 'U2', mode: 'open', pin: 'led.1' }],
    ['the upper divider resistor open', { ref: 'R6', mode: 'open', pin: '1' }],
    ['the lower divider resistor shorted', { ref: 'R7', mode: 'short', pins: ['1', '2'] }],
    ['the shunt regulator open', { ref: 'U3', mode: 'open', pin: 'cathode' }],
  ])('lets the output run away with %s, as far as the current limit gives at full load', (_, fault) => {
    const result = become(fault);
    expect(result.state).toBe('runaway');
    // what is left to hold it is the limit: ½ L I² f less what gets lost
    const mostW = 0.5 * 1.2e-3 * 0.86 * 0.86 * 65e3;
    expect(result.settled!.outputV).toBeGreaterThan(7);
    expect((result.settled!.outputV * result.settled!.outputV) / 2.5).toBeLessThan(mostW);
    expect(result.aboveHarmS).toBeGreaterThan(1e-3);
  });

  it('lets it run further at light load, and that load speaks for the fault', () => {
    const fault: Fault = { ref: 'U2', mode: 'open', pin: 'led.1' };
    const [full, light] = [become(fault), become(fault, 'light')];
    expect(light.outputMostV).toBeGreaterThan(1.5 * full.outputMostV!);
    expect(worstByFault(PLAN, [full, light])).toEqual([light]);
  });

  it('holds the output at the floor of diode and regulator when the lower divider resistor opens', () => {
    const { settled, state } = become({ ref: 'R7', mode: 'open', pin: '1' });
    // practice: light-emitting diode, smallest cathode voltage and I R make 3.1 to 4.1 V
    expect(state).toBe('limits');
    expect(settled!.outputV).toBeGreaterThan(3);
    expect(settled!.outputV).toBeLessThan(4.1);
  });

  it('stops the output when the optocoupler is shorted on the controller side', () =>
    expect(become({ ref: 'U2', mode: 'short', pins: ['transistor.1', 'transistor.2'] }).state).toBe('dead'));
});

describe('a fault in the power stage', () => {
  it('without the clamp lets the switch see more', () => {
    const drain = (parts: typeof circuit.parts): number =>
      numberOf(
        runCircuit(
          parts,
          3e-3,
          { drain: { volts: ['drain', 'common'] } },
          { circuit: { ...circuit, parts }, accuracy: 'screening', fromS: 1e-3 },
        ),
        'drain',
      ).most;
    const open = applyFault(circuit, { ref: 'D6', mode: 'open', pin: '1' });
    expect(drain(open.parts)).toBeGreaterThan(1.3 * drain(circuit.parts));
  });

  it('with the switch open leaves nothing at the output', () => {
    const { state, settled } = become({ ref: 'Q1', mode: 'open', pin: '1' });
    expect(state).toBe('dead');
    expect(settled!.inputW).toBeLessThan(0.2);
  });

  it('with a bridge diode shorted opens the fuse at the next half wave', () => {
    const mains = adapter({ input: { rmsV: 230, hertz: 50, bulkV: 320 }, loadOhms: 200 }).circuit;
    const fused = mains.parts.map((part) =>
      part.ref === 'R21' ? ({ kind: 'fuse', ref: 'F1', pins: ['line', 'fused'], ohms: 0.1, meltingA2s: 1, holdingA: 1.5 } as const) : part,
    );
    const broken = applyFault({ ...mains, parts: fused }, { ref: 'D1', mode: 'short', pins: ['1', '2'] });
    const { findings } = runCircuit(broken.parts, 20e-3, {}, { circuit: broken, accuracy: 'screening' });
    expect(findings.map(({ code, ref }) => `${code} ${ref}`)).toContain('fuseOpened F1');
    expect(findings.find(({ code }) => code === 'fuseOpened')!.atS).toBeLessThan(20e-3);
    const whole = runCircuit(fused, 20e-3, {}, { circuit: { ...mains, parts: fused }, accuracy: 'screening' });
    expect(whole.findings).toEqual([]);
  });
});

describe('a fault across the barrier', () => {
  it('with the Y capacitor shorted takes the body network to half of the mains', () => {
    const mains = adapter({ input: { rmsV: 230, hertz: 50, bulkV: 320 }, loadOhms: 200 }).circuit;
    const touch = (of: typeof mains): number =>
      numberOf(runCircuit(of.parts, 0.06, { touch: { touchOf: 'B1' } }, { circuit: of, accuracy: 'screening', fromS: 0.04 }), 'touch').rms;
    const shorted = touch(applyFault(mains, { ref: 'CY', mode: 'short', pins: ['1', '2'] }));
    // the rail below the bridge follows one half wave: 230 V / 2 rms, over the 1990 ohm of the network: 58 mA, and somewhat more with the other half wave
    expect(shorted).toBeGreaterThan(0.05);
    expect(shorted).toBeLessThan(0.17);
    expect(touch(mains)).toBeLessThan(0.5e-3);
  });
});

describe('a fault after which the output falls for seconds', () => {
  // 10 V through 100 ohm beside 10 kohm into 1 kohm and 1 mF: with the 100 ohm open it falls to 10 V / 11, with 909 ohm times 1 mF
  const parts: Part[] = [
    battery('V1', 'in', '0', 10, 1e-3),
    resistor('R1', 'in', 'out', 100),
    resistor('R2', 'in', 'out', 10e3),
    capacitor('C1', 'out', '0', 1e-3, 0.01, 9.1),
    { kind: 'load', ref: 'RL', pins: ['out', '0'], draw: { ohms: 1e3 } },
  ];
  const plan: CampaignPlan = {
    ...PLAN,
    circuit: { title: 'slow', earth: '0', parts },
    loads: [{ name: 'full', draw: { ohms: 1e3 } }],
    nominalV: 9.1,
    harmV: 12,
    body: null,
  };
  const start = settleHealthy(plan, 'full') as Snapshot;
  const fault: Fault = { ref: 'R1', mode: 'open', pin: '1' };

  it('is still moving: a slope and the end it moves to, no settled number', () => {
    const result = runFault(plan, { load: 'full', fault }, start);
    expect(result).toMatchObject({ state: 'stillMoving', settled: null });
    const TAU_S = 0.909;
    // slope in the middle of the last two looks, 25 ms after the fault
    expect(result.slopeVPerS! / (((-9.1 + 0.909) / TAU_S) * Math.exp(-0.025 / TAU_S))).toBeCloseTo(1, 2);
    expect(result.boundV!).toBeCloseTo(10 / 11, 3);
  });
  it('is looked at for 300 ms at most, however long a campaign would wait', () => {
    const { simulatedS } = runFault({ ...plan, mostS: 10 }, { load: 'full', fault }, start);
    expect(simulatedS).toBeLessThanOrEqual(0.3);
    expect(simulatedS).toBeGreaterThan(0.25);
  });
});

describe('the list of faults', () => {
  const faults = enumerateFaults(circuit);
  it('names each fault once', () => expect(new Set(faults.map(faultId)).size).toBe(faults.length));
  it('has every part but sources, loads and the body network', () => {
    const left = circuit.parts.filter(({ ref }) => !faults.some((one) => one.ref === ref)).map(({ ref }) => ref);
    expect(left.sort()).toEqual(['B1', 'RL', 'V1', 'V2']);
  });
  it('makes circuits that can be run, every one', () => {
    for (const fault of faults) {
      const broken = applyFault(circuit, fault);
      const { outcome, energy } = runCircuit(broken.parts, 50e-6, {}, { circuit: broken, accuracy: 'screening' });
      expect([faultId(fault), outcome, energy.balanced]).toEqual([faultId(fault), 'completed', true]);
    }
  });
  it('wears what wears, and nothing else', () => {
    const worn = faults.filter(({ mode }) => mode === 'worn').map(({ ref }) => circuit.parts.find((part) => part.ref === ref)!.kind);
    expect(new Set(worn)).toEqual(new Set(['resistor', 'optocoupler']));
  });
});

import type { Quantity } from '../../src/core/solver/request.ts';
import { type AdapterChoice, adapter, type Described } from './adapter.ts';
import { selfOscillating, TRANSISTOR_CARDS } from './self-oscillating.ts';
import { settledVoltages, startingAt } from './settled.ts';

/** One quantity that both programs give, with the difference that was set as a goal. */
export interface Compared {
  readonly name: string;
  readonly probe: Quantity;
  /** The same for the reference program. */
  readonly of: string;
  readonly take: 'mean' | 'most' | 'peakToPeak';
  readonly goal: number;
}
export interface BenchCircuit {
  readonly id: string;
  /** Capacitor voltages it starts from, kept with the reference results so that both stay comparable. */
  readonly start: Readonly<Record<string, number>>;
  readonly described: Described;
  readonly stopS: number;
  readonly fromS: number;
  readonly compared: readonly Compared[];
  /** Source whose power is compared, its goal, and how the reference program sees it. */
  readonly power: { readonly ref: string; readonly of: string; readonly goal: number };
  readonly more: readonly string[];
}

type Goals = Readonly<Record<'mean' | 'ripple' | 'drain' | 'primary' | 'power', number>>;
const CONTROLLED: Goals = { mean: 0.005, ripple: 0.02, drain: 0.01, primary: 0.02, power: 0.015 };
const BURST: Goals = { mean: 0.01, ripple: 0.1, drain: 0.01, primary: 0.02, power: 0.05 };
const SELF_OSCILLATING: Goals = { mean: 0.05, ripple: 0.1, drain: 0.1, primary: 0.1, power: 0.1 };

function comparisons(switchNet: string, goals: Goals): Compared[] {
  return [
    { name: 'output mean', probe: { volts: ['out', 'zero'] }, of: 'V(out,zero)', take: 'mean', goal: goals.mean },
    { name: 'output ripple', probe: { volts: ['out', 'zero'] }, of: 'V(out,zero)', take: 'peakToPeak', goal: goals.ripple },
    {
      name: 'switch peak',
      probe: { volts: [switchNet, 'common'] },
      of: `V(${switchNet},${switchNet === 'drain' ? 'common' : '0'})`,
      take: 'most',
      goal: goals.drain,
    },
    { name: 'primary peak', probe: { ampsInto: 'T1', winding: 'primary' }, of: 'I(LT1_0)', take: 'most', goal: goals.primary },
  ];
}

const SETTLES_S = 20e-3;
type Start = Readonly<Record<string, number>> | undefined;

function controlled(
  [id, kept]: readonly [string, Start],
  choice: AdapterChoice,
  times: readonly [fromS: number, stopS: number],
  goals = CONTROLLED,
): BenchCircuit {
  const input = choice.input ?? { dcV: 325 };
  const start = kept ?? settledVoltages(adapter(choice), 'rmsV' in input ? 2 * SETTLES_S : SETTLES_S);
  return {
    id,
    start,
    described: startingAt(adapter(choice), start),
    fromS: times[0],
    stopS: times[1],
    compared: comparisons('drain', goals),
    power: { ref: 'V1', of: 'dcV' in input ? `-I(VV1)*${input.dcV}` : '-I(VV1)*V(vV1)', goal: goals.power },
    more: [],
  };
}

function oscillating([id]: readonly [string, Start], choice: Parameters<typeof selfOscillating>[0]): BenchCircuit {
  return {
    id,
    start: {},
    described: selfOscillating(choice),
    fromS: 2e-3,
    stopS: 4e-3,
    compared: comparisons('collector', SELF_OSCILLATING),
    power: { ref: 'V1', of: `-I(VV1)*${choice?.inputV ?? 325}`, goal: SELF_OSCILLATING.power },
    more: TRANSISTOR_CARDS,
  };
}

/** Every circuit of the comparison; one without a kept start is settled by our own program first. */
export const CIRCUITS: Readonly<Record<string, (of: readonly [id: string, start: Start]) => BenchCircuit>> = {
  'full load': (of) => controlled(of, {}, [4e-3, 5e-3]),
  'half load': (of) => controlled(of, { loadOhms: 5 }, [4e-3, 5e-3]),
  'light load, burst': (of) => controlled(of, { loadOhms: 100 }, [2e-3, 6e-3], BURST),
  overload: (of) => controlled(of, { loadOhms: 1.2, outputV: 3.5 }, [4e-3, 5e-3]),
  'shorted output': (of) => controlled(of, { loadOhms: 0.05, outputV: 0.1 }, [0.5e-3, 1.5e-3]),
  '130 kHz': (of) => controlled(of, { law: { hertz: 130e3 } }, [4e-3, 5e-3]),
  'bulk of 100 V mains': (of) => controlled(of, { input: { dcV: 130 } }, [4e-3, 5e-3]),
  'bulk of 264 V mains': (of) => controlled(of, { input: { dcV: 373 } }, [4e-3, 5e-3]),
  '230 V 50 Hz mains': (of) => controlled(of, { input: { rmsV: 230, hertz: 50, bulkV: 300 } }, [7e-3, 12e-3]),
  'self-oscillating': (of) => oscillating(of, {}),
  'self-oscillating, twice the inductance': (of) => oscillating(of, { primaryH: 4.8e-3 }),
  'self-oscillating, half load': (of) => oscillating(of, { loadOhms: 20 }),
};

import type { Quantity } from '../../src/core/solver/request.ts';
import { adapter, type Described } from './adapter.ts';
import { hiccuping, primarySideAdapter, valleyAdapter } from './other-laws.ts';
import { countRises, RATES, RISES_OF_NET } from './print-controller.ts';
import { selfOscillating, TRANSISTOR_CARDS } from './self-oscillating.ts';
import { settledStart, startingAt } from './settled.ts';

/** One quantity that both programs give, with the difference that was set as a goal. */
interface Shared {
  readonly name: string;
  /** The same for the reference program. */
  readonly of: string;
  readonly goal: number;
}
export type Compared =
  | (Shared & { readonly probe: Quantity; readonly take: 'mean' | 'most' | 'peakToPeak' })
  /** How often in a second a net rises through a voltage, while it counts. */
  | (Shared & { readonly rises: { readonly probe: Quantity; readonly lowV: number; readonly highV: number }; readonly take: 'rate' })
  /** How often in a second the controller did something, over the whole run. */
  | (Shared & { readonly count: keyof typeof RATES; readonly take: 'rate' });
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
  /** What the controller remembers at the start. */
  readonly memory: Readonly<Record<string, number>>;
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
/** Capacitor voltages, and after `~` what the controller remembers. */
type Start = Readonly<Record<string, number>> | undefined;
const MEMORY = '~';

const ofStart = (start: Readonly<Record<string, number>>, remembered: boolean): Record<string, number> =>
  Object.fromEntries(
    Object.entries(start).flatMap(([name, value]) =>
      name.startsWith(MEMORY) === remembered ? [[remembered ? name.slice(MEMORY.length) : name, value]] : [],
    ),
  );

interface ControlledChoice {
  readonly fromS: number;
  readonly stopS: number;
  readonly goals?: Goals;
  readonly counts?: readonly (keyof typeof RATES)[];
  readonly settlesS?: number;
  /** Voltages that are set instead of settled. */
  readonly at?: Readonly<Record<string, number>>;
}

/** Rates of bursts, starts and pulses may be a tenth apart. */
const RATE = 0.1;

function controlled([id, kept]: readonly [string, Start], make: () => Described, choice: ControlledChoice): BenchCircuit {
  const { fromS, stopS, goals = CONTROLLED, counts = [], at = {} } = choice;
  const described = make();
  const source = described.circuit.parts.find(({ ref }) => ref === 'V1');
  const isMains = source?.kind === 'mains';
  const settle = (): Record<string, number> => {
    const { volts, memory } = settledStart(described, choice.settlesS ?? (isMains ? 2 * SETTLES_S : SETTLES_S));
    return { ...volts, ...at, ...Object.fromEntries(Object.entries(memory).map(([name, value]) => [`${MEMORY}${name}`, value])) };
  };
  const start = kept ?? settle();
  return {
    id,
    start,
    described: startingAt(described, ofStart(start, false)),
    fromS,
    stopS,
    compared: [
      ...comparisons('drain', goals),
      ...counts.map((count) => ({ name: `${count} per second`, count, of: RATES[count], take: 'rate', goal: RATE }) as const),
    ],
    power: { ref: 'V1', of: source?.kind === 'dcSource' ? `-I(VV1)*${source.volts}` : '-I(VV1)*V(vV1)', goal: goals.power },
    more: [],
    memory: ofStart(start, true),
  };
}

/** The collector swings from near nothing to more than this at each stroke, and rings about the input voltage in between. */
const SWING_V = 150;

function oscillating([id]: readonly [string, Start], choice: Parameters<typeof selfOscillating>[0]): BenchCircuit {
  return {
    id,
    start: {},
    described: selfOscillating(choice),
    fromS: 6e-3,
    stopS: 8e-3,
    compared: [
      ...comparisons('collector', SELF_OSCILLATING),
      {
        name: 'frequency',
        rises: { probe: { volts: ['collector', 'common'] }, lowV: 140, highV: SWING_V },
        take: 'rate',
        of: RISES_OF_NET,
        goal: RATE,
      },
    ],
    power: { ref: 'V1', of: `-I(VV1)*${choice?.inputV ?? 325}`, goal: SELF_OSCILLATING.power },
    more: [...TRANSISTOR_CARDS, ...countRises('collector', SWING_V)],
    memory: {},
  };
}

const LAST_MS = { fromS: 4e-3, stopS: 5e-3 } as const;

/** Every circuit of the comparison; one without a kept start is settled by our own program first. */
export const CIRCUITS: Readonly<Record<string, (of: readonly [id: string, start: Start]) => BenchCircuit>> = {
  'full load': (of) => controlled(of, () => adapter(), LAST_MS),
  'half load': (of) => controlled(of, () => adapter({ loadOhms: 5 }), LAST_MS),
  'light load, burst': (of) =>
    controlled(of, () => adapter({ loadOhms: 100 }), { fromS: 2e-3, stopS: 6e-3, goals: BURST, counts: ['bursts'] }),
  overload: (of) => controlled(of, () => adapter({ loadOhms: 1.2, outputV: 3.5 }), LAST_MS),
  'shorted output': (of) => controlled(of, () => adapter({ loadOhms: 0.05, outputV: 0.1 }), { fromS: 0.5e-3, stopS: 1.5e-3 }),
  '130 kHz': (of) => controlled(of, () => adapter({ law: { hertz: 130e3 } }), LAST_MS),
  'bulk of 100 V mains': (of) => controlled(of, () => adapter({ input: { dcV: 130 } }), LAST_MS),
  'bulk of 264 V mains': (of) => controlled(of, () => adapter({ input: { dcV: 373 } }), LAST_MS),
  '230 V 50 Hz mains': (of) =>
    controlled(of, () => adapter({ input: { rmsV: 230, hertz: 50, bulkV: 300 } }), { fromS: 7e-3, stopS: 12e-3 }),
  // from before to after the crest, so that the bridge conducts once; settled over whole periods
  '100 V 60 Hz mains': (of) =>
    controlled(of, () => adapter({ input: { rmsV: 100, hertz: 60, bulkV: 120 } }), { fromS: 1e-3, stopS: 6e-3, settlesS: 50e-3 }),
  'hiccup on a shorted output': (of) =>
    controlled(of, hiccuping, { fromS: 0, stopS: 5e-3, goals: BURST, counts: ['starts'], at: { C3: 13 } }),
  'valley switching, full load': (of) => controlled(of, () => valleyAdapter(), { ...LAST_MS, counts: ['pulses'] }),
  'valley switching, half load': (of) => controlled(of, () => valleyAdapter(5), { fromS: 2e-3, stopS: 3e-3, counts: ['pulses'] }),
  'primary side, 1.25 A': (of) => controlled(of, () => primarySideAdapter(), { ...LAST_MS, settlesS: 0.1, counts: ['pulses'] }),
  'primary side, 0.1 A': (of) =>
    controlled(of, () => primarySideAdapter(50), { fromS: 5e-3, stopS: 8e-3, settlesS: 0.15, counts: ['pulses'] }),
  'self-oscillating': (of) => oscillating(of, {}),
  'self-oscillating, twice the inductance': (of) => oscillating(of, { primaryH: 4.8e-3 }),
  'self-oscillating, half load': (of) => oscillating(of, { loadOhms: 20 }),
};

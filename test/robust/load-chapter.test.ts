import { describe, expect, it } from 'vitest';
import { OUTCOME_WORDS } from '../../src/present/words/outcome-words.ts';
import { type CasePatch, judge } from '../truth/build-case.ts';
import { label, PLAIN_DAY, plainMeter, sweep } from '../truth/evidence-pieces.ts';

const CASES = 200;

/** Values a person may type, the impossible among them. */
const VOLTS = ['5 V', '0 V', '-5 V', '4.9 V ± 0.1 V', '> 5 V', '< 1 V', '1e3 V', '9 V'];
const AMPERES = ['0 A', '1 A', '2 A', '-1 A', '> 1 A', '3 A ± 1 A', '1e-6 A'];
const STATES = [{ state: 'unknown', because: 'lost' }, { state: 'absent', because: 'none' }, { state: 'notLooked' }];
const READINGS = ['peak', 'trough', 'settled', 'seconds', 'inputPower', 'current'];
const EVENTS = ['start', 'brownOut', 'plugIn', 'unplug', 'negotiation', 'step', 'short', 'overload', 'idle'];
const LEVELS = (amperes: unknown, volts: string): unknown[] => [
  [{ id: '5v', voltage: volts, printed: amperes }],
  [
    { id: '5v', voltage: '5 V', printed: '3 A' },
    { id: '9v', voltage: '9 V', printed: amperes },
  ],
  [{ id: '5v', voltage: '11 V', printed: '3 A', range: { from: '3.3 V', to: '11 V' } }],
];

/** The same run of numbers every time (a linear congruential generator). */
function numbers(seed: number): () => number {
  const [factor, step, modulus] = [1103515245, 12345, 2147483648];
  let state = seed;
  return () => {
    state = (state * factor + step) % modulus;
    return state / modulus;
  };
}

function anyCase(seed: number): CasePatch {
  const next = numbers(seed);
  const pick = <T>(list: readonly T[]): T => list[Math.floor(next() * list.length)]!;
  const perhaps = <T>(what: T): T | Record<string, never> => (next() < 0.5 ? what : {});
  const ids = ['usb', 'two', 'three'].slice(0, 1 + Math.floor(next() * 3));
  const ports = ids.map((id) => ({
    id,
    kind: pick(['usbA', 'usbC', 'barrel', 'other', STATES[0]]),
    levels: pick(LEVELS(pick([...AMPERES, ...STATES]), pick(['5 V', '0 V', '12 V']))),
  }));
  const loads = (): object => perhaps({ loads: [{ port: pick(ids), draws: pick([...AMPERES, { state: 'open' }, { state: 'short' }]) }] });
  const rows = Array.from({ length: 6 }, () => [
    pick(['0', '1', '2', '-1', '2.5', '0.5', '> 1 A', 'OL', '1e3']),
    pick(['5.1', '4.9', '0', '-1', '3', '> 5 V', '5', '4.76', '< 4 V']),
  ]);
  const exhibits: object[] = [1, 2].flatMap((n) => [
    {
      ...sweep(rows),
      id: `sweep-${n}`,
      port: pick(ids),
      order: pick(['up', 'down']),
      sense: pick(['socket', 'cableEnd']),
      under: { mains: pick(['230 V', '207 V', '253 V', '90 V', '264 V']), ...loads() },
      ...perhaps({ beyond: pick(['triesAgain', 'staysOff', 'keepsGiving', STATES[0]]) }),
      ...perhaps({ others: [{ id: 'o', port: pick(ids), voltage: pick(VOLTS) }] }),
    },
    {
      id: `event-${n}`,
      kind: 'event',
      what: pick(EVENTS),
      ...perhaps({ port: pick(ids) }),
      tries: { made: Math.floor(next() * 7), failed: Math.floor(next() * 2) },
      under: loads(),
      ...perhaps({ aftermath: pick(['flame', 'dead', STATES[1]]) }),
      readings: READINGS.filter(() => next() < 0.5).map((name) => ({
        id: name.toLowerCase(),
        name,
        value: pick([...VOLTS, '1 W', '> 0.2 W', '2', 'nothing', STATES[0], '0.5 s']),
      })),
    },
    {
      id: `ripple-${n}`,
      kind: 'ripple',
      port: pick(ids),
      value: pick([...VOLTS, ...STATES]),
      bandwidth: pick(['20 MHz', ...STATES]),
      fixture: pick(['short ground', '', ...STATES]),
    },
    {
      id: `offer-${n}`,
      kind: 'advertised',
      port: pick(ids),
      by: 'trigger board',
      offers: [
        { id: 'a', ...perhaps({ voltage: pick(['5 V', '9 V', '0 V', '12 V']) }), ...perhaps({ upTo: '11 V' }), current: pick(AMPERES) },
      ],
      under: loads(),
    },
  ]);
  const total = label({
    claims: [{ id: 'c', text: 'total', of: pick(['total', 'usb']), value: pick(['10 W', '0 W', '3 A', '-1 W', '> 5 W', 'much']) }],
  });
  return {
    ports,
    instruments: [plainMeter('0.02 V', { uAmpere: '0.01 A' })],
    days: [PLAIN_DAY],
    exhibits: [...exhibits, total].filter(() => next() < 0.7),
  } as unknown as CasePatch;
}

describe('a case of any sweeps, events, ripple and offers', () => {
  it.each(Array.from({ length: CASES / 20 }, (_, block) => block))('is judged without a slip, block %i', (block) => {
    for (let seed = block * 20 + 1; seed <= block * 20 + 20; seed += 1)
      for (const { outcome, probability } of judge(anyCase(seed)).findings) {
        expect(Object.keys(OUTCOME_WORDS), `seed ${seed}`).toContain(outcome);
        expect(probability === null || (probability >= 0 && probability <= 1), `seed ${seed}`).toBe(true);
      }
  });
});

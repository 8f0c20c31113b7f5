import { describe, expect, it } from 'vitest';
import { noiseFor } from '../../scripts/demo/noise.ts';
import { assess } from '../../src/core/assess/assess.ts';
import { parseTrace } from '../../src/core/circuit/trace/parse-trace.ts';
import { parseCase } from '../../src/core/evidence/parse-case.ts';
import { assessment as assessmentSchema } from '../../src/core/result/assessment.ts';
import { toEvidence } from '../../src/core/working/circuit/to-evidence.ts';
import { INVENTED_CIRCUITS } from '../circuit/invented-circuits.ts';
import { randomCircuit } from '../schematic/random-circuit.ts';
import { caseJson } from '../truth/build-case.ts';
import { usbPort } from '../truth/evidence-pieces.ts';

const ROUNDS = 250;
const VALUES = [
  '0R',
  '1k',
  '> 1k',
  '100 nF',
  '5V1',
  '4k7 ± 1 %',
  { state: 'unknown', because: 'burnt' },
  { state: 'absent', because: 'not fitted' },
  { state: 'notLooked' },
];
const MARKINGS = ['431', 'TL431A', 'TLV431', '817C', '103', '01C', '?'];

type Json = Record<string, unknown>;

describe('whatever somebody traces', () => {
  it('is judged, with numbers that are numbers', () => {
    const ports = [usbPort()];
    for (let round = 0; round < ROUNDS; round += 1) {
      const noise = noiseFor('any circuit', String(round));
      const of = <T>(list: readonly T[]): T => list[Math.floor(noise.uniform() * list.length)]!;
      // half of them at random, half a real circuit with values and pins shuffled
      const real = toEvidence(parseTrace(of(INVENTED_CIRCUITS).lines).trace);
      const random = randomCircuit(round, 45);
      const base =
        round % 2 === 0
          ? {
              parts: random.parts.map(({ id, ref, kind, pins }) => ({
                id,
                ref,
                kind,
                pins: pins.map(({ pin, net }) => ({ pin, net: net ?? { state: 'unknown', because: 'lost' } })),
              })),
              conductors: random.nets,
            }
          : real;
      const nets = (base.conductors as Json[]).map(({ id }) => id);
      const parts = (base.parts as Json[]).map((part) => ({
        ...part,
        ...(noise.uniform() < 0.6 ? { value: of(VALUES) } : {}),
        ...(noise.uniform() < 0.3 ? { marking: of(MARKINGS) } : {}),
        ...(noise.uniform() < 0.2
          ? { rating: { tolerance: of(['0 %', '5 %', '100 %', '300 %']), voltage: of(['10 V', '1000 V', '< 400 V']) } }
          : {}),
        ...(noise.uniform() < 0.1
          ? {
              law: {
                law: 'any',
                overvoltageTrip: of(['0 V', '27 V', 'soon']),
                pullVoltage: '0.2 V',
                pullResistance: of(['0 Ω', '20 kΩ']),
                sinks: { '5v': '1 mA' },
              },
            }
          : {}),
        ...(noise.uniform() < 0.1 ? { pins: (part['pins'] as Json[]).map((pin) => ({ ...pin, net: of(nets) })) } : {}),
      }));
      const one = parseCase(caseJson({ ...base, parts, ports } as never));
      if (Array.isArray(one)) throw new Error(`round ${round}: ${JSON.stringify(one[0])}`);
      let assessment: ReturnType<typeof assess>;
      try {
        assessment = assess(one, new Map());
      } catch (error) {
        throw new Error(`round ${round}: ${error instanceof Error ? error.stack : String(error)}`);
      }
      expect(assessmentSchema.safeParse(assessment).error, `round ${round}`).toBeUndefined();
    }
  });
});

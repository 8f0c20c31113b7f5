import { parseTrace } from '../../src/core/circuit/trace/parse-trace.ts';
import { toEvidence } from '../../src/core/working/circuit/to-evidence.ts';
import type { CasePatch } from './build-case.ts';
import { type PartInput, usbPort } from './evidence-pieces.ts';

/** An invented 5 V flyback as circuit lines; a test changes single lines. */
export const FIVE_VOLT = `mains: L, N
output: OUT+, OUT-
J1: L=L, N=N
F1: L, L1
CX1 100nF X2: L1, N
BD1 600V: ~1=L1, ~2=N, +=HV+, -=HV-
EC1 10uF 400V: HV+, HV-
T1 P 100: HV+, SW
T1 A 14: HV-, AUX
T1 S 10: OUT-, SEC
U1 (controller): D=SW, VDD=VDD, FB=FB, GND=HV-
D2: AUX, VDD
EC2 10uF: VDD, HV-
D3: SEC, OUT+
EC3 470uF 10V: OUT+, OUT-
R7 10k 1%: OUT+, REF
R8 10k 1%: REF, OUT-
U3 431A: R=REF, A=OUT-, K=KA
R9 470R: OUT+, LED
U2 (optocoupler): A=LED, K=KA, C=FB, E=HV-
R10 1k: LED, KA
CY1 1nF Y1 !: HV-, OUT-
J2: +=OUT+, -=OUT-
`;

/** Single lines replaced by what they begin with; an empty text takes the line away. */
export function traced(changes: Readonly<Record<string, string>> = {}, lines = FIVE_VOLT): CasePatch {
  let text = lines;
  for (const [start, line] of Object.entries(changes)) {
    const before = text.split('\n');
    const after = before.flatMap((one) => (one.startsWith(start) ? (line === '' ? [] : [line]) : [one]));
    if (after.join('\n') === text) throw new Error(`no line begins with "${start}", or nothing changes`);
    text = after.join('\n');
  }
  const { trace, refusals } = parseTrace(text);
  if (refusals.length > 0) throw new Error(JSON.stringify(refusals));
  return { ...toEvidence(trace), ports: [usbPort()] };
}

/** The same with single parts given more than a line can say. */
export function withParts(patch: CasePatch, more: Readonly<Record<string, Partial<PartInput>>>): CasePatch {
  return { ...patch, parts: (patch.parts ?? []).map((part) => ({ ...part, ...more[part.id] })) };
}

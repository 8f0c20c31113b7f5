import { describe, expect, it } from 'vitest';
import { recognise } from '../../src/core/circuit/recognise/recognise.ts';
import { findSlips } from '../../src/core/circuit/slip/find-slips.ts';
import { parseTrace } from '../../src/core/circuit/trace/parse-trace.ts';
import { toCircuit } from '../../src/core/circuit/trace/to-circuit.ts';
import { INVENTED_CIRCUITS } from './invented-circuits.ts';

function slipsOf(lines: string) {
  const { trace, refusals } = parseTrace(lines);
  expect(refusals).toEqual([]);
  const { circuit, crossing } = toCircuit(trace);
  return findSlips(circuit, crossing, recognise(circuit, crossing)).map(({ code, part }) => `${code} ${part}`);
}

const SOUND = INVENTED_CIRCUITS[0]!.lines;
const PRIMARY_SIDE = INVENTED_CIRCUITS[3]!.lines;
const changed = (from: string, to: string, lines = SOUND): string => {
  expect(lines).toContain(from);
  return lines.replace(from, to);
};

describe('a slip of the pen is named', () => {
  it.each(
    INVENTED_CIRCUITS.filter(
      ({ name }) => !name.includes('without') && !name.includes('taken out') && !name.includes('only') && !name.includes('no supply'),
    ),
  )('$name: nothing to say', ({ lines }) => expect(slipsOf(lines)).toEqual([]));
  it('a net with one pin', () => expect(slipsOf(changed('R8 10k 1%: REF, OUT-', 'R8 10k 1%: REF, OUTT-'))).toContain('dangling r8'));
  it('a part with both ends on one net', () =>
    expect(slipsOf(changed('R12 10k: OUT+, OUT-', 'R12 10k: 1=OUT+, 2=OUT+'))).toContain('shorted r12'));
  it('a part that joins the sides and is not made for it', () =>
    expect(slipsOf(changed('R12 10k: OUT+, OUT-', 'R12 10k: OUT+, HV+'))).toContain('straddling r12'));
  it('a part marked as crossing that does not cross', () =>
    expect(slipsOf(changed('R12 10k: OUT+, OUT-', 'R12 10k !: OUT+, OUT-'))).toContain('marksNoCrossing r12'));
  it('the poles of an outlet joined by a link', () => expect(slipsOf(`${SOUND}W1: OUT+, OUT-`)).toContain('outputsTied j2'));
  it('two windings rectified to one net', () => expect(slipsOf(`${SOUND}T1 S2 5: OUT-, SEC2\nD9: SEC2, OUT+`)).toContain('outputsTied t1'));
  it('an outlet whose return leads nowhere', () =>
    expect(slipsOf(changed('J2: +=OUT+, -=OUT-', 'J2: +=OUT+, -=LOST'))).toContain('missingReturn j2'));
  it('an output diode the wrong way', () =>
    expect(slipsOf(changed('D3 SB5100: SEC, OUT+', 'D3 SB5100: OUT+, SEC'))).toContain('backwards d3'));
  it('an auxiliary diode the wrong way', () =>
    expect(slipsOf(changed('D5: AUX, VDD', 'D5: VDD, AUX', PRIMARY_SIDE))).toContain('backwards d5'));
  it('a bulk capacitor with its plus on the lower rail', () =>
    expect(slipsOf(changed('EC1 22uF 400V: HV+, HV-', 'EC1 22uF 400V: HV-, HV+'))).toContain('capacitorBackwards ec1'));
});

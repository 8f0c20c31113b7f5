import { describe, expect, it } from 'vitest';
import { JOBS } from '../../src/core/circuit/recognise/job.ts';
import { SLIPS } from '../../src/core/circuit/slip/slip.ts';
import { setCircuit } from '../../src/present/report/circuit-section.ts';
import { JOB_WORDS, topologyText } from '../../src/present/words/circuit-words.ts';
import { WARNINGS } from '../../src/present/words/notes.ts';
import { INVENTED_CIRCUITS } from '../circuit/invented-circuits.ts';
import { judge } from '../truth/build-case.ts';
import { traced } from '../truth/circuit-pieces.ts';

describe('the circuit in words', () => {
  it('every job and every slip has words', () => {
    expect(Object.keys(JOB_WORDS).sort()).toEqual([...JOBS].sort());
    for (const code of SLIPS) expect(WARNINGS[`slip-${code}`], code).toBeDefined();
  });

  it('every kind of supply reads as one sentence', () => {
    for (const { topology } of INVENTED_CIRCUITS) {
      const text = topologyText(topology);
      expect(text).toMatch(/^[A-Z].*\.$/);
      for (const key of ['capacitiveDropper', 'mainsTransformer', 'singleDiode', 'selfOscillating', 'auxiliaryZener', 'undefined', 'null'])
        expect(text).not.toContain(key);
    }
  });

  it('the chapter names each part with its job and reason, what was not recognised, and the ways across', () => {
    const page = setCircuit(judge(traced({ 'J2: ': 'J2: +=OUT+, -=OUT-\nX9 (other): 1=FB, 2=HV-' }))).markup;
    expect(page).toContain(
      'A flyback converter behind a bridge, driven by a controller, regulated from the output through an optocoupler; the output is isolated from the mains.',
    );
    expect(page).toContain(
      '<th scope="row">R8</th><td>lower part of the divider that sets the output</td><td>between REF and OUT-; with U3</td>',
    );
    expect(page).toContain('<th scope="row">X9</th><td><i>not recognised</i></td>');
    expect(page).toContain('CY1 (HV- to OUT-)');
  });

  it('slips stand among the warnings of the Assessment', () => {
    const { warnings } = judge(traced({ 'D3: ': 'D3: OUT+, SEC' }));
    expect(warnings).toContainEqual({ key: 'slip-backwards', at: '/parts/d3', args: { part: 'D3', nets: 'OUT+, SEC' } });
  });

  it('without a trace there is no chapter', () => {
    expect(setCircuit(judge()).markup).toBe('');
  });
});

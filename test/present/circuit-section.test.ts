import { describe, expect, it } from 'vitest';
import { drawCaseSchematic, partMarks } from '../../src/app/draw-case-schematic.ts';
import { reportExtras } from '../../src/app/report-extras.ts';
import { assess } from '../../src/core/assess/assess.ts';
import { JOBS } from '../../src/core/circuit/recognise/job.ts';
import { SLIPS } from '../../src/core/circuit/slip/slip.ts';
import { setCircuit } from '../../src/present/report/circuit-section.ts';
import { renderReport } from '../../src/present/report/render-report.ts';
import { JOB_WORDS, topologyText } from '../../src/present/words/circuit-words.ts';
import { WARNINGS } from '../../src/present/words/notes.ts';
import { INVENTED_CIRCUITS } from '../circuit/invented-circuits.ts';
import { buildCase, judge } from '../truth/build-case.ts';
import { traced, withParts } from '../truth/circuit-pieces.ts';

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

describe('the schematic in the report', () => {
  it('stands in the chapter of the circuit with its sentence for ears, and marks the part on which a finding fails', async () => {
    const one = buildCase(traced({ 'F1: ': 'R1 10R: L, L1' }));
    const assessment = assess(one, new Map());
    expect([...partMarks(assessment)].filter(([, mark]) => mark === 'fail')).toEqual([['r1', 'fail']]);
    const page = renderReport(assessment, await reportExtras(one, assessment));
    expect(page).toContain('aria-label="Schematic as traced: 19 parts, 3 ways across the barrier"');
    expect(page).toMatch(/<g class="part failing" data-part="r1">/);
    expect(page).toMatch(/<g class="mark"><path class="m-fail[^>]*><\/g><text[^>]*>a finding fails on it</);
    expect(page.indexOf('What each part is there for')).toBeLessThan(page.indexOf('class="sch"'));
  });

  it('text of a case stays text', async () => {
    const patch = withParts(traced(), { r7: { ref: '<b onload=x>' } });
    const one = buildCase(patch);
    const drawn = await drawCaseSchematic(one, { live: true });
    expect(drawn?.figure.markup).toContain('&lt;b onload=x&gt;');
    expect(drawn?.figure.markup).not.toContain('<b onload');
  });

  it('marks a part whose trace is probably a slip in a shape of its own, and explains only the marks that stand in it', async () => {
    const one = buildCase(traced({ 'D3: ': 'D3: OUT+, SEC' }));
    const marks = partMarks(assess(one, new Map()));
    expect(marks.get('d3')).toBe('slip');
    const { markup } = (await drawCaseSchematic(one, { marks: new Map([['d3', 'slip']]) }))!.figure;
    expect(markup.match(/class="m-slip"/g)).toHaveLength(2); // beside D3, and in the line below
    expect(markup).toContain('probably a slip of the trace');
    expect(markup).not.toContain('a finding fails on it');
  });

  it('on a page that answers every part is a button that says what it is there for; on paper it is one picture', async () => {
    const one = buildCase(traced());
    const live = (await drawCaseSchematic(one, { live: true }))!.figure.markup;
    expect(live.match(/role="button"/g)).toHaveLength(19);
    expect(live).toContain('aria-label="R8, 10k, 1 %: lower part of the divider that sets the output"'.replace(', 1 %', ''));
    const still = (await drawCaseSchematic(one, {}))!.figure.markup;
    expect(still).not.toContain('role="button"');
    expect(still).toContain('role="img"');
  });

  it('a case without a trace has none', async () => {
    const one = buildCase();
    expect(await reportExtras(one, assess(one, new Map()))).toEqual({});
  });
});

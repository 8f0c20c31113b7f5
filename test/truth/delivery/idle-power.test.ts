import { describe, expect, it } from 'vitest';
import type { CaseInput } from '../../../src/core/evidence/case.ts';
import type { Finding } from '../../../src/core/result/assessment.ts';
import { type CasePatch, findingOf, findingsOf, judge, noteKeys } from '../build-case.ts';
import { type PortInput, usbPort } from '../evidence-pieces.ts';

// Limits: Commission Regulation (EU) 2019/1782, annex II 1(a), read in its data file: 0.10 W up to 49 W nameplate, 0.21 W above to 250 W, 0.30 W with
// more than one output at a time.
type Event = Extract<NonNullable<CaseInput['exhibits']>[number], { kind: 'event' }>;
const idle = (power: Event['readings'][number]['value'], more: Partial<Event> = {}): Event => ({
  id: 'idle-1',
  kind: 'event',
  what: 'idle',
  tries: { made: 1, failed: 0 },
  under: { mains: '230 V' },
  readings: [{ id: 'pin', name: 'inputPower', value: power }],
  ...more,
});
const case_ = (exhibits: Event[], ports: PortInput[] = [usbPort()]): CasePatch => ({ ports, exhibits });
const judged = (patch: CasePatch): Finding => findingOf(judge(patch), 'delivery/idle-power@unit');
const reading = (power: string, ports?: PortInput[]): Finding => judged(case_([idle(power)], ports));
const barrel = (voltage: string, printed: string): PortInput => ({ id: 'out', kind: 'barrel', levels: [{ id: 'only', voltage, printed }] });

describe('a single output of 10 W', () => {
  it('0.10 W exactly is undecided', () => {
    const finding = reading('0.10 W ± 0.01 W'); // u = 0.005 W
    expect(finding).toMatchObject({ outcome: 'inconclusive', reason: 'withinUncertainty' });
    expect(finding.margin).toBeCloseTo(1, 9);
  });

  it('0.09 W passes, 0.11 W fails on the text of the regulation, two standard uncertainties away', () => {
    expect(reading('0.09 W ± 0.01 W')).toMatchObject({ outcome: 'pass', reason: 'met' });
    const finding = reading('0.11 W ± 0.01 W');
    expect(finding).toMatchObject({
      outcome: 'fail',
      consequence: 'disappointing',
      headline: true,
      limit: { name: 'ecodesign', kind: 'atMost', grade: 'official-text' },
    });
    expect(finding.probability).toBeCloseTo(0.02275, 5);
  });

  it('a watt meter off by a tenth of a watt decides neither, one that nobody named neither within a tenth', () => {
    for (const power of ['0.09 W ± 0.1 W', '0.11 W ± 0.1 W', '0.095 W', '0.105 W']) expect(reading(power).outcome).toBe('inconclusive');
    expect(reading('0.05 W')).toMatchObject({ outcome: 'pass', probability: null });
  });

  it('a plug-in meter that shows 0.0 W, or 0 W, cannot tell 0.1 W from nothing; one that shows 0.5 W is beyond it', () => {
    for (const power of ['0.0 W', '0 W', '0.2 W'])
      expect(reading(power)).toMatchObject({ outcome: 'inconclusive', reason: 'uncertaintyUnknown' });
    expect(reading('0.5 W')).toMatchObject({ outcome: 'fail' });
    expect(reading('0.02 W')).toMatchObject({ outcome: 'pass' });
  });

  it('below 0.05 W passes, above 0.2 W fails, above 0.05 W is open', () => {
    expect(reading('< 0.05 W').outcome).toBe('pass');
    expect(reading('> 0.2 W').outcome).toBe('fail');
    expect(reading('> 0.05 W')).toMatchObject({ outcome: 'inconclusive', reason: 'oneSided' });
  });

  it('of several readings the worst counts, a struck one does not', () => {
    const worse = idle('0.3 W ± 0.01 W', { id: 'idle-2' });
    expect(judged(case_([idle('0.05 W ± 0.01 W'), worse])).outcome).toBe('fail');
    expect(judged(case_([idle('0.05 W ± 0.01 W'), { ...worse, struck: 'a phone was in it' }])).outcome).toBe('pass');
  });
});

describe('which limit', () => {
  it('49 W asks for 0.10 W, 60 W for 0.21 W', () => {
    expect(reading('0.15 W ± 0.01 W', [barrel('14 V', '3.5 A')])).toMatchObject({ outcome: 'fail', limit: { at: { value: 0.1 } } });
    expect(reading('0.15 W ± 0.01 W', [barrel('20 V', '3 A')])).toMatchObject({ outcome: 'pass', limit: { at: { value: 0.21 } } });
  });

  it('the largest level of a negotiating port is its nameplate', () => {
    const port: PortInput = {
      id: 'usb',
      kind: 'usbC',
      levels: [
        { id: '5v', voltage: '5 V', printed: '3 A' },
        { id: '20v', voltage: '20 V', printed: '3.25 A' },
      ],
    };
    expect(reading('0.15 W ± 0.01 W', [port])).toMatchObject({ outcome: 'pass', limit: { at: { value: 0.21 } } });
  });

  it('two outputs at a time are allowed 0.30 W', () => {
    const two = [usbPort(), { ...usbPort(), id: 'two' }];
    expect(reading('0.25 W ± 0.01 W', two)).toMatchObject({ outcome: 'pass', limit: { at: { value: 0.3 } } });
    expect(reading('0.35 W ± 0.01 W', two).outcome).toBe('fail');
  });

  it('beyond 250 W and without a nameplate there is none', () => {
    expect(reading('0.05 W', [barrel('50 V', '6 A')])).toMatchObject({ outcome: 'notAssessed', reason: 'limitUnknown' });
    expect(reading('0.05 W', [usbPort({ state: 'absent', because: 'nothing printed' })])).toMatchObject({
      outcome: 'notAssessed',
      reason: 'limitUnknown',
    });
  });
});

describe('what is not comparable', () => {
  it('another mains voltage, none stated, something connected', () => {
    expect(judged(case_([idle('0.05 W', { under: { mains: '115 V' } })]))).toMatchObject({
      outcome: 'notAssessed',
      reason: 'notComparable',
    });
    const { under: _none, ...nowhere } = idle('0.05 W');
    expect(judged(case_([nowhere]))).toMatchObject({ outcome: 'notAssessed', reason: 'notComparable' });
    const loaded = judged(case_([idle('0.05 W', { under: { mains: '230 V', loads: [{ port: 'usb', draws: '0.1 A' }] } })]));
    expect(loaded).toMatchObject({ outcome: 'notAssessed', reason: 'notComparable' });
    expect(noteKeys(loaded)).toContain('idleLoaded');
  });

  it('the American rule tests at 115 V, with the same figures', () => {
    const american = { ...case_([idle('0.05 W', { under: { mains: '115 V' } })]), setting: { market: 'US' as const } };
    expect(judged(american)).toMatchObject({ outcome: 'pass', limit: { at: { value: 0.1 } } });
  });

  it('an open output is idle', () => {
    expect(judged(case_([idle('0.05 W', { under: { mains: '230 V', loads: [{ port: 'usb', draws: { state: 'open' } }] } })])).outcome).toBe(
      'pass',
    );
    expect(judged(case_([idle('0.05 W', { under: { mains: '230 V', loads: [{ port: 'usb', draws: '0 A' }] } })])).outcome).toBe('pass');
  });

  it('nobody looked; nobody could tell; an idle event that reads something else', () => {
    expect(findingsOf(judge(), 'delivery/idle-power')).toMatchObject([{ outcome: 'notAssessed', reason: 'notLooked' }]);
    expect(judged(case_([idle({ state: 'unknown', because: 'the meter shows nothing this small' })]))).toMatchObject({
      outcome: 'inconclusive',
      reason: 'unknownValue',
    });
    expect(
      findingsOf(judge(case_([idle('5 V', { readings: [{ id: 'v', name: 'settled', value: '5 V' }] })])), 'delivery/idle-power'),
    ).toMatchObject([{ reason: 'notLooked' }]);
  });
});

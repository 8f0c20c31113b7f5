import { describe, expect, it } from 'vitest';
import type { CaseInput } from '../../../src/core/evidence/case.ts';
import type { Finding } from '../../../src/core/result/assessment.ts';
import { type CasePatch, findingOf, findingsOf, judge, noteKeys } from '../build-case.ts';
import { board, CONDUCTORS, type InstrumentInput, label, type PartInput } from '../evidence-pieces.ts';

// Limits: IEC 62368-1:2018 table 5, charged capacitors that may be touched (secondary: a national regulation that adopts it): 60 V from 300 nF up,
// 75 V at 170 nF, 100 V at 91 nF, 350 V at 12 nF, straight lines between, the rated capacitance plus its tolerance; two seconds after unplugging
// (secondary: a test-report form). Comparison lines: IEC 60335-1 22.5, 34 V at 1 s above 0.1 µF (secondary); IEC 60950-1, 37 % at 1 s (secondary).
// Crest of 264 V: 373.35 V; of the EU market's 253 V: 357.80 V; of 230 V: 325.27 V.
type Exhibit = NonNullable<CaseInput['exhibits']>[number];
type Pins = Extract<Exhibit, { kind: 'touch'; quantity: 'pinsAfterUnplugging' }>;

const CREST = '373.352 V ± 0 V';
const UNIVERSAL = label({ input: { voltage: '100-240 V' } });
const probe = (inputResistance?: string): InstrumentInput => ({
  id: 'probe',
  name: 'probe, invented',
  ...(inputResistance === undefined ? {} : { inputResistance }),
  ranges: [{ of: 'residualVoltage', resolution: '1 mV', accuracy: '0 V', basis: 'standard' }],
});
const pins = (value: Pins['value'], more: Partial<Pins> = {}): Pins => ({
  id: 'pins-1',
  kind: 'touch',
  quantity: 'pinsAfterUnplugging',
  from: 'line',
  method: 'probe',
  day: 'day-1',
  after: '2 s',
  start: CREST,
  value,
  ...more,
});
/** Measured exactly, marked exactly: the only doubt is that of the voltage. */
const xCapacitor = (value = '330 nF', more: Partial<PartInput> = {}): PartInput => ({
  id: 'cx1',
  ref: 'CX1',
  kind: 'filmCapacitor',
  safetyClass: 'X2',
  value,
  measured: `${value} ± 0 nF`,
  rating: { tolerance: '0 %' },
  pins: [
    { pin: '1', net: 'line' },
    { pin: '2', net: 'neutral' },
  ],
  ...more,
});
const unit = (exhibits: Exhibit[], parts: PartInput[] = [xCapacitor()], inputResistance: string | null = '1000 GOhm'): CasePatch => ({
  conductors: CONDUCTORS,
  instruments: [probe(inputResistance ?? undefined)],
  days: [{ id: 'day-1', date: '2026-03-05', uses: { residualVoltage: 'probe' }, under: {} }],
  parts,
  exhibits: [UNIVERSAL, ...exhibits],
});
const judged = (...args: Parameters<typeof unit>): Finding => findingOf(judge(unit(...args)), 'shock/plug-discharge@pins');
const volts = (finding: Finding): number =>
  finding.measured !== null && 'value' in finding.measured ? finding.measured.value : Number.NaN;

describe('pins two seconds after unplugging at the crest, with a probe that takes nothing', () => {
  it('330 nF: 60 V is the limit, 58 V passes, 62 V fails and injures, 60 V is undecided', () => {
    const inside = judged([pins('58 V ± 2 V')]);
    expect(inside).toMatchObject({ outcome: 'pass', reason: 'met', limit: { name: 'charged', grade: 'secondary', at: { value: 60 } } });
    expect(inside.probability).toBeCloseTo(0.977249868, 4); // two standard uncertainties of 1 V
    expect(judged([pins('62 V ± 2 V')])).toMatchObject({ outcome: 'fail', consequence: 'injurious', headline: true });
    const at = judged([pins('60 V ± 2 V')]);
    expect(at).toMatchObject({ outcome: 'inconclusive', reason: 'withinUncertainty' });
    expect(at.margin).toBeCloseTo(1, 4);
  });

  it.each([
    ['330 nF', 60],
    ['300 nF', 60],
    ['170 nF', 75],
    ['130.5 nF', 87.5],
    ['91 nF', 100],
    ['12 nF', 350],
    ['1 nF', 4375], // a quarter of the way from 0.8 nF 5000 V to 1.6 nF 2500 V
    ['100 pF', 25_000],
  ])('%s across the pins may hold %d V', (value, most) => {
    expect(judged([pins('1 V ± 0.1 V')], [xCapacitor(value, { measured: `${value} ± 0 pF` })]).limit?.at?.value).toBeCloseTo(most, 6);
  });

  it('the table is entered with the rated value plus tolerance: 220 nF and 10 % is 242 nF, 66.7 V; with no tolerance stated 20 % are taken', () => {
    const limit = (part: PartInput): number => judged([pins('1 V ± 0.1 V')], [part]).limit?.at?.value ?? Number.NaN;
    expect(limit(xCapacitor('220 nF', { rating: { tolerance: '10 %' } }))).toBeCloseTo(75 - (15 * 72) / 130, 6);
    const { rating: _none, ...bare } = xCapacitor('220 nF');
    expect(limit(bare)).toBeCloseTo(75 - (15 * 94) / 130, 6);
    // what nobody measured is evidence, not limit: the grade stays
    expect(judged([pins('1 V ± 0.1 V')], [bare]).limit?.grade).toBe('secondary');
  });

  it('two capacitors across the pins add: 170 nF twice is 340 nF, 60 V', () => {
    expect(judged([pins('70 V ± 1 V')], [xCapacitor('170 nF'), xCapacitor('170 nF', { id: 'cx2', ref: 'CX2' })])).toMatchObject({
      outcome: 'fail',
      limit: { at: { value: 60 } },
    });
    expect(judged([pins('70 V ± 1 V')], [xCapacitor('170 nF')]).outcome).toBe('pass');
  });

  it('a film capacitor without a class on the same pins counts too, a bulk electrolytic does not', () => {
    const { safetyClass: _class, ...plain } = xCapacitor();
    expect(judged([pins('90 V ± 1 V')], [plain]).outcome).toBe('fail');
    const bulk: PartInput = { ...plain, id: 'c1', ref: 'C1', kind: 'electrolyticCapacitor', value: '10 µF' };
    expect(noteKeys(judged([pins('90 V ± 1 V')], [bulk]))).toContain('plugCapacitanceUnknown');
  });

  it('the lines of two other standards stand beside: 34 V and 37 % of 373 V; not where the capacitor is 0.1 µF or less', () => {
    const others = judged([pins('50 V ± 1 V')]).others;
    expect(others.map(({ name }) => name)).toEqual(['householdOneSecond', 'olderOneSecond']);
    expect(others[0]?.at?.value).toBe(34);
    expect(others[1]?.at?.value).toBeCloseTo(138.14, 2);
    expect(judged([pins('50 V ± 1 V')], [xCapacitor('100 nF')]).others).toEqual([]);
  });

  it('a negative reading is as bad as a positive one', () => {
    expect(judged([pins('-80 V ± 1 V', { start: '-373.352 V ± 0 V' })]).outcome).toBe('fail');
  });
});

describe('the meter discharges what it measures', () => {
  it('330 nF, 51 V read with 10 MΩ after 2 s is 93.5 V without it: a fail that the meter hides', () => {
    const finding = judged([pins('51 V ± 1 V')], [xCapacitor()], '10 MOhm');
    // 51 V · exp(2 / (10 MΩ · 330 nF)) = 51 V · exp(0.60606)
    expect(volts(finding)).toBeCloseTo(93.498, 2);
    expect(finding).toMatchObject({ outcome: 'fail' });
    expect(noteKeys(finding)).toContain('plugProbeCorrected');
  });

  it('with 100 MΩ the same 51 V is 54.2 V and passes', () => {
    const finding = judged([pins('51 V ± 1 V')], [xCapacitor()], '100 MOhm');
    expect(volts(finding)).toBeCloseTo(54.187, 2);
    expect(finding.outcome).toBe('pass');
  });

  it('with an input resistance that nobody stated a low reading cannot be compared, and a high one fails all the more', () => {
    const low = judged([pins('20 V ± 1 V')], [xCapacitor()], null);
    expect(low).toMatchObject({ outcome: 'notAssessed', reason: 'notComparable' });
    expect(noteKeys(low)).toContain('plugProbeNotStated');
    expect(judged([pins('80 V ± 1 V')], [xCapacitor()], null)).toMatchObject({ outcome: 'fail', measured: { side: 'above' } });
  });

  it('100 nF and no bleeder: 50 V read with 10 MΩ is the full crest, a small capacitor is no excuse for an unknown probe', () => {
    expect(volts(judged([pins('50.5 V ± 1 V')], [xCapacitor('100 nF')], '10 MOhm'))).toBeCloseTo(373.15, 1);
    expect(judged([pins('50.5 V ± 1 V')], [xCapacitor('100 nF')], '10 MOhm').outcome).toBe('fail');
    expect(judged([pins('50.5 V ± 1 V')], [xCapacitor('100 nF')], null).outcome).toBe('notAssessed');
  });

  it('a probe that has discharged the pins by more than two of its own time constants says nothing good', () => {
    const finding = judged([pins('3 V ± 0.1 V')], [xCapacitor('47 nF')], '10 MOhm');
    expect(finding).toMatchObject({ outcome: 'notAssessed', reason: 'notComparable' });
    expect(noteKeys(finding)).toContain('plugProbeTooHeavy');
  });

  it('the doubt of the capacitance goes into the corrected voltage', () => {
    const vague = judged([pins('30 V ± 0 V')], [xCapacitor('330 nF', { measured: '330 nF ± 66 nF' })], '10 MOhm');
    // dV/dC = -V x / C: 55 V · 0.606 · 10 % = 3.33 V
    expect(vague.measured).toMatchObject({ value: expect.closeTo(54.999, 2), u: expect.closeTo(3.33, 1) });
    expect(vague.outcome).toBe('inconclusive');
  });
});

describe('how much is across the pins', () => {
  it('nobody knows: a low reading is not a pass, since the probe may have eaten a small capacitor', () => {
    const finding = judged([pins('10 V ± 1 V')], [], '10 MOhm');
    expect(finding).toMatchObject({ outcome: 'inconclusive', reason: 'oneSided', limit: { at: { value: 60 } } });
    expect(noteKeys(finding)).toContain('plugCapacitanceUnknown');
  });

  it('nobody knows, and it is above 60 V: with 10 MΩ 94 V asks for at least 145 nF, which may hold 80 V: fail; with 100 MΩ a small one may hold it', () => {
    const finding = judged([pins('94 V ± 1 V')], [], '10 MOhm');
    // 2 s / (10 MΩ · ln(373.352/94)) = 145.0 nF; 100 - 25 · (145.0 - 91)/79 = 82.9 V
    expect(finding).toMatchObject({ outcome: 'fail', limit: { name: 'chargedLeast' } });
    expect(finding.limit?.at?.value).toBeCloseTo(82.91, 1);
    expect(judged([pins('94 V ± 1 V')], [], '100 MOhm')).toMatchObject({
      outcome: 'inconclusive',
      reason: 'unknownValue',
      headline: false,
    });
    expect(judged([pins('94 V ± 1 V')], [], null)).toMatchObject({ outcome: 'inconclusive', reason: 'unknownValue' });
  });

  it('a capacitance between the pins before power serves as well as a marking', () => {
    const cold: Exhibit = { id: 'cold-1', kind: 'cold', quantity: 'capacitance', between: ['line', 'neutral'], value: '330 nF ± 0 nF' };
    expect(judged([pins('51 V ± 1 V'), cold], [], '10 MOhm')).toMatchObject({
      outcome: 'fail',
      limit: { name: 'charged', at: { value: 60 } },
    });
  });

  it('somebody looked and found no suppression part: nothing holds a charge, whatever the meter is', () => {
    const none = board({ suppression: { state: 'absent', because: 'two diodes and a resistor' } });
    expect(judged([pins('2 V ± 1 V'), none], [], null)).toMatchObject({ outcome: 'pass', limit: { at: { value: 60 } } });
    expect(judged([pins('80 V ± 1 V'), none], [], null)).toMatchObject({ outcome: 'fail' });
  });

  it('an X capacitor whose value nobody could read leaves the capacitance unknown', () => {
    const { measured: _measured, ...unread } = xCapacitor('330 nF', { value: { state: 'unknown', because: 'sleeved' } });
    expect(noteKeys(judged([pins('10 V ± 1 V')], [unread]))).toContain('plugCapacitanceUnknown');
  });
});

describe('where in the cycle the plug left the socket', () => {
  const blind = (value: Pins['value'], more: Partial<Pins> = {}): Pins => {
    const { start: _start, ...rest } = pins(value, more);
    return { ...rest, under: { mains: '264 V ± 0 V' } };
  };

  it('a capture that shows the start is scaled to the crest of the highest mains: 50 V from 300 V is 62.2 V from 373 V', () => {
    const finding = judged([pins('50 V ± 0.5 V', { start: '300 V ± 0 V' })]);
    expect(volts(finding)).toBeCloseTo(62.225, 2);
    expect(finding.outcome).toBe('fail');
  });

  it('one try at a moment nobody saw is a floor: 30 V may have started near zero', () => {
    const finding = judged([blind('30 V ± 1 V')]);
    expect(finding).toMatchObject({ outcome: 'inconclusive', reason: 'oneSided', measured: { side: 'above' } });
    expect(noteKeys(finding)).toContain('plugStartNotSeen');
  });

  it('the worst of ten tries bounds it: all ten below 0.9185 of the crest has a chance of 0.05', () => {
    // sin(π/2 · 0.05^(1/10)) = 0.91846; 55.1 V is the most that still passes
    const passed = judged([blind('54 V ± 0 V', { tries: 10 })]);
    expect(passed).toMatchObject({ outcome: 'pass', measured: { side: 'below' } });
    expect(volts(passed)).toBeCloseTo(58.794, 2);
    expect(judged([blind('56 V ± 0 V', { tries: 10 })]).outcome).toBe('inconclusive');
    expect(judged([blind('54 V ± 0 V', { tries: 5 })]).outcome).toBe('inconclusive');
  });

  it('ten exhibits of one try each are ten tries, and the worst counts', () => {
    const ten = Array.from({ length: 10 }, (_, index) => blind(`${index === 6 ? 54 : 20} V ± 0 V`, { id: `pins-${index}` }));
    const finding = judged(ten);
    expect(finding.outcome).toBe('pass');
    expect(volts(finding)).toBeCloseTo(58.794, 2);
  });

  it('a single try that is over the limit fails: a better moment only makes it worse', () => {
    expect(judged([blind('70 V ± 1 V')])).toMatchObject({ outcome: 'fail', measured: { side: 'above' } });
  });

  it('at 230 V a floor of 55 V is 63 V at the highest mains; with neither start nor mains stated it stays a floor of 55 V', () => {
    const at230 = judged([{ ...blind('55 V ± 0.5 V'), under: { mains: '230 V ± 0 V' } }]);
    expect(volts(at230)).toBeCloseTo((55 * 264) / 230, 2);
    expect(at230.outcome).toBe('fail');
    const { under: _under, ...unstated } = blind('55 V ± 0.5 V', { tries: 50 });
    const floor = judged([unstated]);
    expect(floor).toMatchObject({ outcome: 'inconclusive', reason: 'oneSided' });
    expect(noteKeys(floor)).toContain('mainsNotStated');
  });

  it('a meter held to the pins at the last moment has discharged nothing: without the start its correction lets nothing pass, and fails nothing either', () => {
    // 45 V as read; 82.5 V if 10 MΩ was on 330 nF all the time: between the two lines of 60 V nothing is certain
    expect(judged([blind('45 V ± 0.5 V', { tries: 200 })], [xCapacitor()], '10 MOhm')).toMatchObject({
      outcome: 'inconclusive',
      reason: 'oneSided',
      measured: { side: 'above', value: expect.closeTo(45, 6) },
    });
    expect(judged([blind('20 V ± 0.5 V', { tries: 200 })], [xCapacitor()], '10 MOhm').outcome).toBe('pass');
    expect(judged([blind('94 V ± 1 V', { tries: 200 })], [], '10 MOhm')).toMatchObject({ outcome: 'inconclusive', reason: 'unknownValue' });
  });

  it('without the start, a little early can only pass and a little late only fail', () => {
    expect(judged([blind('50 V ± 0.5 V', { tries: 200, after: '1.95 s' })]).outcome).toBe('pass');
    expect(judged([blind('70 V ± 0.5 V', { after: '1.95 s' })]).outcome).not.toBe('fail');
    expect(judged([blind('70 V ± 0.5 V', { after: '2.05 s' })]).outcome).toBe('fail');
    expect(judged([blind('50 V ± 0.5 V', { tries: 200, after: '2.05 s' })]).outcome).not.toBe('pass');
  });

  it('a reading with its start seen settles what the blind tries leave open', () => {
    expect(judged([blind('30 V ± 1 V', { id: 'blind' }), pins('40 V ± 1 V')]).outcome).toBe('pass');
    expect(judged([blind('90 V ± 1 V', { id: 'blind' }), pins('40 V ± 1 V')]).outcome).toBe('fail');
  });
});

describe('when it was read', () => {
  it('earlier than two seconds it can only pass, later it can only fail', () => {
    expect(judged([pins('50 V ± 1 V', { after: '1 s' })])).toMatchObject({ outcome: 'pass', measured: { side: 'below' } });
    expect(judged([pins('90 V ± 1 V', { after: '1 s' })])).toMatchObject({ outcome: 'inconclusive', reason: 'oneSided' });
    expect(judged([pins('50 V ± 1 V', { after: '5 s' })])).toMatchObject({ outcome: 'inconclusive', reason: 'oneSided' });
    expect(judged([pins('90 V ± 1 V', { after: '5 s' })])).toMatchObject({ outcome: 'fail', measured: { side: 'above' } });
  });

  it('a little early or late is carried along the exponential, and the doubt of the moment goes along', () => {
    // 373.352 V · (57/373.352)^(2/2.1) = 62.34 V
    const late = judged([pins('57 V ± 0 V', { after: '2.1 s ± 0 s' })]);
    expect(volts(late)).toBeCloseTo(62.34, 1);
    expect(late.outcome).toBe('fail');
    // dV/dt = -57 V · ln(373.352/57) / 2 s = -53.6 V/s; ± 0.2 s is a standard uncertainty of 0.1 s
    const vague = judged([pins('57 V ± 0 V', { after: '2 s ± 0.2 s' })]);
    expect(vague.measured).toMatchObject({ u: expect.closeTo(5.36, 1) });
    expect(vague.outcome).toBe('inconclusive');
  });
});

describe('what is no reading, and the cross-check', () => {
  it('nobody looked, struck, unknown, cannot now', () => {
    expect(findingsOf(judge(unit([])), 'shock/plug-discharge')).toMatchObject([{ outcome: 'notAssessed', reason: 'notLooked' }]);
    expect(judged([pins('90 V', { struck: 'probe fell off' })])).toMatchObject({ outcome: 'notAssessed', reason: 'struck' });
    expect(judged([pins({ state: 'unknown', because: 'the trace was cut' })])).toMatchObject({
      outcome: 'inconclusive',
      reason: 'unknownValue',
    });
    expect(judged([pins({ state: 'cannotNow', since: 'burnt' })])).toMatchObject({ outcome: 'notAssessed', reason: 'cannotNow' });
  });

  it('below 5 V passes as a bound, above 5 V tells nothing', () => {
    expect(judged([pins('< 5 V')])).toMatchObject({ outcome: 'pass', measured: { side: 'below' } });
    expect(judged([pins('> 5 V')])).toMatchObject({ outcome: 'inconclusive', reason: 'oneSided' });
    expect(judged([pins('> 90 V')]).outcome).toBe('fail');
  });

  it('a voltage without an uncertainty within a tenth of the limit is inconclusive', () => {
    const plain = unit([pins('58 V')]);
    const finding = findingOf(judge({ ...plain, instruments: [{ ...probe('1000 GOhm'), ranges: [] }] }), 'shock/plug-discharge@pins');
    expect(finding).toMatchObject({ outcome: 'inconclusive', reason: 'uncertaintyUnknown' });
  });

  it('bleeders in a chain or side by side say what should be left: 330 nF and 2 MΩ leave 18 V, 1 MΩ leaves 0.9 V', () => {
    const bleeder = (id: string, nets: [string, string], value = '1 MOhm'): PartInput => ({
      id,
      ref: id,
      kind: 'resistor',
      value,
      pins: nets.map((net, at) => ({ pin: String(at), net })),
    });
    const chain = [bleeder('r1', ['line', 'middle']), bleeder('r2', ['middle', 'neutral'])];
    const beside = [bleeder('r1', ['line', 'neutral'], '2 MOhm'), bleeder('r2', ['line', 'neutral'], '2 MOhm')];
    const computed = (parts: PartInput[]): number => {
      const assessment = judge(unit([pins('18 V ± 1 V'), board({ bleeders: ['r1', 'r2'] })], [xCapacitor(), ...parts]));
      return assessment.steps.find(({ id }) => id === 'touch/pins/computed-residual')?.value ?? Number.NaN;
    };
    expect(computed(chain)).toBeCloseTo(373.352 * Math.exp(-2 / 0.66), 2);
    expect(computed(beside)).toBeCloseTo(373.352 * Math.exp(-2 / 0.33), 2);
    // one on the pins and one somewhere else is not guessed
    expect(computed([bleeder('r1', ['line', 'neutral']), bleeder('r2', ['out-plus', 'out-minus'])])).toBeNaN();
  });
});

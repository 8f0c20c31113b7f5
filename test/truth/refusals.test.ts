import { describe, expect, it } from 'vitest';
import { parseCase } from '../../src/core/evidence/parse-case.ts';
import { type Refusal, sentence } from '../../src/core/quantity/refusal.ts';
import { type CasePatch, caseJson, judge } from './build-case.ts';
import { across, CONDUCTORS, face, gap, label, PLAIN_DAY, plainMeter, spot, sweep, touch, usbPort } from './evidence-pieces.ts';

/** A path of keys to something wrong: bad input is written as JSON, where no type can stop it. */
type Path = readonly (string | number)[];

function spoilt(patch: CasePatch, path: Path, value: unknown): Record<string, unknown> {
  const json = caseJson(patch);
  let here: Record<string | number, unknown> = json;
  for (const key of path.slice(0, -1)) here = here[key] as Record<string | number, unknown>;
  const last = path.at(-1)!;
  if (value === undefined) delete here[last];
  else here[last] = value;
  return json;
}

function refusalsOf(json: unknown): Refusal[] {
  const parsed = parseCase(json);
  return Array.isArray(parsed) ? parsed : [];
}

/** The one refusal of a case with one thing wrong. */
function refusalOf(json: unknown): Refusal {
  const found = refusalsOf(json);
  if (found.length !== 1) throw new Error(`${found.length} refusals: ${found.map(sentence).join('; ')}`);
  return found[0]!;
}

const GAP: CasePatch = { conductors: CONDUCTORS, exhibits: [gap('9 mm')] };
const SWEEP: CasePatch = {
  ports: [usbPort()],
  instruments: [plainMeter('0.01 V')],
  days: [PLAIN_DAY],
  exhibits: [
    sweep([
      ['0', '5.1'],
      ['1', '5.0'],
    ]),
  ],
};

describe('a key that nobody knows', () => {
  it('at the top is named with the nearest one there is', () => {
    const refusal = refusalOf(spoilt({}, ['exibits'], []));
    expect(refusal).toMatchObject({ code: 'unknown-key', place: '/exibits', got: 'exibits', suggestion: 'exhibits' });
    expect(sentence(refusal)).toBe('/exibits: got "exibits", expected a key of this place; did you mean "exhibits"?');
  });

  it('inside an exhibit is named by the id of the exhibit', () => {
    const json = spoilt({ conductors: CONDUCTORS, exhibits: [label({ class: 'II' })] }, ['exhibits', 0, 'makr'], 'Invented maker');
    expect(refusalOf(json)).toMatchObject({ code: 'unknown-key', place: '/exhibits/label-1/makr', suggestion: 'maker' });
  });

  it('far from every known key is refused without a guess', () => {
    const refusal = refusalOf(spoilt(GAP, ['zzzzzzzzzzzz'], 1));
    expect(refusal.suggestion).toBeUndefined();
    expect(sentence(refusal)).not.toContain('did you mean');
  });
});

describe('a quantity that is none', () => {
  it.each([
    ['wrong-dimension', '9 V'],
    ['unknown-unit', '9 mmm'],
    ['no-unit', '9'],
    ['empty', ''],
    ['not-a-quantity', 'long enough'],
  ])('%s: "%s" for a length is one sentence with the place, what was got and what was expected', (code, text) => {
    const refusal = refusalOf(spoilt(GAP, ['exhibits', 0, 'value'], text));
    expect(refusal).toMatchObject({ code, place: '/exhibits/gap-1/value', got: text });
    expect(sentence(refusal)).toMatch(/^\/exhibits\/gap-1\/value: got ".*", expected a length such as 4\.9 mm/);
    expect(sentence(refusal)).not.toContain('\n');
  });

  it('a unit in the wrong case is refused with the right one', () => {
    expect(refusalOf(spoilt(GAP, ['exhibits', 0, 'value'], '9 MM'))).toMatchObject({ code: 'unknown-unit', suggestion: '9 mm' });
  });

  it('a comma that may separate thousands is not guessed at', () => {
    expect(refusalOf(caseJson({ setting: { market: 'EU', altitude: '2,000 m' } }))).toMatchObject({
      code: 'ambiguous-comma',
      place: '/setting/altitude',
    });
  });

  it('inside a reading the place goes down to the value', () => {
    expect(refusalOf(spoilt(GAP, ['exhibits', 0, 'value'], { v: '9 A' }))).toMatchObject({
      code: 'wrong-dimension',
      place: '/exhibits/gap-1/value/v',
    });
  });

  it('a bare number is no reading', () => {
    expect(refusalOf(spoilt(GAP, ['exhibits', 0, 'value'], 9))).toMatchObject({
      code: 'wrong-form',
      place: '/exhibits/gap-1/value',
      got: '9',
    });
  });

  it('a bound with an uncertainty is not one thing', () => {
    expect(refusalOf(spoilt(GAP, ['exhibits', 0, 'value'], '< 9 mm ± 1 mm')).place).toBe('/exhibits/gap-1/value');
  });

  it('an accuracy that says nothing', () => {
    const meter = { id: 'm', name: 'm', ranges: [{ of: 'mains', accuracy: 'very good' }] } as const;
    expect(refusalOf(caseJson({ instruments: [{ ...meter, ranges: [...meter.ranges] }] }))).toMatchObject({
      code: 'not-an-accuracy',
      place: '/instruments/m/ranges/0/accuracy',
    });
  });

  it('every wrong thing is said at once, one sentence each', () => {
    const json = spoilt(spoilt(GAP, ['exhibits', 0, 'value'], '9 V') as CasePatch, ['setting', 'altitude'], '3 kg');
    expect(
      refusalsOf(json)
        .map(({ place }) => place)
        .sort(),
    ).toEqual(['/exhibits/gap-1/value', '/setting/altitude']);
  });
});

describe('a value that cannot be below zero', () => {
  // refused, or at the least judged as anything but a pass
  const refusedOrOpen = (patch: CasePatch, check: string): boolean => {
    if (refusalsOf(caseJson(patch)).length > 0) return true;
    return judge(patch).findings.every((finding) => finding.check !== check || finding.outcome !== 'pass');
  };

  it('a distance', () =>
    expect(refusalsOf(spoilt(GAP, ['exhibits', 0, 'value'], '-9 mm'))).toMatchObject([{ place: '/exhibits/gap-1/value' }]));

  it('a touch current with a slipped sign acquits nobody', () => {
    expect(refusedOrOpen({ conductors: CONDUCTORS, exhibits: [touch('-7 mA ± 0.1 mA')] }, 'shock/touch-current')).toBe(true);
  });

  it('a mains voltage with a slipped sign does not turn a touch current about', () => {
    const under = { mains: '-230 V ± 0 V', frequency: '50 Hz ± 0 Hz', supply: 'direct', orientation: 'A' } as const;
    expect(refusedOrOpen({ conductors: CONDUCTORS, exhibits: [touch('7 mA ± 0.1 mA', { under })] }, 'shock/touch-current')).toBe(true);
  });

  it('an rms working voltage with a slipped sign asks for no less', () => {
    const working = {
      id: 'w',
      kind: 'workingVoltage',
      between: ['hv-minus', 'out-minus'],
      rms: '-240 V ± 1 V',
      under: { supply: 'direct' },
    } as const;
    expect(
      refusedOrOpen(
        { conductors: CONDUCTORS, exhibits: [gap('3.5 mm'), { ...working, between: ['hv-minus', 'out-minus'] }] },
        'shock/creepage',
      ),
    ).toBe(true);
  });

  it('a distance from a conductor to itself accuses nobody', () => {
    const patch: CasePatch = { conductors: CONDUCTORS, exhibits: [gap('1 mm', { to: 'hv-minus' })] };
    expect(refusalsOf(caseJson(patch)).length > 0 || judge(patch).verdict.decidedBy.length === 0).toBe(true);
  });

  it('an output with its poles the wrong way round is not one that harms nothing', () => {
    const reversed = judge({
      ...SWEEP,
      exhibits: [
        sweep([
          ['0', '-5.1'],
          ['1', '-5.0'],
        ]),
      ],
    });
    expect(reversed.findings.find(({ check }) => check === 'harm/overvoltage')?.outcome).not.toBe('pass');
  });
});

describe('an id that stands twice', () => {
  it('in a list of the case', () => {
    const refusal = refusalOf(caseJson({ conductors: [...CONDUCTORS, CONDUCTORS[0]!] }));
    expect(refusal).toMatchObject({ code: 'id-twice', place: '/conductors/line/id', got: 'line' });
  });

  it('in the rows of a sweep, which would put two readings under one name', () => {
    const json = spoilt(SWEEP, ['exhibits', 0, 'table', 'rows', 1, 'id'], 'r1');
    expect(refusalsOf(json)).toMatchObject([{ code: 'id-twice' }]);
  });

  it('in the rows of a set of temperatures', () => {
    const rows = [
      { id: 'one', place: 'face', value: '60 °C', by: 'contact' },
      { id: 'one', place: 'face', value: '90 °C', by: 'contact' },
    ] as const;
    expect(
      refusalsOf(caseJson({ ports: [usbPort()], places: [face()], exhibits: [spot('face', '60 °C', { rows: [...rows] })] })),
    ).toMatchObject([{ code: 'id-twice' }]);
  });

  it('in the levels of a port, which would put two findings under one name', () => {
    const levels = [
      { id: '5v', voltage: '5 V' },
      { id: '5v', voltage: '9 V' },
    ];
    expect(refusalsOf(caseJson({ ports: [usbPort('2 A', { levels })] }))).toMatchObject([{ code: 'id-twice' }]);
  });
});

describe('a reference to something that is not there', () => {
  const broken = (json: unknown, place: string): void => {
    const found = refusalsOf(json);
    expect(found).toMatchObject([{ code: 'no-such-id' }]);
    expect(found[0]?.place).toContain(place);
    expect(sentence(found[0]!)).toMatch(/^\/.*: got ".*", expected an id/);
  };

  it('a conductor, a port, a place, a day, an instrument of the day, a pin', () => {
    broken(spoilt(GAP, ['exhibits', 0, 'to'], 'nowhere'), '/exhibits/gap-1/to');
    broken(spoilt(SWEEP, ['exhibits', 0, 'port'], 'nowhere'), '/exhibits/sweep-1/port');
    broken(
      spoilt({ ports: [usbPort()], places: [face()], exhibits: [spot('face', '60 °C')] }, ['exhibits', 0, 'rows', 0, 'place'], 'nowhere'),
      '/exhibits/spots-1/rows/one/place',
    );
    broken(spoilt(SWEEP, ['exhibits', 0, 'day'], 'day-9'), '/exhibits/sweep-1/day');
    broken(spoilt(SWEEP, ['days', 0, 'uses', 'outputVoltage'], 'nowhere'), '/days/day-1/uses/outputVoltage');
    broken(caseJson({ conductors: CONDUCTORS, parts: [across('c1', 'line', 'nowhere')] }), '/parts/c1/pins/1/net');
  });

  it('a level of a port: a sweep that belongs to no level would be lost without a word', () => {
    broken(spoilt(SWEEP, ['exhibits', 0, 'level'], '6v'), '/exhibits/sweep-1/level');
  });

  it('a level in the loads of an exhibit', () => {
    broken(
      spoilt(
        { ports: [usbPort()], places: [face()], exhibits: [spot('face', '60 °C')] },
        ['exhibits', 0, 'under', 'loads', 0, 'level'],
        '9v',
      ),
      '/exhibits/spots-1/under/loads',
    );
  });

  it('an instrument named on a reading: its doubt would be lost without a word', () => {
    broken(spoilt(GAP, ['exhibits', 0, 'value'], { v: '9 mm', instrument: 'nowhere' }), '/exhibits/gap-1/value');
  });

  it('an instrument named on what was read of a part', () => {
    const part = across('c1', 'line', 'neutral', { measured: { v: '10 µF', instrument: 'nowhere' } });
    broken(caseJson({ conductors: CONDUCTORS, parts: [part] }), '/parts/c1/measured/instrument');
  });

  it('a photograph: what it is to show would be shown by nothing', () => {
    broken(spoilt(GAP, ['exhibits', 0, 'photo'], 'gap-1'), '/exhibits/gap-1/photo');
    broken(caseJson({ conductors: CONDUCTORS, parts: [{ ...across('c1', 'line', 'neutral'), photo: 'nowhere' }] }), '/parts/c1/photo');
    broken(
      spoilt(GAP, ['exhibits', 0, 'value'], { state: 'absent', because: 'a wire across', photo: 'nowhere' }),
      '/exhibits/gap-1/value/photo',
    );
  });

  it('the event after which something could no longer be done', () => {
    broken(spoilt(GAP, ['exhibits', 0, 'value'], { state: 'cannotNow', since: 'nowhere' }), '/exhibits/gap-1/value/since');
  });

  it('ports and levels in the loads of a day, a reading, and of a lead', () => {
    const day = (under: object, more: object = {}): unknown =>
      caseJson({ ports: [usbPort()], days: [{ ...PLAIN_DAY, uses: {}, under: { ...PLAIN_DAY.under, ...under }, ...more }] });
    broken(day({ loads: [{ port: 'nowhere', draws: '1 A' }] }), '/days/day-1/under/loads');
    broken(day({ loads: [{ port: 'usb', level: '9v', draws: '1 A' }] }), '/days/day-1/under/loads');
    broken(day({}, { leads: [{ id: 'lead', port: 'nowhere', resistance: '0.1 Ω' }] }), '/days/day-1/leads/lead/port');
    broken(
      spoilt(GAP, ['exhibits', 0, 'value'], { v: '9 mm', under: { loads: [{ port: 'nowhere', draws: '1 A' }] } }),
      '/exhibits/gap-1/value/under/loads',
    );
  });

  it('a part named by the board', () => {
    broken(caseJson({ exhibits: [{ id: 'board-1', kind: 'board', suppression: ['c9'] }] }), '/exhibits/board-1/suppression');
  });
});

describe('words out of a list', () => {
  it('a supply, a method, a market are refused with the words there are', () => {
    expect(
      sentence(refusalOf(spoilt({ conductors: CONDUCTORS, exhibits: [touch('1 mA')] }, ['exhibits', 0, 'under', 'supply'], 'isolated'))),
    ).toBe('/exhibits/touch-a/under/supply: got "isolated", expected one of direct, isolating, electronic');
    expect(refusalOf(spoilt(GAP, ['exhibits', 0, 'method'], 'ruler'))).toMatchObject({ place: '/exhibits/gap-1/method', got: 'ruler' });
    expect(refusalOf(spoilt(GAP, ['setting', 'market'], 'XX'))).toMatchObject({ place: '/setting/market', got: 'XX' });
  });

  it('an unknown kind of exhibit is named as it was written, at its place', () => {
    const refusal = refusalOf(spoilt(GAP, ['exhibits', 0], { id: 'odd', kind: 'distanc' }));
    expect(refusal).toMatchObject({ code: 'unknown-kind', place: '/exhibits/odd/kind', got: 'distanc' });
  });

  it('an unknown state of a value is named as it was written, at its place', () => {
    const refusal = refusalOf(spoilt(GAP, ['exhibits', 0, 'value'], { state: 'none' }));
    expect(refusal).toMatchObject({ code: 'unknown-kind', place: '/exhibits/gap-1/value/state', got: 'none' });
  });

  it('a pollution degree of 4 is refused with all three degrees there are', () => {
    const text = sentence(refusalOf(spoilt(GAP, ['setting', 'pollutionDegree'], 4)));
    for (const degree of ['1', '2', '3']) expect(text.split('expected')[1]).toContain(degree);
  });

  it('a state that owes a reason is refused without one', () => {
    expect(refusalOf(spoilt(GAP, ['exhibits', 0, 'value'], { state: 'unknown' }))).toMatchObject({
      place: '/exhibits/gap-1/value/because',
    });
    expect(refusalOf(spoilt(GAP, ['exhibits', 0, 'value'], { state: 'absent' }))).toMatchObject({ place: '/exhibits/gap-1/value/because' });
  });
});

describe('a document that is no case, or not ours', () => {
  it('a newer format is said to be one, and nothing else is complained of', () => {
    const refusal = refusalOf({ ...caseJson(), format: 'mainsworthy-case/2', somethingNew: true });
    expect(refusal).toMatchObject({ code: 'newer-format', place: '/format', got: 'mainsworthy-case/2' });
    expect(sentence(refusal)).toContain('another version of the tool');
  });

  it('another format is refused at its place', () => {
    expect(refusalOf({ ...caseJson(), format: 'a shopping list' })).toMatchObject({ place: '/format', got: 'a shopping list' });
  });

  it('whatever is not an object is refused, never thrown', () => {
    for (const json of [null, undefined, 7, 'text', [], true]) {
      expect(refusalsOf(json).length).toBeGreaterThan(0);
      for (const refusal of refusalsOf(json)) expect(sentence(refusal)).not.toContain('\n');
    }
  });

  it('only the required keys are asked for', () => {
    for (const key of ['format', 'id', 'product', 'sample', 'setting'])
      expect(refusalOf(spoilt({}, [key], undefined))).toMatchObject({ place: `/${key}` });
    expect(refusalsOf(caseJson())).toEqual([]);
  });
});

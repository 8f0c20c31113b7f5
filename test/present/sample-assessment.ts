import { BENCH_SET, LABORATORY } from '../../src/core/check/bench-set.ts';
import {
  type Amount,
  ASSESSMENT_FORMAT,
  type Assessment,
  assessment,
  type Curve,
  type Finding,
  type Limit,
  type Step,
} from '../../src/core/result/assessment.ts';

/** Hand-made Assessments of invented units, checked against the schema, for drawing only: nothing here was worked out by a check. */
export type Source = NonNullable<Step['source']>;

const HASH = 'ab'.repeat(32);

export function amountOf(value: number, unit: string, u: number | null = null, side?: Amount['side']): Amount {
  return { value, unit, u, ...(side === undefined ? {} : { side }) };
}

export function sourceOf(grade: Source['grade'], place = 'table 1'): Source {
  return { publication: 'Invented rules for adapters', edition: '2021', place, grade, checked: '2026-11-25' };
}

export function limitOf(kind: Limit['kind'], at: Amount | null, grade: Limit['grade'], more: Partial<Limit> = {}): Limit {
  return { kind, name: 'fail', ...(at === null ? {} : { at }), source: sourceOf(grade), grade, ...more };
}

export function findingOf(check: string, more: Partial<Finding> = {}): Finding {
  const bench = BENCH_SET.find(({ id }) => id === check);
  if (bench === undefined) throw new Error(`${check} is not in the bench set`);
  const subject = more.subject ?? null;
  return {
    id: subject === null ? check : `${check}@${subject}`,
    check,
    subject,
    about: null,
    hazard: bench.hazard,
    consequence: bench.worst,
    outcome: 'notAssessed',
    reason: 'notLooked',
    measured: null,
    limit: null,
    others: [],
    margin: null,
    marginBand: null,
    probability: null,
    headline: true,
    step: null,
    fields: [],
    notes: [],
    ...more,
  };
}

export function stepOf(id: string, more: Partial<Step> = {}): Step {
  return {
    id,
    kind: 'reading',
    name: id,
    symbol: null,
    value: null,
    unit: null,
    u: null,
    formula: null,
    uses: [],
    budget: [],
    source: null,
    notes: [],
    ...more,
  };
}

function cellsOf(hazard: 'shock' | 'fire', findings: readonly Finding[]): Assessment['verdict']['cells']['shock'] {
  const states = {
    pass: 'settled',
    fail: 'settled',
    inconclusive: 'inconclusive',
    notAssessed: 'notAssessed',
    notApplicable: 'notApplicable',
  } as const;
  return BENCH_SET.filter((check) => check.hazard === hazard).map(({ id }) => ({
    check: id,
    state: states[findings.find(({ check }) => check === id)?.outcome ?? 'notAssessed'],
  }));
}

/** Fills what is not given: every other check of the bench set is not assessed. */
export function assessmentOf(
  more: { readonly [K in keyof Assessment]?: Assessment[K] } = {},
  verdict: Partial<Assessment['verdict']> = {},
): Assessment {
  const given = more.findings ?? [];
  const checks = new Set(given.map(({ check }) => check));
  const order = BENCH_SET.map(({ id }) => id);
  const findings = [...given, ...BENCH_SET.filter(({ id }) => !checks.has(id)).map(({ id }) => findingOf(id))].sort(
    (a, b) => order.indexOf(a.check) - order.indexOf(b.check),
  );
  const built: Assessment = {
    format: ASSESSMENT_FORMAT,
    tool: 'mainsworthy 0.1.0',
    rules: { version: '1', sha256: HASH },
    case: { id: 'fell-12-a', product: 'fell-12', name: 'Fell 12', sample: 'A', sha256: HASH, invented: true },
    setting: {},
    steps: [],
    formulas: {},
    curves: [],
    next: [],
    lastChance: [],
    claims: [],
    unjudged: [],
    stale: [],
    laboratory: [...LABORATORY],
    warnings: [],
    ...more,
    findings,
    verdict: {
      failure: 'No verdict yet',
      doubtful: null,
      coverage: { shock: 'not examined', fire: 'not examined' },
      cells: { shock: cellsOf('shock', findings), fire: cellsOf('fire', findings) },
      missing: findings
        .filter(({ outcome, hazard }) => outcome === 'notAssessed' && (hazard === 'shock' || hazard === 'fire'))
        .map(({ check, reason }) => ({ check, reason })),
      decidedBy: [],
      doubtfulBy: [],
      also: [],
      grade: null,
      ...verdict,
    },
  };
  return assessment.parse(built);
}

export const CREEPAGE = findingOf('shock/creepage', {
  subject: 'edge',
  about: 'second winding to first, over the winding edge',
  consequence: 'lethal',
  rung: 'belowBasic',
  outcome: 'fail',
  reason: 'notMet',
  measured: amountOf(0.0013, 'm', 0.00005),
  limit: limitOf('atLeast', amountOf(0.005, 'm'), 'secondary', { name: 'reinforced', step: 'limit/creepage' }),
  others: [
    limitOf('atLeast', amountOf(0.0025, 'm'), 'secondary', { name: 'basic' }),
    limitOf('atLeast', amountOf(0.0064, 'm'), 'memory', { name: 'comfort' }),
  ],
  margin: 5 / 1.3,
  marginBand: [5 / 1.4, 5 / 1.2],
  probability: 0.00001,
  show: 'millimetres',
  step: 'board/creepage/edge',
  fields: ['/exhibits/gap-1/value'],
  notes: [{ key: 'workingVoltageEstimated', args: {} }],
});

export const CURVE: Curve = {
  exhibit: 'sweep-1',
  port: 'Lead',
  level: '12 V',
  mains: 230,
  frequency: 50,
  order: 'up',
  sense: 'socket',
  points: [0, 0.25, 0.5, 0.75, 1, 1.25, 1.5, 1.75, 2, 2.1].map((i) => ({
    i,
    v: 12.21 - 0.3 * i - (i > 1.5 ? (i - 1.5) * 1.6 : 0),
    U: 0.05,
    pin: null,
  })),
  window: [11.4, 12.6],
  claim: 2,
  held: 'load/lead/12v/held-current',
  ends: 'window',
};

/** An invented adapter with something of everything. */
export function fullAssessment(): Assessment {
  const held: Step = stepOf('load/lead/12v/held-current', {
    kind: 'reduce',
    name: 'delivery/current',
    symbol: 'I_held',
    value: 1.725,
    unit: 'A',
    u: 0.0085,
    uses: [{ step: 'load/lead/12v/point-7', symbol: 'V_7', sensitivity: -0.5 }],
    budget: [
      { leaf: 'gain/m1/outputVoltage/0', means: 'gain', args: { instrument: 'meter 1' }, u: 0.007, share: 0.68 },
      { leaf: 'counts/1', means: 'digits', args: { instrument: 'meter 1' }, u: 0.0045, share: 0.318 },
      { leaf: 'x', means: 'aKeyNobodyWrote', args: { size: 3 }, u: null, share: null },
    ],
    notes: [{ key: 'interpolated', args: {} }],
  });
  const bridging: Step = stepOf('touch/bridging-current', {
    kind: 'formula',
    name: 'insulation/bridging-current',
    formula: 'insulation/bridging-current',
    symbol: 'I',
    value: 0.0001825,
    unit: 'A',
    u: 0.00001,
    show: 'milliamperes',
    uses: [
      { step: 'setting/frequency', symbol: 'f', sensitivity: null },
      { step: 'parts/bridging', symbol: 'C_Y', sensitivity: null },
      { step: 'setting/mains-high', symbol: 'V', sensitivity: null },
    ],
    budget: [{ leaf: 'tolerance/c5', means: 'stated', args: {}, u: 0.00001, share: 1 }],
    source: sourceOf('reasoned', 'any textbook'),
  });
  const findings: Finding[] = [
    CREEPAGE,
    findingOf('shock/creepage', {
      subject: 'board',
      about: 'bulk plus to output minus',
      consequence: 'injurious',
      rung: 'basicNotReinforced',
      outcome: 'fail',
      reason: 'notMet',
      measured: amountOf(0.0031, 'm', 0.0001),
      limit: CREEPAGE.limit,
      others: CREEPAGE.others,
      margin: 5 / 3.1,
      marginBand: [5 / 3.3, 5 / 2.9],
      probability: 0.00001,
      show: 'millimetres',
    }),
    findingOf('shock/clearance', {
      subject: 'board',
      about: 'bulk plus to output minus',
      rung: 'undecided',
      outcome: 'inconclusive',
      reason: 'withinUncertainty',
      measured: amountOf(0.0031, 'm', 0.0001),
      limit: limitOf('atLeast', amountOf(0.003, 'm'), 'secondary', { name: 'reinforced' }),
      others: [limitOf('atLeast', amountOf(0.0015, 'm'), 'secondary', { name: 'basic' })],
      margin: 3 / 3.1,
      marginBand: [3 / 3.3, 3 / 2.9],
      probability: 0.84,
      show: 'millimetres',
      notes: [{ key: 'basicMetRestUndecided', args: {} }],
    }),
    findingOf('shock/bridging-part', {
      outcome: 'pass',
      reason: 'met',
      measured: { word: 'C5 Y1' },
      limit: limitOf('oneOf', null, 'memory', { words: ['one Y1', 'two Y2'] }),
    }),
    findingOf('shock/touch-current', {
      subject: 'b',
      about: 'way B',
      outcome: 'pass',
      reason: 'met',
      measured: amountOf(0.00018, 'A', 0.00001),
      limit: limitOf('atMost', amountOf(0.0005, 'A'), 'secondary', { name: 'es1' }),
      margin: 0.36,
      marginBand: [0.32, 0.4],
      probability: 0.99999,
      show: 'milliamperes',
      step: bridging.id,
      notes: [
        { key: 'supplyKind', args: { kind: 'direct' } },
        { key: 'aKeyNobodyWrote', args: { where: '<b>here</b>' } },
      ],
    }),
    findingOf('shock/plug-discharge', {
      outcome: 'pass',
      reason: 'met',
      measured: amountOf(4.6, 'V', 0.4),
      limit: limitOf('atMost', amountOf(60, 'V'), 'memory'),
      margin: 4.6 / 60,
      marginBand: [3.8 / 60, 5.4 / 60],
      probability: 1,
    }),
    findingOf('shock/working-voltage', { outcome: 'notAssessed', reason: 'refusedEvidence', measured: amountOf(240, 'V', 3) }),
    findingOf('shock/wire-insulation', { outcome: 'notApplicable', reason: 'doesNotApply' }),
    findingOf('fire/winding-temperature', {
      state: 'labelLoad',
      outcome: 'fail',
      reason: 'notMet',
      measured: amountOf(404.15, 'K', 3),
      limit: limitOf('atMost', amountOf(383.15, 'K'), 'memory'),
      margin: 91 / 70,
      marginBand: [85 / 70, 97 / 70],
      probability: 0.0004,
      headline: false,
    }),
    findingOf('fire/fuse', {
      outcome: 'fail',
      reason: 'notMet',
      measured: amountOf(35, 'A', null),
      limit: limitOf('atLeast', amountOf(200, 'A'), 'memory'),
      margin: 200 / 35,
      probability: 0.001,
    }),
    findingOf('burn/enclosure-temperature', {
      outcome: 'fail',
      reason: 'notMet',
      measured: amountOf(356.15, 'K', 1.5),
      limit: limitOf('atMost', amountOf(350.15, 'K'), 'memory'),
      margin: 58 / 52,
      marginBand: [55 / 52, 61 / 52],
      probability: 0.00002,
      notes: [{ key: 'asRead', args: {} }],
    }),
    findingOf('harm/ripple', {
      outcome: 'pass',
      reason: 'met',
      measured: amountOf(0.096, 'V', 0.004),
      limit: limitOf('atMost', amountOf(0.12, 'V'), 'memory'),
      margin: 0.8,
      marginBand: [0.73, 0.87],
      probability: 1,
    }),
    findingOf('delivery/current', {
      subject: 'lead',
      about: 'lead, 12 V',
      outcome: 'fail',
      reason: 'notMet',
      measured: amountOf(1.725, 'A', 0.0085),
      limit: limitOf('atLeast', amountOf(2, 'A'), 'official-text', { name: 'claim' }),
      margin: 2 / 1.725,
      marginBand: [2 / 1.742, 2 / 1.708],
      probability: 0,
      step: held.id,
    }),
    findingOf('delivery/voltage-window', {
      outcome: 'pass',
      reason: 'met',
      measured: amountOf(12.21, 'V', 0.025),
      limit: limitOf('within', amountOf(11.4, 'V'), 'memory', { to: amountOf(12.6, 'V') }),
      margin: 0.35,
      marginBand: [0.27, 0.43],
      probability: 1,
    }),
    findingOf('endurance/capacitor-life', {
      outcome: 'fail',
      reason: 'notMet',
      measured: amountOf(2900 * 3600, 's', 500 * 3600),
      limit: limitOf('atLeast', amountOf(8760 * 3600, 's'), 'common-practice'),
      margin: 8760 / 2900,
      marginBand: [8760 / 4060, 8760 / 2071],
      probability: 0.0001,
      show: 'hours',
    }),
  ];
  return assessmentOf(
    {
      setting: {
        market: { value: 'EU', from: 'case', source: null },
        mains: { value: '230 V, 50 Hz', from: 'default', source: sourceOf('secondary', 'table 3') },
        highestAmbient: { value: '40 °C', from: 'case', source: null },
        pollutionDegree: { value: '2', from: 'default', source: sourceOf('memory', 'clause 5') },
      },
      findings,
      steps: [
        stepOf('setting/frequency', { kind: 'typed', name: 'frequency', symbol: 'f', value: 50, unit: 'Hz', u: 0 }),
        stepOf('setting/mains-high', {
          kind: 'typed',
          name: 'mains-high',
          symbol: 'V',
          value: 264,
          unit: 'V',
          u: 0,
          source: sourceOf('secondary', 'table 3'),
        }),
        stepOf('parts/bridging', {
          kind: 'reading',
          name: 'sum of bridging capacitors',
          symbol: 'C_Y',
          value: 2.2e-9,
          unit: 'F',
          u: 2.2e-10,
          field: '/parts/c5/measured',
        }),
        bridging,
        stepOf('load/lead/12v/point-7', {
          kind: 'reading',
          name: 'output voltage, point 7',
          symbol: 'V_7',
          value: 11.285,
          unit: 'V',
          u: 0.025,
          field: '/exhibits/sweep-1/table/rows/7/V',
        }),
        held,
        stepOf('limit/creepage', {
          kind: 'lookUp',
          name: 'creepage, reinforced',
          value: 0.005,
          unit: 'm',
          u: null,
          show: 'millimetres',
          source: sourceOf('secondary', 'table F.4'),
        }),
        stepOf('board/creepage/edge', {
          kind: 'reading',
          name: 'distance over the surface',
          symbol: 'd',
          value: 0.0013,
          unit: 'm',
          u: 0.00005,
          show: 'millimetres',
          field: '/exhibits/gap-1/value',
        }),
      ],
      formulas: {
        'insulation/bridging-current': {
          tex: 'I = 2\\pi f C_Y V',
          text: 'I = 2π · f · C_Y · V',
          validity: 'none given',
          symbol: 'I',
          means: 'current through the bridging capacitors',
          inputs: [
            { symbol: 'f', means: 'mains frequency' },
            { symbol: 'C_Y', means: 'sum of bridging capacitors' },
            { symbol: 'V', means: 'mains voltage' },
          ],
        },
      },
      curves: [CURVE],
      next: [
        {
          id: 'next-1',
          measure: 'workingVoltage',
          about: ['first winding', 'second winding'],
          settles: ['shock/working-voltage'],
          best: 'Dangerous',
          worst: 'Dangerous',
          hazard: ['liveMains'],
          stop: [],
          before: 'desoldering',
        },
        {
          id: 'next-2',
          measure: 'soak',
          about: [],
          settles: ['fire/thermal-runaway', 'fire/board-temperature'],
          best: 'Dangerous',
          worst: 'Dangerous',
          hazard: ['hot', 'neverLeave'],
          stop: [{ of: 'enclosureTemperature', at: amountOf(368.15, 'K'), step: null }],
          before: 'opening',
        },
      ],
      lastChance: [{ before: 'opening', measure: ['touchBothWays', 'soak'] }],
      claims: [
        {
          claim: 'current',
          claimed: amountOf(2, 'A'),
          measured: amountOf(1.725, 'A', 0.0085),
          share: 0.8625,
          probability: 0,
          finding: 'delivery/current@lead',
        },
      ],
      unjudged: [{ exhibit: 'capture-3', kind: 'capture' }],
      warnings: [{ key: 'readingsDisagree', at: '/exhibits/spot-2', args: {} }],
    },
    {
      failure: 'Dangerous',
      doubtful: null,
      coverage: { shock: 'partly examined', fire: 'partly examined' },
      decidedBy: ['shock/creepage@edge'],
      also: [
        { failure: 'Unsafe', by: ['shock/creepage@board', 'fire/fuse', 'burn/enclosure-temperature'] },
        { failure: 'Below its claims', by: ['delivery/current@lead', 'endurance/capacitor-life'] },
      ],
      grade: 'secondary',
    },
  );
}

import type { Assessment, Step } from '../../src/core/result/assessment.ts';
import { amountOf, assessmentOf, sourceOf, stepOf } from './build-assessment.ts';
import { CURVE, sampleFindings } from './sample-findings.ts';

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
  const findings = sampleFindings(bridging.id, held.id);
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
          stop: [{ of: 'caseTemperature', about: 'case', at: amountOf(368.15, 'K'), step: null }],
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

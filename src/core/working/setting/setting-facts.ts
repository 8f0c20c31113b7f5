import { parseQuantity } from '../../quantity/parse-quantity.ts';
import { parseRange } from '../../quantity/parse-range.ts';
import { isRefusal } from '../../quantity/refusal.ts';
import type { Kind } from '../../quantity/unit.ts';
import type { Grade } from '../../source/grade.ts';
import { cite, type Source } from '../../source/source.ts';
import { mains as mainsTable } from '../../table/iec-60038/2009/mains.ts';
import { getCell } from '../../table/look-up.ts';
import { type Chosen, chosen, type Derived, given } from '../../trace/derived.ts';
import { type Bench, exhibitsOf } from '../bench/bench.ts';
import { deriveTyped } from '../bench/derive-reading.ts';
import { findRead } from '../bench/open-value.ts';

export interface SettingFacts {
  readonly nominal: Derived;
  readonly frequency: Derived;
  readonly low: Derived;
  readonly high: Derived;
  readonly highFrequency: Derived;
  readonly highestAmbient: Derived;
  readonly altitude: Derived;
  readonly overvoltageCategory: Chosen;
  readonly pollutionDegree: Chosen;
  readonly contact: Chosen;
  readonly decision: { readonly passAt: number; readonly failAt: number; readonly changed: boolean };
  /** For the head of a report: every key with where it came from. */
  readonly entries: Readonly<Record<string, { value: string; from: 'case' | 'default'; source: Source | null }>>;
}

const PASS_AT = 0.95; // docs/decisions/0003-verdict.md
const FAIL_AT = 0.05;
const UNIVERSAL_FROM_V = 220; // a label whose range reaches this is judged at 230 V mains wherever it was bought
const UNIVERSAL_DOWN_TO_V = 127; // and goes down to American mains
const ROMAN = ['I', 'II', 'III', 'IV'];
const DEFAULTS = {
  highestAmbient: {
    text: '40 °C',
    kind: 'temperature',
    symbol: "T_a'",
    grade: 'common-practice',
    why: 'highest ambient of a small adapter in use',
  },
  altitude: { text: '2000 m', kind: 'length', symbol: 'h', grade: 'secondary', why: 'limits of the tables hold to 2000 m' },
} as const satisfies Record<string, { text: string; kind: Kind; symbol: string; grade: Grade; why: string }>;

/** What the judgement assumes, from the case or by cited default. */
export function settingFacts(bench: Bench): SettingFacts {
  const { setting } = bench.one;
  const entries: Record<string, { value: string; from: 'case' | 'default'; source: Source | null }> = {};
  entries['market'] = { value: setting.market, from: 'case', source: null };

  const market = chosenMarket(bench);
  const mains = (column: 'nominal' | 'frequency' | 'low' | 'high' | 'highFrequency', symbol: string): Derived => {
    // a case that sets its own mains sets their frequency for the highest mains too
    const typed = setting.mains?.[column] ?? (column === 'highFrequency' ? setting.mains?.frequency : undefined);
    const kind = column === 'frequency' || column === 'highFrequency' ? 'frequency' : 'voltage';
    if (typed !== undefined) {
      entries[`mains.${column}`] = { value: typed, from: 'case', source: null };
      return deriveTyped(typed, kind, `/setting/mains/${column}`, `mains-${column}`, symbol);
    }
    const cell = getCell(mainsTable, market, column, `setting/mains/${column}`, symbol);
    entries[`mains.${column}`] = { value: `${cell.value} ${cell.unit}`, from: 'default', source: cell.step.source };
    return cell;
  };
  const amount = (key: keyof typeof DEFAULTS): Derived => {
    const typed = setting[key];
    const { text, kind, symbol, grade, why } = DEFAULTS[key];
    if (typed !== undefined) {
      entries[key] = { value: typed, from: 'case', source: null };
      return deriveTyped(typed, kind, `/setting/${key}`, key, symbol);
    }
    const source = cite('house', why, grade);
    entries[key] = { value: text, from: 'default', source };
    const read = parseQuantity(text, kind);
    if (isRefusal(read)) throw new Error(`the default ${key} cannot be read`);
    return given('constant', read.value, read.unit, { id: `setting/${key}`, name: `setting-${key}`, symbol, source });
  };
  const word = (
    key: 'overvoltageCategory' | 'pollutionDegree' | 'contact',
    fallback: string,
    typed: string | undefined,
    why: string,
  ): Chosen => {
    const source = typed === undefined ? cite('house', why, 'memory') : null;
    entries[key] = { value: typed ?? fallback, from: typed === undefined ? 'default' : 'case', source };
    return chosen(typed ?? fallback, {
      id: `setting/${key}`,
      name: `setting-${key}`,
      source,
      ...(typed === undefined ? {} : { field: `/setting/${key}` }),
    });
  };

  const facts = {
    nominal: mains('nominal', 'U'),
    frequency: mains('frequency', 'f'),
    low: mains('low', 'U_low'),
    high: mains('high', 'V_h'),
    highFrequency: mains('highFrequency', 'f_h'),
    highestAmbient: amount('highestAmbient'),
    altitude: amount('altitude'),
    overvoltageCategory: word(
      'overvoltageCategory',
      'II',
      setting.overvoltageCategory === undefined ? undefined : ROMAN[setting.overvoltageCategory - 1],
      'a plug-in adapter is in overvoltage category II',
    ),
    pollutionDegree: word(
      'pollutionDegree',
      '2',
      setting.pollutionDegree === undefined ? undefined : String(setting.pollutionDegree),
      'inside a closed adapter the pollution degree is 2',
    ),
    contact: word('contact', '1to10s', setting.contact, 'an adapter is gripped for 1 to 10 s when it is pulled from the socket'),
  };
  const passAt = setting.decision?.passAt ?? PASS_AT;
  const failAt = setting.decision?.failAt ?? FAIL_AT;
  entries['decision'] = { value: `${passAt} / ${failAt}`, from: setting.decision === undefined ? 'default' : 'case', source: null };
  return { ...facts, decision: { passAt, failAt, changed: passAt !== PASS_AT || failAt !== FAIL_AT }, entries };
}

/** Row of the mains table: by the label's range where it reaches 220 V, else by the market. */
function chosenMarket(bench: Bench): 'EU' | 'UK' | 'US' | 'JP' | 'universal' {
  for (const label of exhibitsOf(bench, 'label').filter(({ struck }) => struck === undefined)) {
    const text = findRead(label.input?.voltage);
    const range = text === null ? null : parseRange(text, 'voltage');
    if (range === null || isRefusal(range) || range.to.value < UNIVERSAL_FROM_V) continue;
    // a unit for 230 V mains alone meets 230 V mains, wherever it was bought
    return range.from.value <= UNIVERSAL_DOWN_TO_V ? 'universal' : bench.one.setting.market === 'UK' ? 'UK' : 'EU';
  }
  const { market } = bench.one.setting;
  return market === 'other' ? 'universal' : market;
}

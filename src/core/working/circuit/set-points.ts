import type { Recognised } from '../../circuit/recognise/recognise.ts';
import { derive } from '../../formula/derive.ts';
import { auxiliarySetPoint } from '../../formula/feedback/auxiliary-set-point.ts';
import { bypassCurrent } from '../../formula/feedback/bypass-current.ts';
import { ledCurrent } from '../../formula/feedback/led-current.ts';
import { ledFloor } from '../../formula/feedback/led-floor.ts';
import { setPoint } from '../../formula/feedback/set-point.ts';
import { shiftedSetPoint } from '../../formula/feedback/shifted-set-point.ts';
import { zenerSetPoint } from '../../formula/feedback/zener-set-point.ts';
import { cite } from '../../source/source.ts';
import { type Derived, doubtOf, given } from '../../trace/derived.ts';
import { rectangular } from '../../uncertainty/half-width.ts';
import type { Bench } from '../bench/bench.ts';
import { openValue } from '../bench/open-value.ts';
import { markedValue } from '../board/part-quantity.ts';
import { type DividerResistance, dividerResistance, type MissingValue } from './divider-resistance.ts';
import { dropOf } from './drops.ts';
import { lawFigure } from './law-of.ts';
import { type Reference, referenceOf } from './reference-of.ts';
import { turnsOf } from './turns-of.ts';

/** One voltage that the parts set: with no leg of the negotiation chip joined in, or with these. */
export interface SetPoint {
  /** "base", or the legs that are joined in: "r7", "r7+r8". */
  readonly id: string;
  readonly legs: readonly string[];
  /** The level that it is for, where the law of the chip says so. */
  readonly level?: string;
  readonly value: Derived;
  /** For the limits: null where a tolerance of the kind is not known. */
  readonly divider: { readonly reference: Reference; readonly upper: DividerResistance; readonly lower: DividerResistance } | null;
  /** Most current through the LED of the optocoupler; null where its resistor is not known. */
  readonly led: Derived | null;
}

export interface SetPoints {
  readonly how: 'reference' | 'zener' | 'auxiliaryZener';
  readonly points: readonly SetPoint[];
  /** A chip shifts the output by means that resistors do not show. */
  readonly chip: boolean;
  /** Where the loop rests when the divider asks for less than the LED lets it. */
  readonly floor: Derived | null;
  /** What the resistor across the LED hands to the reference; null without one. */
  readonly bypass: Derived | null;
}

export type NoSetPoints = { readonly because: 'notRecognised' | 'setInsideChip' } | ({ readonly because: 'value' } & MissingValue);

const MOST_LEGS = 4; // legs whose every combination is tried; a chip has no more outputs for them, house choice

/** Output voltages that the feedback parts set. */
export function setPoints(bench: Bench, recognised: Recognised): SetPoints | NoSetPoints {
  const { regulation } = recognised;
  if (regulation === null) return { because: 'notRecognised' };
  if (regulation.reference !== null && regulation.divider !== null) return byReference(bench, recognised);
  if (regulation.feedback === 'optocoupler' && regulation.zeners.length > 0) return byZener(bench, recognised);
  if (regulation.feedback === 'auxiliaryZener') return byAuxiliary(bench, recognised);
  if (regulation.feedback === 'auxiliarySense' || regulation.feedback === 'outputSense') return { because: 'setInsideChip' };
  return { because: 'notRecognised' };
}

function byReference(bench: Bench, { regulation, jobs }: Recognised): SetPoints | NoSetPoints {
  const divider = regulation!.divider!;
  const part = bench.parts.get(regulation!.reference!.id)!;
  const reference = referenceOf(part);
  if ('opened' in reference) return { because: 'value', ...reference };
  const rows = (links: readonly { readonly parts: readonly string[] }[]): readonly (readonly string[])[] => links.map(({ parts }) => parts);
  const upper = dividerResistance(bench, rows(divider.upper), 'circuit/divider/upper');
  if ('opened' in upper) return { because: 'value', ...upper };
  const led =
    regulation!.ledResistors.length === 0
      ? null
      : dividerResistance(bench, [regulation!.ledResistors.flatMap(({ parts }) => parts)], 'circuit/led');
  const points: SetPoint[] = [];
  for (const legs of combinations(divider.legs.slice(0, MOST_LEGS))) {
    const id = legs.length === 0 ? 'base' : legs.flatMap(({ parts }) => parts).join('+');
    const lower = dividerResistance(bench, rows([...divider.lower, ...legs]), `circuit/divider/${id}`);
    if ('opened' in lower) {
      if (legs.length === 0) return { because: 'value', ...lower };
      continue; // a leg whose value nobody read leaves the other voltages as they are
    }
    const current = reference.pinCurrent ?? withoutCurrent();
    const value = derive(
      setPoint,
      { reference: reference.voltage, upper: upper.here, lower: lower.here, current },
      `circuit/set-point/${id}`,
    );
    points.push({
      id,
      legs: legs.flatMap(({ parts }) => parts),
      value,
      divider: { reference, upper, lower },
      led: ledAt(value, reference, led, id),
    });
  }
  points.push(...shiftedPoints(bench, jobs, points[0]!, upper, reference, led));
  const bypassed = regulation!.ledBypass.length === 0 ? null : dividerResistance(bench, rows(regulation!.ledBypass), 'circuit/bypass');
  return {
    how: 'reference',
    points,
    chip: [...jobs.values()].some(({ job }) => job === 'negotiation'),
    floor:
      reference.cathodeLeast === null
        ? null
        : derive(ledFloor, { drop: dropOf('led'), cathode: reference.cathodeLeast }, 'circuit/led-floor'),
    bypass:
      bypassed === null || 'opened' in bypassed
        ? null
        : derive(bypassCurrent, { drop: dropOf('led'), resistance: bypassed.here }, 'circuit/bypass-current'),
  };
}

/** Levels that a chip sets by a current out of the reference pin, where its law says so: `sinks` by level id. */
function shiftedPoints(
  bench: Bench,
  jobs: Recognised['jobs'],
  base: SetPoint,
  upper: DividerResistance,
  reference: Reference,
  led: DividerResistance | MissingValue | null,
): SetPoint[] {
  const chips = bench.one.parts.filter(({ id }) => jobs.get(id)?.job === 'negotiation');
  const levels = [...new Set(bench.one.ports.flatMap((port) => port.levels.map(({ id }) => id)))];
  return chips.flatMap((chip) =>
    levels.flatMap((level) => {
      const current = lawFigure(chip, `sinks/${level}`, 'current', 'I_s');
      if (current === null) return [];
      const id = `${chip.id}-${level}`;
      const value = derive(shiftedSetPoint, { output: base.value, current, upper: upper.here }, `circuit/set-point/${id}`);
      return [{ id, legs: [], level, value, divider: null, led: ledAt(value, reference, led, id) }];
    }),
  );
}

function ledAt(output: Derived, reference: Reference, led: DividerResistance | MissingValue | null, id: string): Derived | null {
  if (led === null || 'opened' in led || reference.cathodeLeast === null) return null;
  return derive(
    ledCurrent,
    { output, drop: dropOf('led'), cathode: reference.cathodeLeast, resistance: led.here },
    `circuit/led-current/${id}`,
  );
}

/** Every subset, the empty one first. */
function combinations<T>(items: readonly T[]): T[][] {
  const all: T[][] = [[]];
  for (const item of items) for (const one of [...all]) all.push([...one, item]);
  return all;
}

function withoutCurrent(): Derived {
  return given(
    'constant',
    0,
    'A',
    {
      id: 'circuit/no-pin-current',
      name: 'estimate-pin-current',
      symbol: 'I_r',
      source: cite('bench', 'current into the reference pin left out', 'memory'),
    },
    { form: doubtOf({ id: 'pin-current/unknown', u: null, means: 'estimate' }) },
  );
}

const ROW_MA = 1; // current through Zener and LED while the loop holds, in mA; small against the drop it makes, common practice

function byZener(bench: Bench, { regulation }: Recognised): SetPoints | NoSetPoints {
  const zener = zenerOf(bench, regulation!.zeners[0]!.parts[0]!);
  if ('opened' in zener) return { because: 'value', ...zener };
  const row =
    regulation!.ledResistors.length === 0
      ? null
      : dividerResistance(bench, [regulation!.ledResistors.flatMap(({ parts }) => parts)], 'circuit/led');
  if (row !== null && 'opened' in row) return { because: 'value', ...row };
  const amperes = ROW_MA / 1000;
  const current = given(
    'constant',
    amperes,
    'A',
    {
      id: 'circuit/zener-current',
      name: 'estimate-zener-current',
      symbol: 'I',
      source: cite('bench', 'current through Zener and LED', 'common-practice'),
    },
    { form: doubtOf({ id: 'zener-current', u: rectangular(amperes), means: 'estimate' }) },
  );
  const resistance = row?.here ?? given('constant', 0, 'Ω', { id: 'circuit/no-led-resistor', name: 'noLedResistor', symbol: 'R_F' });
  const value = derive(zenerSetPoint, { zener, drop: dropOf('led'), current, resistance }, 'circuit/set-point/base');
  return { how: 'zener', points: [{ id: 'base', legs: [], value, divider: null, led: null }], chip: false, floor: null, bypass: null };
}

function byAuxiliary(bench: Bench, { regulation, converter }: Recognised): SetPoints | NoSetPoints {
  const zener = zenerOf(bench, regulation!.zeners[0]!.parts[0]!);
  if ('opened' in zener) return { because: 'value', ...zener };
  const [secondary] = converter!.secondaries;
  const [auxiliary] = converter!.auxiliaries;
  if (secondary === undefined || auxiliary === undefined) return { because: 'notRecognised' };
  const [ns, na] = [turnsOf(bench, secondary.winding, 'N_s'), turnsOf(bench, auxiliary.winding, 'N_a')];
  if ('opened' in ns) return { because: 'value', ...ns };
  if ('opened' in na) return { because: 'value', ...na };
  const value = derive(
    auxiliarySetPoint,
    { zener, auxiliaryDrop: dropOf('signalDiode'), base: dropOf('base'), secondary: ns, auxiliary: na, outputDrop: dropOf('schottky') },
    'circuit/set-point/base',
  );
  return {
    how: 'auxiliaryZener',
    points: [{ id: 'base', legs: [], value, divider: null, led: null }],
    chip: false,
    floor: null,
    bypass: null,
  };
}

const ZENER_SHARE = 0.05; // tolerance of a Zener whose marking gives none; common practice

function zenerOf(bench: Bench, id: string): Derived | MissingValue {
  const part = bench.parts.get(id)!;
  const { at, field } = markedValue(part, 'voltage', 'V_z');
  if (at === null) return { opened: openValue(part.value), field };
  if (part.rating?.tolerance !== undefined || at.side !== undefined) return at;
  const form = doubtOf({
    id: `tolerance/${id}`,
    u: rectangular(ZENER_SHARE * at.value),
    means: 'markedTolerance',
    args: { part: part.ref },
  });
  return given('typed', at.value, 'V', { id: field, name: 'markedValue', field, symbol: 'V_z' }, { form });
}

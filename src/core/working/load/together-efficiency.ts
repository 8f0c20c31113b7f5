import { derive } from '../../formula/derive.ts';
import { averageOfFour } from '../../formula/load/average-of-four.ts';
import { derating } from '../../formula/load/derating.ts';
import { efficiency } from '../../formula/load/efficiency.ts';
import { power } from '../../formula/load/power.ts';
import { parseQuantity } from '../../quantity/parse-quantity.ts';
import { isRefusal } from '../../quantity/refusal.ts';
import type { Derived } from '../../trace/derived.ts';
import type { Bench } from '../bench/bench.ts';
import { deriveReading } from '../bench/derive-reading.ts';
import { openValue } from '../bench/open-value.ts';
import { printedTotal, sumOfPowers } from './company-facts.ts';
import { LOAD_POINTS, POINTS, type Point } from './efficiency-at.ts';
import { otherLoads } from './other-loads.ts';
import { nameplateOf, unitNameplate } from './power-facts.ts';
import type { Sweep, SweepRow } from './read-sweep.ts';
import type { LevelFacts } from './sweep-facts.ts';

const ON_THE_POINT = 0.02; // share of its own full load within which a load set by hand stands at its load point; house convention

/** All outputs at one load point: one run of one row, the others loaded and their voltages read meanwhile. */
interface LoadedRun {
  readonly sweep: Sweep;
  readonly row: SweepRow & { readonly inputPower: Derived };
  /** Every port at work: its level, what it drew (A), and its voltage; null where nobody read it. */
  readonly ports: readonly { readonly level: LevelFacts; readonly current: Derived; readonly voltage: Derived | null }[];
}

export interface TogetherEfficiency {
  readonly average: Derived;
  /** Nameplate output power by which the limit is entered. */
  readonly nameplate: Derived;
  /** `multiple`: more than one voltage at the same time. Outputs of one voltage are one output to the regulation. */
  readonly voltages: 'one' | 'several';
  /** Printed voltage (V) and the sum of the printed currents (A), of outputs of one voltage. */
  readonly nominal: Derived;
  readonly amperes: number;
  readonly derated: Derived;
  readonly exhibits: readonly string[];
}

type Missing = { readonly missing: 'runs' | 'printed' | 'voltages' } | { readonly missing: 'point'; readonly point: Point };

/**
 * Average efficiency of several outputs loaded together, each at a quarter, half, three quarters and all of its printed current, all reduced
 * alike where the unit is printed to give less than their sum. Nothing is read between or beyond load points: every one needs its own run.
 */
export function togetherEfficiency(
  bench: Bench,
  levels: readonly LevelFacts[],
  isTestMains: (sweep: Sweep) => boolean,
): TogetherEfficiency | Missing {
  const runs = levels.flatMap((level) => level.sweeps.filter(isTestMains).flatMap((sweep) => loadedRun(bench, levels, level, sweep) ?? []));
  const [first] = runs;
  if (first === undefined) return { missing: 'runs' };
  const working = first.ports.map(({ level }) => level).toSorted((a, b) => (a.id < b.id ? -1 : 1));
  const same = runs.filter(({ ports }) => ports.length === working.length && ports.every(({ level }) => working.includes(level)));
  const plates = working.flatMap((level) => nameplateOf(level) ?? []);
  const printed = printedTotal(bench, levels) ?? unitNameplate(levels);
  if (plates.length < working.length || printed === null) return { missing: 'printed' };
  const sum = sumOfPowers(plates, 'load/printed-together', 'nameplateSum');
  const derated = derive(derating, { printed, sum }, 'load/derating');
  const found = {} as Record<Point, Derived>;
  const exhibits: string[] = [];
  for (const point of LOAD_POINTS) {
    const here = same.filter((run) => standsAt(run, POINTS[point] * derated.value));
    if (here.length === 0) return { missing: 'point', point };
    const each = here.flatMap((run) => efficiencyOf(run, point) ?? []);
    const [worst] = each.toSorted((a, b) => a.value - b.value);
    if (worst === undefined) return { missing: 'voltages' };
    found[point] = worst;
    exhibits.push(...here.map(({ sweep }) => sweep.exhibit.id));
  }
  const volts = new Set(working.map(({ window }) => window!.nominal.value));
  return {
    average: derive(averageOfFour, found, 'load/together/average-efficiency'),
    nameplate: derated.value < 1 ? printed : sum,
    voltages: volts.size > 1 ? 'several' : 'one',
    nominal: working[0]!.window!.nominal,
    amperes: working.reduce((total, { claim }) => total + claim!.value, 0),
    derated,
    exhibits: [...new Set(exhibits)].sort(),
  };
}

/** Null unless every other port of the unit was loaded, the run has one row, and its input power was read. */
function loadedRun(bench: Bench, levels: readonly LevelFacts[], own: LevelFacts, sweep: Sweep): LoadedRun | null {
  const [row] = sweep.rows;
  const loads = otherLoads(bench, sweep.exhibit, sweep.port);
  const others = bench.one.ports.filter(({ id }) => id !== sweep.port);
  if (row === undefined || row.inputPower === null || sweep.rows.length > 1 || loads.length !== others.length) return null;
  const ports = loads.map((load, index) => {
    const level = levels.find((one) => one.port.id === load.port && one.level.id === (load.level ?? one.port.levels[0]?.id));
    const drawn = typeof load.draws === 'string' ? parseQuantity(load.draws, 'current') : null;
    if (level === undefined || drawn === null || isRefusal(drawn)) return null;
    const at = { role: 'outputCurrent', day: sweep.exhibit.day, symbol: 'I' } as const;
    const current = deriveReading(bench, drawn, { ...at, field: `/exhibits/${sweep.exhibit.id}/under/loads/${index}` });
    return { level, current, voltage: voltageOf(bench, sweep, load.port) };
  });
  const known = ports.filter((one) => one !== null);
  if (
    known.length < others.length ||
    [own, ...known.map(({ level }) => level)].some(({ window, claim }) => window === null || claim === null)
  )
    return null;
  return {
    sweep,
    row: { ...row, inputPower: row.inputPower },
    ports: [{ level: own, current: row.current, voltage: row.voltage }, ...known],
  };
}

function voltageOf(bench: Bench, sweep: Sweep, port: string): Derived | null {
  const other = sweep.exhibit.others?.find((one) => one.port === port);
  const opened = openValue<string>(other?.voltage);
  const volts = opened.state === 'read' ? parseQuantity(opened.v, 'voltage') : null;
  if (other === undefined || opened.state !== 'read' || volts === null || isRefusal(volts)) return null;
  const field = `/exhibits/${sweep.exhibit.id}/others/${other.id}/voltage`;
  return deriveReading(bench, volts, {
    field,
    role: 'outputVoltage',
    day: sweep.exhibit.day,
    instrument: opened.read.instrument,
    symbol: 'V',
  });
}

/** Every port draws this share of its own printed current. */
function standsAt({ ports }: LoadedRun, share: number): boolean {
  return ports.every(({ level, current }) => Math.abs(current.value - share * level.claim!.value) <= ON_THE_POINT * level.claim!.value);
}

function efficiencyOf({ sweep, row, ports }: LoadedRun, point: Point): Derived | null {
  const at = `load/${sweep.exhibit.id}/together-${point}`;
  const powers = ports.map(({ voltage, current }, index) =>
    voltage === null ? null : derive(power, { voltage, current }, `${at}/output-${index + 1}`),
  );
  const known = powers.filter((one) => one !== null);
  if (known.length < powers.length) return null;
  return derive(efficiency, { output: sumOfPowers(known, `${at}/output`, 'givenTogether'), input: row.inputPower }, at);
}

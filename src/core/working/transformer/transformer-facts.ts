import { derive } from '../../formula/derive.ts';
import { boundaryCurrent } from '../../formula/magnetics/boundary-current.ts';
import { capacitorRms } from '../../formula/magnetics/capacitor-rms.ts';
import { clampPower } from '../../formula/magnetics/clamp-power.ts';
import { clampedPeak } from '../../formula/magnetics/clamped-peak.ts';
import { continuousRms } from '../../formula/magnetics/continuous-rms.ts';
import { coreLoss } from '../../formula/magnetics/core-loss.ts';
import { fluxDensity } from '../../formula/magnetics/flux-density.ts';
import { gapOfInductance } from '../../formula/magnetics/gap-of-inductance.ts';
import { inductanceOfGap } from '../../formula/magnetics/inductance-of-gap.ts';
import { peakOfPower } from '../../formula/magnetics/peak-of-power.ts';
import { rectifierReverse } from '../../formula/magnetics/rectifier-reverse.ts';
import { reflectedVoltage } from '../../formula/magnetics/reflected-voltage.ts';
import { secondaryPeak } from '../../formula/magnetics/secondary-peak.ts';
import { storedEnergy } from '../../formula/magnetics/stored-energy.ts';
import { strokeRms } from '../../formula/magnetics/stroke-rms.ts';
import { switchPlateau } from '../../formula/magnetics/switch-plateau.ts';
import { peakOfMains } from '../../formula/touch/peak-of-mains.ts';
import { cite } from '../../source/source.ts';
import { triangle } from '../../table/ferrite-loss/2023/triangle.ts';
import { findCell } from '../../table/look-up.ts';
import { combine } from '../../trace/combine.ts';
import { type Derived, doubtOf, given } from '../../trace/derived.ts';
import { rectangular } from '../../uncertainty/half-width.ts';
import type { Bench } from '../bench/bench.ts';
import { findRead } from '../bench/open-value.ts';
import { nameplateOf } from '../load/power-facts.ts';
import type { LevelFacts } from '../load/sweep-facts.ts';
import type { SettingFacts } from '../setting/setting-facts.ts';
import { balanced, bulkAt } from './bulk-at.ts';
import { type ConverterInputs, missingFor, type OperatingPoint, operatingPoint, outputCurrentHeld } from './converter-facts.ts';
import { type CoreValues, coreKey, coreValues } from './core-values.ts';
import type { StackFacts } from './stack-facts.ts';
import { readStackValue } from './stack-value.ts';
import { type Turns, turnsOf } from './turns-of.ts';
import { fillOf, type WindingLoss, windingLoss } from './winding-loss.ts';

/** A worked number of a transformer, by the key of its words. */
export interface WorkedNumber {
  readonly key: string;
  readonly about?: string;
  readonly at: Derived;
}

/** A number that could not be worked out, with the keys of what is missing for it. */
export interface BlockedNumber {
  readonly key: string;
  readonly missing: readonly string[];
}

/** The most that a transformer passes at one mains voltage. */
export interface Capability {
  readonly which: 'nominal' | 'lowest';
  readonly mains: Derived;
  readonly valley: Derived;
  readonly power: Derived;
  readonly point: OperatingPoint;
}

export interface TransformerFacts {
  readonly stack: StackFacts;
  readonly turns: Turns;
  readonly core: CoreValues;
  readonly inputs: ConverterInputs;
  /** The output level with the greatest printed power, else the only one. */
  readonly level: LevelFacts | null;
  readonly capabilities: readonly Capability[];
  readonly flux: Derived | null;
  readonly plateau: Derived | null;
  readonly switchPeak: Derived | null;
  readonly reverse: Derived | null;
  readonly losses: readonly WindingLoss[];
  readonly numbers: readonly WorkedNumber[];
  readonly blocked: readonly BlockedNumber[];
}

const DROP_V = 0.5; // a Schottky diode 0.3 to 0.6 V, a plain one 0.7 to 1.0 V, a switched rectifier next to nothing; common practice
const DROP_HALF_WIDTH_V = 0.45;

function estimatedDrop(): Derived {
  return given(
    'constant',
    DROP_V,
    'V',
    {
      id: 'transformer/rectifier-drop',
      name: 'estimate-rectifier-drop',
      symbol: 'V_f',
      source: cite('bench', 'drop of rectifiers, 0.05 to 0.95 V', 'common-practice'),
    },
    { form: doubtOf({ id: 'estimate/rectifier-drop', u: rectangular(DROP_HALF_WIDTH_V), means: 'estimatedDrop' }) },
  );
}

/** What each transformer can do electrically, from whatever of it is known; each number says what is missing where it cannot be had. */
export function transformerFacts(
  bench: Bench,
  setting: SettingFacts,
  levels: readonly LevelFacts[],
  stacks: readonly StackFacts[],
): TransformerFacts[] {
  return stacks.map((stack) => factsOf(bench, setting, levels, stack));
}

function factsOf(bench: Bench, setting: SettingFacts, levels: readonly LevelFacts[], stack: StackFacts): TransformerFacts {
  const { exhibit, part } = stack;
  const id = `transformer/${part.id}`;
  const field = `/exhibits/${exhibit.id}`;
  const read = (
    key: 'inductance' | 'leakage' | 'frequency' | 'peakCurrent' | 'longestOn' | 'clamp' | 'gap' | 'meanTurn',
    kind: Parameters<typeof readStackValue>[4],
    symbol: string,
  ) => readStackValue(bench, exhibit, exhibit[key], `${field}/${key}`, kind, symbol).at;
  const core = coreValues(bench, exhibit);
  const turns = turnsOf(bench, stack);
  const level = hardestLevel(levels);
  const output = level?.window?.nominal ?? null;
  const drop = estimatedDrop();
  const reflected =
    turns.ratio === null || output === null ? null : derive(reflectedVoltage, { ratio: turns.ratio, output, drop }, `${id}/reflected`);
  const inputs: ConverterInputs = {
    law: findRead(exhibit.law),
    inductance: read('inductance', 'inductance', 'L'),
    peak: read('peakCurrent', 'current', 'I_pk'),
    frequency: read('frequency', 'frequency', 'f'),
    longestOn: read('longestOn', 'ratio', 'D_max'),
    reflected,
    ratio: turns.ratio,
  };
  const numbers: WorkedNumber[] = [];
  const blocked: BlockedNumber[] = [];
  const tell = (key: string, at: Derived | null, missing: readonly string[], about?: string): Derived | null => {
    if (at !== null) numbers.push({ key, at, ...(about === undefined ? {} : { about }) });
    else if (missing.length > 0) blocked.push({ key, missing: [...new Set(missing)] });
    return at;
  };
  const lacking = (wanted: Readonly<Record<string, Derived | null>>): string[] => Object.keys(wanted).filter((key) => wanted[key] === null);
  const noRatio = turns.ratio === null ? turns.missing : [];
  tell('ratio', turns.ratio, noRatio);
  tell('reflected', reflected, [...noRatio, ...(output === null ? ['outputVoltage'] : [])]);

  const capabilities = capabilitiesOf(bench, setting, inputs, id);
  const missing = missingFor(inputs).flatMap((key) => (key === 'reflected' ? (noRatio.length > 0 ? noRatio : ['outputVoltage']) : [key]));
  for (const which of ['lowest', 'nominal'] as const) {
    const own = capabilities.find((one) => one.which === which);
    const rail = bulkAt(bench, setting[MAINS[which]], setting.frequency, `${id}/${which}`);
    tell(which === 'lowest' ? 'mostAtLowest' : 'mostAtNominal', own?.power ?? null, [...missing, ...rail.missing]);
    if (own !== undefined) tell(which === 'lowest' ? 'valleyAtLowest' : 'valleyAtNominal', own.valley, []);
  }
  const highest = derive(peakOfMains, { rms: setting.high }, 'board/crest-of-highest-mains');
  const point = capabilities.find(({ which }) => which === 'nominal')?.point ?? null;
  currents(point);
  const { inductance, peak } = inputs;
  tell(
    'energy',
    inductance === null || peak === null ? null : derive(storedEnergy, { inductance, peak }, `${id}/energy`),
    lacking({ inductance, peak }),
  );
  const flux =
    inductance === null || peak === null || turns.primary === null || core.area === null
      ? null
      : derive(fluxDensity, { inductance, peak, turns: turns.primary, area: core.area }, `${id}/flux`);
  tell('flux', flux, lacking({ inductance, peak, primaryTurns: turns.primary, coreArea: core.area }));
  gapNumbers();
  const plateau = reflected === null ? null : derive(switchPlateau, { rail: highest, reflected }, `${id}/plateau`);
  tell('plateau', plateau, lacking({ reflected }).length > 0 ? (noRatio.length > 0 ? noRatio : ['outputVoltage']) : []);
  const clamp = read('clamp', 'voltage', 'V_c');
  const switchPeak = clamp === null ? null : derive(clampedPeak, { rail: highest, clamp }, `${id}/switch-peak`);
  tell('switchPeak', switchPeak, lacking({ clamp }));
  const reverse =
    turns.ratio === null || output === null
      ? null
      : derive(rectifierReverse, { output, rail: highest, ratio: turns.ratio }, `${id}/reverse`);
  tell('reverse', reverse, [...noRatio, ...(output === null ? ['outputVoltage'] : [])]);
  const leakage = read('leakage', 'inductance', 'L_l');
  const frequency = point?.frequency ?? inputs.frequency;
  const canClamp =
    leakage !== null && peak !== null && frequency !== null && clamp !== null && reflected !== null && clamp.value > reflected.value;
  tell(
    'clampPower',
    canClamp ? derive(clampPower, { leakage, peak, frequency, clamp, reflected }, `${id}/clamp-power`) : null,
    lacking({ leakage, peak, frequency, clamp, reflected }),
  );
  tell('coreLoss', lossOfCore(point), [
    ...(triangleKey() === null ? ['ferriteWithData'] : []),
    ...lacking({ coreArea: core.area, coreLength: core.length, flux }),
    ...(point === null ? missing : []),
  ]);
  const meanTurn = read('meanTurn', 'length', 'l');
  const rms = rmsOf(point);
  const losses = stack.windings
    .filter(({ role }) => role !== 'screen')
    .map((winding) => {
      const own = turns.primaries.includes(winding) ? rms.primary : winding === turns.secondary ? rms.secondary : null;
      return windingLoss(stack, winding, meanTurn, frequency, own);
    });
  for (const { winding, cold, hot, loss, missing: without } of losses) {
    tell('resistanceCold', cold, cold === null ? without : [], winding.name);
    if (hot !== null) tell('resistanceHot', hot, [], winding.name);
    if (loss !== null) tell('windingLoss', loss, [], winding.name);
  }
  const window = windowArea();
  tell('fill', fillOf(stack, window), [
    ...(window === null ? ['window'] : []),
    ...stack.windings.flatMap(({ wire }) => (wire.at === null ? ['wireDiameter'] : [])),
  ]);
  tell('heldCurrent', outputCurrentHeld(inputs, point, id), []);
  return { stack, turns, core, inputs, level, capabilities, flux, plateau, switchPeak, reverse, losses, numbers, blocked };

  function currents(at: OperatingPoint | null): void {
    if (at === null) return;
    tell('frequency', at.frequency, []);
    tell('onShare', at.on, []);
    tell('offShare', at.off, []);
    if (inputs.law === 'fixedFrequency' && inputs.inductance !== null && reflected !== null)
      tell(
        'boundary',
        derive(boundaryCurrent, { rail: at.rail, reflected, inductance: inputs.inductance, frequency: at.frequency }, `${id}/boundary`),
        [],
      );
    const claimed = level === null ? null : nameplateOf(level);
    if (inputs.law === 'fixedFrequency' && at.mode === 'discontinuous' && inputs.inductance !== null && claimed !== null)
      tell(
        'peakForClaim',
        derive(peakOfPower, { power: claimed, inductance: inputs.inductance, frequency: at.frequency }, `${id}/peak-for-claim`),
        [],
      );
    const { primary, secondary } = rmsOf(at);
    tell('primaryRms', primary, []);
    if (turns.ratio !== null)
      tell('secondaryPeak', derive(secondaryPeak, { ratio: turns.ratio, peak: at.peak }, `${id}/secondary-peak`), []);
    tell('secondaryRms', secondary, []);
    const current = level?.claim ?? null;
    if (secondary !== null && current !== null && secondary.value > current.value)
      tell('capacitorRms', derive(capacitorRms, { rms: secondary, mean: current }, `${id}/capacitor-rms`), []);
  }

  function rmsOf(at: OperatingPoint | null): { primary: Derived | null; secondary: Derived | null } {
    if (at === null) return { primary: null, secondary: null };
    const of = (peakAt: Derived, share: Derived, rise: Derived | null, name: string): Derived =>
      rise === null
        ? derive(strokeRms, { peak: peakAt, share }, `${id}/${name}`)
        : derive(continuousRms, { peak: peakAt, rise, share }, `${id}/${name}`);
    const primary = of(at.peak, at.on, at.rise, 'primary-rms');
    if (turns.ratio === null) return { primary, secondary: null };
    const peakOut = derive(secondaryPeak, { ratio: turns.ratio, peak: at.peak }, `${id}/secondary-peak`);
    const riseOut = at.rise === null ? null : derive(secondaryPeak, { ratio: turns.ratio, peak: at.rise }, `${id}/secondary-rise`);
    return { primary, secondary: of(peakOut, at.off, riseOut, 'secondary-rms') };
  }

  function gapNumbers(): void {
    const gap = read('gap', 'length', 'l_g');
    const known = turns.primary !== null && core.area !== null;
    const without = lacking({ primaryTurns: turns.primary, coreArea: core.area });
    tell(
      'gapOfInductance',
      known && inductance !== null ? derive(gapOfInductance, { turns: turns.primary, area: core.area, inductance }, `${id}/gap`) : null,
      [...without, ...lacking({ inductance })],
    );
    tell(
      'inductanceOfGap',
      known && gap !== null && gap.value > 0
        ? derive(inductanceOfGap, { turns: turns.primary, area: core.area, gap }, `${id}/inductance-of-gap`)
        : null,
      [...without, ...lacking({ gap })],
    );
  }

  function triangleKey(): string | null {
    const name = coreKey(findRead(exhibit.ferrite) ?? '');
    return triangle.rows.some(([key]) => key === name) ? name : null;
  }

  function lossOfCore(at: OperatingPoint | null): Derived | null {
    const key = triangleKey();
    if (at === null || key === null || core.area === null || core.length === null || flux === null || at.rise !== null) return null;
    const cell = (column: 'coefficient' | 'alpha' | 'beta', symbol: string): Derived =>
      findCell(triangle, key, column, `${id}/loss-${column}`, symbol)!;
    return derive(
      coreLoss,
      {
        area: core.area,
        length: core.length,
        coefficient: cell('coefficient', 'k_i'),
        alpha: cell('alpha', 'α'),
        beta: cell('beta', 'β'),
        swing: flux,
        frequency: at.frequency,
        rise: at.on,
        fall: at.off,
      },
      `${id}/core-loss`,
    );
  }

  function windowArea(): Derived | null {
    const read_ = findRead(exhibit.window);
    if (read_ === null) return null;
    const side = (key: 'width' | 'height'): Derived | null =>
      readStackValue(bench, exhibit, read_[key], `${field}/window/${key}`, 'length', key[0]!).at;
    const [width, height] = [side('width'), side('height')];
    if (width === null || height === null || width.value <= 0 || height.value <= 0) return null;
    return combine(
      {
        kind: 'reduce',
        unit: 'm²',
        formula: null,
        symbols: { width: 'w', height: 'h' },
        moves: { width: 'up', height: 'up' },
        compute: (plain) => plain.width * plain.height,
      },
      { width, height },
      { id: `${id}/window`, name: 'windowArea', symbol: 'A_w' },
    );
  }
}

const MAINS = { lowest: 'low', nominal: 'nominal' } as const;

/** The most that a transformer passes at one mains voltage, read or set. */
export function capabilityAt(
  bench: Bench,
  inputs: ConverterInputs,
  mains: Derived,
  frequency: Derived,
  id: string,
): Pick<Capability, 'power' | 'valley' | 'point'> | null {
  const bulk = bulkAt(bench, mains, frequency, id);
  const found = balanced(bulk, (rail, at) => operatingPoint(inputs, rail, at)?.power ?? null, id);
  const point = found === null ? null : operatingPoint(inputs, found.valley, `${id}/point`);
  return found === null || point === null ? null : { ...found, point };
}

function capabilitiesOf(bench: Bench, setting: SettingFacts, inputs: ConverterInputs, id: string): Capability[] {
  return (['lowest', 'nominal'] as const).flatMap((which): Capability[] => {
    const mains = setting[MAINS[which]];
    const found = capabilityAt(bench, inputs, mains, setting.frequency, `${id}/${which}`);
    return found === null ? [] : [{ which, mains, ...found }];
  });
}

function hardestLevel(levels: readonly LevelFacts[]): LevelFacts | null {
  const powered = levels.flatMap((level) => {
    const power = nameplateOf(level);
    return power === null ? [] : [{ level, power: power.value, volts: level.window!.nominal.value }];
  });
  // the highest voltage among equals reflects most
  return powered.toSorted((a, b) => b.power - a.power || b.volts - a.volts)[0]?.level ?? (levels.length === 1 ? (levels[0] ?? null) : null);
}

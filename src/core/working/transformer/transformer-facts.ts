import { derive } from '../../formula/derive.ts';
import { clampPower } from '../../formula/magnetics/clamp-power.ts';
import { clampedPeak } from '../../formula/magnetics/clamped-peak.ts';
import { fluxDensity } from '../../formula/magnetics/flux-density.ts';
import { rectifierReverse } from '../../formula/magnetics/rectifier-reverse.ts';
import { reflectedVoltage } from '../../formula/magnetics/reflected-voltage.ts';
import { storedEnergy } from '../../formula/magnetics/stored-energy.ts';
import { switchPlateau } from '../../formula/magnetics/switch-plateau.ts';
import { peakOfMains } from '../../formula/touch/peak-of-mains.ts';
import type { Derived } from '../../trace/derived.ts';
import type { Bench } from '../bench/bench.ts';
import { findRead } from '../bench/open-value.ts';
import { nameplateOf } from '../load/power-facts.ts';
import type { LevelFacts } from '../load/sweep-facts.ts';
import type { SettingFacts } from '../setting/setting-facts.ts';
import { type Capability, capabilitiesOf } from './capability.ts';
import { type ConverterInputs, missingFor, outputCurrentHeld } from './converter-facts.ts';
import { type CoreValues, coreValues } from './core-values.ts';
import { type RmsCurrents, rmsAt, tellCurrents } from './currents-at.ts';
import { estimatedDrop } from './estimated-drop.ts';
import { mostCopper } from './fill-to-expect.ts';
import { tellGap, windowArea } from './gap-and-window.ts';
import { tellLeastTurns } from './least-turns.ts';
import { isFerriteKnown, lossOfCore } from './loss-of-core.ts';
import { type BlockedNumber, lacking, NumberList, type WorkedNumber } from './number-list.ts';
import { shortedOutput } from './shorted-output.ts';
import type { StackFacts } from './stack-facts.ts';
import { readStackValue } from './stack-value.ts';
import { tellSwitchLoss } from './switch-loss.ts';
import { type Turns, turnsOf } from './turns-of.ts';
import { fillOf, type WindingLoss, windingLoss } from './winding-loss.ts';

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
    key:
      | 'inductance'
      | 'leakage'
      | 'frequency'
      | 'peakCurrent'
      | 'longestOn'
      | 'clamp'
      | 'gap'
      | 'meanTurn'
      | 'switchResistance'
      | 'fallTime'
      | 'riseTime',
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
  const list = new NumberList();
  const noRatio = turns.ratio === null ? turns.missing : [];
  const noOutput = [...noRatio, ...(output === null ? ['outputVoltage'] : [])];
  list.tell('ratio', turns.ratio, noRatio);
  list.tell('reflected', reflected, noOutput);

  const missing = missingFor(inputs).flatMap((key) => (key === 'reflected' ? (noRatio.length > 0 ? noRatio : ['outputVoltage']) : [key]));
  const capabilities = capabilitiesOf(bench, setting, inputs, { id, list, missing });
  const point = capabilities.find(({ which }) => which === 'nominal')?.point ?? null;
  if (point !== null) tellCurrents(list, point, inputs, level, id);
  const { inductance, peak } = inputs;
  list.tell(
    'energy',
    inductance === null || peak === null ? null : derive(storedEnergy, { inductance, peak }, `${id}/energy`),
    lacking({ inductance, peak }),
  );
  const flux =
    inductance === null || peak === null || turns.primary === null || core.area === null
      ? null
      : derive(fluxDensity, { inductance, peak, turns: turns.primary, area: core.area }, `${id}/flux`);
  list.tell('flux', flux, lacking({ inductance, peak, primaryTurns: turns.primary, coreArea: core.area }));
  tellLeastTurns(list, inputs, core, id);
  tellGap(list, { turns: turns.primary, core, inductance, gap: read('gap', 'length', 'l_g') }, id);

  const highest = derive(peakOfMains, { rms: setting.high }, 'board/crest-of-highest-mains');
  const plateau = reflected === null ? null : derive(switchPlateau, { rail: highest, reflected }, `${id}/plateau`);
  list.tell('plateau', plateau, reflected === null ? (noRatio.length > 0 ? noRatio : ['outputVoltage']) : []);
  const clamp = read('clamp', 'voltage', 'V_c');
  const switchPeak = clamp === null ? null : derive(clampedPeak, { rail: highest, clamp }, `${id}/switch-peak`);
  list.tell('switchPeak', switchPeak, lacking({ clamp }));
  const reverse =
    turns.ratio === null || output === null
      ? null
      : derive(rectifierReverse, { output, rail: highest, ratio: turns.ratio }, `${id}/reverse`);
  list.tell('reverse', reverse, noOutput);
  if (point !== null) {
    const resistance = read('switchResistance', 'resistance', 'R');
    const [fall, rise] = [read('fallTime', 'time', 't_f'), read('riseTime', 'time', 't_r')];
    const rms = rmsAt(point, turns.ratio, id).primary;
    tellSwitchLoss(list, point, { resistance, fall, rise, clamp, reflected, rms }, id);
  }
  const leakage = read('leakage', 'inductance', 'L_l');
  const frequency = point?.frequency ?? inputs.frequency;
  const canClamp =
    leakage !== null && peak !== null && frequency !== null && clamp !== null && reflected !== null && clamp.value > reflected.value;
  list.tell(
    'clampPower',
    canClamp ? derive(clampPower, { leakage, peak, frequency, clamp, reflected }, `${id}/clamp-power`) : null,
    lacking({ leakage, peak, frequency, clamp, reflected }),
  );

  list.tell('coreLoss', lossOfCore(exhibit, core, flux, point), [
    ...(isFerriteKnown(exhibit) ? [] : ['ferriteWithData']),
    ...lacking({ coreArea: core.area, coreLength: core.length, flux }),
    ...(point === null ? missing : []),
  ]);
  const losses = lossesOf(stack, turns, read('meanTurn', 'length', 'l'), frequency, rmsAt(point, turns.ratio, id));
  for (const { winding, cold, hot, loss, missing: without } of losses) {
    list.tell('resistanceCold', cold, cold === null ? without : [], winding.name);
    list.tell('resistanceHot', hot, [], winding.name);
    list.tell('windingLoss', loss, [], winding.name);
  }
  const window = windowArea(bench, stack);
  const fill = fillOf(stack, window);
  list.tell('fill', fill, [
    ...(window === null ? ['window'] : []),
    ...stack.windings.flatMap(({ wire }) => (wire.at === null ? ['wireDiameter'] : [])),
  ]);
  if (fill !== null) list.tell('fillToExpect', mostCopper(id), []);
  list.tell('shortedOutput', shortedOutput(inputs, id), []);
  list.tell('heldCurrent', outputCurrentHeld(inputs, point, id), []);
  const { numbers, blocked } = list;
  return { stack, turns, core, inputs, level, capabilities, flux, plateau, switchPeak, reverse, losses, numbers, blocked };
}

/** Heat of each winding that carries the current of a side; resistances of all. */
function lossesOf(stack: StackFacts, turns: Turns, meanTurn: Derived | null, frequency: Derived | null, rms: RmsCurrents): WindingLoss[] {
  return stack.windings
    .filter(({ role }) => role !== 'screen')
    .map((winding) => {
      const own = turns.primaries.includes(winding) ? rms.primary : winding === turns.secondary ? rms.secondary : null;
      return windingLoss(stack, winding, meanTurn, frequency, own);
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

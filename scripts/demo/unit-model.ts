/**
 * One physical model of a flyback adapter, small enough to check by hand: every reading of a demo case is computed from it. Numbers are SI.
 * Invented units; the shapes (a power limit by peak current, loss polynomials, one thermal resistance to the room) are those of circuit theory.
 */
export interface UnitModel {
  readonly seed: string;
  readonly transformer: {
    readonly primaryTurns: number;
    readonly secondaryTurns: number;
    readonly inductanceH: number;
    readonly coreAreaM2: number;
    /** Peak current at which the primary is switched off. */
    readonly peakA: number;
  };
  readonly frequencyHz: number;
  /** Largest share of a period that the switch may be on: at low mains it ends the stroke before the peak current is reached. */
  readonly dutyMost: number;
  /** Capacitor behind the rectifier, what limits the current into it, and how often a half wave refills it (2 with a bridge, 1 with one diode). */
  readonly bulkF: number;
  readonly inrushOhm: number;
  readonly refills: 1 | 2;
  /** Series resistance of the output capacitor, and how far the output dips or rises for a step of one ampere. */
  readonly outputEsrOhm: number;
  readonly stepOhm: number;
  /** Drop of the output rectifier. */
  readonly rectifierV: number;
  /** Everything between regulation point and socket. */
  readonly outputOhm: number;
  /** Loss at no load, and loss that grows with the square of the output current. */
  readonly idleW: number;
  readonly copperOhm: number;
  /** Share of the mains-side input that is lost in rectifier, switch and clamp. */
  readonly primaryShare: number;
  readonly thermal: {
    /** Outside of the case over the room, and winding over the inside, kelvin per watt of all loss. */
    readonly caseKPerW: number;
    readonly windingKPerW: number;
    readonly timeConstantS: number;
  };
  /** Capacitance across the barrier that the touch current goes through, and how much of the mains the rail it hangs on carries. */
  readonly barrierF: number;
  readonly railShare: number;
}

export interface Operating {
  readonly currentA: number;
  readonly voltageV: number;
  readonly outputW: number;
  readonly lossW: number;
  readonly inputW: number;
}

/** Power that the transformer can pass at one bulk voltage: Lp Ip² f / 2 (discontinuous mode, fixed frequency), Ip by its limit or by the longest on-time. */
export function transferableW({ transformer, frequencyHz, dutyMost }: UnitModel, bulkV: number): number {
  const peakA = Math.min(transformer.peakA, (bulkV * dutyMost) / (transformer.inductanceH * frequencyHz));
  return (transformer.inductanceH * peakA * peakA * frequencyHz) / 2;
}

/** Lowest bulk voltage while a power is drawn: the capacitor alone feeds the load between two refills. Solved with its own conduction time. */
export function valleyV(model: UnitModel, mainsV: number, mainsHz: number, powerW: number): number {
  const crest = Math.SQRT2 * mainsV;
  let valley = crest;
  for (let round = 0; round < 60; round += 1) {
    const conducting = Math.acos(Math.min(1, Math.max(0, valley / crest))) / (2 * Math.PI * mainsHz);
    const discharge = 1 / (model.refills * mainsHz) - conducting;
    const square = crest * crest - (2 * powerW * discharge) / model.bulkF;
    valley = (valley + Math.sqrt(Math.max(0, square))) / 2;
  }
  return valley;
}

/** The most the unit can take from the mains into its transformer, at the valley that this power itself makes. */
export function mostPowerW(model: UnitModel, mainsV: number, mainsHz: number): number {
  let low = 0;
  let high = transferableW(model, Math.SQRT2 * mainsV);
  for (let round = 0; round < 60; round += 1) {
    const middle = (low + high) / 2;
    if (middle <= transferableW(model, valleyV(model, mainsV, mainsHz, middle))) low = middle;
    else high = middle;
  }
  return low;
}

/** Flux density at the current limit: Lp Ip / (Np Ae). */
export function peakFluxT({ transformer }: UnitModel): number {
  return (transformer.inductanceH * transformer.peakA) / (transformer.primaryTurns * transformer.coreAreaM2);
}

export function turnsRatio({ transformer }: UnitModel): number {
  return transformer.primaryTurns / transformer.secondaryTurns;
}

/** Voltage reflected to the primary: n (Vo + Vf). */
export function reflectedV(model: UnitModel, outputV: number): number {
  return turnsRatio(model) * (outputV + model.rectifierV);
}

/** Share of a period that on-time and demagnetisation fill at the current limit; below 1 the mode is discontinuous, as the power limit assumes. */
export function filledShare(model: UnitModel, bulkV: number, outputV: number): number {
  const { inductanceH, peakA } = model.transformer;
  return inductanceH * peakA * model.frequencyHz * (1 / bulkV + 1 / reflectedV(model, outputV));
}

/** The operating point at one load and mains: held at the set point until the power that can be passed is used up, then the voltage gives way. */
export function operatingAt(model: UnitModel, setV: number, currentA: number, mainsV = 230.4, mainsHz = 50): Operating {
  const regulated = setV - model.outputOhm * currentA;
  // what the transformer passes feeds the load, the rectifier and the copper of the secondary
  const room = mostPowerW(model, mainsV, mainsHz) * (1 - model.primaryShare);
  const limited = currentA === 0 ? regulated : room / currentA - model.rectifierV - model.copperOhm * currentA;
  const voltageV = Math.max(0, Math.min(regulated, limited));
  const outputW = voltageV * currentA;
  const secondaryLoss = model.rectifierV * currentA + model.copperOhm * currentA * currentA;
  const through = (outputW + secondaryLoss) / (1 - model.primaryShare);
  const inputW = through + model.idleW;
  return { currentA, voltageV, outputW, lossW: inputW - outputW, inputW };
}

/** Case and winding at the end of a soak, in °C. */
export function temperaturesAt(model: UnitModel, point: Operating, ambientC: number): { caseC: number; windingC: number } {
  const caseC = ambientC + model.thermal.caseKPerW * point.lossW;
  return { caseC, windingC: caseC + model.thermal.windingKPerW * point.lossW };
}

/** Current to earth through the barrier: 2π f C V times the share of the mains on the rail. */
export function touchA(model: UnitModel, mainsV: number, mainsHz: number): number {
  return 2 * Math.PI * mainsHz * model.barrierF * mainsV * model.railShare;
}

/** Voltage left on the pins so many seconds after unplugging at the crest, with the probe across them. */
export function residualV(crestV: number, acrossF: number, bleederOhm: number, probeOhm: number, seconds: number): number {
  const together = 1 / (1 / bleederOhm + 1 / probeOhm);
  return crestV * Math.exp(-seconds / (together * acrossF));
}

/** Peak-to-peak ripple at the output capacitor: its series resistance takes the whole step of the rectifier current. */
export function rippleV(model: UnitModel): number {
  return model.outputEsrOhm * turnsRatio(model) * model.transformer.peakA;
}

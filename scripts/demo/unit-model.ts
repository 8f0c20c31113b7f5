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

/** Power that the transformer can pass: Lp Ip² f / 2 (discontinuous mode, fixed frequency). */
export function transferableW({ transformer, frequencyHz }: UnitModel): number {
  return (transformer.inductanceH * transformer.peakA * transformer.peakA * frequencyHz) / 2;
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

/** The operating point at one load: held at the set point until the transferable power is used up, then the voltage gives way. */
export function operatingAt(model: UnitModel, setV: number, currentA: number): Operating {
  const regulated = setV - model.outputOhm * currentA;
  // what the transformer passes feeds the load, the rectifier and the copper of the secondary
  const room = transferableW(model) * (1 - model.primaryShare);
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

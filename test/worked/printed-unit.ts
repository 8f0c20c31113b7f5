/** What a printed unit is in SI; kept apart from the units of the project, which are what is under test. */
const FACTOR: Readonly<Record<string, readonly [factor: number, si: string]>> = {
  mm: [1e-3, 'm'],
  'V peak': [1, 'V'],
  mA: [1e-3, 'A'],
  µA: [1e-6, 'A'],
  nA: [1e-9, 'A'],
  pA: [1e-12, 'A'],
  '%': [1e-2, '1'],
  nF: [1e-9, 'F'],
  N·m: [1, 'N·m'],
  MΩ: [1e6, 'Ω'],
  V: [1, 'V'],
  A: [1, 'A'],
  W: [1, 'W'],
  K: [1, 'K'],
  '°C': [1, 'K'],
  Hz: [1, 'Hz'],
  'A²s': [1, 'A²s'],
  J: [1, 'J'],
  µF: [1e-6, 'F'],
  Ω: [1, 'Ω'],
  mH: [1e-3, 'H'],
  µH: [1e-6, 'H'],
  mJ: [1e-3, 'J'],
  mW: [1e-3, 'W'],
  T: [1, 'T'],
  mT: [1e-3, 'T'],
  kHz: [1e3, 'Hz'],
  'mm²': [1e-6, 'm²'],
  ms: [1e-3, 's'],
  µs: [1e-6, 's'],
  h: [3600, 's'],
  '1': [1, '1'],
};
const ICE_POINT_K = 273.15;

/** SI unit that a printed unit belongs to. */
export function siUnitOf(unit: string): string {
  return entry(unit)[1];
}

/** A result in SI, said in the printed unit. */
export function inPrintedUnit(si: number, unit: string): number {
  return (unit === '°C' ? si - ICE_POINT_K : si) / entry(unit)[0];
}

function entry(unit: string): readonly [number, string] {
  const found = FACTOR[unit];
  if (found === undefined) throw new Error(`no printed unit "${unit}"`);
  return found;
}

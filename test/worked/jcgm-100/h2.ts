/** JCGM 100:2008, H.2: resistance, reactance and impedance from five sets of readings. Means, their uncertainties, and correlations of table H.2. */
export const IMPEDANCE = {
  V: { value: 4.999, u: 0.0032 },
  I: { value: 0.019661, u: 0.0000095 },
  phi: { value: 1.04446, u: 0.00075 },
  correlations: { VI: -0.36, Vphi: 0.86, Iphi: -0.65 },
} as const;

/** Table H.3. */
export const IMPEDANCE_PRINTED = {
  R: { value: 127.732, u: 0.07, valueTolerance: 0.0005, uTolerance: 0.0015 },
  X: { value: 219.85, u: 0.3, valueTolerance: 0.005, uTolerance: 0.005 },
  Z: { value: 254.26, u: 0.24, valueTolerance: 0.005, uTolerance: 0.005 },
  correlations: { RX: -0.59, RZ: -0.49, XZ: 0.99 },
} as const;

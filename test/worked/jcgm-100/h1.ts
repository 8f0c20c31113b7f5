/**
 * JCGM 100:2008, H.1: the length of an end gauge of 50 mm. Lengths in nanometres, temperatures in degrees from 20 °C.
 * Inputs and printed figures; the components of uncertainty are those of table H.1.
 */
export const END_GAUGE = {
  standard: { value: 50_000_623, u: 25 },
  difference: { value: 215, u: 5.8 },
  comparatorRandom: { value: 0, u: 3.9 },
  comparatorSystematic: { value: 0, u: 6.7 },
  expansionOfStandard: { value: 11.5e-6, halfWidth: 2e-6 },
  differenceOfExpansion: { value: 0, halfWidth: 1e-6 },
  differenceOfTemperature: { value: 0, halfWidth: 0.05 },
  meanDeviation: { value: -0.1, u: 0.2 },
  cycle: { value: 0, amplitude: 0.5 },
} as const;

export const END_GAUGE_PRINTED = {
  length: 50_000_838,
  u: 32,
  /** Share of each input in nanometres, as printed. */
  components: {
    standard: 25,
    differenceOfTemperature: 16.6,
    comparatorSystematic: 6.7,
    difference: 5.8,
    comparatorRandom: 3.9,
    differenceOfExpansion: 2.9,
    expansionOfStandard: 0,
    meanDeviation: 0,
    cycle: 0,
  },
} as const;

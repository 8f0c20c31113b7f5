import type { Part } from '../../src/core/solver/circuit.ts';
import { adapter, type Described } from './adapter.ts';

/** The invented adapter with a controller that turns on in a valley of the drain voltage. */
export function valleyAdapter(loadOhms = 2.5): Described {
  return adapter({
    loadOhms,
    control: {
      type: 'valley',
      sense: 'sense',
      limitV: 0.85,
      blankS: 300e-9,
      delayS: 30e-9,
      feedback: 'feedback',
      offsetV: 0.6,
      divider: 3.4,
      leastV: 0.1,
      burst: { stopV: 0.95, goV: 1.05 },
      auxiliary: 'aux',
      onMostS: 20e-6,
      offLeastS: 3e-6,
      offMostS: 60e-6,
      // a quarter of the ring of primary and drain capacitance, 460 kHz
      valleyDelayS: 540e-9,
    },
  });
}

/** What the feedback through the optocoupler needs, and a controller that regulates from the primary side does not have. */
const FEEDBACK = new Set(['V2', 'R23', 'C4', 'R6', 'R7', 'R8', 'R9', 'C8', 'R10', 'C9', 'U3', 'U2']);

/** The invented adapter, regulated by the auxiliary voltage at the knee. */
export function primarySideAdapter(loadOhms = 4): Described {
  const { circuit, junctions } = adapter({
    loadOhms,
    control: {
      type: 'primarySide',
      sense: 'sense',
      limitV: 0.85,
      blankS: 800e-9,
      delayS: 30e-9,
      auxiliary: 'knee',
      // (5 V and the drop of the rectifier near the knee) times 15 turns over 6
      kneeV: 13.4,
      sampleAt: 0.8,
      hertzMost: 65e3,
      hertzLeast: 1e3,
      onMostS: 12e-6,
      leastShare: 0.3,
      gainPerV: 0.015,
      stepPerV: 0.0006,
      conductionMost: 0.6,
    },
  });
  // the pin sees the winding through a low pass of 100 ns: else it would sample a ring of 60 MHz
  const filter: Part[] = [
    { kind: 'resistor', ref: 'R11', pins: ['aux', 'knee'], ohms: 10e3 },
    { kind: 'capacitor', ref: 'C11', pins: ['knee', 'common'], farads: 10e-12, ohms: 1 },
  ];
  const parts = [...circuit.parts.filter(({ ref }) => !FEEDBACK.has(ref)), ...filter];
  return { circuit: { ...circuit, title: 'invented 5 V adapter, regulated from the primary side', parts }, junctions };
}

/**
 * An open auxiliary rectifier, so that the start resistor alone feeds the controller: it starts, runs down and starts again, some hundreds
 * of times a second, into a shorted output.
 */
export function hiccuping(): Described {
  const { circuit, junctions } = adapter({ loadOhms: 0.05, outputV: 0.05, supplyF: 100e-9, startOhms: 400e3 });
  return { circuit: { ...circuit, parts: circuit.parts.filter(({ ref }) => ref !== 'D7') }, junctions };
}

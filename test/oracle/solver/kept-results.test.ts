import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { CIRCUITS } from '../../../bench/solver/circuits.ts';
import { differences, netlistOf, runOurs, TIGHT } from '../../../bench/solver/compare.ts';
import { hashOf, type NgspiceRun } from '../../../bench/solver/run-ngspice.ts';

/**
 * Every circuit of the comparison against what ngspice (a general-purpose circuit simulator) said of it: kept results with date and the hash
 * of their netlist, which must still be the netlist of today. `node scripts/bench.mjs bench/solver/accuracy.ts` prints the same as a table.
 */
type Kept = Readonly<Record<string, NgspiceRun & { readonly start: Readonly<Record<string, number>> }>>;
const kept: Kept = JSON.parse(readFileSync(new URL('../../../bench/solver/kept-ngspice.json', import.meta.url), 'utf8'));

/** Named in bench/README.md, with the reason: what does not agree, and how far it is known to be off. */
const APART: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  'valley switching, half load': { 'output ripple': 0.04 },
  'primary side, 1.25 A': { 'output mean': 0.013, 'input power': 0.019 },
  'primary side, 0.1 A': { 'output ripple': 0.08, 'input power': 0.04 },
  '100 V 60 Hz mains': { 'output ripple': 0.07 },
};

describe.each(Object.entries(CIRCUITS))('%s', (id, make) => {
  const reference = kept[id];
  const circuit = make([id, reference?.start]);

  it('was run by ngspice as it is today', () => expect(reference?.sha256).toBe(hashOf(netlistOf(circuit, TIGHT))));
  it('agrees with ngspice in every quantity, within its goal or what is named as apart', () => {
    const ours = runOurs(circuit);
    expect(ours.outcome).toBe('completed');
    expect(ours.energy.balanced).toBe(true);
    const apart = differences(circuit, ours, reference!.values)
      .filter(({ name, share, goal }) => !(share <= (APART[id]?.[name] ?? goal)))
      .map(({ name, ours: mine, theirs }) => `${name}: ours ${mine}, ngspice ${theirs}`);
    expect(apart).toEqual([]);
  }, 120_000);
});

import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

export interface NgspiceRun {
  readonly sha256: string;
  readonly values: Readonly<Record<string, number>>;
  /** Processor time of the process, seconds. */
  readonly cpuS: number | null;
  readonly version: string;
}

/** The hash that ties a kept result to its netlist. */
export const hashOf = (netlist: string): string => createHash('sha256').update(netlist).digest('hex');

/** Runs ngspice in batch on a netlist with .meas lines. Throws when it did not reach the end: a kept result must be a whole one. */
export function runNgspice(netlist: string, names: readonly string[]): NgspiceRun {
  const folder = mkdtempSync(join(tmpdir(), 'mainsworthy-ngspice-'));
  try {
    const path = join(folder, 'circuit.cir');
    writeFileSync(path, netlist);
    // the shell's own account of its children is the only processor time to be had here: "0m1.23s 0m0.01s" for user and system
    const text = execFileSync('sh', ['-c', 'ngspice -b "$0"; times', path], {
      cwd: folder,
      encoding: 'utf8',
      stdio: ['ignore', 'pipe', 'pipe'],
      maxBuffer: 2 ** 28,
    });
    const [user, system] = [
      ...text
        .trimEnd()
        .split('\n')
        .at(-1)!
        .matchAll(/(\d+)m([\d.]+)s/g),
    ].map((one) => 60 * Number(one[1]) + Number(one[2]));
    const cpuS = (user ?? Number.NaN) + (system ?? Number.NaN);
    const values = Object.fromEntries(
      names.map((name) => {
        const found = new RegExp(`^${name}\\s*=\\s*([-+.0-9eE]+)`, 'im').exec(text);
        if (found === null) throw new Error(`ngspice gave no ${name}:\n${text.slice(-2000)}`);
        return [name, Number(found[1])];
      }),
    );
    const version = /ngspice[- ](\d+[\d.]*)/i.exec(execFileSync('ngspice', ['--version'], { encoding: 'utf8' }))?.[1] ?? 'unknown';
    return { sha256: hashOf(netlist), values, cpuS, version };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

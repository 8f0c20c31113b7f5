import type { Curve } from '../result/assessment.ts';
import { uncertainty } from '../trace/derived.ts';
import { findRead } from '../working/bench/open-value.ts';
import type { Facts } from '../working/facts.ts';

const BAND = 2; // half of a 95 % interval in standard uncertainties

/** Every sweep, ready to be drawn. */
export function toCurves(facts: Facts): Curve[] {
  return facts.levels.flatMap((level) =>
    level.sweeps
      .filter(({ rows }) => rows.length > 0)
      .map((sweep): Curve => {
        const nearest = level.nearest.find((one) => one.sweep === sweep);
        return {
          exhibit: sweep.exhibit.id,
          port: level.port.id,
          level: level.level.id,
          mains: sweep.mains?.value ?? null,
          frequency: sweep.frequency?.value ?? null,
          order: sweep.exhibit.order,
          sense: sweep.exhibit.sense,
          points: sweep.rows.map(({ current, voltage, inputPower }) => {
            const u = uncertainty(voltage);
            return { i: current.value, v: voltage.value, U: u === null ? null : BAND * u, pin: inputPower?.value ?? null };
          }),
          window: level.window === null ? null : [level.window.least.value, level.window.most.value],
          claim: level.claim?.value ?? null,
          held: nearest?.held?.step.id ?? null,
          ends: findRead(sweep.exhibit.ends),
        };
      }),
  );
}

import { atMost, limitLine } from '../check/decide.ts';
import type { Assessment } from '../result/assessment.ts';
import { touchVoltage } from '../table/iec-62368-1/2018/touch-voltage.ts';
import { getCell } from '../table/look-up.ts';
import type { StepNode } from '../trace/step.ts';
import { type ResidualReading, residualReadings } from '../working/board/residual-readings.ts';
import type { Facts } from '../working/facts.ts';
import { toAmount, toLimit } from './to-finding.ts';

type Shown = NonNullable<Assessment['residuals']>[number];

/** What was left on the capacitors when somebody measured, against the direct voltage that may be touched. No finding of the unit: it says what the examiner met. */
export function toResiduals(facts: Facts): { residuals: Shown[]; roots: StepNode[] } {
  const roots: StepNode[] = [];
  const line = limitLine('directVoltage', 'atMost', getCell(touchVoltage, 'es1', 'direct', 'board/touch-voltage', 'U'));
  const shown = ({ field, volts, after, energy }: ResidualReading): Shown['first'] => {
    roots.push(volts.step, ...(energy === null ? [] : [energy.step]));
    const { outcome } = atMost(volts, line, facts.setting.decision);
    return {
      field,
      volts: toAmount(volts),
      step: volts.step.id,
      after,
      energy: energy === null ? null : { ...toAmount(energy), step: energy.step.id },
      touchable: outcome === 'pass' ? 'below' : outcome === 'fail' ? 'above' : 'unclear',
    };
  };
  const residuals = residualReadings(facts.bench).map(
    ({ exhibit, across, first, later }): Shown => ({
      exhibit: exhibit.id,
      across,
      limit: toLimit(line),
      first: shown(first),
      later: later === null ? null : shown(later),
    }),
  );
  if (residuals.length > 0) roots.push(line.at!.step);
  return { residuals, roots };
}

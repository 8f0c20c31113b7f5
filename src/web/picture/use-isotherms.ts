import { useEffect, useState } from 'react';
import { roundLevels } from '../../present/figure/isotherms.ts';
import type { DrawnIsotherm, IsothermOrder } from './isotherm-worker.ts';
import type { Field } from './use-field.ts';

/** Lines of equal temperature at round degrees between two temperatures; none while they are not wanted or not there yet. */
export function useIsotherms(field: Field | null, from: number, to: number, wanted: boolean): readonly DrawnIsotherm[] {
  const [lines, setLines] = useState<readonly DrawnIsotherm[]>([]);
  useEffect(() => {
    if (field === null || !wanted) {
      setLines([]);
      return;
    }
    const worker = new Worker(new URL('./isotherm-worker.ts', import.meta.url), { type: 'module' });
    worker.onmessage = ({ data }: MessageEvent<readonly DrawnIsotherm[]>): void => {
      setLines(data);
      worker.terminate();
    };
    const order: IsothermOrder = { field, levels: roundLevels(from, to) };
    worker.postMessage(order);
    return () => worker.terminate();
  }, [field, from, to, wanted]);
  return lines;
}

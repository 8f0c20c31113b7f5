import type { ExhibitInput } from './full-day.ts';

type Sweep = Extract<ExhibitInput, { kind: 'sweep' }>;

export interface DemoSweep {
  readonly id: string;
  readonly at: string;
  readonly port: string;
  readonly level: string;
  readonly sense: Sweep['sense'];
  /** The attached file and its columns: output current, output voltage, input power. */
  readonly file: string;
  readonly columns: readonly [current: string, voltage: string, power: string];
  /** Where it is not the mains of the day. */
  readonly mains?: { readonly text: string; readonly hz: number };
  readonly ends?: string;
}

/** A sweep upwards, closed and cold, eight seconds a step, as every demo unit gets it. */
export function sweepExhibit({ id, at, port, level, sense, file, columns: [current, voltage, power], mains, ends }: DemoSweep): Sweep {
  return {
    id,
    kind: 'sweep',
    day: 'day-1',
    at,
    under: { cover: 'closed', start: 'cold', ...(mains === undefined ? {} : { mains: mains.text, frequency: `${mains.hz} Hz` }) },
    port,
    level,
    order: 'up',
    dwell: '8 s',
    sense,
    table: {
      file,
      columns: [
        { id: 'i', role: 'outputCurrent', from: current },
        { id: 'v', role: 'outputVoltage', from: voltage },
        { id: 'p', role: 'inputPower', from: power },
      ],
    },
    ...(ends === undefined ? {} : { ends }),
  };
}

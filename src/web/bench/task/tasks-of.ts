import { BOARD_TASKS, DROP_TASKS } from './board-tasks.ts';
import { BODY_TASKS } from './body-tasks.ts';
import { COLD_TASKS } from './cold-tasks.ts';
import { SOAK_TASKS, THERMAL_TASKS, WAVEFORM_TASKS } from './heat-tasks.ts';
import { ADVERTISED_TASKS, EVENT_TASKS, HOT_TASKS, IDLE_TASKS, POWER_UP_TASKS } from './load-tasks.ts';
import { PART_TASKS, WHOLE_TRANSFORMER_TASKS } from './part-tasks.ts';
import { RESIDUAL_TASKS } from './residual-tasks.ts';
import { RIPPLE_TASK } from './ripple-task.ts';
import type { Task } from './task.ts';
import { PINS_TASKS, TOUCH_TASKS } from './touch-tasks.ts';

/** What is read, picked or tried in each step of the day, in order. */
export const TASKS_OF: Readonly<Record<string, readonly Task[]>> = {
  body: BODY_TASKS,
  cold: COLD_TASKS,
  powerUp: POWER_UP_TASKS,
  touch: [...TOUCH_TASKS, ...IDLE_TASKS],
  advertised: ADVERTISED_TASKS,
  sweeps: [{ id: 'sweep', entry: 'sweep' }],
  events: [...EVENT_TASKS, RIPPLE_TASK],
  soak: SOAK_TASKS,
  hotAndShort: HOT_TASKS,
  pins: PINS_TASKS,
  // what the drop may have opened is tried again after it
  drop: [...DROP_TASKS, ...BODY_TASKS.filter(({ id }) => id === 'seamOpens' || id === 'livePartTouchable')],
  open: RESIDUAL_TASKS,
  board: [...BOARD_TASKS, ...PART_TASKS],
  thermal: THERMAL_TASKS,
  waveforms: WAVEFORM_TASKS,
  partsOff: [...WHOLE_TRANSFORMER_TASKS, ...PART_TASKS],
  transformer: [{ id: 'turns', entry: 'turns' }],
};

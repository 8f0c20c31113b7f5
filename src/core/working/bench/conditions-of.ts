import type { Exhibit } from '../../evidence/case.ts';
import type { Conditions } from '../../evidence/conditions.ts';
import type { Bench } from './bench.ts';

const NEVER_PASS_AN_EVENT = ['cover', 'orientation'] as const;
const TOUCH_ONLY_NEAR = ['supply', 'orientation'] as const;

/**
 * The conditions that hold for a reading: nearest wins (reading, row, exhibit, day), `loads` replaced whole. Cover and orientation are not
 * inherited across an event (opened, reclosed ...) that lies between the start of the day and the exhibit, nor when the exhibit's time is
 * not known on such a day. For touch readings supply and orientation count only from the reading or its exhibit.
 */
export function conditionsOf(bench: Bench, exhibit: Exhibit, nearer: readonly (Conditions | undefined)[] = []): Conditions {
  const day = exhibit.day === undefined ? undefined : bench.days.get(exhibit.day);
  const fromDay: Conditions = { ...(day?.under ?? {}) };
  if (day !== undefined) {
    const events = bench.one.events.filter((event) => event.at.startsWith(day.date) && event.what !== 'purchased');
    const passed = events.some((event) => exhibit.at === undefined || event.at <= exhibit.at);
    if (passed) for (const key of NEVER_PASS_AN_EVENT) delete fromDay[key];
  }
  if (exhibit.kind === 'touch') for (const key of TOUCH_ONLY_NEAR) delete fromDay[key];
  return Object.assign(fromDay, ...[exhibit.under, ...nearer].map(withoutUndefined));
}

function withoutUndefined(conditions: Conditions | undefined): Conditions {
  return Object.fromEntries(Object.entries(conditions ?? {}).filter(([, value]) => value !== undefined));
}

/** A condition's text when it is known. */
export function findCondition<T>(value: T | { state: 'unknown'; because: string } | undefined): T | null {
  if (value === undefined) return null;
  return typeof value === 'object' && value !== null && 'state' in value ? null : (value as T);
}

/** Field of the case in which a condition stands, the nearest that states it. `reading` is the field of the reading itself. */
export function fieldOfCondition(exhibit: Exhibit, key: keyof Conditions, reading: string, onReading: Conditions | undefined): string {
  if (onReading?.[key] !== undefined) return `${reading}/under/${key}`;
  return exhibit.under?.[key] !== undefined || exhibit.day === undefined
    ? `/exhibits/${exhibit.id}/under/${key}`
    : `/days/${exhibit.day}/under/${key}`;
}

import type { Conditions } from '../evidence/conditions.ts';
import type { Assessment } from '../result/assessment.ts';
import { type Bench, exhibitsOf } from '../working/bench/bench.ts';
import { conditionsOf } from '../working/bench/conditions-of.ts';

/** Who examined when and with what, as the case says: nothing is worked out here. */
export function toBench(bench: Bench): Assessment['bench'] {
  const { one } = bench;
  const [bought] = exhibitsOf(bench, 'label').flatMap((label) => (label.bought === undefined ? [] : [label.bought]));
  return {
    examinedBy: one.examinedBy ?? null,
    bought: bought === undefined ? null : { where: bought.where, date: bought.date, price: bought.price ?? null },
    days: one.days.map(({ id, date, under }) => ({ id, date, under: conditionTexts(under) })),
    events: one.events.map(({ at, what, note }) => ({ at, what, note: note ?? null })).toSorted((a, b) => (a.at < b.at ? -1 : 1)),
    instruments: one.instruments.map(({ id, name, calibrated, ranges }) => ({
      id,
      name,
      calibrated: calibrated ?? null,
      roles: [...new Set(ranges.map(({ of }) => of))],
    })),
    exhibits: one.exhibits.map(({ id, kind, at, struck }) => ({ id, kind, at: at ?? null, struck: struck !== undefined })),
  };
}

/** The conditions under which the exhibit of a finding was read; empty when its fields stand in no exhibit. */
export function conditionsOfFields(bench: Bench, fields: readonly string[]): Record<string, string> {
  for (const field of fields) {
    const id = /^\/exhibits\/([^/]+)/.exec(field)?.[1];
    const exhibit = id === undefined ? undefined : bench.exhibits.get(id);
    if (exhibit !== undefined) return conditionTexts(conditionsOf(bench, exhibit));
  }
  return {};
}

function conditionTexts(under: Conditions): Record<string, string> {
  const texts: Record<string, string> = {};
  for (const [key, value] of Object.entries(under)) {
    const text = key === 'loads' ? loadsText(under.loads ?? []) : wordOf(value);
    if (text !== '') texts[key] = text;
  }
  return texts;
}

function wordOf(value: unknown): string {
  if (typeof value === 'string') return value;
  if (typeof value !== 'object' || value === null) return '';
  if ('openedBefore' in value) return `openedBefore ${String(value.openedBefore)}`;
  return 'state' in value ? String(value.state) : '';
}

function loadsText(loads: NonNullable<Conditions['loads']>): string {
  return loads
    .map(({ port, level, draws }) => `${port}${level === undefined ? '' : ` ${level}`}: ${typeof draws === 'string' ? draws : draws.state}`)
    .join('; ');
}

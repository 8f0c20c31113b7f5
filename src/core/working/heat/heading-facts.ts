import type { ExhibitOf } from '../../evidence/case.ts';
import type { HeatingChannel, HeatingCurves } from '../../evidence/computed/heating-curves.ts';
import type { Place } from '../../evidence/sample.ts';
import { derive } from '../../formula/derive.ts';
import { endOfSoak } from '../../formula/thermal/end-of-soak.ts';
import { SI_UNIT } from '../../quantity/unit.ts';
import { type Derived, doubtOf, given } from '../../trace/derived.ts';
import { rectangular } from '../../uncertainty/half-width.ts';
import { type Bench, exhibitsOf } from '../bench/bench.ts';
import { conditionsOf, fieldOfCondition, findCondition } from '../bench/conditions-of.ts';
import { deriveReading } from '../bench/derive-reading.ts';
import type { LevelFacts } from '../load/sweep-facts.ts';
import { missingConditions, type SpotReading, temperatureOf } from './spot-facts.ts';
import { type LoadState, stateOfLoads } from './state-of-loads.ts';

/** One logged place of a soak whose curve was fitted and kept, and is not stale. */
export interface HeadingReading {
  readonly exhibit: ExhibitOf<'soak'>;
  readonly place: Place;
  readonly field: string;
  readonly channel: HeatingChannel;
  readonly state: LoadState;
  readonly ambient: Derived | null;
  /** The end, to be judged as a reading is; null where the log does not say or runs away. */
  readonly reading: SpotReading | null;
}

export function headingReadings(
  bench: Bench,
  levels: readonly LevelFacts[],
  heating: ReadonlyMap<string, HeatingCurves>,
): HeadingReading[] {
  return exhibitsOf(bench, 'soak').flatMap((exhibit) =>
    exhibit.struck === undefined
      ? (heating.get(exhibit.id)?.channels ?? []).flatMap((channel) => readHeading(bench, levels, exhibit, channel) ?? [])
      : [],
  );
}

function readHeading(
  bench: Bench,
  levels: readonly LevelFacts[],
  exhibit: ExhibitOf<'soak'>,
  channel: HeatingChannel,
): HeadingReading | null {
  const place = bench.places.get(channel.place);
  if (place === undefined) return null;
  const field = `/exhibits/${exhibit.id}/table/columns/${channel.column}`;
  const under = conditionsOf(bench, exhibit);
  const state = stateOfLoads(levels, under);
  const ambient = loggedAmbient(bench, exhibit, channel) ?? ambientOfConditions(bench, exhibit, field);
  const common = { exhibit, place, field, channel, state, ambient };
  const temperature = endOf(bench, exhibit, channel, field);
  if (temperature === null) return { ...common, reading: null };
  const cover = findCondition(under.cover);
  const missing = missingConditions(under).filter((key) => key !== 'minutes' && !(key === 'ambient' && ambient !== null));
  const reading: SpotReading = {
    place,
    field,
    opened: { state: 'read', v: '', read: { v: '' } },
    under,
    ambient,
    temperature,
    refused: null,
    missing,
    atLeast: place.outside !== true && cover !== null && cover !== 'closed',
    state,
    settled: true,
  };
  return { ...common, reading };
}

/** The end as the meter would read it, with the doubt of the meter, of the fit, and of a room that moved. */
function endOf(bench: Bench, exhibit: ExhibitOf<'soak'>, channel: HeatingChannel, field: string): Derived | null {
  const end = channel.fit?.outputs.findIndex(({ name }) => name === 'end') ?? -1;
  if (channel.fit === undefined || end === -1) return null;
  const { outputs, covariance, freedom, readings } = channel.fit;
  const fitted = deriveReading(
    bench,
    { text: '', kind: 'temperature', value: outputs[end]!.value, unit: SI_UNIT.temperature, u: null, lastDigit: channel.lastDigit },
    { field, role: 'temperature', day: exhibit.day, symbol: 'T_f' },
  );
  const id = `heat/${exhibit.id}/${channel.column}`;
  const fit = given(
    'constant',
    0,
    'ΔK',
    { id: `${id}/fit`, name: 'soak-fit', symbol: 'δ_f' },
    {
      form: doubtOf({
        id: `fit/${exhibit.id}/${channel.column}/end`,
        u: Math.sqrt(covariance[end]![end]!),
        means: 'fit',
        args: { readings, freedom },
      }),
    },
  );
  const half = channel.ambient?.half ?? 0;
  const room = given(
    'constant',
    0,
    'ΔK',
    { id: `${id}/room`, name: 'soak-room', symbol: 'δ_a' },
    {
      form: doubtOf({ id: `room/${exhibit.id}`, u: rectangular(half), means: 'roomMoved' }),
    },
  );
  return derive(endOfSoak, { fitted, fit, room }, `${id}/end`);
}

function loggedAmbient(bench: Bench, exhibit: ExhibitOf<'soak'>, { ambient, lastDigit }: HeatingChannel): Derived | null {
  const column = exhibit.table.columns.find(({ role }) => role === 'ambient');
  if (ambient === null || column === undefined) return null;
  const field = `/exhibits/${exhibit.id}/table/columns/${column.id}`;
  return deriveReading(
    bench,
    { text: '', kind: 'temperature', value: ambient.mean, unit: SI_UNIT.temperature, u: null, lastDigit },
    { field, role: 'ambient', day: exhibit.day, symbol: 'T_a' },
  );
}

function ambientOfConditions(bench: Bench, exhibit: ExhibitOf<'soak'>, field: string): Derived | null {
  const text = findCondition(conditionsOf(bench, exhibit).ambient);
  return temperatureOf(bench, text, fieldOfCondition(exhibit, 'ambient', field, undefined), exhibit.day, 'T_a');
}

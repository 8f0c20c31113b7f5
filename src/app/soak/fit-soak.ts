import { heatingKey } from '../../core/assess/heating-key.ts';
import type { Attachment, Case, computed, ExhibitOf } from '../../core/evidence/case.ts';
import { HEATING_FORMAT, HEATING_RECIPE, type HeatingChannel, type HeatingCurves } from '../../core/evidence/computed/heating-curves.ts';
import { heatingCurve } from '../../core/fit/heating-curve.ts';
import { isRefusal, type Refusal, refuse } from '../../core/quantity/refusal.ts';
import { canonicalText } from '../../core/result/canonical.ts';
import { digestOfBytes } from '../../core/result/digest.ts';
import type { CaseSource } from '../case-source.ts';
import { readSoakLog, type SoakLog } from './read-soak-log.ts';

/** What a fit leaves behind: a file, and how the case names it. */
export interface KeptFit {
  readonly curves: HeatingCurves;
  readonly bytes: Uint8Array;
  readonly attachment: Attachment;
  readonly computed: ReturnType<(typeof computed)['parse']>;
}

/** Told after every temperature that was fitted; answers whether to go on. */
export type Watch = (done: number, of: number) => Promise<boolean>;

/** Fits every temperature of one soak. `withinK`: how well its end is wanted, half of a 95 % interval. Stopped by its watcher it is refused, and nothing is kept. */
export async function fitSoak(one: Case, source: CaseSource, soakId: string, withinK: number, watch?: Watch): Promise<KeptFit | Refusal> {
  const soak = one.exhibits.find(({ id }) => id === soakId);
  const soaks = one.exhibits.filter(({ kind }) => kind === 'soak').map(({ id }) => id);
  if (soak === undefined || soak.kind !== 'soak')
    return refuse('no-such-soak', soakId, soaks.length === 0 ? 'a case with a soak' : `one of ${soaks.join(', ')}`, { place: '/exhibits' });
  if (soak.struck !== undefined) return refuse('soak-struck', soak.struck, 'a soak that is not struck', { place: `/exhibits/${soakId}` });
  const log = await readSoakLog(soak, one.files, source);
  if (isRefusal(log)) return log;
  const wanted = placedChannels(log);
  const channels: HeatingChannel[] = [];
  for (const channel of wanted) {
    if (watch !== undefined && !(await watch(channels.length, wanted.length)))
      return refuse('stopped', `${channels.length} of ${wanted.length} temperatures`, 'all of them; nothing was kept', {
        place: `/exhibits/${soakId}`,
      });
    channels.push(fitChannel(log, channel, withinK));
  }
  return toKept(one, soak, channels);
}

/** The same for a log that is read already. */
export function fitLog(one: Pick<Case, 'files'>, soak: ExhibitOf<'soak'>, log: SoakLog, withinK: number): KeptFit | Refusal {
  return toKept(
    one,
    soak,
    placedChannels(log).map((channel) => fitChannel(log, channel, withinK)),
  );
}

function placedChannels({ channels }: SoakLog): SoakLog['channels'] {
  return channels.filter(({ role, place }) => (role === 'temperature' || role === null) && place !== null);
}

function fitChannel(log: SoakLog, { column, place, values, lastDigit }: SoakLog['channels'][number], withinK: number): HeatingChannel {
  const beside = (...roles: readonly string[]): Float64Array | null =>
    log.channels.find(({ role }) => role !== null && roles.includes(role))?.values ?? null;
  const [ambient, load] = [beside('ambient'), beside('inputPower', 'outputCurrent')];
  return { column, place: place!, ...heatingCurve({ times: log.times, values, ambient, load, lastDigit, withinK }) };
}

function toKept(one: Pick<Case, 'files'>, soak: ExhibitOf<'soak'>, channels: HeatingChannel[]): KeptFit | Refusal {
  const soakId = soak.id;
  if (channels.length === 0)
    return refuse('soak-no-place', 'no column that names its place', 'a column of temperatures with "of", the place it was read at', {
      place: `/exhibits/${soakId}/table/columns`,
    });
  const key = heatingKey(one, soak);
  const curves: HeatingCurves = { format: HEATING_FORMAT, recipe: HEATING_RECIPE, soak: soakId, key, channels };
  const bytes = new TextEncoder().encode(`${canonicalText(curves)}\n`);
  const id = `heating-${soakId}`.slice(0, MOST_ID);
  const attachment = { id, path: `${id}.json`, sha256: digestOfBytes(bytes), bytes: bytes.length, media: 'application/json' };
  const from = [`/exhibits/${soakId}`, ...(soak.table.file === undefined ? [] : [`/files/${soak.table.file}`])];
  return { curves, bytes, attachment, computed: { id, recipe: HEATING_RECIPE, key, from, file: id } };
}

const MOST_ID = 40;

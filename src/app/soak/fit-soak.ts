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

/** Fits every temperature of one soak. `withinK`: how well its end is wanted, half of a 95 % interval. */
export async function fitSoak(one: Case, source: CaseSource, soakId: string, withinK: number): Promise<KeptFit | Refusal> {
  const soak = one.exhibits.find(({ id }) => id === soakId);
  const soaks = one.exhibits.filter(({ kind }) => kind === 'soak').map(({ id }) => id);
  if (soak === undefined || soak.kind !== 'soak')
    return refuse('no-such-soak', soakId, soaks.length === 0 ? 'a case with a soak' : `one of ${soaks.join(', ')}`, { place: '/exhibits' });
  if (soak.struck !== undefined) return refuse('soak-struck', soak.struck, 'a soak that is not struck', { place: `/exhibits/${soakId}` });
  const log = await readSoakLog(soak, one.files, source);
  return isRefusal(log) ? log : fitLog(one, soak, log, withinK);
}

/** The same for a log that is read already. */
export function fitLog(one: Pick<Case, 'files'>, soak: ExhibitOf<'soak'>, log: SoakLog, withinK: number): KeptFit | Refusal {
  const soakId = soak.id;
  const beside = (...roles: readonly string[]): Float64Array | null =>
    log.channels.find(({ role }) => role !== null && roles.includes(role))?.values ?? null;
  const [ambient, load] = [beside('ambient'), beside('inputPower', 'outputCurrent')];
  const channels = log.channels
    .filter(({ role, place }) => (role === 'temperature' || role === null) && place !== null)
    .map(
      ({ column, place, values, lastDigit }): HeatingChannel => ({
        column,
        place: place!,
        ...heatingCurve({ times: log.times, values, ambient, load, lastDigit, withinK }),
      }),
    );
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

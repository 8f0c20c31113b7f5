import type { Attachment, Case, Exhibit } from '../core/evidence/case.ts';
import { isRefusal, type Refusal, refuse } from '../core/quantity/refusal.ts';
import type { ReadTable } from '../core/working/bench/bench.ts';
import type { InstrumentFile } from '../importer/instrument-file.ts';
import { readInstrumentFile } from '../importer/read-instrument-file.ts';
import { MOST_ROWS } from '../importer/reduce.ts';
import { toReadTable } from './to-read-table.ts';

const NUMBERS_IN_PIXELS = 'image/tiff';

/** Files of a case that an exhibit takes numbers from: tables of sweeps and soaks, captures, thermal pictures that are text or hold their numbers as pixels. */
export function tableFiles(one: Case): Attachment[] {
  const wanted = new Set(one.exhibits.flatMap(tableFileOf));
  return one.files.filter((file) => wanted.has(file.id) && (file.media.startsWith('text/') || file.media === NUMBERS_IN_PIXELS));
}

/** A file as it was settled when it came; an answer that a newer reader no longer needs stays without effect (decision 8). */
export function readKeptFile(content: Uint8Array, { settled }: Pick<Attachment, 'settled'>): InstrumentFile | Refusal {
  return readInstrumentFile(content, settled ?? {}, 'leave');
}

export function readKeptTable(content: Uint8Array, file: Pick<Attachment, 'settled'>): ReadTable | Refusal {
  const read = readKeptFile(content, file);
  if (isRefusal(read)) return read;
  // a picture is never thinned out: a mean of neighbouring rows would lose the hottest pixel
  if (read.shape === 'matrix' && read.rows > MOST_ROWS)
    return refuse('picture-too-tall', `${read.rows} rows`, `a thermal picture of at most ${MOST_ROWS} rows`);
  return toReadTable(read);
}

function tableFileOf(exhibit: Exhibit): string[] {
  if ('table' in exhibit) return exhibit.table.file === undefined ? [] : [exhibit.table.file];
  return exhibit.kind === 'capture' || exhibit.kind === 'thermalPicture' ? [exhibit.file] : [];
}

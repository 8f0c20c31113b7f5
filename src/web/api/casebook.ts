import type { CaseHead, CasePage } from '../../app/casebook/casebook-store.ts';
import type { CaseAtDesk, CircuitAtDesk, Edit, EditAnswer, Foresee, LiveDrawing } from '../../app/casebook/desk.ts';
import type { SaidPad } from '../../app/casebook/pad-edit.ts';
import type { Refusal } from '../../core/quantity/refusal.ts';
import type { Description } from '../../importer/describe.ts';
import type { FormNode } from '../../present/workspace/form.ts';
import type { Origin } from '../../present/workspace/origin.ts';
import type { MovedView, Published, Publishing } from '../../present/workspace/published-view.ts';
import type { LinesView, RunView } from '../../present/workspace/run-view.ts';
import { request, requestBytes, requestLines } from './request.ts';
import { sendBytes, type Watch } from './send-bytes.ts';

const at = (id: string, ...more: string[]): string =>
  ['/api/cases', id, ...more].map((part, index) => (index === 0 ? part : encodeURIComponent(part))).join('/');

export const listCases = (query: URLSearchParams, signal?: AbortSignal): Promise<CasePage> =>
  request('GET', `/api/casebook?${query}`, undefined, signal);
export const createCase = (name: string, by: string, copyOf?: string): Promise<CaseHead> =>
  request('POST', '/api/cases', { name, by, ...(copyOf === undefined ? {} : { copyOf }) });
export const openCase = (id: string): Promise<CaseAtDesk> => request('GET', at(id));
export const editCase = (id: string, edit: Edit): Promise<EditAnswer> => request('POST', at(id, 'edits'), edit);
export const undoCase = (id: string, by: string): Promise<EditAnswer> => request('POST', at(id, 'undo'), { by });
export const redoCase = (id: string, by: string): Promise<EditAnswer> => request('POST', at(id, 'redo'), { by });
export const findOrigin = (id: string, step: string, signal?: AbortSignal): Promise<Origin> =>
  request('GET', at(id, 'steps', step), undefined, signal);
export const circuitOf = (id: string, signal?: AbortSignal): Promise<CircuitAtDesk> => request('GET', at(id, 'circuit'), undefined, signal);
export const traceCircuit = (
  id: string,
  edit: { readonly by: string; readonly base: number; readonly step: string; readonly text: string },
): Promise<EditAnswer & { readonly refusals: readonly Refusal[] }> => request('POST', at(id, 'circuit'), edit);
export const traceOnPhoto = (
  id: string,
  edit: { readonly by: string; readonly base: number; readonly step: string; readonly pad: SaidPad | { readonly gone: string } },
): Promise<EditAnswer> => request('POST', at(id, 'pads'), edit);
export const runsOf = (id: string, signal?: AbortSignal): Promise<RunView> => request('GET', at(id, 'runs'), undefined, signal);
export const startRun = (
  id: string,
  run: { readonly kind: 'points' | 'faults'; readonly level: string | null; readonly by: string },
): Promise<ToldRun> => request('POST', at(id, 'runs'), run);
export const stopRun = (id: string): Promise<void> => request('POST', at(id, 'runs', 'stop'));
export const runLines = (id: string, asked: LinesAsked, signal?: AbortSignal): Promise<LinesView> =>
  request('POST', at(id, 'runs', 'lines'), asked, signal);
/** How far a run is, as it goes. */
export const runEventsOf = (id: string): string => at(id, 'runs', 'events');
/** A run as the server tells it. */
export interface ToldRun {
  readonly kind: 'points' | 'faults';
  readonly level: string;
  readonly done: number;
  readonly of: number;
  readonly ended: 'kept' | 'stopped' | 'refused' | null;
  readonly why: readonly string[];
}
export type LinesAsked = { readonly level: string } & ({ readonly point: string } | { readonly fault: string; readonly load: string });
export const archiveCase = (id: string, archived: boolean): Promise<CaseHead> => request('PUT', at(id, 'archived'), { archived });
export const removeCase = (id: string): Promise<void> => request('DELETE', at(id));
export const restoreCase = (id: string): Promise<CaseHead> => request('POST', at(id, 'restore'));
/** A packed case, as another casebook wrote it. */
export const unpackCase = (file: File): Promise<CaseHead> => request('POST', '/api/unpack', new Blob([file], { type: 'application/zip' }));
export const writeScreen = (id: string, key: string, value: string | null): Promise<void> =>
  request('PUT', at(id, 'screen', key), { value });
/** Width, height and °C of a thermal picture, as the server lays them out. */
export const pictureOf = (id: string, exhibit: string, signal?: AbortSignal): Promise<ArrayBuffer> =>
  requestBytes(at(id, 'pictures', exhibit), signal);
/** Fits a soak and keeps what came of it; `progress` hears after each temperature. Going away stops it. */
export const foreseeCase = (
  id: string,
  ask: Foresee,
  progress: (done: number, of: number) => void,
  signal: AbortSignal,
): Promise<EditAnswer> => requestLines(at(id, 'foresee'), ask, progress, signal);
export const getForm = (): Promise<{ readonly case: FormNode; readonly reading: FormNode }> => request('GET', '/api/form');
export const getAccess = (): Promise<{ readonly phones: boolean }> => request('GET', '/api/access');
export const describePublishing = (id: string, signal?: AbortSignal): Promise<Publishing> =>
  request('GET', at(id, 'publishing'), undefined, signal);
export const publishCase = (id: string): Promise<Published> => request('POST', at(id, 'published'));
export const movedSince = (id: string, number: number, signal?: AbortSignal): Promise<MovedView> =>
  request('GET', at(id, 'published', String(number), 'moved'), undefined, signal);
export const publishedOf = (id: string, number: number): string => at(id, 'published', String(number));
export const publishedReportOf = (id: string, number: number): string => at(id, 'published', String(number), 'report');
export const phoneOf = (id: string): string => at(id, 'phone');
/** What others do to a case; what `tab` itself writes is left out. */
export const eventsOf = (id: string, tab: string): string => `${at(id, 'events')}?${new URLSearchParams({ tab })}`;
export const reportOf = (id: string): string => at(id, 'report');
export const liveDrawingOf = (id: string, signal?: AbortSignal): Promise<{ readonly drawing: LiveDrawing | null }> =>
  request('GET', at(id, 'circuit', 'live'), undefined, signal);
export const drawingOf = (id: string): string => at(id, 'circuit', 'drawing');
export const sheetOf = (id: string, paper: 'A4' | 'A3'): string => `${at(id, 'circuit', 'sheet')}?paper=${paper}`;
export const pdfOf = (id: string, paper: 'A4' | 'A3'): string => `${at(id, 'circuit', 'pdf')}?paper=${paper}`;
export const packOf = (id: string): string => at(id, 'pack');
export const fileOf = (id: string, sha256: string): string => at(id, 'files', sha256);
export const thumbOf = (id: string, sha256: string): string => at(id, 'files', sha256, 'thumb');

/** What the server made of a file: its hash, what it is by its content, and what the importer understood. */
export interface TakenFile {
  readonly sha256: string;
  readonly bytes: number;
  readonly media: string;
  readonly name: string;
  readonly understood?: Description;
  /** Why the importer could not read it, when it is a text that holds no table. */
  readonly notUnderstood?: string;
}
export const sendFile = (id: string, file: File, settled: Readonly<Record<string, string>>, watch: Watch = {}): Promise<TakenFile> => {
  const query = new URLSearchParams({ name: file.name });
  for (const [code, answer] of Object.entries(settled)) query.append('settle', `${code}=${answer}`);
  return sendBytes(`${at(id, 'files')}?${query}`, file, watch);
};

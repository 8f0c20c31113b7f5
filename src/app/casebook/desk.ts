import type { HeatingCurves } from '../../core/evidence/computed/heating-curves.ts';
import type { Refusal } from '../../core/quantity/refusal.ts';
import type { Assessment } from '../../core/result/assessment.ts';
import type { Markup } from '../../present/markup/markup.ts';
import type { CircuitView } from '../../present/workspace/circuit-view.ts';
import type { Origin } from '../../present/workspace/origin.ts';
import type { ViewChange } from '../../present/workspace/view-change.ts';
import type { WorkspaceView } from '../../present/workspace/workspace-view.ts';
import type { DrawnCircuit } from '../drawn-circuit.ts';
import type { ThermalField } from '../picture/read-picture.ts';
import type { Watch } from '../soak/fit-soak.ts';
import type { Conflict } from './apply-changes.ts';
import type { CaseState } from './case-state.ts';
import type { CaseHead } from './casebook-store.ts';
import type { Change } from './change.ts';
import type { SaidPad } from './pad-edit.ts';

/** What a person can do with the cases of one casebook. One edit at a time per case; different cases do not wait for each other. */
export interface Desk {
  open(id: string): Promise<CaseAtDesk | Refusal>;
  /** A new, empty case, or a copy of another one without its history. */
  create(request: { readonly name: string; readonly copyOf?: string | undefined; readonly by: string }): Promise<CaseHead | Refusal>;
  edit(id: string, edit: Edit): Promise<EditAnswer | Refusal>;
  undo(id: string, by: string): Promise<EditAnswer | Refusal>;
  redo(id: string, by: string): Promise<EditAnswer | Refusal>;
  /** The case as judged now, for reports and exports. */
  assess(id: string): Promise<{ readonly assessment: Assessment; readonly state: CaseState; readonly revision: number } | Refusal>;
  /** A published state judged again: the same tool gives the same bytes. */
  assessRevision(id: string, revision: number): Promise<Assessment | Refusal>;
  origin(id: string, step: string): Promise<Origin | Refusal>;
  /** The traced circuit: its lines, and what is known of its parts and nets. */
  circuit(id: string): Promise<CircuitAtDesk | Refusal>;
  /** Its schematic, whose parts and nets can be pointed at; null where too little was traced for one. */
  liveDrawing(id: string): Promise<{ readonly drawing: LiveDrawing | null } | Refusal>;
  /** The schematic alone, for a file or for paper. */
  drawing(id: string): Promise<{ readonly figure: Markup; readonly about: Assessment['case']; readonly tool: string } | Refusal>;
  /** Takes circuit lines into the case; lines that cannot be read come back, the others count. */
  trace(
    id: string,
    edit: { readonly by: string; readonly base: number; readonly step: string; readonly text: string },
  ): Promise<(EditAnswer & { readonly refusals: readonly Refusal[] }) | Refusal>;
  /** Takes a pad that was clicked on a photo, or lets one go; its pin and its net join the circuit. */
  pad(
    id: string,
    edit: { readonly by: string; readonly base: number; readonly step: string; readonly pad: SaidPad | { readonly gone: string } },
  ): Promise<EditAnswer | Refusal>;
  /** The numbers of one thermal picture, as they are judged. */
  picture(id: string, exhibit: string): Promise<ThermalField | Refusal>;
  /** Fits a soak and keeps what came of it; stopped by its watcher nothing is kept. */
  foresee(id: string, ask: Foresee, watch: Watch): Promise<(EditAnswer & { readonly curves: HeatingCurves }) | Refusal>;
  /** The report as one page. */
  report(id: string): Promise<string | Refusal>;
  /** Called after every revision of a case that somebody else than `but` wrote; answers how to stop listening. */
  listen(id: string, heard: (news: News) => void, but?: string): () => void;
  /** Makes the lines of the list again that are missing or older than the rules of this version, case by case, until told to stop. */
  refresh(signal: AbortSignal): Promise<void>;
  /** Writes the summaries that are still owed. */
  settle(): Promise<void>;
}

export interface CircuitAtDesk {
  readonly lines: string;
  readonly view: CircuitView;
}

/** The drawing, the x of its barrier, and where the corner of each symbol lies in it. */
export type LiveDrawing = Omit<DrawnCircuit, 'figure'> & { readonly svg: string };

export interface CaseAtDesk {
  readonly head: CaseHead;
  readonly state: CaseState;
  readonly view: WorkspaceView;
  readonly undo: StepName | null;
  readonly redo: StepName | null;
  readonly screen: Readonly<Record<string, string>>;
}

/** Which soak is to be followed to its end, and how well that is wanted: half of a 95 % interval, in kelvin. */
export interface Foresee {
  readonly by: string;
  readonly base: number;
  readonly step: string;
  readonly soak: string;
  readonly withinK: number;
}

/** What an undo would take back, for the words of its button. */
export interface StepName {
  readonly key: string;
  readonly args: Readonly<Record<string, string | number>>;
}

export interface Edit {
  /** The tab that writes. */
  readonly by: string;
  /** The revision that the tab has seen: the answer brings everything after it. */
  readonly base: number;
  /** Edits with the same step are undone together. */
  readonly step: string;
  readonly name: StepName;
  /** Places under "/case". A text that cannot be read is kept as a draft at its place. */
  readonly changes: readonly Change[];
}

export interface EditAnswer {
  readonly revision: number;
  /** Everything that changed since `base`, in order: the tab's own edit as it was taken, and what others did. */
  readonly changes: readonly Change[];
  /** Left alone, because somebody else changed the same field meanwhile. */
  readonly conflicts: readonly Conflict[];
  readonly view: ViewChange;
  readonly undo: StepName | null;
  readonly redo: StepName | null;
}

export interface News extends Omit<EditAnswer, 'conflicts'> {
  readonly by: string;
  readonly base: number;
}

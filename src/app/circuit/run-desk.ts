import { freshRuns } from '../../core/assess/fresh-runs.ts';
import type { FaultCampaign, FaultOutcome } from '../../core/evidence/computed/fault-campaign.ts';
import { findLevel, levelsOf, mainsOf } from '../../core/model/choices.ts';
import { toRefusals } from '../../core/model/missing-text.ts';
import { tolerating } from '../../core/model/plans.ts';
import { looksOf } from '../../core/model/probes-of.ts';
import { toModel } from '../../core/model/to-model.ts';
import { isRefusal, type Refusal, refuse } from '../../core/quantity/refusal.ts';
import type { FaultLines, FaultLook } from '../../core/solver/fault-lines.ts';
import { openBench } from '../../core/working/bench/bench.ts';
import { gatherFacts } from '../../core/working/facts.ts';
import { faultText, LOAD_WORDS } from '../../present/words/run-words.ts';
import { type LinesView, RUN_SAID, type RunView, toCampaignView, toLinesView, toSimulationView } from '../../present/workspace/run-view.ts';
import { runJobs } from '../../solver-pool/worker-pool.ts';
import { casebookCaseSource } from '../casebook/casebook-case-source.ts';
import type { CasebookStore } from '../casebook/casebook-store.ts';
import type { Desk } from '../casebook/desk.ts';
import { stateAt } from '../casebook/state-at.ts';
import { type OpenCase, openCase } from '../open-case.ts';
import { keepRun } from './keep-run.ts';
import { measuredPoints } from './measured-points.ts';
import { lookOf, prepareFaults, runFaults } from './run-faults.ts';
import { simulateCircuit, toLines } from './simulate-circuit.ts';

export type RunKind = 'points' | 'faults';
/** A run under way, or how the last one ended. */
export interface RunState {
  readonly kind: RunKind;
  readonly level: string;
  readonly done: number;
  readonly of: number;
  readonly ended: 'kept' | 'stopped' | { readonly refused: readonly Refusal[] } | null;
}

/** Runs of circuits for the cases of one casebook: one at a time, kept with the case when it ends. */
export interface RunDesk {
  view(id: string): Promise<RunView | Refusal>;
  /** Lines of one simulated point, or of one fault, which is run again where its lines were not kept. */
  lines(id: string, of: LinesAsked): Promise<LinesView | Refusal>;
  start(id: string, run: { readonly kind: RunKind; readonly level: string | null; readonly by: string }): Promise<RunState | Refusal>;
  stop(id: string): RunState | null;
  state(id: string): RunState | null;
  listen(id: string, heard: (state: RunState) => void): () => void;
  /** Ends what is under way; nothing of it is kept. */
  close(): void;
}
export type LinesAsked =
  | { readonly level: string; readonly point: string }
  | { readonly level: string; readonly fault: string; readonly load: FaultOutcome['load'] };

interface Options {
  readonly store: CasebookStore;
  readonly desk: Desk;
  readonly now: () => string;
  readonly workers: number;
}

export function createRunDesk({ store, desk, now, workers }: Options): RunDesk {
  const states = new Map<string, RunState>();
  const listeners = new Map<string, Set<(state: RunState) => void>>();
  let underWay: { readonly id: string; readonly stop: AbortController } | null = null;

  function tell(id: string, state: RunState): RunState {
    states.set(id, state);
    for (const heard of listeners.get(id) ?? []) heard(state);
    return state;
  }

  async function read(id: string): Promise<OpenCase | Refusal> {
    const found = await stateAt(store, id);
    if (found === null) return refuse('no-such-case', id, 'a case of this casebook', { place: '/cases' });
    const open = await openCase(casebookCaseSource(found.state, store.files));
    return Array.isArray(open) ? open[0]! : open;
  }

  async function work(id: string, open: OpenCase, first: RunState, by: string, stop: AbortController): Promise<void> {
    let last = first;
    const options = {
      level: first.level,
      workers,
      signal: stop.signal,
      onProgress: (done: number, of: number) => {
        if (!stop.signal.aborted) last = tell(id, { ...last, done, of });
      },
    };
    try {
      const kept = await (first.kind === 'points' ? simulateCircuit(open, options) : runFaults(open, options));
      if (kept === null || stop.signal.aborted) tell(id, { ...last, ended: 'stopped' });
      else if (Array.isArray(kept)) tell(id, { ...last, ended: { refused: kept } });
      else {
        const answer = await keepRun({ store, desk }, id, kept, { by, at: now() });
        tell(id, { ...last, done: last.of, ended: isRefusal(answer) ? { refused: [answer] } : 'kept' });
      }
    } finally {
      underWay = null;
    }
  }

  return {
    async view(id) {
      const open = await read(id);
      return isRefusal(open) ? open : viewOf(open);
    },
    async lines(id, asked) {
      const open = await read(id);
      return isRefusal(open) ? open : linesOf(open, asked);
    },
    async start(id, { kind, level, by }) {
      if (underWay !== null) return refuse('busy', 'a run that is under way', 'one run at a time: wait for its end, or stop it');
      const stop = new AbortController();
      underWay = { id, stop };
      const open = await read(id);
      const facts = isRefusal(open) ? open : gatherFacts(openBench(open.one, open.tables));
      const found = isRefusal(facts) ? facts : findLevel(facts, level);
      const model = isRefusal(found) || isRefusal(facts) ? null : toModel(facts, found, mainsOf(facts).nominal);
      const refusal = isRefusal(found) ? found : model !== null && 'because' in model ? (toRefusals(model)[0] ?? null) : null;
      if (refusal !== null || isRefusal(open) || isRefusal(found)) {
        underWay = null;
        return refusal ?? (isRefusal(open) ? open : refuse('no-circuit', '', 'a traced circuit'));
      }
      const first = tell(id, { kind, level: `${found.port}~${found.id}`, done: 0, of: 1, ended: null });
      void work(id, open, first, by, stop).catch((error: unknown) => {
        if (!stop.signal.aborted) console.error(error);
        tell(id, { ...first, ended: 'stopped' });
      });
      return first;
    },
    stop(id) {
      if (underWay?.id !== id) return states.get(id) ?? null;
      underWay.stop.abort();
      const state = states.get(id);
      return state === undefined ? null : tell(id, { ...state, ended: 'stopped' });
    },
    state: (id) => states.get(id) ?? null,
    listen(id, heard) {
      const own = listeners.get(id) ?? new Set();
      listeners.set(id, own.add(heard));
      return () => {
        own.delete(heard);
        if (own.size === 0) listeners.delete(id);
      };
    },
    close: () => underWay?.stop.abort(),
  };
}

function viewOf(open: OpenCase): RunView {
  const facts = gatherFacts(openBench(open.one, open.tables));
  const { runs, stale } = freshRuns(facts, open.results);
  const levels = levelsOf(facts);
  const [first] = levels;
  const model = first === undefined ? null : toModel(facts, first, mainsOf(facts).nominal);
  const missing = first === undefined ? [findLevel(facts, null)] : model !== null && 'because' in model ? toRefusals(model) : [];
  return {
    levels: levels.map(({ port, id, name }) => ({ id: `${port}~${id}`, name })),
    needs: missing.flatMap((one) => (isRefusal(one) ? [one.expected] : [])),
    stale: stale.map(({ computed }) => computed),
    said: RUN_SAID,
    simulations: runs.simulations.map((one) => toSimulationView(one, measuredPoints(open, one))),
    campaigns: runs.campaigns.map(toCampaignView),
  };
}

async function linesOf(open: OpenCase, asked: LinesAsked): Promise<LinesView | Refusal> {
  const { runs } = freshRuns(gatherFacts(openBench(open.one, open.tables)), open.results);
  if ('point' in asked) {
    const point = runs.simulations.find(({ level }) => level.id === asked.level)?.points.find(({ id }) => id === asked.point);
    if (point === undefined) return refuse('no-such-run', asked.point, 'a point that was simulated and still belongs to the circuit');
    return toLinesView(asked.point, [
      { name: '', lines: point.waveform },
      { name: 'a few periods', lines: point.close },
    ]);
  }
  const campaign = runs.campaigns.find(({ level }) => level.id === asked.level);
  const outcome = campaign?.results.find(({ fault, load }) => fault === asked.fault && load === asked.load);
  const fault = campaign?.faults.find(({ id }) => id === asked.fault);
  if (campaign === undefined || outcome === undefined || fault === undefined)
    return refuse('no-such-run', asked.fault, 'a fault that was run and still belongs to the circuit');
  const title = `${faultText(fault)}, ${LOAD_WORDS[asked.load]}`;
  const kept = campaign.worst.find((one) => one.fault === asked.fault && one.load === asked.load);
  if (kept !== undefined) return toLinesView(title, [{ name: '', lines: kept.waveform }]);
  const again = await runAgain(open, campaign, outcome);
  return isRefusal(again) ? again : toLinesView(title, [{ name: '', lines: again }]);
}

/** One fault once more, from the same settled circuit, on a worker. */
async function runAgain(open: OpenCase, campaign: FaultCampaign, { fault, load, simulatedS }: FaultOutcome) {
  const prepared = prepareFaults(open, `${campaign.level.port}~${campaign.level.id}`);
  if (Array.isArray(prepared)) return prepared[0]!;
  const { planned, list } = prepared;
  const own = list.run[list.ids.indexOf(fault)];
  if (own === undefined) return refuse('no-such-run', fault, 'a fault of the circuit as it is now');
  const plan = { ...planned.plan, circuit: tolerating(planned.plan.circuit, new Set(campaign.tolerated)) };
  const look = lookOf(plan, planned.model, own, load, simulatedS);
  const [lines] = await runJobs<{ look: FaultLook }, FaultLines>('run-look', [{ look }], { workers: 1 });
  return (lines == null ? null : toLines(looksOf(planned.model), lines, 'mains')) ?? refuse('no-lines', fault, 'a fault that can be run');
}

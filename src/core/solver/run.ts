import { ActiveWatches } from './active-watches.ts';
import type { Circuit } from './circuit.ts';
import { ControlBoard } from './control-board.ts';
import { rowsTimes, rowTimes, valuesAndRates } from './dense.ts';
import { storedEnergy } from './energy-balance.ts';
import { Extremes } from './extremes.ts';
import { cold, type HeatState, heatUp } from './heat.ts';
import { incrementAt } from './increment-matrix.ts';
import { hermite } from './locate-event.ts';
import { addMoment } from './moments.ts';
import type { Plan } from './plan.ts';
import { planCircuit } from './plan-circuit.ts';
import { probeRow } from './probe-row.ts';
import { type RegionTable, regionAt, tableOfRegions } from './regions.ts';
import type { Effort, Outcome, RunFinding, SolverRequest } from './request.ts';
import { settle } from './settle.ts';
import { startingRegions, startingStates } from './snapshot.ts';
import {
  AFTER_EVENT,
  COMPARATOR_SLACK,
  LANDINGS,
  LEAST_AFTER,
  LONGEST,
  LONGEST_HEATED,
  LOOK_EVERY,
  MOST_DOWN,
  MOST_UP,
  PAST,
  PAST_SLACK,
  PROBE_LEVEL,
  PROBE_SHARE,
  PROBE_TOLERANCE,
  SLACK,
  TOLERANCE,
  WAKES,
} from './step-settings.ts';
import { TICK_LEVEL, TICK_S, Topologies, type Topology } from './topology.ts';

/** One run: the present state, and what has been seen on the way. */
export class Run {
  readonly circuit: Circuit;
  readonly plan: Plan;
  readonly table: RegionTable;
  readonly topologies: Topologies;
  readonly board: ControlBoard;
  readonly heat: HeatState;
  readonly findings: RunFinding[] = [];
  readonly extremes: Extremes;
  readonly effort: { -readonly [key in keyof Effort]: Effort[key] } = { steps: 0, rejected: 0, events: 0, topologies: 0 };
  readonly waveform: { readonly timeS: number[]; readonly values: number[][] } | null;
  tick: number;
  x: Float64Array;
  regions: Uint8Array;
  #counting = false;
  /** Where counting began, and what was stored there, joule. */
  countedFrom = 0;
  storedThen = 0;
  #topology!: Topology;
  readonly #request: SolverRequest;
  readonly #n: number;
  /** Row of the first probe. */
  readonly probeRows: number;
  /** Rows of probes and of what heats. */
  readonly #alwaysNeeded: readonly number[];
  readonly #watches = new ActiveWatches();
  readonly #reported = new Set<string>();
  #y: Float64Array;
  #v0: Float64Array;
  #rate0: Float64Array;
  #v1: Float64Array;
  #rate1: Float64Array;
  /** States inside a jump, and the levels stepped from them. */
  readonly #jumpStates: Float64Array[] = [];
  readonly #jumpLevels: number[] = [];
  #level = AFTER_EVENT;
  /** Level at which the last event was found. */
  #trial = 0;
  #nextWave = -1;

  constructor(request: SolverRequest) {
    const { circuit, probes, start } = request;
    this.#request = request;
    this.circuit = circuit;
    this.plan = planCircuit(circuit);
    this.table = tableOfRegions(this.plan);
    this.board = new ControlBoard(circuit, this.plan);
    const { senses } = this.board;
    this.topologies = new Topologies(
      this.plan,
      this.table,
      senses,
      probes.map(({ of }) => probeRow(circuit, of)),
    );
    const { layout } = this.topologies;
    this.board.place(layout.senses);
    this.probeRows = layout.senses + senses.length;
    const { above } = request;
    const held = above === undefined ? null : { index: probes.findIndex(({ id }) => id === above.probe), level: above.level };
    this.extremes = new Extremes(this.probeRows, probes.length, held);
    this.#n = this.plan.states.count;
    this.#alwaysNeeded = [...probes.map((_, index) => this.probeRows + index), ...this.plan.heated.map(({ bend }) => layout.bend[bend]!)];
    this.x = startingStates(this.plan, start);
    this.#y = new Float64Array(this.#n);
    this.regions = startingRegions(this.plan, this.table, start);
    this.heat = cold(this.plan);
    this.tick = 0;
    [this.#v0, this.#rate0, this.#v1, this.#rate1] = [0, 1, 2, 3].map(() => new Float64Array(layout.count)) as [
      Float64Array,
      Float64Array,
      Float64Array,
      Float64Array,
    ];
    if (typeof start !== 'string') {
      this.tick = start.ticks;
      for (const unit of this.board.units) {
        const kept = start.controllers[unit.ref];
        if (kept !== undefined) unit.load(kept);
      }
      this.plan.heated.forEach(({ ref }, index) => {
        this.heat.amount[index] = start.heat[ref] ?? 0;
      });
      this.#turnSources();
    }
    this.waveform = request.waveform === undefined ? null : { timeS: [], values: probes.map(() => []) };
  }

  get counts(): boolean {
    return this.#counting;
  }
  get topology(): Topology {
    return this.#topology;
  }

  /** The mains goes on from the phase it had. */
  #turnSources(): void {
    const { sine } = this.plan.states;
    if (sine < 0) return;
    const angle = this.plan.radPerSecond * this.tick * TICK_S;
    this.x[sine] = Math.sin(angle);
    this.x[sine + 1] = Math.cos(angle);
  }

  /** Runs on for `stopS`, counting from `fromS` after now; the answer says how it ended. May be called again. */
  forward(stopS: number, fromS: number): Outcome {
    const { most, cancelled, progress, waveform, endAtRating } = this.#request;
    const begin = this.tick;
    const stop = begin + Math.round(stopS / TICK_S);
    const from = begin + Math.round(fromS / TICK_S);
    this.#counting = false;
    const allowed = this.plan.heated.length > 0 ? LONGEST_HEATED : LONGEST;
    const longest = waveform === undefined ? allowed : Math.max(0, Math.min(allowed, Math.floor(Math.log2(waveform.spacingS / TICK_S))));
    if (this.#nextWave < 0)
      this.#nextWave = waveform === undefined ? Number.POSITIVE_INFINITY : begin + Math.round(waveform.fromS / TICK_S);
    if (!this.#react()) return 'noConsistentState';
    let looked = this.effort.steps;
    while (this.tick < stop) {
      if (!this.#counting && this.tick >= from) this.#startCounting();
      const until = Math.min(stop, this.#counting ? stop : from, this.board.due());
      if (until <= this.tick) {
        if (!this.#react()) return 'noConsistentState';
        continue;
      }
      const event = this.#step(until - this.tick, longest);
      if (event && !this.#react()) return 'noConsistentState';
      if (endAtRating && this.findings.some(({ code }) => code === 'ratingExceeded' || code === 'breakdown')) return 'ratingExceeded';
      if (this.effort.steps - looked < LOOK_EVERY) continue;
      looked = this.effort.steps;
      this.effort.topologies = this.topologies.known.size;
      if (cancelled?.() === true) return 'cancelled';
      if (this.effort.steps > most.steps || this.effort.topologies > most.topologies) return 'budgetSpent';
      progress?.((this.tick - begin) / (stop - begin));
    }
    this.effort.topologies = this.topologies.known.size;
    progress?.(1);
    return 'completed';
  }

  #startCounting(): void {
    this.#counting = true;
    for (const topology of this.topologies.known.values()) topology.moments.length = 0;
    this.extremes.restart();
    this.extremes.see(this.#v0);
    this.countedFrom = this.tick;
    this.storedThen = storedEnergy(this.plan, this.#topology, this.x);
  }

  /** Everything that changes at this instant: regions, controllers, until nothing wants to change. */
  #react(): boolean {
    this.effort.events += 1;
    if (!this.#settleNow()) return false;
    for (let turn = 0; turn < WAKES; turn += 1) {
      if (!this.board.wake(this.tick, this.#topology, this.x, this.#n)) break;
      if (turn === WAKES - 1) return false;
      if (this.#applyControllers() && !this.#settleNow()) return false;
    }
    this.#watches.clear(this.#alwaysNeeded);
    for (const watch of this.#topology.watches) this.#watches.add(watch, SLACK[this.#request.accuracy]);
    for (const watch of this.board.watches()) this.#watches.add(watch, COMPARATOR_SLACK);
    this.#look(this.x, this.#v0, this.#rate0);
    if (this.#counting) this.extremes.see(this.#v0);
    this.#level = Math.min(this.#level, AFTER_EVENT);
    return true;
  }

  /** Puts switches and supply currents where the controllers want them; says whether anything moved. */
  #applyControllers(): boolean {
    let moved = false;
    for (const { bend, mode } of this.board.modes()) if (this.#setMode(bend, mode)) moved = true;
    return moved;
  }

  #setMode(bend: number, mode: number): boolean {
    if (bend < 0) return false;
    const regions = this.table.bends[bend]!;
    if (regions[this.regions[bend]!]!.mode === mode) return false;
    const row = this.topologies.layout.bend[bend]!;
    const volts = row < 0 ? 0 : rowTimes(this.#topology.rows, row, this.x, this.#n);
    this.regions[bend] = regionAt(regions, mode, volts);
    return true;
  }

  #settleNow(): boolean {
    const found = settle(this.topologies, this.regions, this.x, (device, to) => this.#noteRegion(device, to));
    if (found === null) return false;
    this.#topology = found;
    return true;
  }

  #noteRegion(device: number, to: number): void {
    const { plan, table } = this;
    const atS = this.tick * TICK_S;
    if (device < table.limitedFrom) {
      const region = table.bends[device]![to]!;
      if (region.broken)
        this.#report({
          code: 'breakdown',
          ref: plan.bends[device]!.ref,
          atS,
          value: null,
          limit: region.toV < 0 ? -region.toV : region.fromV,
        });
    } else if (device >= table.coresFrom && to > 0) {
      const { ref, saturation } = plan.cores[device - table.coresFrom]!;
      this.#report({ code: 'saturated', ref, atS, value: null, limit: saturation?.amps ?? null });
    }
  }

  #report(finding: RunFinding): void {
    const key = `${finding.code} ${finding.ref}`;
    if (this.#reported.has(key)) return;
    this.#reported.add(key);
    this.findings.push(finding);
  }

  /** Values and rates of every watched row at x. */
  #look(x: Float64Array, values: Float64Array, rates: Float64Array): void {
    valuesAndRates(this.#watches.rows, this.#topology.rows, this.#topology.rates, x, this.#n, values, rates);
  }

  /** out = x a step of 2^level ticks later. */
  #advance(x: Float64Array, level: number, out: Float64Array): void {
    rowsTimes(incrementAt(this.#topology.chain, TICK_LEVEL + level), this.#n, x, this.#n, out);
    for (let i = 0; i < this.#n; i += 1) out[i]! += x[i]!;
  }

  /** One accepted step of at most `limit` ticks; true when an event stands at its end. */
  #step(limit: number, longest: number): boolean {
    const { accuracy } = this.#request;
    const tolerance = TOLERANCE[accuracy];
    let level = Math.min(this.#level, longest, 31 - Math.clz32(Math.min(limit, 1 << 30)));
    const wanted = level;
    for (;;) {
      this.#advance(this.x, level, this.#y);
      this.effort.steps += 1;
      this.#look(this.#y, this.#v1, this.#rate1);
      const ticks = 1 << level;
      const verdict = this.#watches.judge(this.#v0, this.#rate0, this.#v1, this.#rate1, ticks * TICK_S, tolerance);
      if (level > PROBE_LEVEL) this.#judgeProbes(ticks * TICK_S, PROBE_TOLERANCE[accuracy]);
      if (level > 0 && (verdict.strain > 1 || verdict.hidden)) {
        this.effort.rejected += 1;
        level = Math.max(0, level - Math.min(MOST_DOWN, Math.max(1, Math.round(Math.log2(verdict.strain) / 3))));
        continue;
      }
      if (verdict.eventAt <= 1 && (1 - verdict.eventAt) * ticks > (verdict.close ? PAST_SLACK[accuracy] : PAST)) {
        this.effort.rejected += 1;
        this.#trial = level;
        return this.#jump(Math.max(1, Math.ceil(verdict.eventAt * ticks)));
      }
      const changed = this.#accept(ticks, level);
      // a step cut short by something due keeps the level it was cut from
      if (level < wanted || level === this.#level)
        this.#level = Math.min(
          LONGEST,
          level + Math.max(0, Math.min(MOST_UP, Math.floor(-Math.log2(verdict.strain + Number.MIN_VALUE) / 3))),
        );
      return changed || verdict.eventAt <= 1;
    }
  }

  /** A probe whose curve the step does not follow makes it rough, too. */
  #judgeProbes(seconds: number, tolerance: number): void {
    const { verdict } = this.#watches;
    const { least, most } = this.extremes;
    for (let index = 0; index < least.length; index += 1) {
      const row = this.probeRows + index;
      const [v0, v1] = [this.#v0[row]!, this.#v1[row]!];
      const missed = Math.abs(v1 - v0 - 0.5 * seconds * (this.#rate0[row]! + this.#rate1[row]!));
      const range = Math.max(most[index]! - least[index]!, Math.abs(v1 - v0), PROBE_SHARE * (Math.abs(v0) + Math.abs(v1)));
      if (range > 0) verdict.strain = Math.max(verdict.strain, missed / (tolerance * range));
    }
  }

  /** Goes `ticks` ahead in steps of powers of two, to just past an event; takes less when it turns out to lie further back. */
  #jump(ticks: number): boolean {
    let goal = ticks;
    for (let landing = 0; ; landing += 1) {
      this.#leap(goal);
      this.#look(this.#y, this.#v1, this.#rate1);
      const verdict = this.#watches.judge(this.#v0, this.#rate0, this.#v1, this.#rate1, goal * TICK_S, 1);
      const past = verdict.eventAt <= 1 ? (1 - verdict.eventAt) * goal : 0;
      const hidden = verdict.hidden && goal > 1;
      if ((past > (verdict.close ? PAST_SLACK[this.#request.accuracy] : PAST) || hidden) && landing < LANDINGS) {
        goal = hidden ? Math.ceil(goal / 2) : Math.max(1, Math.min(goal - 1, Math.ceil(verdict.eventAt * goal)));
        continue;
      }
      const changed = this.#accept(goal, -1);
      this.#level = Math.max(LEAST_AFTER, this.#trial - 1);
      return changed || verdict.eventAt <= 1;
    }
  }

  #leap(ticks: number): void {
    this.#jumpLevels.length = 0;
    let from = this.x;
    for (let level = 31 - Math.clz32(ticks); level >= 0; level -= 1) {
      if (((ticks >>> level) & 1) === 0) continue;
      const at = this.#jumpLevels.length;
      this.#jumpLevels.push(level);
      const to = this.#jumpStates[at] ?? new Float64Array(this.#n);
      this.#jumpStates[at] = to;
      this.#advance(from, level, to);
      this.effort.steps += 1;
      from = to;
    }
    this.#y.set(from);
  }

  /** Takes the step to y: sums, extremes, heat, ratings. `level` is -1 after a jump. True when heat has changed a part. */
  #accept(ticks: number, level: number): boolean {
    const seconds = ticks * TICK_S;
    if (this.#counting) {
      if (level >= 0) addMoment(this.#topology, level, this.x, this.#n);
      else
        this.#jumpLevels.forEach((one, index) => {
          addMoment(this.#topology, one, index === 0 ? this.x : this.#jumpStates[index - 1]!, this.#n);
        });
    }
    this.extremes.pass(this.#v0, this.#rate0, this.#v1, this.#rate1, seconds);
    this.tick += ticks;
    [this.x, this.#y] = [this.#y, this.x];
    const changed = this.plan.heated.length > 0 && this.#warm(seconds);
    [this.#v0, this.#v1] = [this.#v1, this.#v0];
    [this.#rate0, this.#rate1] = [this.#rate1, this.#rate0];
    this.plan.charges.forEach(({ ref, ratedV }, index) => {
      const volts = Math.abs(this.x[index]!);
      if (ratedV !== null && volts > ratedV)
        this.#report({ code: 'ratingExceeded', ref, atS: this.tick * TICK_S, value: volts, limit: ratedV });
    });
    if (this.tick >= this.#nextWave) this.#record();
    return changed;
  }

  #warm(seconds: number): boolean {
    const changes = heatUp(this.plan, this.heat, this.table.bends, this.regions, seconds, this.tick, (bend) => {
      const row = this.topologies.layout.bend[bend]!;
      const [v0, v1] = [this.#v0[row]!, this.#v1[row]!];
      const middle = hermite(0.5, v0, this.#rate0[row]! * seconds, v1, this.#rate1[row]! * seconds);
      return (v0 * v0 + 4 * middle * middle + v1 * v1) / 6; // Simpson's rule
    });
    for (const { bend, mode } of changes) {
      this.#setMode(bend, mode);
      if (this.plan.heated.some((one) => one.bend === bend && one.law.kind === 'melts'))
        this.#report({ code: 'fuseOpened', ref: this.plan.bends[bend]!.ref, atS: this.tick * TICK_S, value: null, limit: null });
    }
    return changes.length > 0;
  }

  #record(): void {
    const { waveform } = this.#request;
    if (this.waveform === null || waveform === undefined) return;
    this.waveform.timeS.push(this.tick * TICK_S);
    this.waveform.values.forEach((values, index) => {
      values.push(this.#v0[this.probeRows + index]!);
    });
    this.#nextWave = this.tick + Math.round(waveform.spacingS / TICK_S);
  }
}

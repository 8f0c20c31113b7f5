import type { Circuit } from './circuit.ts';
import { ControlBoard } from './control-board.ts';
import { storedEnergy } from './energy-balance.ts';
import { Extremes } from './extremes.ts';
import { cold, type HeatState, heatUp } from './heat.ts';
import { clearVerdict, judgeStep, newVerdict, type StepVerdict } from './judge-step.ts';
import { Arena } from './kernel/arena.ts';
import { hermite } from './locate-event.ts';
import { March } from './march.ts';
import { clearMoments } from './moments.ts';
import type { Plan } from './plan.ts';
import { planCircuit } from './plan-circuit.ts';
import { probeRow } from './probe-row.ts';
import { type RegionTable, regionAt, tableOfRegions } from './regions.ts';
import type { Effort, Outcome, RunFinding, SolverRequest } from './request.ts';
import { settle } from './settle.ts';
import { startingRegions, startingStates } from './snapshot.ts';
import {
  AFTER_EVENT,
  EASY,
  LANDINGS,
  LONGEST,
  LONGEST_HEATED,
  LOOK_EVERY,
  MOST_DOWN,
  MOST_UP,
  PAST,
  PAST_SLACK,
  PROBE_LEVEL,
  PROBE_TOLERANCE,
  SLACK,
  TOLERANCE,
  WAKES,
} from './step-settings.ts';
import { TICK_S, Topologies, type Topology } from './topology.ts';

const NONE: readonly { readonly bend: number; readonly mode: number }[] = [];

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
  /** Row of the first probe in the layout. */
  readonly probeRows: number;
  tick = 0;
  regions: Uint8Array;
  #counting = false;
  /** Where counting began, and what was stored there, joule. */
  countedFrom = 0;
  storedThen = 0;
  #topology: Topology;
  readonly #request: SolverRequest;
  readonly #arena: Arena;
  readonly #march: March;
  readonly #verdict: StepVerdict = newVerdict();
  readonly #reported = new Set<string>();
  /** Capacitors with a rating. */
  readonly #rated: readonly number[];
  #level = AFTER_EVENT;
  /** The next step is the first in its topology. */
  #entering = true;
  #nextWave = -1;

  constructor(request: SolverRequest) {
    const { circuit, probes, start, above, accuracy } = request;
    this.#request = request;
    this.circuit = circuit;
    this.plan = planCircuit(circuit);
    this.table = tableOfRegions(this.plan);
    this.board = new ControlBoard(circuit, this.plan, probes.length);
    const { senses } = this.board;
    this.#arena = Arena.take();
    this.topologies = new Topologies(
      this.#arena,
      this.plan,
      this.table,
      senses,
      probes.map(({ of }) => probeRow(circuit, of)),
      [...new Set([...this.board.bends, ...this.plan.heated.map(({ bend }) => bend)])],
      SLACK[accuracy],
    );
    this.probeRows = this.topologies.layout.senses + senses.length;
    const held = above === undefined ? null : { index: probes.findIndex(({ id }) => id === above.probe), level: above.level };
    this.extremes = new Extremes(probes.length, held);
    this.#march = new March(this.#arena, this.topologies, startingStates(this.plan, start));
    this.#rated = this.plan.charges.flatMap(({ ratedV }, index) => (ratedV === null ? [] : [index]));
    this.regions = startingRegions(this.plan, this.table, start);
    this.heat = cold(this.plan);
    if (typeof start !== 'string') {
      this.tick = start.ticks;
      for (const unit of this.board.units) {
        const kept = start.controllers[unit.ref];
        if (kept !== undefined) unit.load(kept);
      }
      this.board.refresh();
      this.plan.heated.forEach(({ ref }, index) => {
        this.heat.amount[index] = start.heat[ref] ?? 0;
      });
      this.#turnSources();
    }
    this.#topology = this.topologies.at(this.regions);
    this.waveform = request.waveform === undefined ? null : { timeS: [], values: probes.map(() => []) };
  }

  /** Ends the use of this run; its results must have been taken. */
  release(): void {
    this.#arena.giveBack();
  }

  get counts(): boolean {
    return this.#counting;
  }
  get topology(): Topology {
    return this.#topology;
  }
  get x(): Float64Array {
    return this.#march.x.data;
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
      if (endAtRating && this.findings.length > 0 && this.findings.some(({ code }) => code === 'ratingExceeded' || code === 'breakdown'))
        return 'ratingExceeded';
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
    for (const topology of this.topologies.known.values()) clearMoments(topology);
    this.extremes.restart();
    this.extremes.see(this.#march.v0.data);
    this.countedFrom = this.tick;
    this.storedThen = storedEnergy(this.plan, this.#topology, this.x);
  }

  /** Everything that changes at this instant: regions, controllers, until nothing wants to change. */
  #react(): boolean {
    this.effort.events += 1;
    const before = this.#topology;
    if (!this.#settleNow()) return false;
    for (let turn = 0; turn < WAKES; turn += 1) {
      if (!this.board.wake(this.tick, this.#march.v0.data)) break;
      if (turn === WAKES - 1) return false;
      if (this.#applyControllers() && !this.#settleNow()) return false;
    }
    if (this.#counting) this.extremes.see(this.#march.v0.data);
    if (this.#topology === before) return true;
    // what was good enough the last time is tried first: switching repeats itself
    this.#level = this.#topology.entry;
    this.#entering = true;
    return true;
  }

  /** Puts switches and supply currents where the controllers want them; says whether anything moved. */
  #applyControllers(): boolean {
    let moved = false;
    for (const { unit, gate, supply } of this.board.wired) {
      if (this.#setMode(gate, unit.on ? 1 : 0)) moved = true;
      if (this.#setMode(supply, unit.running ? 1 : 0)) moved = true;
    }
    return moved;
  }

  #setMode(bend: number, mode: number): boolean {
    if (bend < 0) return false;
    const regions = this.table.bends[bend]!;
    if (regions[this.regions[bend]!]!.mode === mode) return false;
    const place = this.#topology.look.placeOf[this.topologies.layout.bend[bend]!]!;
    const to = regionAt(regions, mode, this.#march.v0.data[place]!);
    this.regions[bend] = to;
    this.#topology = this.topologies.after(this.#topology, bend, to, this.regions);
    // the next mode, of another part, is chosen by the voltage that this one leaves
    this.#march.lookNow(this.#topology);
    return true;
  }

  #settleNow(): boolean {
    const march = this.#march;
    const found = settle(
      this.topologies,
      this.#topology,
      this.regions,
      march.v0.data,
      (topology) => march.lookNow(topology),
      (device, to) => this.#noteRegion(device, to),
    );
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

  /** What the watches and probes say of the trial that stands in y. */
  #judge(ticks: number, tolerance: number): StepVerdict {
    const verdict = this.#verdict;
    const { table, look } = this.#topology;
    const { v0, v1 } = this.#march;
    const seconds = ticks * TICK_S;
    clearVerdict(verdict);
    judgeStep(verdict, table, v0.data, v1.data, look.half, seconds, tolerance);
    for (const one of this.board.wired) judgeStep(verdict, one.table, v0.data, v1.data, look.half, seconds, tolerance);
    return verdict;
  }

  /** One accepted step of at most `limit` ticks; true when an event stands at its end. */
  #step(limit: number, longest: number): boolean {
    const { accuracy } = this.#request;
    let level = Math.min(this.#level, longest);
    let ticks = Math.min(1 << level, limit);
    const cut = ticks < 1 << level;
    let shortened = false;
    for (;;) {
      this.effort.steps += this.#march.try(this.#topology, ticks);
      const verdict = this.#judge(ticks, TOLERANCE[accuracy]);
      if (ticks > 1 << PROBE_LEVEL && this.#counting) this.#judgeProbes(ticks * TICK_S);
      if (ticks > 1 && (verdict.strain > 1 || verdict.hidden)) {
        this.effort.rejected += 1;
        level = 32 - Math.clz32(ticks - 1); // the least power of two that is not shorter
        level = Math.max(0, level - Math.min(MOST_DOWN, Math.max(1, Math.round(Math.log2(verdict.strain) / 3))));
        ticks = 1 << level;
        shortened = true;
        continue;
      }
      if (verdict.eventAt <= 1 && (1 - verdict.eventAt) * ticks > (verdict.close ? PAST_SLACK[accuracy] : PAST)) {
        this.effort.rejected += 1;
        this.#level = Math.max(0, 31 - Math.clz32(ticks) - 1);
        return this.#jump(ticks);
      }
      const changed = this.#accept(ticks);
      // a step cut short by something due keeps the level it was cut from
      if (shortened || !cut) {
        if (this.#entering) this.#topology.entry = Math.min(LONGEST, shortened || verdict.strain > EASY ? level : level + 1);
        this.#level = Math.min(
          LONGEST,
          level + Math.max(0, Math.min(MOST_UP, Math.floor(-Math.log2(verdict.strain + Number.MIN_VALUE) / 3))),
        );
      }
      this.#entering = false;
      return changed || verdict.eventAt <= 1;
    }
  }

  /** A probe whose curve the trial does not follow makes it rough, too. */
  #judgeProbes(seconds: number): void {
    const { v0, v1 } = this.#march;
    const tolerance = PROBE_TOLERANCE[this.#request.accuracy];
    const strain = this.extremes.strain(v0.data, v1.data, this.#topology.look.half, seconds, tolerance);
    if (strain > this.#verdict.strain) this.#verdict.strain = strain;
  }

  /** Goes back to just past the event that the last verdict found in a trial of `ticks`; less far when it turns out to lie further back. */
  #jump(ticks: number): boolean {
    const allowed = PAST_SLACK[this.#request.accuracy];
    let goal = this.#goal(ticks, allowed);
    for (let landing = 0; ; landing += 1) {
      this.effort.steps += this.#march.try(this.#topology, goal);
      const verdict = this.#judge(goal, 1);
      const past = verdict.eventAt <= 1 ? (1 - verdict.eventAt) * goal : 0;
      const hidden = verdict.hidden && goal > 1;
      if ((past > (verdict.close ? allowed : PAST) || hidden) && landing < LANDINGS) {
        goal = hidden ? Math.ceil(goal / 2) : Math.min(goal - 1, this.#goal(goal, 0));
        continue;
      }
      const changed = this.#accept(goal);
      this.#entering = false;
      return changed || verdict.eventAt <= 1;
    }
  }

  /** Where to land past the event: of the lengths that are near enough the one with the fewest binary digits, each of which is a product. */
  #goal(ticks: number, allowed: number): number {
    const { eventAt, room } = this.#verdict;
    const least = Math.max(1, Math.ceil(eventAt * ticks));
    const most = Math.min(ticks, least + Math.max(allowed === 0 ? 0 : PAST - 1, Math.min(allowed, Math.floor((room * ticks) / 2))));
    let zeros = 1;
    while ((most >> zeros) << zeros >= least) zeros += 1;
    return (most >> (zeros - 1)) << (zeros - 1);
  }

  /** Takes the trial: sums, extremes, heat, ratings. True when heat has changed a part. */
  #accept(ticks: number): boolean {
    const seconds = ticks * TICK_S;
    const march = this.#march;
    this.extremes.pass(march.v0.data, march.v1.data, this.#topology.look.half, seconds);
    const changes = this.plan.heated.length > 0 ? this.#warm(seconds, this.tick + ticks) : NONE;
    march.take(this.#topology, this.#counting);
    this.tick += ticks;
    for (const { bend, mode } of changes) {
      this.#setMode(bend, mode);
      if (this.plan.heated.some((one) => one.bend === bend && one.law.kind === 'melts'))
        this.#report({ code: 'fuseOpened', ref: this.plan.bends[bend]!.ref, atS: this.tick * TICK_S, value: null, limit: null });
    }
    for (const index of this.#rated) {
      const { ref, ratedV } = this.plan.charges[index]!;
      const volts = Math.abs(this.x[index]!);
      if (volts > ratedV!) this.#report({ code: 'ratingExceeded', ref, atS: this.tick * TICK_S, value: volts, limit: ratedV });
    }
    if (this.tick >= this.#nextWave) this.#record();
    return changes.length > 0;
  }

  #warm(seconds: number, tick: number): { readonly bend: number; readonly mode: number }[] {
    const { half, placeOf } = this.#topology.look;
    const v0 = this.#march.v0.data;
    const v1 = this.#march.v1.data;
    return heatUp(this.plan, this.heat, this.table.bends, this.regions, seconds, tick, (bend) => {
      const place = placeOf[this.topologies.layout.bend[bend]!]!;
      const from = v0[place]!;
      const to = v1[place]!;
      const middle = hermite(0.5, from, v0[place + half]! * seconds, to, v1[place + half]! * seconds);
      return (from * from + 4 * middle * middle + to * to) / 6; // Simpson's rule
    });
  }

  #record(): void {
    const { waveform } = this.#request;
    if (this.waveform === null || waveform === undefined) return;
    this.waveform.timeS.push(this.tick * TICK_S);
    this.waveform.values.forEach((values, index) => {
      values.push(this.#march.v0.data[index]!);
    });
    this.#nextWave = this.tick + Math.round(waveform.spacingS / TICK_S);
  }
}

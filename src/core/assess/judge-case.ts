import { BENCH_SET, type BenchCheck, LABORATORY } from '../check/bench-set.ts';
import type { AnyCheck, Subject } from '../check/define-check.ts';
import { CHECKS } from '../check/registry.ts';
import { recall, recallOne } from '../recall/recall.ts';
import { type Amount, ASSESSMENT_FORMAT, type Assessment, type Finding, HAZARDS } from '../result/assessment.ts';
import type { StepNode } from '../trace/step.ts';
import type { Bench } from '../working/bench/bench.ts';
import { storedEnergyOf } from '../working/board/stored-energy.ts';
import { type Facts, gatherFacts } from '../working/facts.ts';
import { hottestCase, stopLimitsFor } from '../working/stop/stop-limits.ts';
import { findLastChance, findNext } from './find-next.ts';
import { findUnjudged, findWarnings } from './find-warnings.ts';
import { freshResults, type Results } from './fresh-results.ts';
import { freshRuns } from './fresh-runs.ts';
import { findGivenUp, withGivenUp } from './given-up.ts';
import { judgeVerdict } from './judge-verdict.ts';
import { RULES_VERSION, rulesDigest } from './rules.ts';
import { toBarrier } from './to-barrier.ts';
import { conditionsOfFields, toBench } from './to-bench.ts';
import { toCircuitResult } from './to-circuit-result.ts';
import { toCurves } from './to-curves.ts';
import { emptyFinding, toAmount, toFinding, toSource } from './to-finding.ts';
import { toPictures } from './to-pictures.ts';
import { toResiduals } from './to-residuals.ts';
import { toSoaks } from './to-soaks.ts';
import { toFormulas, toSteps } from './to-steps.ts';
import { toTransformers } from './to-transformers.ts';
import { TOOL_VERSION } from './tool-version.ts';

/** Puts facts under watch by a name of their own. */
export type Watched = (name: string, facts: Facts) => Facts;

/**
 * Evidence in, Assessment out, numbers not rounded yet. `sha256` is the hash of the case; `watched` puts the facts under watch where the bench is,
 * so that what did not change is remembered and not judged again.
 */
export function judgeCase(bench: Bench, results: Results, sha256: string, watched: Watched = (_, facts) => facts): Assessment {
  const { one } = bench;
  const { heating, stale } = recall(freshResults, bench, results);
  const gathered = watched('gathered', gatherFacts(bench, heating));
  const { runs, stale: staleRuns } = recall(freshRuns, gathered, results);
  const facts = watched('facts', { ...gathered, runs });
  const findings: Finding[] = [];
  const roots: StepNode[] = [];
  const byId = new Map(CHECKS.map((check) => [check.id, check]));
  const givenUp = findGivenUp(one.events);
  for (const asked of BENCH_SET) {
    const check = byId.get(asked.id);
    const judged = check === undefined ? recall(notImplemented, facts, asked) : recall(judgeCheck, facts, check, asked);
    findings.push(...judged.findings.map((finding) => withGivenUp(finding, check?.needs[0], givenUp)));
    roots.push(...judged.roots);
  }
  findings.sort(
    (a, b) =>
      HAZARDS.indexOf(a.hazard) - HAZARDS.indexOf(b.hazard) || compare(a.check, b.check) || compare(a.subject ?? '', b.subject ?? ''),
  );

  for (const { nearest } of facts.levels) for (const { held } of nearest) if (held !== null) roots.push(held.step);
  const { soaks, roots: soakRoots } = toSoaks(facts, findings);
  const { pictures, roots: pictureRoots } = recall(toPictures, facts);
  roots.push(...soakRoots, ...pictureRoots);
  const verdict = judgeVerdict(findings);
  const stops = { load: recall(stopLimitsFor, bench, facts.levels), heat: [hottestCase()] };
  const next = findNext(CHECKS, findings, verdict, stops, givenUp);
  const shown = new Set(next.flatMap(({ stop }) => stop.map(({ step }) => step)));
  for (const { at } of [...stops.load, ...stops.heat]) if (shown.has(at.step.id)) roots.push(at.step);
  const stored = recall(storedEnergyOf, bench, facts.setting);
  if (stored !== null) roots.push(stored.energy.step);
  const { residuals, roots: residualRoots } = recall(toResiduals, facts);
  roots.push(...residualRoots);
  const circuit = recall(toCircuitResult, facts);
  const transformers = recall(toTransformers, facts);
  roots.push(...transformers.roots);
  const steps = toSteps(roots);
  const barrier = recall(barrierOf, facts);
  return {
    format: ASSESSMENT_FORMAT,
    tool: `mainsworthy ${TOOL_VERSION}`,
    rules: { version: RULES_VERSION, sha256: rulesDigest() },
    case: {
      id: one.id,
      product: one.product.id,
      name: one.product.name,
      sample: one.sample,
      sha256,
      invented: one.invented === true,
    },
    setting: Object.fromEntries(
      Object.entries(facts.setting.entries).map(([key, { value, from, source }]) => [
        key,
        { value, from, source: source === null ? null : toSource(source) },
      ]),
    ),
    bench: recall(toBench, bench),
    verdict,
    findings,
    steps,
    formulas: toFormulas(steps),
    curves: recall(toCurves, facts),
    soaks,
    ...(pictures.length === 0 ? {} : { pictures }),
    ...(circuit === undefined ? {} : { circuit }),
    ...(barrier === undefined ? {} : { barrier }),
    ...(transformers.sheets.length === 0 ? {} : { transformers: transformers.sheets }),
    next,
    stored:
      stored === null
        ? null
        : { energy: toAmount(stored.energy), crest: toAmount(stored.crest), parts: [...stored.parts], step: stored.energy.step.id },
    ...(residuals.length === 0 ? {} : { residuals }),
    lastChance: findLastChance(facts, next),
    claims: claimsOf(findings),
    unjudged: recall(findUnjudged, facts),
    stale: [...stale, ...staleRuns],
    laboratory: [...LABORATORY],
    warnings: recall(findWarnings, facts),
  };
}

interface Judged {
  readonly findings: readonly Finding[];
  readonly roots: readonly StepNode[];
}

function notImplemented(_: Facts, { id, worst }: BenchCheck): Judged {
  return { findings: [emptyFinding(id, 'notImplemented', worst)], roots: [] };
}

/** Every finding of one check, with the steps that their derivations need. */
function judgeCheck(facts: Facts, check: AnyCheck, { id, worst }: BenchCheck): Judged {
  const subjects = check.subjects(facts);
  if (typeof subjects === 'string') return { findings: [emptyFinding(id, subjects, worst)], roots: [] };
  const judged = subjects.map((subject: Subject) => recallOne(judgeSubject, facts, { of: check, id: subject.id }, check, subject));
  return {
    findings: judged
      .flatMap(({ findings }) => findings)
      .map((finding) => {
        const under = conditionsOfFields(facts.bench, finding.fields);
        return recallOne(putUnder, facts, { of: check, id: finding.id }, finding, under);
      }),
    roots: judged.flatMap(({ roots }) => roots),
  };
}

/** Apart from the judgement, so that another reading of the same exhibit does not move a finding. */
function putUnder(_: Facts, finding: Finding, under: Finding['under']): Finding {
  return { ...finding, under };
}

function judgeSubject(facts: Facts, check: AnyCheck, subject: Subject): Judged {
  const answer = check.judge(facts, subject);
  const { beyond } = answer;
  const judged = [
    toFinding(check, subject, answer),
    ...(beyond === undefined ? [] : [toFinding(check, { ...subject, id: `${subject.id}~${beyond.id}` }, beyond.answer)]),
  ];
  return { findings: judged.map(({ finding }) => finding), roots: judged.flatMap(({ roots }) => roots) };
}

function barrierOf({ barrier, bench }: Facts): Assessment['barrier'] {
  return toBarrier(barrier, bench);
}

/** What was promised against what was held. */
function claimsOf(findings: readonly Finding[]): Assessment['claims'] {
  return findings
    .filter(({ check }) => check === 'delivery/current')
    .flatMap((finding) => {
      const { measured, limit } = finding;
      if (measured === null || 'word' in measured || limit?.at === undefined) return [];
      const claimed: Amount = limit.at;
      return [
        {
          claim: finding.about ?? finding.id,
          claimed,
          measured,
          share: measured.value / claimed.value,
          probability: finding.probability,
          finding: finding.id,
        },
      ];
    });
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

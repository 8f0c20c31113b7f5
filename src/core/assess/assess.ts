import { BENCH_SET, LABORATORY } from '../check/bench-set.ts';
import { CHECKS } from '../check/registry.ts';
import type { Case } from '../evidence/case.ts';
import { type Amount, ASSESSMENT_FORMAT, type Assessment, type Finding, HAZARDS } from '../result/assessment.ts';
import { toRounded } from '../result/canonical.ts';
import { digestOf } from '../result/digest.ts';
import type { StepNode } from '../trace/step.ts';
import type { Tables } from '../working/bench/bench.ts';
import { storedEnergyOf } from '../working/board/stored-energy.ts';
import { gatherFacts } from '../working/facts.ts';
import { hottestCase, stopLimitsFor } from '../working/stop/stop-limits.ts';
import { findLastChance, findNext } from './find-next.ts';
import { findUnjudged, findWarnings } from './find-warnings.ts';
import { freshResults, type Results } from './fresh-results.ts';
import { judgeVerdict } from './judge-verdict.ts';
import { RULES_VERSION, rulesDigest } from './rules.ts';
import { toBarrier } from './to-barrier.ts';
import { conditionsOfFields, toBench } from './to-bench.ts';
import { toCircuitResult } from './to-circuit-result.ts';
import { toCurves } from './to-curves.ts';
import { emptyFinding, toAmount, toFinding, toSource } from './to-finding.ts';
import { toResiduals } from './to-residuals.ts';
import { toSoaks } from './to-soaks.ts';
import { toFormulas, toSteps } from './to-steps.ts';
import { toTransformers } from './to-transformers.ts';

/** Version of the tool; stands in every Assessment. */
export const TOOL_VERSION = '0.1.0';

/**
 * Evidence in, Assessment out. Pure: the same case and the same tables give the same bytes. `tables` is what the importer read from the
 * attached files, `results` what computed exhibits keep, both by the SHA-256 of each file; nothing is opened here, and nothing slow is done again.
 */
export function assess(one: Case, tables: Tables, results: Results = new Map()): Assessment {
  const { heating, stale } = freshResults(one, results);
  const facts = gatherFacts(one, tables, heating);
  const findings: Finding[] = [];
  const roots: StepNode[] = [];
  const byId = new Map(CHECKS.map((check) => [check.id, check]));
  for (const bench of BENCH_SET) {
    const check = byId.get(bench.id);
    if (check === undefined) {
      findings.push(emptyFinding(bench.id, 'notImplemented', bench.worst));
      continue;
    }
    const subjects = check.subjects(facts);
    if (typeof subjects === 'string') findings.push(emptyFinding(bench.id, subjects, bench.worst));
    else
      for (const subject of subjects) {
        const answer = check.judge(facts, subject);
        const answers =
          answer.beyond === undefined
            ? [{ subject, answer }]
            : [
                { subject, answer },
                { subject: { ...subject, id: `${subject.id}~${answer.beyond.id}` }, answer: answer.beyond.answer },
              ];
        for (const one of answers) {
          const judged = toFinding(check, one.subject, one.answer);
          findings.push({ ...judged.finding, under: conditionsOfFields(facts.bench, judged.finding.fields) });
          roots.push(...judged.roots);
        }
      }
  }
  findings.sort(
    (a, b) =>
      HAZARDS.indexOf(a.hazard) - HAZARDS.indexOf(b.hazard) || compare(a.check, b.check) || compare(a.subject ?? '', b.subject ?? ''),
  );

  for (const { nearest } of facts.levels) for (const { held } of nearest) if (held !== null) roots.push(held.step);
  const { soaks, roots: soakRoots } = toSoaks(facts, findings);
  roots.push(...soakRoots);
  const verdict = judgeVerdict(findings);
  const stops = { load: stopLimitsFor(facts.bench, facts.levels), heat: [hottestCase()] };
  const next = findNext(CHECKS, findings, verdict, stops);
  const shown = new Set(next.flatMap(({ stop }) => stop.map(({ step }) => step)));
  for (const { at } of [...stops.load, ...stops.heat]) if (shown.has(at.step.id)) roots.push(at.step);
  const stored = storedEnergyOf(facts.bench, facts.setting);
  if (stored !== null) roots.push(stored.energy.step);
  const { residuals, roots: residualRoots } = toResiduals(facts);
  roots.push(...residualRoots);
  const circuit = toCircuitResult(facts);
  const transformers = toTransformers(facts);
  roots.push(...transformers.roots);
  const steps = toSteps(roots);
  const barrier = toBarrier(facts.barrier);
  return toRounded<Assessment>({
    format: ASSESSMENT_FORMAT,
    tool: `mainsworthy ${TOOL_VERSION}`,
    rules: { version: RULES_VERSION, sha256: rulesDigest() },
    case: {
      id: one.id,
      product: one.product.id,
      name: one.product.name,
      sample: one.sample,
      sha256: digestOf(one),
      invented: one.invented === true,
    },
    setting: Object.fromEntries(
      Object.entries(facts.setting.entries).map(([key, { value, from, source }]) => [
        key,
        { value, from, source: source === null ? null : toSource(source) },
      ]),
    ),
    bench: toBench(facts.bench),
    verdict,
    findings,
    steps,
    formulas: toFormulas(steps),
    curves: toCurves(facts),
    soaks,
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
    unjudged: findUnjudged(facts),
    stale,
    laboratory: [...LABORATORY],
    warnings: findWarnings(facts),
  });
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

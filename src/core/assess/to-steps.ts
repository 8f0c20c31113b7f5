import { FORMULAS } from '../formula/registry.ts';
import type { Assessment, Step } from '../result/assessment.ts';
import { flatten } from '../trace/flatten.ts';
import type { Term } from '../trace/leaf.ts';
import type { StepNode } from '../trace/step.ts';
import { toSource } from './to-finding.ts';

const BY_ID = new Map(FORMULAS.map((formula) => [formula.id, formula]));
const MOST_LEAVES = 15; // of a budget; the rest is summed up as one line

/** Steps of the Assessment, each after the steps it uses, with their uncertainty budgets. */
export function toSteps(roots: readonly StepNode[]): Step[] {
  return flatten(roots).map(toStep);
}

const STEPS = new WeakMap<StepNode, Step>(); // a step that is remembered from the judgement before is written down once

function toStep(node: StepNode): Step {
  const known = STEPS.get(node);
  if (known !== undefined) return known;
  const step: Step = {
    id: node.id,
    kind: node.kind,
    name: node.name,
    symbol: node.symbol,
    value: node.value,
    ...(node.word === undefined ? {} : { word: node.word }),
    unit: node.unit,
    u: node.u,
    ...(node.side === undefined ? {} : { side: node.side }),
    ...(node.show === undefined ? {} : { show: node.show }),
    formula: node.formula,
    uses: node.uses.map(({ node: used, symbol, sensitivity }) => ({ step: used.id, symbol, sensitivity })),
    budget: budgetOf(node),
    source: node.source === null ? null : toSource(node.source),
    ...(node.field === undefined ? {} : { field: node.field }),
    notes: node.notes.map(({ key, args }) => ({ key, args: { ...args } })),
  };
  STEPS.set(node, step);
  return step;
}

/** What each leaf contributes, largest first, as a share of the variance. */
function budgetOf(node: StepNode): Step['budget'] {
  const terms: Term[] = [...node.form.values()].filter(({ c }) => c !== 0);
  const total = node.u === null ? null : node.u * node.u;
  const lines = terms
    .map(({ leaf, c }) => {
      const u = leaf.u === null ? null : Math.abs(c) * leaf.u;
      return {
        leaf: leaf.id,
        means: leaf.means,
        args: { ...leaf.args },
        u,
        share: u === null || total === null || total === 0 ? null : (u * u) / total,
      };
    })
    .sort((a, b) => (b.u ?? Number.POSITIVE_INFINITY) - (a.u ?? Number.POSITIVE_INFINITY) || (a.leaf < b.leaf ? -1 : 1));
  if (lines.length <= MOST_LEAVES) return lines;
  const rest = lines.slice(MOST_LEAVES - 1);
  const square = rest.reduce((sum, { u }) => sum + (u ?? 0) * (u ?? 0), 0);
  const u = Math.sqrt(square);
  return [
    ...lines.slice(0, MOST_LEAVES - 1),
    { leaf: 'rest', means: 'rest', args: { leaves: rest.length }, u, share: total === null || total === 0 ? null : square / total },
  ];
}

/** The formulas that the steps used, as printed. */
export function toFormulas(steps: readonly Step[]): Assessment['formulas'] {
  const used = new Set(steps.flatMap(({ formula }) => (formula === null ? [] : [formula])));
  return Object.fromEntries(
    [...used].sort().map((id) => {
      const formula = BY_ID.get(id);
      if (formula === undefined) throw new Error(`${id} is not a formula`);
      const { tex, text, validity, output, inputs } = formula;
      return [
        id,
        {
          tex,
          text,
          validity,
          symbol: output.symbol,
          means: output.means,
          inputs: Object.values(inputs).map(({ symbol, means }) => ({ symbol, means })),
        },
      ];
    }),
  );
}

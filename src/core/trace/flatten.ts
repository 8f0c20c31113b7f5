import type { StepNode } from './step.ts';

/** Every step below the given roots, each after the steps it uses. Two different steps under one id are a defect. */
export function flatten(roots: readonly StepNode[]): StepNode[] {
  const byId = new Map<string, StepNode>();
  const order: StepNode[] = [];
  const visit = (node: StepNode): void => {
    const known = byId.get(node.id);
    if (known !== undefined) {
      if (known !== node && (known.value !== node.value || known.word !== node.word || known.uses.length !== node.uses.length))
        throw new Error(`two different steps are called ${node.id}`);
      return;
    }
    byId.set(node.id, node);
    for (const use of node.uses) visit(use.node);
    order.push(node);
  };
  for (const root of roots) visit(root);
  return order;
}

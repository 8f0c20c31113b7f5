import type { FormMember, FormNode } from '../../present/workspace/form.ts';

type ObjectNode = Extract<FormNode, { is: 'object' }>;

/** The form of a stack, as the schema tells it. */
export function stackForm(form: FormNode): ObjectNode {
  const exhibits = memberOf(form, 'exhibits');
  const node = exhibits?.node.is === 'list' && exhibits.node.of.is === 'variants' ? exhibits.node.of.of['stack'] : undefined;
  if (node?.is !== 'object') throw new Error('the case has no form for a stack');
  return node;
}

/** The form of one kind of layer. */
export function layerForm(form: FormNode, kind: string): ObjectNode {
  const list = memberOf(stackForm(form), 'outsideIn')?.node;
  const node = list?.is === 'list' && list.of.is === 'variants' ? list.of.of[kind] : undefined;
  if (node?.is !== 'object') throw new Error(`a stack has no form for a layer of the kind ${kind}`);
  return node;
}

/** The form of one wire end of a winding. */
export function leadForm(form: FormNode): ObjectNode {
  const list = memberOf(layerForm(form, 'winding'), 'leads')?.node;
  const node = list?.is === 'list' ? list.of : undefined;
  if (node?.is !== 'object') throw new Error('a winding has no form for a lead-out');
  return node;
}

export function getMember(node: ObjectNode, key: string): FormMember {
  const member = memberOf(node, key);
  if (member === undefined) throw new Error(`no member ${key} in this form`);
  return member;
}

function memberOf(node: FormNode, key: string): FormMember | undefined {
  return node.is === 'object' ? node.members.find((member) => member.key === key) : undefined;
}

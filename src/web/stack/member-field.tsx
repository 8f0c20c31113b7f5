import type { FormNode } from '../../present/workspace/form.ts';
import { Field } from '../field/field.tsx';
import { getMember } from './layer-form.ts';

type ObjectNode = Extract<FormNode, { is: 'object' }>;

/** One member of a layer or stack, under words that fit this chapter. */
export function MemberField(props: { node: ObjectNode; place: string; member: string; label: string; shown?: boolean }) {
  const { node, place, member, label, shown = true } = props;
  const { node: of, required } = getMember(node, member);
  return <Field node={of} place={`${place}/${member}`} label={label} shown={shown} required={required} />;
}

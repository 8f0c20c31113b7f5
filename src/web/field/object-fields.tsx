import { memberWords } from '../../present/words/page-words.ts';
import type { FormMember, FormNode } from '../../present/workspace/form.ts';
import { Field } from './field.tsx';

/** Members that go with any exhibit and stand at the end. */
const AT_THE_END: readonly string[] = ['day', 'at', 'under', 'files', 'note', 'struck', 'photo'];
const NEVER: readonly string[] = ['id', 'kind', 'is', 'invented'];

/** Every member of an object; those that go with any exhibit stand apart. */
export function ObjectFields({
  node,
  place,
  without = [],
}: {
  node: Extract<FormNode, { is: 'object' }>;
  place: string;
  without?: readonly string[];
}) {
  const shown = node.members.filter(({ key }) => !NEVER.includes(key) && !without.includes(key));
  const own = shown.filter(({ key }) => !AT_THE_END.includes(key));
  const rest = shown.filter(({ key }) => AT_THE_END.includes(key));
  return (
    <div className="fields">
      {own.map((member) => (
        <Member key={member.key} member={member} place={place} />
      ))}
      {own.length === 0 ? (
        rest.map((member) => <Member key={member.key} member={member} place={place} />)
      ) : rest.length > 0 ? (
        <details className="inner rest">
          <summary>when, conditions, note</summary>
          <div className="fields">
            {rest.map((member) => (
              <Member key={member.key} member={member} place={place} />
            ))}
          </div>
        </details>
      ) : null}
    </div>
  );
}

function Member({ member, place }: { member: FormMember; place: string }) {
  return <Field node={member.node} place={`${place}/${member.key}`} label={memberWords(member.key)} required={member.required} />;
}

import { useState } from 'react';
import { ENTRY_WORDS } from '../../present/words/entry-words.ts';
import { memberWords } from '../../present/words/page-words.ts';
import type { FormMember, FormNode } from '../../present/workspace/form.ts';
import { Field } from './field.tsx';

/** Members that go with any exhibit and stand at the end. */
const AT_THE_END: readonly string[] = ['day', 'at', 'files', 'note', 'struck', 'photo'];
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
        <Rest members={rest} place={place} />
      ) : null}
    </div>
  );
}

/** Drawn only when it is opened: most of it is never looked at. */
function Rest({ members, place }: { members: readonly FormMember[]; place: string }) {
  const [open, setOpen] = useState(false);
  return (
    <details className="inner rest" open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{ENTRY_WORDS.whenFilesNote}</summary>
      {open && (
        <div className="fields">
          {members.map((member) => (
            <Member key={member.key} member={member} place={place} />
          ))}
        </div>
      )}
    </details>
  );
}

function Member({ member, place }: { member: FormMember; place: string }) {
  return <Field node={member.node} place={`${place}/${member.key}`} label={memberWords(member.key)} required={member.required} />;
}

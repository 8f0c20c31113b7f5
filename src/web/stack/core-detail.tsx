import { CORE_LABELS, DRIVE_LABELS, STACK_WORDS } from '../../present/words/stack-words.ts';
import type { FormNode } from '../../present/workspace/form.ts';
import { ObjectFields } from '../field/object-fields.tsx';
import { useOpenPage } from '../state/use-case.ts';
import { stackForm } from './layer-form.ts';
import { MemberField } from './member-field.tsx';
import { DRIVEN } from './selected-layer.ts';

type Entry = readonly [member: string, label: string];

/** Core, former, and what was measured on the whole. */
export function CoreDetail({ stack }: { stack: string }) {
  const { form } = useOpenPage();
  const node = stackForm(form.case);
  const place = `/case/exhibits/${stack}`;
  const named = [...CORE_LABELS.map(([member]) => member), ...DRIVEN, 'outsideIn', 'window', 'former'];
  return (
    <section className="layer-detail" aria-label={STACK_WORDS.core}>
      <h4>{STACK_WORDS.core}</h4>
      <Fields entries={CORE_LABELS} node={node} place={place} />
      <div className="fields">
        <MemberField node={node} place={place} member="window" label={STACK_WORDS.window} />
        <MemberField node={node} place={place} member="former" label={STACK_WORDS.former} />
      </div>
      <ObjectFields node={node} place={place} without={named} />
    </section>
  );
}

/** What the formulas of a control law need. Without a law nothing is worked out by one. */
export function DriveDetail({ stack }: { stack: string }) {
  const { form } = useOpenPage();
  return (
    <section className="layer-detail" aria-label={STACK_WORDS.drive}>
      <h4>{STACK_WORDS.drive}</h4>
      <p className="small">{STACK_WORDS.driveHint}</p>
      <Fields entries={DRIVE_LABELS} node={stackForm(form.case)} place={`/case/exhibits/${stack}`} />
    </section>
  );
}

function Fields({ entries, node, place }: { entries: readonly Entry[]; node: Extract<FormNode, { is: 'object' }>; place: string }) {
  return (
    <div className="fields">
      {entries.map(([member, label]) => (
        <MemberField key={member} node={node} place={place} member={member} label={label} />
      ))}
    </div>
  );
}

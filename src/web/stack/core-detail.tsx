import type { FormNode } from '../../present/workspace/form.ts';
import { ObjectFields } from '../field/object-fields.tsx';
import { useOpenPage } from '../state/use-case.ts';
import { stackForm } from './layer-form.ts';
import { MemberField } from './member-field.tsx';
import { DRIVEN } from './selected-layer.ts';

type Entry = readonly [member: string, label: string];

const CORE_AND_FORMER: readonly Entry[] = [
  ['core', 'core, by its name'],
  ['coreArea', 'area of its middle leg, measured'],
  ['coreLength', 'length of its path'],
  ['ferrite', 'ferrite'],
  ['gap', 'air gap'],
  ['gapWhere', 'where the gap is'],
  ['inductance', 'inductance, others open'],
  ['leakage', 'inductance, secondary shorted'],
  ['meanTurn', 'mean length of a turn'],
  ['bath', 'varnish or resin'],
  ['coreConductor', 'its name among the conductors'],
  ['part', 'which part it is'],
];
const DRIVE: readonly Entry[] = [
  ['law', 'how the switch is driven'],
  ['peakCurrent', 'peak current at which it opens'],
  ['frequency', 'frequency'],
  ['longestOn', 'longest on-time, share of a period'],
  ['ratioSeen', 'primary over secondary, on the scope'],
  ['clamp', 'clamped above the rail by'],
  ['switchPart', 'which part is the switch'],
  ['rectifierPart', 'which part is the output rectifier'],
];

/** Core, former, and what was measured on the whole. */
export function CoreDetail({ stack }: { stack: string }) {
  const { form } = useOpenPage();
  const node = stackForm(form.case);
  const place = `/case/exhibits/${stack}`;
  const named = [...CORE_AND_FORMER.map(([member]) => member), ...DRIVEN, 'outsideIn', 'window', 'former'];
  return (
    <section className="layer-detail" aria-label="Core and former">
      <h4>Core and former</h4>
      <Fields entries={CORE_AND_FORMER} node={node} place={place} />
      <div className="fields">
        <MemberField node={node} place={place} member="window" label="window: room for the winding" />
        <MemberField node={node} place={place} member="former" label="former: tube and walls" />
      </div>
      <ObjectFields node={node} place={place} without={named} />
    </section>
  );
}

/** What the formulas of a control law need. Without a law nothing is worked out by one. */
export function DriveDetail({ stack }: { stack: string }) {
  const { form } = useOpenPage();
  return (
    <section className="layer-detail" aria-label="How it is driven">
      <h4>How it is driven</h4>
      <p className="small">
        Power, frequency and currents are worked out by the formulas of the law that is named here, and by no other. Leave it open when it
        is not known.
      </p>
      <Fields entries={DRIVE} node={stackForm(form.case)} place={`/case/exhibits/${stack}`} />
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

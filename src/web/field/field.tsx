import { memo, useState } from 'react';
import type { Json } from '../../app/casebook/change.ts';
import { ENTRY_WORDS } from '../../present/words/entry-words.ts';
import { choiceWords, EXAMPLES, memberWords } from '../../present/words/page-words.ts';
import type { FormNode } from '../../present/workspace/form.ts';
import { useOpenPage, useStanding } from '../state/use-case.ts';
import { blankOf } from './blank-of.ts';
import { ChoiceField } from './choice-field.tsx';
import { EitherField } from './either-field.tsx';
import { Entry } from './entry.tsx';
import { FlagField } from './flag-field.tsx';
import { ListField } from './list-field.tsx';
import { MapField } from './map-field.tsx';
import { ObjectFields } from './object-fields.tsx';
import { ReferenceField } from './reference-field.tsx';
import { understandQuantity } from './understand.ts';
import { ValueField } from './value-field.tsx';

export interface FieldProps {
  readonly node: FormNode;
  readonly place: string;
  readonly label: string;
  readonly shown?: boolean;
  readonly required?: boolean;
  readonly blank?: Json;
  readonly onState?: (state: 'absent' | 'unknown') => void;
}

/** One place of the case, drawn as what can stand there; drawn again only when that changes. */
export const Field = memo(FieldOf);

function FieldOf({ node, place, label, shown = true, required = false, blank, onState }: FieldProps) {
  const shared = {
    place,
    label,
    shown,
    required,
    ...(blank === undefined ? {} : { blank }),
    ...(onState === undefined ? {} : { onState }),
  };
  switch (node.is) {
    case 'quantity':
      return (
        <Entry
          {...shared}
          example={node.range ? '100-240 V' : (EXAMPLES[node.kind] ?? '')}
          {...(node.range ? {} : { understand: understandQuantity(node.kind) })}
        />
      );
    case 'text':
      return <Entry {...shared} />;
    case 'date':
      return <Entry {...shared} example="2026-03-04" />;
    case 'time':
      return <Entry {...shared} example="2026-03-04T10:31" />;
    case 'number':
      return <Entry {...shared} inputMode="decimal" parse={numberOrText} />;
    case 'flag':
      return <FlagField {...shared} />;
    case 'choice':
      return <ChoiceField {...shared} options={node.options} />;
    case 'reference':
      return <ReferenceField {...shared} list={node.list} />;
    case 'id':
    case 'hash':
    case 'fixed':
      return <Told {...shared} />;
    case 'value':
    case 'condition':
      return <ValueField place={place} label={label} shown={shown} required={required} of={node.of} states={node.is === 'value'} />;
    case 'object':
      return <InnerFields node={node} place={place} label={label} />;
    case 'list':
      return <ListField {...shared} node={node} />;
    case 'pair':
      return <PairField {...shared} of={node.of} />;
    case 'map':
      return <MapField {...shared} keys={node.keys} of={node.of} />;
    case 'either':
      return <EitherField {...shared} of={node.of} />;
    case 'variants':
      return <VariantFields {...shared} node={node} />;
  }
}

/** A group inside a form: open when something stands in it already. */
function InnerFields({ node, place, label }: { node: Extract<FormNode, { is: 'object' }>; place: string; label: string }) {
  const { store } = useOpenPage();
  const [open, setOpen] = useState(() => store.valueAt(place) !== undefined);
  return (
    <details className="inner" open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{label}</summary>
      {open && <ObjectFields node={node} place={place} />}
    </details>
  );
}

function numberOrText(text: string): number | string {
  const number = Number(text.replace(',', '.'));
  return text.trim() === '' || Number.isNaN(number) ? text : number;
}

/** What is not entered by hand. */
function Told({ place, label, shown }: FieldProps | { place: string; label: string; shown: boolean }) {
  const store = useStanding();
  return (
    <div className="entry">
      {shown === true && <span className="label">{label}</span>}
      <span className="told">{choiceWords(String(store.valueAt(place) ?? ''))}</span>
    </div>
  );
}

/** Two or three values that belong together: between which conductors, length by width by height. */
function PairField({ place, label, shown, of }: { place: string; label: string; shown: boolean; of: readonly FormNode[] }) {
  const store = useStanding();
  const value = store.valueAt(place);
  if (!Array.isArray(value)) {
    const start = (): void =>
      store.set(
        place,
        of.map((node) => blankOf(node, '')),
        `pair-${place}`,
        { key: 'entry', args: { at: place } },
      );
    return (
      <div className="entry">
        {shown && <span className="label">{label}</span>}
        <button type="button" className="quiet" onClick={start}>
          {ENTRY_WORDS.enterAll(of.length)}
        </button>
      </div>
    );
  }
  return (
    <fieldset className="pair" aria-label={label}>
      {of.map((node, index) => (
        <Field
          // biome-ignore lint/suspicious/noArrayIndexKey: the members of a pair are their positions
          key={index}
          node={node}
          place={`${place}/${index}`}
          label={index === 0 ? label : ENTRY_WORDS.and}
          shown={shown}
          required
        />
      ))}
    </fieldset>
  );
}

/** Which kind of thing stands here decides what can be entered; changing the kind keeps what both kinds have. */
function VariantFields({ node, place }: { node: Extract<FormNode, { is: 'variants' }>; place: string }) {
  const store = useStanding();
  const value = store.valueAt(place) as Readonly<Record<string, Json>> | undefined;
  const kind = String(value?.[node.by] ?? '');
  const of = node.of[kind];
  const change = (next: string): void => {
    const known = of?.is === 'object' ? node.of[next] : undefined;
    const keys = known?.is === 'object' ? known.members.map(({ key }) => key) : [];
    const kept = Object.fromEntries(Object.entries(value ?? {}).filter(([key]) => keys.includes(key)));
    store.set(place, { ...kept, [node.by]: next }, `kind-${place}-${next}`, { key: 'entry', args: { at: place } });
  };
  return (
    <div className="variants">
      <div className="entry">
        <label>
          {memberWords(node.by)}
          <select value={kind} onChange={(event) => change(event.target.value)}>
            {Object.keys(node.of).map((key) => (
              <option key={key} value={key}>
                {memberWords(key)}
              </option>
            ))}
          </select>
        </label>
      </div>
      {of?.is === 'object' && <ObjectFields node={of} place={place} without={[node.by]} />}
      {of?.is === 'variants' && <VariantFields node={of} place={place} />}
    </div>
  );
}

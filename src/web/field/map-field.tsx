import { memberWords } from '../../present/words/page-words.ts';
import type { FormNode } from '../../present/workspace/form.ts';
import { Field } from './field.tsx';

/** One entry for each of a fixed set of names: which instrument does what on a day. */
export function MapField({ place, label, keys, of }: { place: string; label: string; keys: readonly string[]; of: FormNode }) {
  return (
    <fieldset className="list" data-place={place}>
      <legend>{label}</legend>
      <div className="fields">
        {keys.map((key) => (
          <Field key={key} node={of} place={`${place}/${key}`} label={memberWords(key)} />
        ))}
      </div>
    </fieldset>
  );
}

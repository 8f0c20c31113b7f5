import { useState } from 'react';
import { parseQuantity } from '../../core/quantity/parse-quantity.ts';
import { isRefusal } from '../../core/quantity/refusal.ts';
import { CAPTURE_PAGE } from '../../present/words/capture-page-words.ts';
import { choiceWords } from '../../present/words/page-words.ts';
import { understandQuantity } from '../field/understand.ts';
import { listOf } from '../part/new-exhibit.ts';
import type { CaseStore } from '../state/case-store.ts';
import { type Kept, keepDistance, keepNote, keepTemperature, type Now } from './quick-reading.ts';

interface Props {
  readonly store: CaseStore;
  readonly now: (kind: string) => Now;
  readonly onKeep: (kept: Kept) => void;
}
type What = 'temperature' | 'length' | 'note';

const NEW_PLACE = '';
const EXAMPLES: Readonly<Record<What, string>> = { temperature: '82.6 °C', length: '6.4 mm', note: '' };

/** One reading: what, where, the value, one tap. A value that cannot be read is said so before it is kept. */
export function ReadingEntry({ store, now, onKeep }: Props) {
  const named = (list: string) => listOf(store, list).map((item) => ({ id: String(item['id']), name: String(item['name'] ?? item['id']) }));
  const [places, conductors] = [named('places'), named('conductors')];
  const exhibits = listOf(store, 'exhibits').toReversed();
  const [what, setWhat] = useState<What>('temperature');
  const [place, setPlace] = useState(places[0]?.id ?? NEW_PLACE);
  const [newName, setNewName] = useState('');
  const [by, setBy] = useState('contact');
  const [from, setFrom] = useState(conductors[0]?.id ?? '');
  const [to, setTo] = useState(conductors.find(({ id }) => id !== conductors[0]?.id)?.id ?? '');
  const [path, setPath] = useState('surface');
  const [exhibit, setExhibit] = useState('');
  const [text, setText] = useState('');
  const about = exhibits.find(({ id }) => id === exhibit) ?? exhibits[0];
  const read = what === 'note' || text === '' ? null : parseQuantity(text, what);
  const wrong = isRefusal(read) ? CAPTURE_PAGE.expected(read.expected) : null;
  const toKept = (): Kept | null => {
    if (text.trim() === '' || wrong !== null) return null;
    if (what === 'note')
      return about === undefined ? null : keepNote(String(about['id']), about['note'] as string | undefined, text.trim());
    if (what === 'length') {
      const [one, other] = [from, to].map((id) => conductors.find((conductor) => conductor.id === id));
      return one === undefined || other === undefined || one === other
        ? null
        : keepDistance(one, other, path, 'caliper', text.trim(), now('distance'));
    }
    const known = places.find(({ id }) => id === place);
    if (known === undefined && newName.trim() === '') return null;
    const ids = places.map(({ id }) => id);
    return keepTemperature(known ?? { newName: newName.trim() }, text.trim(), by, ids, now('spots'));
  };
  const ready = toKept();
  const keep = (): void => {
    const kept = toKept();
    if (kept === null) return;
    onKeep(kept);
    setText('');
  };
  return (
    <form
      aria-label={CAPTURE_PAGE.reading}
      onSubmit={(event) => {
        event.preventDefault();
        keep();
      }}
    >
      <Choice
        label={CAPTURE_PAGE.what}
        value={what}
        onChoose={(chosen) => setWhat(chosen as What)}
        options={[
          ['temperature', CAPTURE_PAGE.temperatureAtAPlace],
          ['length', CAPTURE_PAGE.distanceBetweenTwoConductors],
          ['note', CAPTURE_PAGE.aNote],
        ]}
      />
      {what === 'temperature' && (
        <>
          <Choice
            label={CAPTURE_PAGE.where}
            value={place}
            onChoose={setPlace}
            options={[...places.map(pair), [NEW_PLACE, CAPTURE_PAGE.aNewPlace]]}
          />
          {!places.some(({ id }) => id === place) && (
            <label>
              <span>{CAPTURE_PAGE.nameOfTheNewPlace}</span>
              <input type="text" value={newName} onChange={(event) => setNewName(event.target.value)} />
            </label>
          )}
          <Choice label={CAPTURE_PAGE.readBy} value={by} onChoose={setBy} options={['contact', 'infrared'].map(worded)} />
        </>
      )}
      {what === 'length' && conductors.length >= 2 && (
        <>
          <Choice label={CAPTURE_PAGE.from} value={from} onChoose={setFrom} options={conductors.map(pair)} />
          <Choice label={CAPTURE_PAGE.toLabel} value={to} onChoose={setTo} options={conductors.map(pair)} />
          <Choice label={CAPTURE_PAGE.along} value={path} onChoose={setPath} options={['surface', 'air', 'printedWiring'].map(worded)} />
        </>
      )}
      {what === 'length' && conductors.length < 2 && <p className="said">{CAPTURE_PAGE.nameTwoConductorsOnPage}</p>}
      {what === 'note' && exhibits.length === 0 && <p className="said">{CAPTURE_PAGE.noteStandsWithPhotoOr}</p>}
      {what === 'note' && exhibits.length > 0 && (
        <Choice
          label={CAPTURE_PAGE.withLabel}
          value={String(about?.['id'] ?? '')}
          onChoose={setExhibit}
          options={exhibits.map((item) => [String(item['id']), `${choiceWords(String(item['kind']))} ${String(item['id'])}`])}
        />
      )}
      <label>
        <span>{what === 'note' ? CAPTURE_PAGE.noteLabel : CAPTURE_PAGE.valueWithItsUnit}</span>
        <input
          type="text"
          autoComplete="off"
          placeholder={EXAMPLES[what]}
          value={text}
          aria-invalid={wrong !== null}
          aria-describedby="capture-said"
          onChange={(event) => setText(event.target.value)}
        />
      </label>
      <p className="said" id="capture-said" role="status">
        {wrong ?? (what === 'note' ? '' : (understandQuantity(what)(text) ?? ''))}
      </p>
      <button type="submit" className="btn solid big" disabled={ready === null}>
        {CAPTURE_PAGE.keep}
      </button>
    </form>
  );
}

const pair = ({ id, name }: { id: string; name: string }): [string, string] => [id, name];
const worded = (choice: string): [string, string] => [choice, choiceWords(choice)];

interface ChoiceProps {
  readonly label: string;
  readonly value: string;
  readonly onChoose: (value: string) => void;
  readonly options: readonly (readonly [string, string])[];
}

function Choice({ label, value, onChoose, options }: ChoiceProps) {
  return (
    <label>
      <span>{label}</span>
      <select value={value} onChange={(event) => onChoose(event.target.value)}>
        {options.map(([id, words]) => (
          <option key={id} value={id}>
            {words}
          </option>
        ))}
      </select>
    </label>
  );
}

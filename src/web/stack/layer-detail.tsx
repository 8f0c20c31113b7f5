import type { Change } from '../../app/casebook/change.ts';
import { INSULATION_LABELS, layerAtHand, oneMore, STACK_KEYS, STACK_WORDS, WINDING_LABELS } from '../../present/words/stack-words.ts';
import { Field } from '../field/field.tsx';
import { useOpenPage, useSnapshot } from '../state/use-case.ts';
import { canCount, countedIn, placeOfLayer, type Tree } from './layer-edit.ts';
import { getMember, layerForm } from './layer-form.ts';
import { nameOf } from './layer-list.tsx';
import { LayerPhoto } from './layer-photo.tsx';
import { LeadOuts } from './lead-outs.tsx';
import { MemberField } from './member-field.tsx';
import { Remark } from './remark.tsx';

interface Props {
  readonly stack: string;
  readonly layers: readonly Tree[];
  readonly layer: Tree;
  /** Counted so far; null where it was not, or cannot be gone on with. */
  readonly count: number | null;
  readonly onCount: (by: 1 | -1) => void;
  readonly onRow: () => void;
  readonly onMove: (by: 1 | -1) => void;
  readonly onRemove: () => void;
  readonly onPart: (changes: readonly Change[], name: string) => void;
}

/** The layer at hand: the key that counts, then everything else of it. */
export function LayerDetail(props: Props) {
  const { stack, layers, layer, onMove, onRemove, onPart } = props;
  const { form } = useOpenPage();
  useSnapshot();
  const isWinding = layer['is'] === 'winding';
  const place = placeOfLayer(stack, String(layer['id']));
  const node = layerForm(form.case, String(layer['is']));
  const number = layers.filter((one) => one['is'] === 'winding').indexOf(layer) + 1;
  const name = nameOf(layer, number);
  return (
    <section className="layer-detail" aria-label={layerAtHand(name)}>
      <Counter {...props} name={name} />
      <div className="fields">
        {(isWinding ? WINDING_LABELS : INSULATION_LABELS).map(([member, label]) => (
          <MemberField key={member} node={node} place={place} member={member} label={label} />
        ))}
        <Two place={`${place}/margins`} labels={[STACK_WORDS.marginOne, STACK_WORDS.marginOther]} of={getMember(node, 'margins').node} />
        {isWinding && (
          <Two place={`${place}/pins`} labels={[STACK_WORDS.startGoesTo, STACK_WORDS.finishGoesTo]} of={getMember(node, 'pins').node} />
        )}
      </div>
      <Remark place={`${place}/pins`} />
      {isWinding && <LeadOuts stack={stack} layers={layers} winding={layer} />}
      <LayerPhoto stack={stack} layer={layer} name={name} onPart={onPart} />
      <p className="ways">
        <button type="button" className="quiet" disabled={layers[0] === layer} onClick={() => onMove(-1)}>
          {STACK_WORDS.furtherOut} <kbd>{STACK_KEYS.out}</kbd>
        </button>
        <button type="button" className="quiet" disabled={layers.at(-1) === layer} onClick={() => onMove(1)}>
          {STACK_WORDS.furtherIn} <kbd>{STACK_KEYS.in}</kbd>
        </button>
        <button type="button" className="quiet" onClick={onRemove}>
          {STACK_WORDS.removeLayer} <kbd>{STACK_KEYS.remove}</kbd>
        </button>
      </p>
    </section>
  );
}

/** Both ends of one thing: margins, pins. */
function Two({ place, labels, of }: { place: string; labels: readonly [string, string]; of: ReturnType<typeof getMember>['node'] }) {
  const { store } = useOpenPage();
  if (of.is !== 'pair') return null;
  const blank = (): void =>
    store.set(
      place,
      labels.map(() => ({ state: 'notLooked' })),
      `pair-${place}`,
      { key: 'entry', args: { at: place } },
    );
  if (!Array.isArray(store.valueAt(place)))
    return (
      <div className="entry">
        <span className="label">
          {labels[0]}, {labels[1]}
        </span>
        <button type="button" className="quiet" data-place={place} onClick={blank}>
          {STACK_WORDS.enterBoth}
        </button>
      </div>
    );
  return of.of.map((node, index) => (
    <Field key={labels[index]} node={node} place={`${place}/${index}`} label={labels[index] ?? ''} required />
  ));
}

function Counter({ layer, count, onCount, onRow, name }: Props & { name: string }) {
  const member = countedIn(layer);
  const can = canCount(layer, member);
  return (
    <div className="counter">
      <h4>{name}</h4>
      <p className="count" aria-live="off">
        {can ? (count ?? 0) : '?'} <small>{member}</small>
      </p>
      <button type="button" className="btn solid count-key" disabled={!can} onClick={() => onCount(1)}>
        {oneMore(member)} <kbd>{STACK_KEYS.turn}</kbd>
      </button>
      <button type="button" className="btn" disabled={!can || count === null || count === 0} onClick={() => onCount(-1)}>
        {STACK_WORDS.oneBack} <kbd>{STACK_KEYS.back}</kbd>
      </button>
      {member === 'turns' && (
        <button type="button" className="btn" onClick={onRow}>
          {STACK_WORDS.nextRow} <kbd>{STACK_KEYS.row}</kbd>
        </button>
      )}
      {!can && <span className="small">{STACK_WORDS.notCountedUp}</span>}
    </div>
  );
}

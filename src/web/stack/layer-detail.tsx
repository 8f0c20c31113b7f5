import type { Change } from '../../app/casebook/change.ts';
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

type Entry = readonly [member: string, label: string];

const OF_WINDING: readonly Entry[] = [
  ['name', 'name'],
  ['side', 'stands on the side of'],
  ['role', 'it is the'],
  ['wireKind', 'kind of wire'],
  ['overall', 'wire with its cover'],
  ['strands', 'strands in parallel'],
  ['layers', 'rows'],
  ['toCore', 'over the surface to the core'],
  ['resistance', 'resistance, cold'],
];
const OF_INSULATION: readonly Entry[] = [
  ['covers', 'what it covers'],
  ['short', 'stops before the wall by'],
  ['folded', 'folded up the wall'],
  ['material', 'material'],
  ['overlap', 'overlap of its ends'],
  ['sleeved', 'sleeved where wires leave'],
];

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
    <section className="layer-detail" aria-label={`Layer at hand: ${name}`}>
      <Counter {...props} name={name} />
      <div className="fields">
        {(isWinding ? OF_WINDING : OF_INSULATION).map(([member, label]) => (
          <MemberField key={member} node={node} place={place} member={member} label={label} />
        ))}
        <Two place={`${place}/margins`} labels={['margin at one end', 'margin at the other']} of={getMember(node, 'margins').node} />
        {isWinding && (
          <Two place={`${place}/pins`} labels={['its start goes to', 'its finish goes to']} of={getMember(node, 'pins').node} />
        )}
      </div>
      <Remark place={`${place}/pins`} />
      {isWinding && <LeadOuts stack={stack} layers={layers} winding={layer} />}
      <LayerPhoto stack={stack} layer={layer} name={name} onPart={onPart} />
      <p className="ways">
        <button type="button" className="quiet" disabled={layers[0] === layer} onClick={() => onMove(-1)}>
          further out <kbd>Alt ↑</kbd>
        </button>
        <button type="button" className="quiet" disabled={layers.at(-1) === layer} onClick={() => onMove(1)}>
          further in <kbd>Alt ↓</kbd>
        </button>
        <button type="button" className="quiet" onClick={onRemove}>
          remove this layer <kbd>Delete</kbd>
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
          enter both
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
  const unit = member === 'turns' ? 'turn' : 'layer';
  return (
    <div className="counter">
      <h4>{name}</h4>
      <p className="count" aria-live="off">
        {can ? (count ?? 0) : '?'} <small>{member}</small>
      </p>
      <button type="button" className="btn solid count-key" disabled={!can} onClick={() => onCount(1)}>
        One {unit} <kbd>space</kbd>
      </button>
      <button type="button" className="btn" disabled={!can || count === null || count === 0} onClick={() => onCount(-1)}>
        One back <kbd>⌫</kbd>
      </button>
      {member === 'turns' && (
        <button type="button" className="btn" onClick={onRow}>
          Next row <kbd>L</kbd>
        </button>
      )}
      {!can && <span className="small">A count with a doubt or a reason is written in its entry, not counted up.</span>}
    </div>
  );
}

import { choiceWords } from '../../present/words/page-words.ts';
import { countOfLayer, STACK_KEYS, STACK_WORDS, sizeOfLayer, windingWithout } from '../../present/words/stack-words.ts';
import type { TransformerView } from '../../present/workspace/transformer-view.ts';
import { Lacking } from '../field/list-field.tsx';
import { HangingOn } from '../part/hanging-on.tsx';
import { useOpenPage, useSnapshot } from '../state/use-case.ts';
import { countedIn, isFormerWall, type LayerKind, placeOfLayer, type Tree, textOf } from './layer-edit.ts';
import { layerForm } from './layer-form.ts';
import { MemberField } from './member-field.tsx';
import { CORE, DRIVE } from './selected-layer.ts';

interface Props {
  readonly stack: string;
  readonly layers: readonly Tree[];
  /** What is at hand: the id of a layer, or core, or drive. */
  readonly at: string;
  readonly weakest: TransformerView['weakest'];
  readonly onSelect: (id: string) => void;
  readonly onAdd: (kind: LayerKind) => void;
}

const KINDS: readonly LayerKind[] = ['winding', 'insulation', 'formerWall'];

/** Everything that came off, outside in, as it lies in the cross-section beside it; below the last layer what comes off next, then the core. */
export function LayerList({ stack, layers, at, weakest, onSelect, onAdd }: Props) {
  const { store } = useOpenPage();
  useSnapshot();
  const core = textOf(store.valueAt(`/case/exhibits/${stack}/core`));
  const law = textOf(store.valueAt(`/case/exhibits/${stack}/law`));
  const windings = layers.filter((layer) => layer['is'] === 'winding');
  return (
    <div className="layer-list">
      <p className="heads" aria-hidden="true">
        <span>{STACK_WORDS.outsideIn}</span>
        <span>{STACK_WORDS.countedHead}</span>
        <span>{STACK_WORDS.sizeHead}</span>
      </p>
      <ol aria-label={STACK_WORDS.layersOutsideIn}>
        {layers.map((layer) => (
          <LayerRow
            key={String(layer['id'])}
            stack={stack}
            layer={layer}
            number={windings.indexOf(layer) + 1}
            isAt={layer['id'] === at}
            isWeak={weakest !== null && weakest.outcome === 'fail' && weakest.layers.some(({ id }) => id === layer['id'])}
            onSelect={() => onSelect(String(layer['id']))}
          />
        ))}
      </ol>
      <fieldset className="next-layer">
        <legend>{layers.length > 0 ? STACK_WORDS.underThisOne : STACK_WORDS.comesOffNext}</legend>
        {KINDS.map((kind) => (
          <button type="button" className="btn" key={kind} onClick={() => onAdd(kind)}>
            {STACK_WORDS[kind]} <kbd>{STACK_KEYS[kind]}</kbd>
          </button>
        ))}
      </fieldset>
      <ul className="ends" aria-label={STACK_WORDS.ends}>
        <EndRow id={CORE} isAt={at === CORE} words={STACK_WORDS.coreRow} told={core ?? STACK_WORDS.notEntered} onSelect={onSelect} />
        <EndRow
          id={DRIVE}
          isAt={at === DRIVE}
          words={STACK_WORDS.driveRow}
          told={law === null ? STACK_WORDS.notEntered : choiceWords(law)}
          onSelect={onSelect}
        />
      </ul>
    </div>
  );
}

function EndRow(props: { id: string; isAt: boolean; words: string; told: string; onSelect: (id: string) => void }) {
  const { id, isAt, words, told, onSelect } = props;
  return (
    <li id={`layer-${id}`} className={isAt ? 'on' : ''}>
      <button type="button" className="pick" aria-pressed={isAt} onClick={() => onSelect(id)}>
        <b>{words}</b> <span>{told}</span>
      </button>
    </li>
  );
}

interface RowProps {
  readonly stack: string;
  readonly layer: Tree;
  readonly number: number;
  readonly isAt: boolean;
  readonly isWeak: boolean;
  readonly onSelect: () => void;
}

function LayerRow({ stack, layer, number, isAt, isWeak, onSelect }: RowProps) {
  const { form } = useOpenPage();
  const isWinding = layer['is'] === 'winding';
  const counted = countedIn(layer);
  const place = placeOfLayer(stack, String(layer['id']));
  const node = layerForm(form.case, String(layer['is']));
  const name = nameOf(layer, number);
  return (
    <li
      id={`layer-${String(layer['id'])}`}
      className={`${isWinding ? `winding ${standsOf(layer)}` : 'tape'}${isAt ? ' on' : ''}${isWeak ? ' weak' : ''}`}
      onFocus={onSelect}
    >
      <button type="button" className="pick" aria-pressed={isAt} onClick={onSelect}>
        <b>{isWinding ? number : ''}</b> <span>{isWinding ? String(layer['name']) : name}</span>
      </button>
      <span className="decides">
        <HangingOn place={`${place}/${counted}`} />
      </span>
      <div className="numbers">
        <MemberField node={node} place={place} member={counted} label={countOfLayer(name, counted)} shown={false} />
        <MemberField node={node} place={place} member={isWinding ? 'wire' : 'each'} label={sizeOfLayer(name, isWinding)} shown={false} />
      </div>
      <Lacking place={place} />
    </li>
  );
}

/** Words for a layer without a name of its own. */
export function nameOf(layer: Tree, number: number): string {
  if (layer['is'] === 'winding') return String(layer['name'] ?? '') === '' ? windingWithout(number) : String(layer['name']);
  if (isFormerWall(layer)) return STACK_WORDS.formerWall;
  return textOf(layer['covers']) === 'stopsShort' ? STACK_WORDS.stopsShort : STACK_WORDS.insulation;
}

/** On which side its turns are drawn. */
function standsOf(layer: Tree): string {
  const side = textOf(layer['side']);
  return side === 'mains' ? 'mains' : side === 'output' || side === 'touchable' ? 'hand' : '';
}

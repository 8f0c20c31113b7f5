import { useRef } from 'react';
import type { Change } from '../../app/casebook/change.ts';
import type { TransformerView } from '../../present/workspace/transformer-view.ts';
import { newItemId } from '../state/place-parts.ts';
import { useOpenPage, useSnapshot } from '../state/use-case.ts';
import { CoreDetail, DriveDetail } from './core-detail.tsx';
import { LayerDetail } from './layer-detail.tsx';
import {
  countBy,
  countedIn,
  countOf,
  type LayerKind,
  layersOf,
  moveLayer,
  newLayer,
  nextRow,
  removeLayer,
  type Tree,
} from './layer-edit.ts';
import { LayerList } from './layer-list.tsx';
import { CORE, DRIVE, selectedKey } from './selected-layer.ts';
import { isTyping, useStackKeys } from './use-stack-keys.ts';
import { WindowFigure } from './window-figure.tsx';

/**
 * One transformer as it comes apart: its layers in the order in which they come off, the cross-section that they make beside them, and the layer
 * at hand below. Made for one hand: what comes off next, a turn, a row are one key each, and Enter goes on to the next number.
 */
export function StackEntry({ stack, view }: { stack: Tree; view: TransformerView | undefined }) {
  const { store } = useOpenPage();
  const { screen } = useSnapshot();
  const id = String(stack['id']);
  const section = useRef<HTMLDivElement>(null);
  const layers = layersOf(store, id);
  const kept = screen[selectedKey(id)] ?? '';
  const layer = layers.find((one) => one['id'] === kept) ?? (kept === CORE || kept === DRIVE ? null : (layers.at(-1) ?? null));
  const at = layer === null ? (kept === DRIVE ? DRIVE : CORE) : String(layer['id']);
  const select = (next: string): void => {
    if (next !== at) store.setScreen(selectedKey(id), next);
  };
  const focus = (what: string): void => {
    requestAnimationFrame(() => requestAnimationFrame(() => section.current?.querySelector<HTMLElement>(what)?.focus()));
  };
  const write = (changes: readonly Change[], key: string, step: string): void => {
    if (changes.length > 0) store.change(changes, step, { key, args: {} });
  };
  // the turns of one winding are one step of undo: one back is for a single turn
  const count = (by: 1 | -1): void => {
    if (layer !== null) write(countBy(id, layer, by), 'turn', by > 0 ? `turns-${at}` : newItemId('turn'));
  };
  const row = (): void => {
    if (layer !== null) write(nextRow(id, layer), 'turn', newItemId('row'));
  };
  const add = (kind: LayerKind): void => {
    const made = newLayer(layers, id, kind, layer === null ? undefined : at);
    write(made.changes, 'addLayer', newItemId('layer'));
    select(made.id);
    // a wall asks for its thickness; what is counted goes on at the key that counts
    focus(kind === 'formerWall' ? `[id="layer-${made.id}"] [data-place$="/each"]` : '.count-key');
  };
  const move = (by: 1 | -1): void => {
    if (layer !== null) write(moveLayer(layers, id, layer, by), 'moveLayer', newItemId('move'));
  };
  const remove = (): void => {
    if (layer === null) return;
    const next = layers[layers.indexOf(layer) + 1] ?? layers[layers.indexOf(layer) - 1];
    write(removeLayer(id, layer), 'removeLayer', newItemId('remove'));
    const to = next === undefined ? CORE : String(next['id']);
    select(to);
    focus(`[id="layer-${to}"] .pick`);
  };
  const step = (by: 1 | -1): void => {
    const order = [...layers.map((one) => String(one['id'])), CORE, DRIVE];
    const to = order[Math.min(order.length - 1, Math.max(0, order.indexOf(at) + by))] ?? at;
    select(to);
    focus(`[id="layer-${to}"] .pick`);
  };
  const keys = useStackKeys({ count, row, add, step, move, remove, photo: () => focus('.take-photo') });
  const member = layer === null ? null : countedIn(layer);
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: every key has its button inside
    <div
      className="stack-entry"
      ref={section}
      onKeyDown={(event) => {
        if (isTyping(event.target) && event.key === 'Enter') goOn(event, section.current);
        else keys(event);
      }}
    >
      <div className="cut-open">
        <LayerList stack={id} layers={layers} at={at} weakest={view?.weakest ?? null} onSelect={select} onAdd={add} />
        <WindowFigure
          view={view}
          layer={layer === null ? null : at}
          onLayer={(to) => {
            select(to);
            focus(`[id="layer-${to}"] .pick`);
          }}
        />
      </div>
      {layer !== null && member !== null ? (
        <LayerDetail
          key={at}
          stack={id}
          layers={layers}
          layer={layer}
          count={countOf(layer, member)}
          onCount={count}
          onRow={row}
          onMove={move}
          onRemove={remove}
          onPart={(changes: readonly Change[], name: string) => write(changes, name, newItemId(name))}
        />
      ) : at === DRIVE ? (
        <DriveDetail stack={id} />
      ) : (
        <CoreDetail stack={id} />
      )}
    </div>
  );
}

/** Enter in a number leads to the next one of the list, and from the last to what comes off next. */
function goOn(event: React.KeyboardEvent, section: HTMLElement | null): void {
  const list = section?.querySelector('.layer-list') ?? null;
  if (list === null || !list.contains(event.target as Node)) return;
  const inputs = [...list.querySelectorAll<HTMLInputElement>('.numbers input[type="text"]')];
  const next = inputs[inputs.indexOf(event.target as HTMLInputElement) + 1];
  event.preventDefault();
  if (next === undefined) section?.querySelector<HTMLElement>('.next-layer button')?.focus();
  else {
    next.focus();
    next.select();
  }
}

import { useState } from 'react';
import type { Change, Json } from '../../app/casebook/change.ts';
import { BENCH_PAGE } from '../../present/words/bench-page-words.ts';
import { BENCH_WORDS } from '../../present/words/bench-words.ts';
import { choiceWords } from '../../present/words/page-words.ts';
import { listOf } from '../part/new-exhibit.ts';
import { countOf } from '../stack/layer-edit.ts';
import { newItemId } from '../state/place-parts.ts';
import { useOpenPage, useSnapshot } from '../state/use-case.ts';
import { useLoadOff } from './act-row.tsx';
import type { Tree } from './day-order.ts';
import { addLayer, addTurns, beginWinding, currentWinding, loseCount, mayStop, setItem, showTape, woundOf } from './turn-count.ts';
import { useBenchKeys } from './use-bench-keys.ts';

const TAPES = [1, 2, 3]; // layers of tape that one unwinds without counting
const WIRES = ['enamelled', 'fullyInsulated', 'tripleInsulated', 'tapeCovered'];
const COVERS = ['whole', 'stopsShort'];

/** Turns of a winding as they come off, outside in, into the stack of the case. */
export function TurnsView() {
  const { store } = useOpenPage();
  const { view } = useSnapshot();
  const off = useLoadOff();
  const [lost, setLost] = useState<string | null>(null);
  const wound = woundOf(store);
  const winding = currentWinding(wound);
  const turns = countOf(winding, 'turns');
  const layers = countOf(winding, 'layers') ?? 1;
  const last = wound.items.at(-1);
  const unknown = winding !== null && turns === null;
  // the turns of one winding are one step of undo: one back is for a single turn
  const write = (changes: readonly Change[], step: string): void => store.change(changes, step, { key: 'turn', args: {} });
  const turn = (by: 1 | -1): void =>
    write(addTurns(store, by), by > 0 && winding !== null ? `turns-${String(winding['id'])}` : newItemId('turn'));
  const back = (): void => turn(-1);
  const layer = (): void => write(addLayer(store), newItemId('layer'));
  const tape = (count: number): void => write(showTape(store, count), newItemId('tape'));
  const tapeMore = (): void => tape(last?.['is'] === 'insulation' ? (countOf(last, 'layers') ?? 0) + 1 : 1);
  useBenchKeys({
    space: () => turn(1),
    enter: () => undefined,
    undo: () => void store.undo(),
    letters: { backspace: back, l: layer, t: tapeMore },
  });
  return (
    <>
      <section className="bench-entry">
        <div className="bench-set">
          <h2>{winding === null ? BENCH_PAGE.nextWinding : BENCH_PAGE.layer(String(winding['name']), layers)}</h2>
          <span>{BENCH_PAGE.fromTheOutside}</span>
        </div>
        <p className="bench-what">{BENCH_PAGE.turnsOff}</p>
        <p className="count" aria-live="off">
          {unknown ? '?' : (turns ?? 0)}
        </p>
        <p className="was">
          {lost === null ? (
            <>
              <span>{unknown ? BENCH_PAGE.countLostNextWindingBegins : BENCH_WORDS.lostCount}</span>
              {winding !== null && !unknown && (
                <button type="button" className="plain" onClick={() => setLost('')}>
                  {BENCH_PAGE.lostCount}
                </button>
              )}
              {unknown && (
                <button type="button" className="plain" onClick={() => write(beginWinding(store), newItemId('winding'))}>
                  {BENCH_PAGE.nextWindingWithoutTape}
                </button>
              )}
            </>
          ) : (
            <LostCount
              reason={lost}
              onReason={setLost}
              onKeep={() => {
                write(loseCount(store, lost), newItemId('lost'));
                setLost(null);
              }}
            />
          )}
        </p>
      </section>
      <aside className="beside">
        <ol className="wound" aria-label={BENCH_PAGE.whatCameOffOutsideIn}>
          {wound.items.map((item) => (
            <Layer
              key={String(item['id'])}
              item={item}
              now={item === last}
              onSet={(member, to) => write(setItem(store, String(item['id']), member, to), newItemId('layer'))}
            />
          ))}
        </ol>
        <p className="say">{mayStop(view) ? <b>{BENCH_WORDS.mayStop}</b> : BENCH_WORDS.notYet}</p>
      </aside>
      <nav className="acts turns" aria-label={BENCH_PAGE.keysOfTheBench}>
        <button type="button" className="halt" onClick={off}>
          {BENCH_PAGE.loadOff}
        </button>
        <button type="button" disabled={turns === null || turns === 0} onClick={() => turn(-1)}>
          {BENCH_PAGE.oneBack}
          <small className="only-desk">{BENCH_PAGE.backspace}</small>
        </button>
        <button type="button" disabled={winding === null} onClick={layer}>
          {BENCH_PAGE.newLayer}
          <small className="only-desk">L</small>
        </button>
        <span className="tape">
          <b>{BENCH_PAGE.tapeShows}</b>
          <span>
            {TAPES.map((count) => (
              <button type="button" key={count} onClick={() => tape(count)} aria-label={BENCH_PAGE.tapeShowsLayers(count)}>
                {count}
              </button>
            ))}
          </span>
        </span>
        <button type="button" className="keep" disabled={unknown} onClick={() => turn(1)}>
          {BENCH_PAGE.oneTurn}
          <small>{BENCH_PAGE.fromTo(turns ?? 0, (turns ?? 0) + 1)}</small>
        </button>
      </nav>
    </>
  );
}

function LostCount({ reason, onReason, onKeep }: { reason: string; onReason: (text: string) => void; onKeep: () => void }) {
  return (
    <span className="plan">
      <label>
        <span>{BENCH_PAGE.unknownBecause}</span>
        {/* biome-ignore lint/a11y/noAutofocus: the key that opened it asks for exactly this */}
        <input autoFocus value={reason} onChange={(event) => onReason(event.target.value)} />
      </label>
      <button type="button" className="plain" disabled={reason.trim() === ''} onClick={onKeep}>
        {BENCH_PAGE.keepAsUnknown}
      </button>
    </span>
  );
}

/** One thing that came off. The one at hand says its name, its wire and pins, or whether the tape covers. */
function Layer({ item, now, onSet }: { item: Tree; now: boolean; onSet: (member: string, to: Json) => void }) {
  const { store } = useOpenPage();
  const isWinding = item['is'] === 'winding';
  const count = countOf(item, isWinding ? 'turns' : 'layers');
  const member = isWinding ? 'wireKind' : 'covers';
  const value = typeof item[member] === 'string' ? String(item[member]) : '';
  const pins = (item['pins'] ?? []) as readonly Json[];
  const conductors = listOf(store, 'conductors');
  return (
    <li className={`${isWinding ? 'w' : 't'}${now ? ' now' : ''}`}>
      {now && isWinding ? (
        <input
          aria-label={BENCH_PAGE.nameOfTheWinding}
          value={String(item['name'])}
          onChange={(event) => onSet('name', event.target.value)}
        />
      ) : (
        <b>{isWinding ? String(item['name']) : BENCH_PAGE.tape}</b>
      )}
      <span>{isWinding ? BENCH_PAGE.turns(count ?? '?') : BENCH_PAGE.layers(count ?? '?')}</span>
      {now ? (
        <>
          <select
            aria-label={isWinding ? BENCH_PAGE.kindOfWire : BENCH_PAGE.howFarItCovers}
            value={value}
            onChange={(event) => onSet(member, event.target.value)}
          >
            <option value="" disabled>
              {isWinding ? BENCH_PAGE.wireNotLooked : BENCH_PAGE.coversNotLooked}
            </option>
            {(isWinding ? WIRES : COVERS).map((one) => (
              <option key={one} value={one}>
                {choiceWords(one)}
              </option>
            ))}
          </select>
          {isWinding && conductors.length > 0 && <Pins pins={pins} conductors={conductors} onSet={(to) => onSet('pins', to)} />}
        </>
      ) : (
        <i>{value === '' ? '' : choiceWords(value)}</i>
      )}
    </li>
  );
}

/** Where both ends of a winding go: kept once both are said. */
function Pins({ pins, conductors, onSet }: { pins: readonly Json[]; conductors: readonly Tree[]; onSet: (to: Json) => void }) {
  const [ends, setEnds] = useState<readonly string[]>(() =>
    [0, 1].map((index) => (typeof pins[index] === 'string' ? String(pins[index]) : '')),
  );
  const set = (index: number, to: string): void => {
    const next = ends.with(index, to);
    setEnds(next);
    if (next.every((end) => end !== '')) onSet(next);
  };
  return (
    <>
      {['start', 'end'].map((which, index) => (
        <select
          key={which}
          aria-label={BENCH_PAGE.ofTheWinding(which)}
          value={ends[index] ?? ''}
          onChange={(event) => set(index, event.target.value)}
        >
          <option value="" disabled>
            {BENCH_PAGE.notLooked(which)}
          </option>
          {conductors.map((one) => (
            <option key={String(one['id'])} value={String(one['id'])}>
              {String(one['name'])}
            </option>
          ))}
        </select>
      ))}
    </>
  );
}

import type { ReactNode } from 'react';
import { EXHIBIT_WORDS } from '../../present/words/page-words.ts';
import { removeOne } from '../../present/words/stack-words.ts';
import type { ChapterView } from '../../present/workspace/chapter-view.ts';
import { BarrierLines } from '../part/barrier-lines.tsx';
import { addExhibit, listOf } from '../part/new-exhibit.ts';
import { Pictures } from '../part/pictures.tsx';
import { SheetView } from '../part/sheet.tsx';
import { newItemId } from '../state/place-parts.ts';
import { useOpenPage, useSnapshot } from '../state/use-case.ts';
import { PairFindings } from './pair-findings.tsx';
import { StackEntry } from './stack-entry.tsx';
import { WorkedNumbers } from './worked-numbers.tsx';

const STACK = EXHIBIT_WORDS['stack'] ?? { one: 'stack', many: 'stacks' };

/** Transformers of the case, one at a time, what follows from each, and the barrier that they are part of. */
export function TransformerChapter(props: {
  chapter: ChapterView;
  lit: (id: string) => ReadonlySet<string>;
  /** Where a number comes from, when one was asked for. */
  origin: ReactNode;
}) {
  const { chapter, lit, origin } = props;
  const { store } = useOpenPage();
  const { screen } = useSnapshot();
  const stacks = listOf(store, 'exhibits').filter((item) => item['kind'] === 'stack');
  const current = stacks.find((item) => item['id'] === screen['open-stack']) ?? stacks[0];
  const id = String(current?.['id'] ?? '');
  const view = chapter.transformers.find(({ exhibit }) => exhibit === id);
  const parts = listOf(store, 'parts');
  const begin = (): void => {
    choose(addExhibit(store, 'stack'));
    requestAnimationFrame(() => requestAnimationFrame(() => document.querySelector<HTMLElement>('.next-layer button')?.focus()));
  };
  const choose = (next: string): void => store.setScreen('open-stack', next);
  return (
    <>
      <section className="each" aria-label={STACK.many}>
        <h3>{STACK.many}</h3>
        <div className="tabs">
          {stacks.map((item) => (
            <button type="button" key={String(item['id'])} aria-pressed={item === current} onClick={() => choose(String(item['id']))}>
              {String(parts.find((part) => part['id'] === item['part'])?.['ref'] ?? item['id'])}
            </button>
          ))}
          <button type="button" className="add" onClick={begin}>
            + {STACK.one}
          </button>
        </div>
        {current !== undefined && (
          <div className={current['struck'] === undefined ? '' : 'struck'}>
            <StackEntry key={id} stack={current} view={view} />
            {view !== undefined && <PairFindings ids={view.pairs} />}
            {view !== undefined && <WorkedNumbers view={view} />}
            {origin}
            <p className="adds">
              <button
                type="button"
                className="quiet"
                onClick={() =>
                  store.set(`/case/exhibits/${id}`, undefined, newItemId('remove'), { key: 'removeExhibit', args: { kind: 'stack' } })
                }
              >
                {removeOne(STACK.one)}
              </button>
            </p>
          </div>
        )}
      </section>
      {current === undefined && origin}
      <div className="evidence of-barrier">
        <div className="entries">
          {chapter.barrier !== null && <BarrierLines view={chapter.barrier} />}
          <SheetView
            sheet={{ lay: 'rows', kind: 'workingVoltage', columns: ['between', 'rms', 'peak', 'under/mains', 'under/supply'] }}
            lit={lit}
          />
          <SheetView sheet={{ lay: 'each', kind: 'capture' }} lit={lit} />
        </div>
        <Pictures chapter={chapter} />
      </div>
    </>
  );
}

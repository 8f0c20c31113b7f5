import { useEffect, useRef } from 'react';
import { STACK_WORDS, weakestAt } from '../../present/words/stack-words.ts';
import type { TransformerView } from '../../present/workspace/transformer-view.ts';
import { RawHtml } from '../part/raw-html.tsx';
import { useOpenPage } from '../state/use-case.ts';

interface Props {
  readonly view: TransformerView | undefined;
  readonly layer: string | null;
  readonly onLayer: (id: string) => void;
}

/** The cross-section as it stands now, the layer at hand on its ground; under it the weakest place, leading to both its layers. */
export function WindowFigure({ view, layer, onLayer }: Props) {
  const drawn = useRef<HTMLDivElement>(null);
  const wide = view?.wideSvg ?? '';
  // biome-ignore lint/correctness/useExhaustiveDependencies: a figure drawn anew has lost its mark
  useEffect(() => {
    for (const group of drawn.current?.querySelectorAll('[data-layer]') ?? [])
      group.classList.toggle('on', group.getAttribute('data-layer') === layer);
  }, [layer, wide]);
  if (view === undefined || wide === '') return <p className="small">{STACK_WORDS.notDrawn}</p>;
  return (
    <figure className="cross-section">
      {/* biome-ignore lint/a11y/noStaticElementInteractions: a shortcut for the pointer; the list beside it does the same with keys */}
      {/* biome-ignore lint/a11y/useKeyWithClickEvents: as above */}
      <div
        ref={drawn}
        onClick={(event) => {
          const id = (event.target as Element).closest('[data-layer]')?.getAttribute('data-layer');
          if (id !== null && id !== undefined) onLayer(id);
        }}
      >
        <RawHtml html={wide} as="div" className="wide" />
        <RawHtml html={view.narrowSvg} as="div" className="narrow" />
      </div>
      <figcaption>
        <Weakest view={view} onLayer={onLayer} />
        {STACK_WORDS.drawnHow}
      </figcaption>
    </figure>
  );
}

function Weakest({ view: { weakest }, onLayer }: { view: TransformerView; onLayer: (id: string) => void }) {
  const { showFinding } = useOpenPage();
  if (weakest === null) return null;
  return (
    <p className="weakest">
      <RawHtml html={weakest.markSvg} />{' '}
      <button type="button" className="from" onClick={() => showFinding(weakest.finding)}>
        {weakestAt(weakest.where)}
      </button>
      ,{' '}
      {weakest.layers.map(({ id, name }, index) => (
        <span key={id}>
          {index > 0 && ` ${STACK_WORDS.to} `}
          <button type="button" className="from" onClick={() => onLayer(id)}>
            {name}
          </button>
        </span>
      ))}
      : <b className={`wd ${weakest.outcome}`}>{weakest.word}</b>
    </p>
  );
}

import { useEffect, useRef } from 'react';
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
  if (view === undefined || wide === '')
    return <p className="small">The cross-section is drawn as soon as the first layer stands in the list.</p>;
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
        Filled turns stand on the mains side, hollow ones on the side of a hand, dashed ones float; a ring is an insulating cover. Outermost
        on top.
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
        Weakest {weakest.where}
      </button>
      ,{' '}
      {weakest.layers.map(({ id, name }, index) => (
        <span key={id}>
          {index > 0 && ' to '}
          <button type="button" className="from" onClick={() => onLayer(id)}>
            {name}
          </button>
        </span>
      ))}
      : <b className={`wd ${weakest.outcome}`}>{weakest.word}</b>
    </p>
  );
}

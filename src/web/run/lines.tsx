import type { LinesView } from '../../present/workspace/run-view.ts';
import { RawHtml } from '../part/raw-html.tsx';

/** Lines of a run, one figure each; the narrow drawing where there is no room for the wide one. */
export function Lines({ view, title }: { view: LinesView; title: string }) {
  return (
    <section className="runlines" aria-label={title}>
      {view.figures.map((figure) => (
        <figure key={figure.title}>
          <figcaption>{figure.title}</figcaption>
          <RawHtml as="div" className="for-wide" html={figure.wideSvg} />
          <RawHtml as="div" className="for-narrow" html={figure.narrowSvg} />
        </figure>
      ))}
    </section>
  );
}

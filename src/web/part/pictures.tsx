import type { ReactNode } from 'react';
import type { ChapterView } from '../../present/workspace/chapter-view.ts';
import { RawHtml } from './raw-html.tsx';

/** Figures of a chapter, drawn for a wide and for a narrow page, and its table. */
export function Pictures({ chapter: { figures, tableHtml }, children }: { chapter: ChapterView; children?: ReactNode }) {
  return (
    <div className="pictures">
      {figures.map((figure) => (
        <figure key={figure.title}>
          <div className="wide">
            <RawHtml html={figure.wideSvg} as="div" />
          </div>
          <div className="narrow">
            <RawHtml html={figure.narrowSvg} as="div" />
          </div>
          <figcaption>
            <b>{figure.title}:</b> <RawHtml html={figure.captionHtml} />
          </figcaption>
        </figure>
      ))}
      {tableHtml !== '' && <RawHtml html={tableHtml} as="div" />}
      {children}
    </div>
  );
}

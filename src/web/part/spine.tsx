import { CASE_PAGE } from '../../present/words/case-page-words.ts';
import { PUBLISH_WORDS } from '../../present/words/publish-words.ts';
import type { WorkspaceView } from '../../present/workspace/workspace-view.ts';
import { toCasePath } from '../state/route.ts';
import { Caution } from './caution.tsx';
import { Link } from './link.tsx';
import { RawHtml } from './raw-html.tsx';

/** Chapters of one case with the worst each has come to; the caution stands under them and cannot be closed. */
export function Spine({ id, view, current }: { id: string; view: WorkspaceView; current: string }) {
  return (
    <nav className="spine" aria-label={CASE_PAGE.chapters}>
      <ol>
        <Chapter id={id} chapter="sample" title={CASE_PAGE.sampleAndBench} current={current} />
        {view.chapters.map((chapter) => (
          <Chapter
            key={chapter.id}
            id={id}
            chapter={chapter.id}
            title={chapter.title}
            current={current}
            markSvg={chapter.markSvg}
            word={chapter.word}
            count={chapter.exhibits}
          />
        ))}
        <Chapter id={id} chapter="files" title={CASE_PAGE.photosAndFiles} current={current} />
        <Chapter id={id} chapter="judgement" title={CASE_PAGE.judgement} current={current} count={view.next.length} />
        <Chapter id={id} chapter="publish" title={PUBLISH_WORDS.title} current={current} />
      </ol>
      <Caution />
    </nav>
  );
}

/** On a narrow page the chapters are a strip: the current one is drawn into it. */
function toView(item: HTMLElement | null): void {
  const strip = item?.parentElement;
  if (item !== null && strip !== null && strip !== undefined && strip.scrollWidth > strip.clientWidth)
    strip.scrollLeft = item.offsetLeft - (strip.clientWidth - item.offsetWidth) / 2;
}

function Chapter(props: { id: string; chapter: string; title: string; current: string; markSvg?: string; word?: string; count?: number }) {
  const { id, chapter, title, current, markSvg, word, count } = props;
  return (
    <li className={chapter === current ? 'cur' : ''} ref={chapter === current ? toView : null}>
      <Link to={toCasePath(id, chapter)} {...(chapter === current ? { 'aria-current': 'page' as const } : {})}>
        {markSvg === undefined ? <i className="none" /> : <RawHtml html={markSvg} />}
        <span>
          {title}
          {word !== undefined && <span className="for-ears">, {word}</span>}
        </span>
        {count !== undefined && <small>{count === 0 ? '' : count}</small>}
      </Link>
    </li>
  );
}

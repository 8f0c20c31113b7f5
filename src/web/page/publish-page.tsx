import { useEffect, useState } from 'react';
import { PUBLISH_WORDS } from '../../present/words/publish-words.ts';
import type { MovedView, Publishing } from '../../present/workspace/published-view.ts';
import { describePublishing, movedSince, publishCase, publishedOf, publishedReportOf } from '../api/casebook.ts';
import { RawHtml } from '../part/raw-html.tsx';
import { useSnapshot } from '../state/use-case.ts';
import '../style/publish.css';

const SETTLE_MS = 300; // what would be published is asked for again once the hands rest

/** What publishing this case now would keep, what was published of it, and what moved since. */
export function PublishPage() {
  const { id, revision, waiting } = useSnapshot();
  const [publishing, setPublishing] = useState<Publishing | null>(null);
  const [trouble, setTrouble] = useState('');
  const [asked, setAsked] = useState(false);
  const [moved, setMoved] = useState<number | null>(null);
  const [made, setMade] = useState(0);
  // biome-ignore lint/correctness/useExhaustiveDependencies: asked again after every revision, and after a version was made
  useEffect(() => {
    const stop = new AbortController();
    const read = (): void => {
      describePublishing(id, stop.signal)
        .then((read) => {
          setPublishing(read);
          setTrouble('');
        })
        .catch((error: Error) => {
          if (!stop.signal.aborted) setTrouble(error.message);
        });
    };
    const timer = setTimeout(read, publishing === null ? 0 : SETTLE_MS);
    return () => {
      clearTimeout(timer);
      stop.abort();
    };
  }, [id, revision, made]);
  const publish = (): void => {
    setAsked(false);
    publishCase(id)
      .then(() => setMade((count) => count + 1))
      .catch((error: Error) => setTrouble(error.message));
  };
  return (
    <article className="chapter publish" aria-labelledby="chapter-title">
      <header>
        <h2 id="chapter-title">{PUBLISH_WORDS.title}</h2>
        <span className="small">{PUBLISH_WORDS.about}</span>
      </header>
      {trouble !== '' && (
        <p className="trouble" role="alert">
          {trouble}
        </p>
      )}
      {publishing !== null && (
        <>
          <Now publishing={publishing} waiting={waiting > 0} asked={asked} onAsk={setAsked} onPublish={publish} />
          <section aria-labelledby="published-title">
            <h3 id="published-title">{PUBLISH_WORDS.published}</h3>
            {publishing.published.length === 0 && <p>{PUBLISH_WORDS.none}</p>}
            <ol className="versions" reversed>
              {publishing.published.toReversed().map((one) => (
                <Version key={one.number} id={id} one={one} open={moved === one.number} onMoved={setMoved} />
              ))}
            </ol>
          </section>
        </>
      )}
    </article>
  );
}

function Now(props: { publishing: Publishing; waiting: boolean; asked: boolean; onAsk: (asked: boolean) => void; onPublish: () => void }) {
  const { publishing, waiting, asked, onAsk, onPublish } = props;
  const { now, published } = publishing;
  const same = published.findLast(
    ({ revision, view }) => revision === now.revision && view?.rules.sha256 === now.rules.sha256 && view.tool === now.tool,
  );
  const next = published.length + 1;
  return (
    <section aria-labelledby="now-title">
      <h3 id="now-title">{PUBLISH_WORDS.now}</h3>
      <p className="what">
        <b>{PUBLISH_WORDS.sample(now.name, now.sample)}</b>. {PUBLISH_WORDS.one}{' '}
        {now.invented ? PUBLISH_WORDS.invented : PUBLISH_WORDS.notInvented}
      </p>
      <dl className="facts">
        <dt>{PUBLISH_WORDS.verdict}</dt>
        <dd>{PUBLISH_WORDS.both(now.failure, now.coverage)}</dd>
        <dt>{PUBLISH_WORDS.case}</dt>
        <dd className="hash">{now.caseSha256}</dd>
        <dt>{PUBLISH_WORDS.revision}</dt>
        <dd>{now.revision}</dd>
        <dt>{PUBLISH_WORDS.tool}</dt>
        <dd>{now.tool}</dd>
        <dt>{PUBLISH_WORDS.rules}</dt>
        <dd className="hash">{PUBLISH_WORDS.rulesText(now.rules.version, now.rules.sha256)}</dd>
      </dl>
      {same !== undefined ? (
        <p>{PUBLISH_WORDS.already(same.number)}</p>
      ) : asked ? (
        <>
          <p>{PUBLISH_WORDS.ask}</p>
          <p className="ways">
            {/* biome-ignore lint/a11y/noAutofocus: the key that opened it asks for exactly this */}
            <button type="button" className="btn" autoFocus disabled={waiting} onClick={onPublish}>
              {PUBLISH_WORDS.publishIt}
            </button>
            <button type="button" className="quiet" onClick={() => onAsk(false)}>
              {PUBLISH_WORDS.leave}
            </button>
          </p>
        </>
      ) : (
        <p className="ways">
          <button type="button" className="btn" disabled={waiting} onClick={() => onAsk(true)}>
            {PUBLISH_WORDS.publish(next)}
          </button>
          {waiting && <span className="small">{PUBLISH_WORDS.waiting}</span>}
        </p>
      )}
    </section>
  );
}

function Version(props: { id: string; one: Publishing['published'][number]; open: boolean; onMoved: (number: number | null) => void }) {
  const { id, one, open, onMoved } = props;
  const { number, at, revision, sha256, view } = one;
  return (
    <li value={number}>
      <h4>{PUBLISH_WORDS.version(number)}</h4>
      <p>
        {view === null ? PUBLISH_WORDS.otherFormat : <b>{PUBLISH_WORDS.both(view.failure, view.coverage)}</b>}{' '}
        <span className="small">
          {PUBLISH_WORDS.at(at.replace('T', ' ').slice(0, at.indexOf('.') < 0 ? undefined : at.indexOf('.')), revision)}
        </span>
      </p>
      {view !== null && (
        <p className="small">
          {view.tool}, {PUBLISH_WORDS.rules} {view.rules.version}
        </p>
      )}
      <p className="small hash">
        {PUBLISH_WORDS.bytes} {sha256}
      </p>
      <p className="ways">
        {view !== null && (
          <>
            <a className="btn" href={publishedReportOf(id, number)} target="_blank" rel="noreferrer">
              {PUBLISH_WORDS.report}
            </a>
            <button type="button" className="btn" aria-expanded={open} onClick={() => onMoved(open ? null : number)}>
              {PUBLISH_WORDS.moved}
            </button>
          </>
        )}
        <a className="quiet" href={publishedOf(id, number)} download={`${id}-${number}.json`}>
          {PUBLISH_WORDS.data}
        </a>
      </p>
      {open && <Moved id={id} number={number} />}
    </li>
  );
}

/** Findings that say something else than in a published version. */
function Moved({ id, number }: { id: string; number: number }) {
  const { revision } = useSnapshot();
  const [view, setView] = useState<MovedView | null>(null);
  const [trouble, setTrouble] = useState('');
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new revision moves findings
  useEffect(() => {
    const stop = new AbortController();
    movedSince(id, number, stop.signal)
      .then(setView)
      .catch((error: Error) => {
        if (!stop.signal.aborted) setTrouble(error.message);
      });
    return () => stop.abort();
  }, [id, number, revision]);
  if (trouble !== '')
    return (
      <p className="trouble" role="alert">
        {trouble}
      </p>
    );
  if (view === null) return <p aria-busy="true" />;
  const { verdict, coverage, rules, tool, rows } = view;
  return (
    <section className="moved" aria-label={PUBLISH_WORDS.movedTitle(number)}>
      {verdict !== null && <p>{PUBLISH_WORDS.failureMoved(verdict.was, verdict.now)}</p>}
      {coverage !== null && <p>{PUBLISH_WORDS.coverageMoved(coverage.was, coverage.now)}</p>}
      {tool && <p>{PUBLISH_WORDS.otherTool}</p>}
      {rules && <p>{PUBLISH_WORDS.otherRules}</p>}
      {rows.length === 0 ? (
        <p>{PUBLISH_WORDS.nothingMoved}</p>
      ) : (
        <div className="scroll">
          <table className="list">
            <thead>
              <tr>
                <th scope="col">{PUBLISH_WORDS.finding}</th>
                <th scope="col">{PUBLISH_WORDS.was}</th>
                <th scope="col">{PUBLISH_WORDS.is}</th>
              </tr>
            </thead>
            <tbody>
              {rows.map(({ id: finding, name, was, now }) => (
                <tr key={finding}>
                  <th scope="row">{name}</th>
                  <td>
                    <RawHtml html={was.markSvg} /> {was.words}
                  </td>
                  <td>
                    <RawHtml html={now.markSvg} /> {now.words}
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
    </section>
  );
}

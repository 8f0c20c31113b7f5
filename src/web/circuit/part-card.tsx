import { CASE_PAGE } from '../../present/words/case-page-words.ts';
import type { CircuitNetView, CircuitPartView, CircuitView } from '../../present/workspace/circuit-view.ts';
import { RawHtml } from '../part/raw-html.tsx';
import { useOpenPage } from '../state/use-case.ts';
import type { Chosen } from './schematic.tsx';

interface Leads {
  readonly onChoose: (chosen: Chosen) => void;
  readonly onLight: (net: string | null) => void;
  readonly onLine: (ref: string) => void;
}

/** What is known of the part or net that was chosen: values, readings, job, findings, its line. */
export function ChosenCard({ view, chosen, ...leads }: { view: CircuitView; chosen: Chosen } & Leads) {
  const part = chosen !== null && 'part' in chosen ? view.parts.find(({ id }) => id === chosen.part) : undefined;
  const net = chosen !== null && 'net' in chosen ? view.nets.find(({ id }) => id === chosen.net) : undefined;
  return (
    <aside className="chosencard" aria-label={CASE_PAGE.chosenInTheSchematic} aria-live="polite">
      {part !== undefined && <PartCard part={part} {...leads} />}
      {net !== undefined && <NetCard net={net} {...leads} />}
      {part === undefined && net === undefined && <p className="small">{CASE_PAGE.pointAtPartOrWire}</p>}
    </aside>
  );
}

function PartCard({ part, onChoose, onLight, onLine }: { part: CircuitPartView } & Leads) {
  const { showFinding } = useOpenPage();
  return (
    <>
      <h3>{part.ref}</h3>
      <p>
        {part.job}
        {part.reason !== '' && (
          <small>
            {CASE_PAGE.itStands} {part.reason}
          </small>
        )}
      </p>
      <dl>
        {part.facts.map(({ label, text }) => (
          <div key={label + text}>
            <dt>{label}</dt>
            <dd>{text}</dd>
          </div>
        ))}
      </dl>
      <ul className="pins" aria-label={CASE_PAGE.pinsOf(part.ref)}>
        {part.pins.map(({ pin, net, name }) => (
          <li key={pin}>
            <span className="u">{pin}</span>{' '}
            {net === null ? <i>{name}</i> : <NetButton net={net} name={name} onChoose={onChoose} onLight={onLight} />}
          </li>
        ))}
      </ul>
      {part.findings.length > 0 && (
        <ul className="on-part" aria-label={CASE_PAGE.findingsOn(part.ref)}>
          {part.findings.map(({ id, markSvg, title, word }) => (
            <li key={id}>
              <button type="button" className="quiet" onClick={() => showFinding(id)}>
                <RawHtml html={markSvg} /> {title}: {word}
              </button>
            </li>
          ))}
        </ul>
      )}
      {part.slips.map((slip) => (
        <p key={slip} className="small">
          {CASE_PAGE.probablyASlip} {slip}
        </p>
      ))}
      <button type="button" className="btn" onClick={() => onLine(part.ref)}>
        {CASE_PAGE.toItsLine}
      </button>
    </>
  );
}

function NetCard({ net, onChoose, onLine }: { net: CircuitNetView } & Leads) {
  return (
    <>
      <h3>
        {CASE_PAGE.netTitle} {net.name}
      </h3>
      <p className="small">{net.side === '' ? CASE_PAGE.itsSideIsNotKnown : net.side}</p>
      <ul className="pins" aria-label={CASE_PAGE.pinsOn(net.name)}>
        {net.ends.map(({ part, ref, pin }) => (
          <li key={`${part} ${pin}`}>
            <button type="button" className="quiet" onClick={() => onChoose({ part })}>
              {ref}
            </button>{' '}
            <span className="u">{pin}</span>
          </li>
        ))}
      </ul>
      {net.ends.length === 1 && (
        <button type="button" className="btn" onClick={() => onLine(net.ends[0]?.ref ?? '')}>
          {CASE_PAGE.toTheLineOf} {net.ends[0]?.ref}
        </button>
      )}
    </>
  );
}

/** Lights its wire up while it has the pointer or the focus. */
function NetButton({ net, name, onChoose, onLight }: { net: string; name: string } & Pick<Leads, 'onChoose' | 'onLight'>) {
  return (
    <button
      type="button"
      className="quiet"
      onPointerEnter={() => onLight(net)}
      onPointerLeave={() => onLight(null)}
      onFocus={() => onLight(net)}
      onBlur={() => onLight(null)}
      onClick={() => onChoose({ net })}
    >
      {name}
    </button>
  );
}

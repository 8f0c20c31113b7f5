import { PHOTO } from '../../present/words/photo-words.ts';
import { newItemId } from '../state/place-parts.ts';
import { useOpenPage } from '../state/use-case.ts';
import { netClass } from './pad-overlay.tsx';
import type { Traced } from './traced-pads.ts';

/** The nets that grow on the photos, by number, with their pads as buttons; a name is changed in place. */
export function NetList({
  traced,
  current,
  onNet,
  onPad,
}: {
  traced: Traced;
  /** Name of the net that is traced now. */
  current: string;
  onNet: (name: string) => void;
  onPad: (id: string) => void;
}) {
  const { store } = useOpenPage();
  const lost = traced.pads.filter(({ net }) => net === null);
  const rename = (id: string, name: string, was: string): void => {
    if (name === was || name === '') return;
    store.set(`/case/conductors/${id}/name`, name, newItemId('name'), { key: 'entry', args: {} });
    if (current === was) onNet(name);
  };
  return (
    <ol className="netlist" aria-label={PHOTO.netsOnThePhotos}>
      {traced.nets.map(({ id, name, number }) => (
        <li key={id}>
          <svg className="swatch" width="34" height="20" aria-hidden="true">
            <g className={netClass(number)}>
              <circle className="spot" cx="10" cy="10" r="9" strokeWidth="2" />
              <text x="10" y="14" textAnchor="middle" fontSize="11">
                {number}
              </text>
            </g>
          </svg>
          <input
            key={name}
            aria-label={PHOTO.nameOfNet(number)}
            defaultValue={name}
            spellCheck={false}
            onBlur={(event) => rename(id, event.target.value.trim(), name)}
            onKeyDown={(event) => event.key === 'Enter' && event.currentTarget.blur()}
          />
          <button type="button" className="quiet" aria-pressed={current === name} onClick={() => onNet(name)}>
            {PHOTO.traceOn}
          </button>
          <span className="pads">
            {traced.pads
              .filter((pad) => pad.net === id)
              .map((pad) => (
                <button type="button" key={pad.id} className="quiet" onClick={() => onPad(pad.id)}>
                  {pad.pin === '' ? PHOTO.partNotKnown : pad.pin}
                </button>
              ))}
          </span>
        </li>
      ))}
      {lost.length > 0 && (
        <li>
          <span className="small">{PHOTO.netNotKnown}</span>
          <span className="pads">
            {lost.map((pad) => (
              <button type="button" key={pad.id} className="quiet" onClick={() => onPad(pad.id)}>
                {pad.pin === '' ? PHOTO.partNotKnown : pad.pin}
              </button>
            ))}
          </span>
        </li>
      )}
    </ol>
  );
}

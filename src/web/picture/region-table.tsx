import { PICTURE_WORDS, placeOfRegion, regionTitle, takeRegion, whereFrom } from '../../present/words/picture-words.ts';
import type { FormNode } from '../../present/workspace/form.ts';
import type { RegionView } from '../../present/workspace/picture-view.ts';
import { ObjectFields } from '../field/object-fields.tsx';
import { ReferenceField } from '../field/reference-field.tsx';
import { HangingOn } from '../part/hanging-on.tsx';
import { RawHtml } from '../part/raw-html.tsx';
import { useOpenPage } from '../state/use-case.ts';
import type { DrawnRegion } from './region-layer.tsx';

interface Props {
  readonly place: string;
  readonly node: Extract<FormNode, { is: 'object' }>;
  readonly regions: readonly DrawnRegion[];
  readonly readings: readonly RegionView[];
  readonly selected: string | null;
  readonly onSelect: (id: string) => void;
  readonly onRemove: (id: string) => void;
}

/** What was read in each region, what decides it, and what it is of. */
export function RegionTable({ place, node, regions, readings, selected, onSelect, onRemove }: Props) {
  const { openOrigin } = useOpenPage();
  const chosen = regions.find(({ id }) => id === selected);
  if (regions.length === 0) return null;
  return (
    <>
      <div className="scroll">
        <table className="list regions">
          <caption className="for-ears">{PICTURE_WORDS.regions}</caption>
          <thead>
            <tr>
              <th scope="col">{PICTURE_WORDS.region}</th>
              <th scope="col">{PICTURE_WORDS.place}</th>
              <th scope="col" className="num">
                {PICTURE_WORDS.hottest}
              </th>
              <th scope="col" className="num">
                {PICTURE_WORDS.mean}
              </th>
              <th scope="col">{PICTURE_WORDS.surface}</th>
              <th scope="col">
                <span className="for-ears">{PICTURE_WORDS.decides}</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {regions.map((region) => {
              const read = readings.find(({ id }) => id === region.id);
              return (
                <tr key={region.id} id={`record-${region.id}`} className={region.id === selected ? 'chosen' : ''}>
                  <th scope="row">
                    <button type="button" className="quiet" aria-pressed={region.id === selected} onClick={() => onSelect(region.id)}>
                      {region.number}
                    </button>
                  </th>
                  <td>
                    <ReferenceField
                      place={`${place}/regions/${region.id}/place`}
                      label={placeOfRegion(region.number)}
                      shown={false}
                      required
                      list="places"
                    />
                  </td>
                  <td className="num">{read?.hottest ?? ''}</td>
                  <td className="num">{read?.mean ?? ''}</td>
                  <td>
                    {read !== undefined && read.step !== null ? (
                      <button
                        type="button"
                        className="from"
                        aria-label={whereFrom(region.number)}
                        onClick={() => openOrigin(read.step ?? '')}
                      >
                        <RawHtml html={read.valueHtml} />
                      </button>
                    ) : (
                      <span className="small">{read?.refused ?? PICTURE_WORDS.noPixel}</span>
                    )}
                  </td>
                  <td>
                    <HangingOn place={`${place}/regions/${region.id}`} />
                  </td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </div>
      {chosen !== undefined && (
        <fieldset className="chosen-region">
          <legend>{regionTitle(chosen.number, chosen.name)}</legend>
          <ObjectFields key={chosen.id} node={node} place={`${place}/regions/${chosen.id}`} without={['place', 'points', 'drawn']} />
          <button type="button" className="quiet" onClick={() => onRemove(chosen.id)}>
            {takeRegion(chosen.number)}
          </button>
        </fieldset>
      )}
    </>
  );
}

import type { Json } from '../../app/casebook/change.ts';
import { leadOut, removeLeadOut, STACK_WORDS } from '../../present/words/stack-words.ts';
import { newItemId } from '../state/place-parts.ts';
import { useOpenPage } from '../state/use-case.ts';
import { placeOfLayer, type Tree } from './layer-edit.ts';
import { leadForm } from './layer-form.ts';
import { nameOf } from './layer-list.tsx';
import { MemberField } from './member-field.tsx';
import { Remark } from './remark.tsx';

interface Props {
  readonly stack: string;
  readonly layers: readonly Tree[];
  readonly winding: Tree;
}

/** Wire ends on their way to the pins: what each passes over, and what stands between. Nobody looked, none crosses, or one by one. */
export function LeadOuts({ stack, layers, winding }: Props) {
  const { store } = useOpenPage();
  const place = `${placeOfLayer(stack, String(winding['id']))}/leads`;
  const leads = winding['leads'];
  const items = Array.isArray(leads) ? (leads as readonly Tree[]) : null;
  const set = (to: Json | undefined, key: string): void => store.set(place, to, newItemId('leads'), { key, args: { at: place } });
  const add = (): void => {
    const lead = { id: newItemId('lead'), crosses: [] };
    if (items === null) set([lead], 'add');
    else store.set(`${place}/${lead.id}`, lead, newItemId('add'), { key: 'add', args: { at: place } });
  };
  return (
    <fieldset className="list lead-outs" data-place={place}>
      <legend>{STACK_WORDS.leadOuts}</legend>
      {items === null && <p className="small">{STACK_WORDS.nobodyFollowed}</p>}
      {items?.length === 0 && <p className="small">{STACK_WORDS.noneCrosses}</p>}
      {items?.map((lead, index) => (
        <LeadOut
          key={String(lead['id'])}
          place={`${place}/${String(lead['id'])}`}
          lead={lead}
          number={index + 1}
          others={layers.filter((layer) => layer !== winding)}
          windings={layers.filter((layer) => layer['is'] === 'winding')}
        />
      ))}
      <p className="adds">
        <button type="button" className="quiet add" onClick={add}>
          {STACK_WORDS.addLeadOut}
        </button>
        {items === null && (
          <button type="button" className="quiet" onClick={() => set([], 'entry')}>
            {STACK_WORDS.sayNoneCrosses}
          </button>
        )}
        {items?.length === 0 && (
          <button type="button" className="quiet" onClick={() => set(undefined, 'entry')}>
            {STACK_WORDS.notFollowed}
          </button>
        )}
      </p>
    </fieldset>
  );
}

interface LeadProps {
  readonly place: string;
  readonly lead: Tree;
  readonly number: number;
  readonly others: readonly Tree[];
  readonly windings: readonly Tree[];
}

function LeadOut({ place, lead, number, others, windings }: LeadProps) {
  const { store, form } = useOpenPage();
  const node = leadForm(form.case);
  const crossed = (Array.isArray(lead['crosses']) ? lead['crosses'] : []) as readonly string[];
  const strangers = crossed.filter((id) => !others.some((layer) => layer['id'] === id));
  const toggle = (id: string): void => {
    const next = crossed.includes(id) ? crossed.filter((one) => one !== id) : [...crossed, id];
    store.set(`${place}/crosses`, next, newItemId('crosses'), { key: 'entry', args: { at: `${place}/crosses` } });
  };
  const named = (layer: Tree): string => {
    const kept = nameOf(layer, windings.indexOf(layer) + 1);
    return layer['is'] === 'winding' ? kept : `${kept} ${others.filter((one) => one['is'] !== 'winding').indexOf(layer) + 1}`;
  };
  return (
    <div className="item">
      <div>
        <div className="fields">
          <MemberField node={node} place={place} member="end" label={leadOut(number)} />
          <fieldset className="kinds" data-place={`${place}/crosses`}>
            <legend>{STACK_WORDS.crosses}</legend>
            {[
              ...others.map((layer) => ({ id: String(layer['id']), words: named(layer) })),
              ...strangers.map((id) => ({ id, words: id })),
            ].map(({ id, words }) => (
              <label key={id} className={crossed.includes(id) ? 'on' : ''}>
                <input type="checkbox" checked={crossed.includes(id)} onChange={() => toggle(id)} />
                {words}
              </label>
            ))}
          </fieldset>
          <MemberField node={node} place={place} member="sleeved" label={STACK_WORDS.sleevedThere} />
          <MemberField node={node} place={place} member="wall" label={STACK_WORDS.sleeveWall} />
          <MemberField node={node} place={place} member="photo" label={STACK_WORDS.photo} />
        </div>
        <Remark place={`${place}/crosses`} />
      </div>
      <button
        type="button"
        className="quiet"
        aria-label={removeLeadOut(number)}
        onClick={() => store.set(place, undefined, newItemId('remove'), { key: 'remove', args: { at: place } })}
      >
        {STACK_WORDS.remove}
      </button>
    </div>
  );
}

import { STACK_WORDS } from '../../present/words/stack-words.ts';
import type { BarrierView } from '../../present/workspace/barrier-view.ts';
import { useOpenPage } from '../state/use-case.ts';

/** The barrier in sentences: the weakest path, the fewest failures, the waist; each piece leads to the entry that it stands on. */
export function BarrierLines({ view }: { view: BarrierView }) {
  const { goToField } = useOpenPage();
  if (view.lines.length === 0 && view.missing.length === 0) return null;
  return (
    <section className="barrier-lines" aria-label={STACK_WORDS.barrier}>
      <h3>{STACK_WORDS.barrier}</h3>
      <dl>
        {view.lines.map(({ title, words, pieces }) => (
          <div key={title}>
            <dt>{title}</dt>
            <dd>
              {words}
              <ul>
                {pieces.map(({ way, words: piece, strength, place }) => (
                  <li key={way}>
                    {place === null ? (
                      piece
                    ) : (
                      <button type="button" className="from" onClick={() => goToField(place)}>
                        {piece}
                      </button>
                    )}
                    : {strength}
                  </li>
                ))}
              </ul>
            </dd>
          </div>
        ))}
      </dl>
      {view.missing.map((sentence) => (
        <p className="small" key={sentence}>
          {sentence}
        </p>
      ))}
    </section>
  );
}

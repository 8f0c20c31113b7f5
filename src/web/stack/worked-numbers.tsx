import { STACK_WORDS, whereFrom } from '../../present/words/stack-words.ts';
import type { TransformerView } from '../../present/workspace/transformer-view.ts';
import { RawHtml } from '../part/raw-html.tsx';
import { useOpenPage } from '../state/use-case.ts';

/** What follows from the stack, each number with its origin, and what is missing for the rest, each gap leading to its entry. */
export function WorkedNumbers({ view: { numbers, blocked } }: { view: TransformerView }) {
  const { openOrigin, goToField } = useOpenPage();
  if (numbers.length === 0 && blocked.length === 0) return null;
  return (
    <section className="worked" aria-label={STACK_WORDS.follows}>
      <h3>{STACK_WORDS.follows}</h3>
      <dl className="numbers-worked">
        {numbers.map(({ label, valueHtml, step }) => (
          <div key={label + step}>
            <dt>{label}</dt>
            <dd>
              <button
                type="button"
                className="from"
                aria-label={whereFrom(label)}
                onClick={(event) => openOrigin(step, event.currentTarget)}
              >
                <RawHtml html={valueHtml} />
              </button>
            </dd>
          </div>
        ))}
      </dl>
      {blocked.length > 0 && (
        <div className="blocked">
          <h4>{STACK_WORDS.blocked}</h4>
          <ul>
            {blocked.map(({ label, missing }, index) => (
              <li key={`${label}-${String(index)}`}>
                {label}:{' '}
                {missing.map(({ words, place }, at) => (
                  <span key={words}>
                    {at > 0 && ', '}
                    {place === null ? (
                      words
                    ) : (
                      <button type="button" className="from" onClick={() => goToField(place)}>
                        {words}
                      </button>
                    )}
                  </span>
                ))}
              </li>
            ))}
          </ul>
        </div>
      )}
    </section>
  );
}

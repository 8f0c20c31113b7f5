import { RUN_PAGE } from '../../present/words/run-page-words.ts';

/** What a run stands on, folded away. */
export function Assumed({ assumptions, leftOut }: { assumptions: readonly string[]; leftOut: string }) {
  return (
    <details className="assumed">
      <summary>{RUN_PAGE.assumed(assumptions.length)}</summary>
      <ul>
        {assumptions.map((one) => (
          <li key={one}>{one}</li>
        ))}
      </ul>
      {leftOut !== '' && <p>{RUN_PAGE.leftOut(leftOut)}</p>}
    </details>
  );
}

/** A limit and a reading: the margin line as a sign. */
export function Sign() {
  return (
    <svg className="ml" width="20" height="20" viewBox="0 0 22 22" aria-hidden="true">
      <path className="limit" d="M11 1V21" />
      <path className="bad" d="M1 11H9" />
      <path className="good" d="M13 11H21" />
      <circle className="sign" cx="16.5" cy="11" r="3.4" />
    </svg>
  );
}

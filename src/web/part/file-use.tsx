import type { Json } from '../../app/casebook/change.ts';
import type { Description } from '../../importer/describe.ts';
import { choiceWords, EXHIBIT_WORDS } from '../../present/words/page-words.ts';

/** What a table of numbers is taken for, and which of its columns plays which part. */
export interface FileUse {
  readonly kind: '' | 'sweep' | 'soak';
  /** By column number from 0: a role, or '' for a column that is left alone. */
  readonly roles: readonly string[];
}

const ROLES: Readonly<Record<'sweep' | 'soak', readonly string[]>> = {
  sweep: ['outputCurrent', 'outputVoltage', 'inputPower', 'mains'],
  soak: ['time', 'temperature', 'ambient'],
};

/** A first reading of what the columns are, by their units; the person sees it and can change it before anything is taken. */
export function guessUse(description: Description): FileUse {
  const units = description.columns.map(({ unit }) => unit ?? '');
  const has = (pattern: RegExp): boolean => units.some((unit) => pattern.test(unit));
  const kind = has(/A$/) && has(/V$/) ? 'sweep' : has(/°C|^K$|^C$/) ? 'soak' : '';
  return { kind, roles: kind === '' ? units.map(() => '') : guessRoles(kind, description) };
}

function guessRoles(kind: 'sweep' | 'soak', { columns, timeBase }: Description): string[] {
  const taken = new Set<string>();
  return columns.map(({ name, unit }, index) => {
    const role =
      kind === 'sweep'
        ? /A$/.test(unit ?? '')
          ? 'outputCurrent'
          : /V$/.test(unit ?? '')
            ? 'outputVoltage'
            : /W$/.test(unit ?? '')
              ? 'inputPower'
              : ''
        : timeBase !== null && timeBase.kind === 'column' && timeBase.column === index
          ? 'time'
          : /°C|^K$|^C$/.test(unit ?? '')
            ? /amb|room/i.test(name)
              ? 'ambient'
              : 'temperature'
            : '';
    if (role === '' || (role !== 'temperature' && taken.has(role))) return '';
    taken.add(role);
    return role;
  });
}

/** The exhibit that takes its rows from the file. */
export function toExhibit(use: FileUse, description: Description, file: string): Readonly<Record<string, Json>> {
  const columns = use.roles.flatMap((role, index) => {
    const column = description.columns[index];
    if (role === '' || column === undefined) return [];
    const from = column.name === '' || description.columns.filter(({ name }) => name === column.name).length > 1 ? index + 1 : column.name;
    return [{ id: `c${index + 1}`, ...(role === 'time' ? {} : { role }), from }];
  });
  return { table: { columns, file } as unknown as Json };
}

export function FileUseFields({ description, use, onUse }: { description: Description; use: FileUse; onUse: (use: FileUse) => void }) {
  return (
    <fieldset className="use">
      <legend>
        <b>It is taken as</b>
      </legend>
      {(['', 'sweep', 'soak'] as const).map((kind) => (
        <label key={kind}>
          <input
            type="radio"
            name={`use ${description.columns.map(({ name }) => name).join()}`}
            checked={use.kind === kind}
            onChange={() => onUse({ kind, roles: kind === '' ? use.roles.map(() => '') : guessRoles(kind, description) })}
          />
          {kind === '' ? 'a file only' : EXHIBIT_WORDS[kind]?.one}
        </label>
      ))}
      {use.kind !== '' && (
        <div className="fields">
          {description.columns.map((column, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: columns of a file are their positions
            <label key={index}>
              {column.name === '' ? `column ${index + 1}` : column.name}
              <select
                value={use.roles[index] ?? ''}
                disabled={!column.usable}
                onChange={(event) => onUse({ ...use, roles: use.roles.with(index, event.target.value) })}
              >
                <option value="">left alone</option>
                {ROLES[use.kind === 'soak' ? 'soak' : 'sweep'].map((role) => (
                  <option key={role} value={role}>
                    {choiceWords(role)}
                  </option>
                ))}
              </select>
            </label>
          ))}
        </div>
      )}
    </fieldset>
  );
}

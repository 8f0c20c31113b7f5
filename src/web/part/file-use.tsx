import type { Json } from '../../app/casebook/change.ts';
import type { Description } from '../../importer/describe.ts';
import { CASE_PAGE } from '../../present/words/case-page-words.ts';
import { choiceWords, EXHIBIT_WORDS } from '../../present/words/page-words.ts';
import { FIELD_WORDS } from '../../present/words/picture-words.ts';

/** What a table of numbers is taken for, and which of its columns plays which part. */
export interface FileUse {
  readonly kind: '' | 'sweep' | 'soak' | 'thermalPicture';
  /** By column number from 0: a role, or '' for a column that is left alone. */
  readonly roles: readonly string[];
  /** Of a field of numbers: what one of them is, × factor + offset, as typed. */
  readonly scale?: { readonly unit: string; readonly factor: string; readonly offset: string };
}

/** A scale that says nothing yet: the unit of the file where it states one, else to be chosen. */
function blankScale({ columns }: Description): NonNullable<FileUse['scale']> {
  const unit = columns[0]?.unit ?? '';
  return { unit: TEMPERATURES.includes(unit) ? unit : '', factor: '1', offset: '0' };
}

const TEMPERATURES: readonly string[] = ['°C', 'K', '°F'];

/** Whether enough is said to take it: a thermal picture needs its unit, and numbers for a scale. */
export function isSaid({ kind, scale }: FileUse): boolean {
  if (kind !== 'thermalPicture') return true;
  return (
    scale !== undefined &&
    scale.unit !== '' &&
    [scale.factor, scale.offset].every((text) => Number.isFinite(Number(text.replace(',', '.'))))
  );
}

const ROLES: Readonly<Record<'sweep' | 'soak', readonly string[]>> = {
  sweep: ['outputCurrent', 'outputVoltage', 'inputPower', 'mains'],
  soak: ['time', 'temperature', 'ambient'],
};

/** A first reading of what the columns are, by their units; the person sees it and can change it before anything is taken. */
export function guessUse(description: Description): FileUse {
  if (description.shape === 'matrix') return { kind: 'thermalPicture', roles: [], scale: blankScale(description) };
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
  if (use.kind === 'thermalPicture') return { file, scale: toScale(use.scale ?? blankScale(description)) };
  const columns = use.roles.flatMap((role, index) => {
    const column = description.columns[index];
    if (role === '' || column === undefined) return [];
    const from = column.name === '' || description.columns.filter(({ name }) => name === column.name).length > 1 ? index + 1 : column.name;
    return [{ id: `c${index + 1}`, ...(role === 'time' ? {} : { role }), from }];
  });
  return { table: { columns, file } as unknown as Json };
}

function toScale({ unit, factor, offset }: NonNullable<FileUse['scale']>): Json {
  const [times, plus] = [factor, offset].map((text) => Number(text.replace(',', '.')));
  return { unit, ...(times === 1 ? {} : { factor: times ?? 1 }), ...(plus === 0 ? {} : { offset: plus ?? 0 }) };
}

export function FileUseFields({ description, use, onUse }: { description: Description; use: FileUse; onUse: (use: FileUse) => void }) {
  return (
    <fieldset className="use">
      <legend>
        <b>{CASE_PAGE.itIsTakenAs}</b>
      </legend>
      {(description.shape === 'matrix' ? (['', 'thermalPicture'] as const) : (['', 'sweep', 'soak'] as const)).map((kind) => (
        <label key={kind}>
          <input
            type="radio"
            name={`use ${description.columns.map(({ name }) => name).join()}`}
            checked={use.kind === kind}
            onChange={() => onUse(takenAs(kind, use, description))}
          />
          {kind === '' ? CASE_PAGE.aFileOnly : EXHIBIT_WORDS[kind]?.one}
        </label>
      ))}
      {use.kind === 'thermalPicture' && (
        <ScaleFields scale={use.scale ?? blankScale(description)} onScale={(scale) => onUse({ ...use, scale })} />
      )}
      {(use.kind === 'sweep' || use.kind === 'soak') && (
        <div className="fields">
          {description.columns.map((column, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: columns of a file are their positions
            <label key={index}>
              {column.name === '' ? CASE_PAGE.columnNumber(index + 1) : column.name}
              <select
                value={use.roles[index] ?? ''}
                disabled={!column.usable}
                onChange={(event) => onUse({ ...use, roles: use.roles.with(index, event.target.value) })}
              >
                <option value="">{CASE_PAGE.leftAlone}</option>
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

function takenAs(kind: FileUse['kind'], use: FileUse, description: Description): FileUse {
  if (kind === 'thermalPicture') return { kind, roles: [], scale: blankScale(description) };
  return { kind, roles: kind === '' ? use.roles.map(() => '') : guessRoles(kind, description) };
}

/** What a number of the field is: raw counts of a camera become temperatures by a factor and an offset that the camera’s sheet gives. */
function ScaleFields({
  scale,
  onScale,
}: {
  scale: NonNullable<FileUse['scale']>;
  onScale: (scale: NonNullable<FileUse['scale']>) => void;
}) {
  return (
    <div className="fields">
      <label>
        {FIELD_WORDS.numbersAre}
        <select value={scale.unit} onChange={(event) => onScale({ ...scale, unit: event.target.value })}>
          <option value="">{FIELD_WORDS.notSaid}</option>
          {TEMPERATURES.map((unit) => (
            <option key={unit}>{unit}</option>
          ))}
        </select>
      </label>
      {(['factor', 'offset'] as const).map((key) => (
        <label key={key}>
          {key === 'factor' ? FIELD_WORDS.factor : FIELD_WORDS.offset}
          <input inputMode="decimal" value={scale[key]} onChange={(event) => onScale({ ...scale, [key]: event.target.value })} />
        </label>
      ))}
    </div>
  );
}

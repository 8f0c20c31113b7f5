import type { Role } from '../../evidence/instrument.ts';
import { ROLES } from '../../evidence/instrument.ts';
import { parseQuantity, type Quantity } from '../../quantity/parse-quantity.ts';
import { isRefusal } from '../../quantity/refusal.ts';
import { SI_UNIT } from '../../quantity/unit.ts';
import { methodDoubt } from '../../table/bench/2026/method-doubt.ts';
import { findCell } from '../../table/look-up.ts';
import { type Derived, doubtOf, given } from '../../trace/derived.ts';
import { type Form, uncertaintyOf } from '../../trace/leaf.ts';
import type { Note } from '../../trace/step.ts';
import { rectangular } from '../../uncertainty/half-width.ts';
import type { Bench } from './bench.ts';
import { doubtOfReading } from './doubt-of-reading.ts';

/** Which reading this is and how it was taken. */
export interface ReadingAt {
  /** Field of the case: "/exhibits/dist-1/value". */
  readonly field: string;
  readonly role: Role;
  readonly day: string | undefined;
  /** Named on the reading itself; else the day says which instrument plays the role. */
  readonly instrument?: string | undefined;
  /** caliper, photo ...: the default doubt of a distance that states none. */
  readonly method?: string | null;
  readonly symbol?: string;
  readonly show?: 'milliamperes' | 'millimetres';
}

/**
 * A reading with its doubt. A stated "± x" wins over the instrument, the instrument over the method; with none of them the uncertainty is
 * unknown, which is never zero. Below the span in which an instrument works the reading is one-sided.
 */
export function deriveReading(bench: Bench, quantity: Quantity, at: ReadingAt): Derived {
  const id = at.instrument ?? (at.day === undefined ? undefined : bench.days.get(at.day)?.uses[at.role]);
  const instrument = id === undefined ? undefined : bench.instruments.get(id);
  const notes: Note[] = [];
  let { value } = quantity;
  let side = quantity.side;
  let form: Form = new Map();
  const works = instrument?.works?.of === at.role ? instrument.works : undefined;
  const dark = works?.from === undefined ? null : parsed(works.from, at.role);
  if (dark !== null && side === undefined && value < dark) {
    notes.push({ key: 'meterDark', args: { instrument: instrument?.name ?? '', from: works?.from ?? '' } });
    value = dark;
    side = 'below';
  }
  if (side === undefined) {
    const byInstrument =
      instrument === undefined
        ? null
        : doubtOfReading({ instrument, role: at.role, day: at.day ?? 'no-day', field: at.field, value, lastDigit: quantity.lastDigit });
    if (quantity.u !== null) form = doubtOf({ id: `stated/${at.field}`, u: quantity.u, means: 'stated' });
    else if (byInstrument !== null) form = byInstrument;
    else {
      const method =
        at.method === undefined || at.method === null ? null : findCell(methodDoubt, at.method, 'halfWidth', `${at.field}/method`, 'a');
      form = doubtOf(
        method === null
          ? { id: `unknown/${at.field}`, u: null, means: 'notStated' }
          : { id: `method/${at.field}`, u: rectangular(method.value), means: 'method', args: { method: at.method ?? '' } },
      );
      if (method !== null) notes.push({ key: 'methodDefault', args: { method: at.method ?? '', halfWidthMm: method.value * 1000 } });
    }
  }
  if (side === undefined) form = withDeclaredCorrelations(bench, at.field, form);
  return given(
    'reading',
    value,
    SI_UNIT[ROLES[at.role]],
    {
      id: at.field,
      name: at.role,
      field: at.field,
      notes,
      ...(at.symbol === undefined ? {} : { symbol: at.symbol }),
      ...(at.show === undefined ? {} : { show: at.show }),
    },
    side === undefined ? { form } : { side },
  );
}

/** A reading whose correlation with another is declared moves as one leaf, and that leaf carries the coefficients. */
function withDeclaredCorrelations(bench: Bench, field: string, form: Form): Form {
  const declared = bench.correlations.get(field);
  if (declared === undefined) return form;
  const correlated = new Map([...declared].map(([other, r]) => [`reading/${other}`, r]));
  return doubtOf({ id: `reading/${field}`, u: uncertaintyOf(form), means: 'declaredTogether', correlated });
}

/** A value typed from a label or a listing: exact as printed. */
export function deriveTyped(text: string, kind: Parameters<typeof parseQuantity>[1], field: string, name: string, symbol: string): Derived {
  const quantity = parseQuantity(text, kind);
  if (isRefusal(quantity)) throw new Error(`${field}: ${text} was accepted as a quantity and is none`);
  return given('typed', quantity.value, quantity.unit, { id: field, name, field, symbol });
}

function parsed(text: string, role: Role): number | null {
  const read = parseQuantity(text, ROLES[role]);
  return isRefusal(read) ? null : read.value;
}

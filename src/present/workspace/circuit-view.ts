import type { JobKey } from '../../core/circuit/recognise/job.ts';
import type { Case } from '../../core/evidence/case.ts';
import type { Part } from '../../core/evidence/sample.ts';
import type { Value } from '../../core/evidence/value.ts';
import type { Assessment, CircuitResult } from '../../core/result/assessment.ts';
import { drawOutcomeMark } from '../figure/outcome-mark.ts';
import { partOfField } from '../schematic/part-of-field.ts';
import { JOB_WORDS, jobReason, NOT_FOLLOWED, NOT_RECOGNISED, topologyText } from '../words/circuit-words.ts';
import { sentenceFor } from '../words/fill-template.ts';
import { findingName } from '../words/finding-text.ts';
import { NOTES } from '../words/notes.ts';
import { OUTCOME_WORDS, outcomeText } from '../words/outcome-words.ts';
import { choiceWords, memberWords } from '../words/page-words.ts';

/** A traced part as the drawing tells about it when it is chosen. */
export interface CircuitPartView {
  readonly id: string;
  readonly ref: string;
  /** Value, marking, ratings, what was measured on it or beside it: label and text as typed. */
  readonly facts: readonly { readonly label: string; readonly text: string }[];
  readonly job: string;
  readonly reason: string;
  readonly pins: readonly { readonly pin: string; readonly net: string | null; readonly name: string }[];
  readonly findings: readonly { readonly id: string; readonly markSvg: string; readonly title: string; readonly word: string }[];
  /** Probable slips of its trace, as sentences. */
  readonly slips: readonly string[];
}

export interface CircuitNetView {
  readonly id: string;
  readonly name: string;
  readonly side: string;
  readonly ends: readonly { readonly part: string; readonly ref: string; readonly pin: string }[];
}

export interface CircuitView {
  /** What kind of supply it is, in one sentence; empty where nothing was traced. */
  readonly said: string;
  readonly parts: readonly CircuitPartView[];
  readonly nets: readonly CircuitNetView[];
}

const MARK = 11;
const TOLD: readonly Assessment['findings'][number]['outcome'][] = ['fail', 'inconclusive', 'pass'];
const FACTS = ['kind', 'value', 'measured', 'marking', 'package', 'safetyClass', 'identity'] as const;
/** Facts that are words from a list and no text of a person. */
const FROM_LIST: ReadonlySet<string> = new Set(['kind', 'identity']);

/** The traced parts and nets with everything that is known of them. */
export function toCircuitView(one: Case, assessment: Assessment): CircuitView {
  const names = new Map(one.conductors.map(({ id, name }) => [id, name]));
  const parts = one.parts.filter(({ pins }) => pins !== undefined && pins.length > 0);
  const netOf = (pin: NonNullable<Part['pins']>[number]): string | null => readText(pin.net);
  return {
    said: assessment.circuit === undefined ? '' : topologyText(assessment.circuit.topology),
    parts: parts.map((part) => ({
      id: part.id,
      ref: part.ref,
      facts: [...factsOf(part), ...temperaturesOf(one, part.id)],
      ...jobOf(assessment.circuit?.jobs.find((job) => job.part === part.id)),
      pins: (part.pins ?? []).map((pin) => {
        const net = netOf(pin);
        return { pin: pin.pin, net, name: net === null ? NOT_FOLLOWED : (names.get(net) ?? net) };
      }),
      findings: findingsOn(part.id, assessment),
      slips: assessment.warnings
        .filter(({ key, at }) => key.startsWith('slip-') && partOfField(at) === part.id)
        .map(({ key, args }) => sentenceFor(NOTES, key, args)),
    })),
    nets: one.conductors
      .map(({ id, name, side }) => ({
        id,
        name,
        side: sideWords(side),
        ends: parts.flatMap((part) =>
          (part.pins ?? []).filter((pin) => netOf(pin) === id).map(({ pin }) => ({ part: part.id, ref: part.ref, pin })),
        ),
      }))
      .filter(({ ends }) => ends.length > 0),
  };
}

function jobOf(job: CircuitResult['jobs'][number] | undefined): { job: string; reason: string } {
  const known = job !== undefined && job.job !== null && Object.hasOwn(JOB_WORDS, job.job);
  return known ? { job: JOB_WORDS[job.job as JobKey], reason: jobReason(job) } : { job: NOT_RECOGNISED, reason: '' };
}

function findingsOn(part: string, { findings }: Assessment): CircuitPartView['findings'] {
  return findings
    .filter(({ outcome, fields }) => TOLD.includes(outcome) && fields.some((field) => partOfField(field) === part))
    .toSorted((a, b) => TOLD.indexOf(a.outcome) - TOLD.indexOf(b.outcome))
    .map((finding) => ({
      id: finding.id,
      markSvg: drawOutcomeMark(finding.outcome, MARK).markup,
      title: findingName(finding),
      word: outcomeText(finding) || OUTCOME_WORDS[finding.outcome],
    }));
}

function factsOf(part: Part): CircuitPartView['facts'] {
  const own = FACTS.map((key) => ({ label: memberWords(key), text: valueText(part[key] as Value | undefined, FROM_LIST.has(key)) }));
  const ratings = Object.entries(part.rating ?? {}).map(([key, value]) => ({
    label: memberWords(key),
    text: valueText(value as Value | undefined),
  }));
  return [...own, ...ratings].filter(({ text }) => text !== '');
}

/** Temperatures read at places that belong to the part. */
function temperaturesOf(one: Case, part: string): CircuitPartView['facts'] {
  const places = new Map(one.places.filter((place) => place.part === part).map(({ id, name }) => [id, name]));
  return one.exhibits.flatMap((exhibit) =>
    exhibit.kind !== 'spots' || exhibit.struck !== undefined
      ? []
      : exhibit.rows.flatMap((row) => {
          const text = valueText(row.value);
          return places.has(row.place) && text !== '' ? [{ label: places.get(row.place) ?? '', text }] : [];
        }),
  );
}

function readText(value: Value): string | null {
  return typeof value === 'string' ? value : 'v' in value && value.struck === undefined ? value.v : null;
}

/** A reading as typed, a word from a list in its words, a state with its reason; empty where nobody looked. */
function valueText(value: Value | undefined, fromList = false): string {
  if (value === undefined) return '';
  const read = readText(value);
  if (read !== null) return fromList ? choiceWords(read) : read;
  if (typeof value === 'string' || 'v' in value) return '';
  return 'because' in value ? `${choiceWords(value.state)}: ${value.because}` : value.state === 'notLooked' ? '' : choiceWords(value.state);
}

function sideWords(side: Value): string {
  const read = readText(side);
  return read === null ? '' : choiceWords(read);
}

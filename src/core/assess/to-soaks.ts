import { recall } from '../recall/recall.ts';
import type { Finding, SoakCurve } from '../result/assessment.ts';
import { uncertainty } from '../trace/derived.ts';
import type { StepNode } from '../trace/step.ts';
import type { Facts } from '../working/facts.ts';
import type { HeadingReading } from '../working/heat/heading-facts.ts';
import { heightOf, mustEndNow, reachedAt, soakStop } from '../working/heat/soak-stop.ts';
import { inFrameOfReading } from '../working/heat/spot-facts.ts';

const BAND = 2; // half of a 95 % interval in standard uncertainties
const AHEAD = 0.35; // of the log's length that a curve is drawn on beyond it
const DRAWN = 60;
const SCALED = 'scaledToHighestAmbient';

/** Every logged place whose curve was kept, ready to be drawn, with where to stop; and the steps that it names. */
export function toSoaks(facts: Facts, findings: readonly Finding[]): { soaks: SoakCurve[]; roots: StepNode[] } {
  const told = facts.headings.map((heading) => recall(toSoak, facts, heading, ...findings.filter((one) => isHeldAgainst(heading, one))));
  return { soaks: told.map(({ soak }) => soak), roots: told.flatMap(({ roots }) => roots) };
}

function isHeldAgainst({ field }: HeadingReading, { fields, limit, outcome }: Finding): boolean {
  return outcome !== 'notAssessed' && fields.includes(field) && limit?.at?.unit === 'K';
}

function toSoak(facts: Facts, heading: HeadingReading, ...own: readonly Finding[]): { soak: SoakCurve; roots: StepNode[] } {
  const end = heading.reading?.temperature ?? null;
  const stop = soakStop(facts.bench, heading);
  return {
    soak: toCurve(facts, own, heading, stop),
    roots: [...(end === null ? [] : [end.step]), ...(stop === null ? [] : [stop.step])],
  };
}

function toCurve(facts: Facts, own: readonly Finding[], heading: HeadingReading, stop: ReturnType<typeof soakStop>): SoakCurve {
  const { exhibit, place, channel, state, ambient, reading } = heading;
  const { fit } = channel;
  const end = reading?.temperature ?? null;
  const u = end === null ? null : uncertainty(end);
  const until = fit === undefined ? 0 : fit.toS + AHEAD * (fit.toS - fit.fromS);
  return {
    exhibit: exhibit.id,
    column: channel.column,
    place: place.id,
    name: place.name,
    outside: place.outside === true,
    state,
    ambient: ambient?.value ?? null,
    outcome: channel.outcome,
    refusal: channel.refusal ?? null,
    changes: channel.changes,
    endNow: mustEndNow(channel),
    lastSlope: channel.lastSlope,
    points: channel.points,
    curve:
      fit === undefined
        ? []
        : Array.from({ length: DRAWN + 1 }, (_, k): [number, number] => {
            const t = fit.fromS + ((until - fit.fromS) * k) / DRAWN;
            return [t, heightOf(fit, t)];
          }),
    fit:
      fit === undefined || end === null
        ? null
        : {
            end: end.value,
            U: u === null ? null : BAND * u,
            step: end.step.id,
            shape: fit.shape,
            fromS: fit.fromS,
            toS: fit.toS,
            timeConstantS: fit.outputs.find(({ name }) => name === 'timeConstant')!.value,
            fitWithin: fit.endWithin,
            withinK: fit.withinK,
            stillNeededS: fit.stillNeededS,
          },
    limits: own.map((finding) => {
      const at = finding.limit!.at!.value;
      const scaled = finding.notes.some(({ key }) => key === SCALED) && ambient !== null;
      const highest = facts.setting.highestAmbient.value;
      return { finding: finding.id, at: scaled ? inFrameOfReading(at, ambient.value, highest) : at };
    }),
    stop: stop === null ? null : { at: stop.value, step: stop.step.id, reachedAtS: reachedAt(channel, stop.value) },
  };
}

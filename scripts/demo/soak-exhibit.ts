import { fitLog } from '../../src/app/soak/fit-soak.ts';
import { toSoakLog } from '../../src/app/soak/read-soak-log.ts';
import type { Attachment, CaseInput, ExhibitOf } from '../../src/core/evidence/case.ts';
import { isRefusal, sentence } from '../../src/core/quantity/refusal.ts';
import { attach, ROOM_C, text } from './demo-unit.ts';
import { elapsedLogger } from './file-layouts.ts';
import type { ExhibitInput } from './full-day.ts';
import { noiseFor } from './noise.ts';
import { type Operating, temperaturesAt, type UnitModel } from './unit-model.ts';

type Soak = Extract<ExhibitInput, { kind: 'soak' }>;

const LENGTH_S = 7200;
const EACH_S = 30;
const WINDING_S = 260; // the winding follows its own loss faster than the case follows the whole
const SCATTER_K = 0.08;
const WITHIN_K = 0.5;

export interface DemoSoak {
  readonly id: string;
  readonly at: string;
  readonly under: Soak['under'];
  readonly point: Operating;
  readonly outside: string;
  readonly winding: string;
}

export interface KeptSoak {
  readonly exhibit: Soak;
  readonly computed: NonNullable<CaseInput['computed']>[number];
  readonly files: readonly { readonly attachment: Attachment; readonly bytes: Uint8Array }[];
}

/** Two hours of case, winding and room, logged from cold, and the fit that was kept of it. */
export function soakOf(model: UnitModel, { id, at, under, point, outside, winding }: DemoSoak): KeptSoak {
  const { caseC, windingC } = temperaturesAt(model, point, ROOM_C);
  const noise = noiseFor(model.seed, 'soak');
  const rows = Array.from({ length: LENGTH_S / EACH_S + 1 }, (_, row) => {
    const seconds = row * EACH_S;
    const left = Math.exp(-seconds / model.thermal.timeConstantS);
    const own = Math.exp(-seconds / WINDING_S);
    const outsideC = caseC - (caseC - ROOM_C) * left;
    const values = [ROOM_C, outsideC, outsideC + (windingC - caseC) * (1 - own)];
    return { seconds, values: values.map((value) => value + SCATTER_K * noise.normal()) };
  });
  const bytes = text(elapsedLogger(['room', 'case', 'winding'], rows, 'two hours of Fell 12'));
  const exhibit: Soak = {
    id,
    kind: 'soak',
    day: 'day-1',
    at,
    under: { ...under, start: 'cold' },
    table: {
      file: `${id}-file`,
      columns: [
        { id: 'room', role: 'ambient', from: 'room' },
        { id: 'case', role: 'temperature', of: outside, from: 'case' },
        { id: 'winding', role: 'temperature', of: winding, from: 'winding' },
      ],
    },
  };
  const attachment = attach(`${id}-file`, `${id}.csv`, bytes) as Attachment;
  const soak = exhibit as ExhibitOf<'soak'>;
  const log = toSoakLog(soak, bytes, {});
  if (isRefusal(log)) throw new Error(sentence(log));
  const fit = fitLog({ files: [attachment] }, soak, log, WITHIN_K);
  if (isRefusal(fit)) throw new Error(sentence(fit));
  return {
    exhibit,
    computed: fit.computed,
    files: [
      { attachment, bytes },
      { attachment: fit.attachment, bytes: fit.bytes },
    ],
  };
}

import type { Assessment } from '../result/assessment.ts';
import { exhibitsOf, nameOf } from '../working/bench/bench.ts';
import { coldIsRead } from '../working/cold/cold-facts.ts';
import type { Facts } from '../working/facts.ts';
import { UNIT_ASKED } from '../working/heat/picture-scale.ts';
import { refusedWorkingVoltages } from '../working/insulation/working-voltage-of.ts';
import { isEventRead } from '../working/load/event-facts.ts';
import { levelOfSweep } from '../working/load/read-sweep.ts';
import { stackWarnings } from './stack-warnings.ts';

/** Kinds of exhibit that a check of this version reads; the others are kept and shown as kept. */
const JUDGED = new Set([
  'label',
  'body',
  'distance',
  'workingVoltage',
  'touch',
  'cold',
  'board',
  'sweep',
  'spots',
  'soak',
  'thermalPicture',
  'photo',
  'advertised',
  'ripple',
  'earthSwing',
  'event',
  'residual',
  'stack',
]);

export function findUnjudged(facts: Facts): Assessment['unjudged'] {
  return facts.bench.one.exhibits
    .filter(
      (exhibit) =>
        !JUDGED.has(exhibit.kind) ||
        (exhibit.kind === 'cold' && !coldIsRead(facts.bench, exhibit)) ||
        (exhibit.kind === 'event' && !isEventRead(facts.bench, exhibit)) ||
        (exhibit.kind === 'thermalPicture' && !facts.spots.some(({ field }) => field.startsWith(`/exhibits/${exhibit.id}/regions/`))) ||
        (exhibit.kind === 'soak' && !facts.headings.some((heading) => heading.exhibit.id === exhibit.id)) ||
        (exhibit.kind === 'sweep' && levelOfSweep(facts.bench, exhibit) === null),
    )
    .map(({ id, kind }) => ({ exhibit: id, kind }));
}

/** What a person should know beside the findings: readings refused, cells not read, settings changed. */
export function findWarnings(facts: Facts): Assessment['warnings'] {
  const found: Assessment['warnings'] = [];
  for (const reading of facts.touch)
    if (reading.refused !== null) found.push({ key: reading.refused, at: reading.field, args: { supply: reading.supply ?? '' } });
  for (const { exhibit, supply } of refusedWorkingVoltages(facts.bench))
    found.push({ key: 'workingVoltageRefused', at: `/exhibits/${exhibit}`, args: { supply } });
  for (const { sweeps } of facts.levels)
    for (const sweep of sweeps) for (const { field, because } of sweep.leftOut) found.push({ key: because, at: field, args: {} });
  const pictures = new Set(exhibitsOf(facts.bench, 'thermalPicture').map(({ file }) => file)); // their scale says the unit
  for (const file of facts.bench.one.files) {
    const open = new Set((facts.bench.tables.get(file.sha256)?.columns ?? []).flatMap(({ doubts }) => doubts));
    if (pictures.has(file.id)) open.delete(UNIT_ASKED);
    if (open.size > 0) found.push({ key: 'fileInDoubt', at: `/files/${file.id}`, args: { path: file.path, codes: [...open].join(', ') } });
  }
  found.push(...facts.pictures.troubles.map(({ key, at, args }) => ({ key, at, args: { ...args } })));
  for (const { code, part, nets, args } of facts.circuit?.slips ?? [])
    found.push({
      key: `slip-${code}`,
      at: part === null ? '/conductors' : `/parts/${part}`,
      args: {
        part: part === null ? '' : nameOf(facts.bench, part),
        nets: nets.map((net) => nameOf(facts.bench, net)).join(', '),
        ...args,
      },
    });
  found.push(...stackWarnings(facts));
  if (facts.setting.decision.changed)
    found.push({ key: 'decisionChanged', at: '/setting/decision', args: { ...pick(facts.setting.decision) } });
  return found.sort((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : 0));
}

function pick({ passAt, failAt }: { passAt: number; failAt: number }): Record<string, number> {
  return { passAt, failAt };
}

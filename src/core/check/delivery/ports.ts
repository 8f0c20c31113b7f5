import type { Note } from '../../trace/step.ts';
import type { Facts } from '../../working/facts.ts';
import { type CompanyRun, companyRuns, printedTotal } from '../../working/load/company-facts.ts';
import { atLeast, limitLine, undecided, within } from '../decide.ts';
import { type Answer, defineCheck, type Subject } from '../define-check.ts';
import { heldLine } from '../held-line.ts';
import { judgeDropout } from '../judge-dropout.ts';
import { judgeState } from '../judge-state.ts';
import { worstAnswer } from '../worst-answer.ts';

interface InCompany extends Subject {
  readonly port: string;
  readonly of: 'sum' | 'dropout';
}

/** Do several outputs used together give what is printed for them, and does one keep going when a device is put on another? */
export const ports = defineCheck<InCompany>({
  id: 'delivery/ports',
  consequence: 'disappointing',
  needs: ['portsTogether'],
  subjects: ({ bench }) => {
    const all = bench.one.ports;
    if (all.length < 2) return all.length === 0 ? 'notLooked' : 'doesNotApply';
    return all.flatMap(({ id, name }): InCompany[] => [
      { id, about: `${name ?? id}, others loaded`, port: id, of: 'sum' },
      { id: `${id}~dropout`, about: `${name ?? id}, when a device is put on another`, port: id, of: 'dropout' },
    ]);
  },
  judge: (facts, { port, of }) => (of === 'sum' ? judgeSum(facts, port) : judgeDropout(facts, port)),
});

function judgeSum(facts: Facts, port: string): Answer {
  const { bench, levels } = facts;
  const total = printedTotal(bench, levels);
  if (total === null || total.value <= 0)
    return { judgement: undecided('notAssessed', 'limitUnknown', { notes: [{ key: 'noTotal', args: {} }] }) };
  const runs = companyRuns(bench, levels, port, total);
  const untried = untriedNote(
    bench.one.ports.map(({ id }) => id),
    port,
    runs,
  );
  if (runs.length === 0) return { judgement: undecided('notAssessed', 'notLooked'), notes: untried };
  const worst = worstAnswer(runs.flatMap((run) => judgeRun(run, facts)));
  const notes = [...(worst.notes ?? []), ...untried];
  if (worst.judgement.outcome !== 'pass') return { ...worst, notes };
  // a pass needs the whole sum asked for, and eyes on the neighbours while it was
  const proof = runs.find(({ whole, watched }) => whole && watched.every(({ voltage }) => voltage !== null));
  const lacks = runs.some(({ whole }) => whole) ? 'neighboursNotWatched' : 'sumNotAsked';
  return proof === undefined
    ? { judgement: undecided('notAssessed', 'notLooked', { notes: [{ key: lacks, args: {} }] }), notes: untried }
    : { ...worst, notes };
}

function judgeRun({ sweep, measured, wanted, overdrawn, watched, company }: CompanyRun, { setting, levels }: Facts): Answer[] {
  const window = levels.find((level) => level.port.id === sweep.port && level.level.id === sweep.level)?.window;
  const notes = [{ key: 'together', args: { exhibit: sweep.exhibit.id, company: company.join(', ') } }];
  const sum: Answer =
    window == null
      ? { judgement: undecided('notAssessed', 'limitUnknown') }
      : { judgement: atLeast(measured, heldLine('printedTogether', wanted, window), setting.decision), notes };
  if (overdrawn && sum.judgement.outcome !== 'pass')
    return [{ judgement: undecided('notAssessed', 'notComparable'), notes: [...notes, { key: 'neighbourOverdrawn', args: {} }] }];
  const others = watched.flatMap(({ level, field, opened, voltage }): Answer[] => {
    if (opened.state === 'notLooked' || level.window === null) return [];
    if (opened.state !== 'read' || voltage === null) return [{ judgement: judgeState(opened, field), notes }];
    return overdrawn
      ? []
      : [{ judgement: within(voltage, limitLine('window', 'within', level.window.least, level.window.most), setting.decision), notes }];
  });
  return [sum, ...others];
}

/** Sets of neighbours that were never loaded while this port was swept. */
function untriedNote(all: readonly string[], port: string, runs: readonly CompanyRun[]): Note[] {
  const tried = new Set(runs.map(({ company }) => company.join('+')));
  const others = all
    .filter((id) => id !== port)
    .sort()
    .slice(0, MOST_PORTS);
  const sets = others.reduce<string[][]>((sum, id) => sum.concat(sum.map((set) => set.concat(id))), [[]]).filter((set) => set.length > 0);
  const missing = sets.map((set) => set.join('+')).filter((set) => !tried.has(set));
  return missing.length === 0
    ? []
    : [{ key: 'companyNotTried', args: { count: missing.length, sets: missing.slice(0, MOST_NAMED).join(', ') } }];
}
const MOST_NAMED = 8;
const MOST_PORTS = 6; // sets double with every port

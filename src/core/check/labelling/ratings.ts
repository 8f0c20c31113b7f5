import { cite } from '../../source/source.ts';
import { exhibitsOf } from '../../working/bench/bench.ts';
import { type Opened, openValue } from '../../working/bench/open-value.ts';
import type { Facts } from '../../working/facts.ts';
import { type Balance, balanceOf } from '../../working/label/balance-facts.ts';
import { atMost, type LimitLine, limitLine, oneOf, undecided } from '../decide.ts';
import { defineCheck, type Subject } from '../define-check.ts';
import { judgeState } from '../judge-state.ts';

interface Rating extends Subject {
  readonly field: string;
  readonly opened: Opened<unknown>;
  /** What comes out against what can go in, where both are printed; null on every other line. */
  readonly balance?: Balance;
}

const limit: LimitLine = {
  name: 'onTheLabel',
  kind: 'oneOf',
  at: null,
  words: ['present'],
  source: cite('iec-62368-1', 'annex F.3, markings: ratings, class and who is responsible', 'memory'),
  grade: 'memory',
};

/** Does the label say what it must: input voltage, frequency and current, every output, the class, who made it; and can it be true? */
export const ratings = defineCheck<Rating>({
  id: 'labelling/ratings',
  consequence: 'informative',
  needs: ['label'],
  subjects: ratingsOf,
  judge: ({ setting }, { field, opened, balance }) => {
    if (balance !== undefined)
      return { judgement: atMost(balance.output, limitLine('apparentInput', 'atMost', balance.input), setting.decision) };
    if (opened.state === 'read') return { judgement: oneOf('present', limit, true, [field]) };
    if (opened.state === 'absent') return { judgement: { ...oneOf('absent', limit, false, [field]), headline: false } };
    return {
      judgement: opened.state === 'notLooked' ? undecided('notAssessed', 'notLooked', { fields: [field] }) : judgeState(opened, field),
    };
  },
});

function ratingsOf({ bench }: Facts): readonly Rating[] | 'notLooked' {
  const [label] = exhibitsOf(bench, 'label').filter(({ struck }) => struck === undefined);
  if (label === undefined) return 'notLooked';
  const at = `/exhibits/${label.id}`;
  const { input } = label;
  const balance = balanceOf(bench);
  return [
    ...(balance === null
      ? []
      : [
          {
            id: 'balance',
            about: 'output power and input',
            field: `${at}/input/current`,
            opened: openValue<unknown>(input?.current),
            balance,
          },
        ]),
    { id: 'input-voltage', about: 'input voltage', field: `${at}/input/voltage`, opened: openValue<unknown>(input?.voltage) },
    { id: 'input-frequency', about: 'input frequency', field: `${at}/input/frequency`, opened: openValue<unknown>(input?.frequency) },
    { id: 'input-current', about: 'input current', field: `${at}/input/current`, opened: openValue<unknown>(input?.current) },
    { id: 'class', about: 'class of protection', field: `${at}/class`, opened: openValue<unknown>(label.class) },
    { id: 'maker', about: 'who is responsible', field: `${at}/maker`, opened: openValue<unknown>(label.maker) },
    ...bench.one.ports.flatMap((port) =>
      port.levels.map((level) => ({
        id: `output-${port.id}-${level.id}`,
        about: `output ${port.name ?? port.id}, ${level.voltage}`,
        field: `/ports/${port.id}/levels/${level.id}/printed`,
        opened: openValue<unknown>(level.printed),
      })),
    ),
  ];
}

import { BENCH_PAGE } from '../../present/words/bench-page-words.ts';
import { useOpenPage } from '../state/use-case.ts';
import { clockText } from './local-time.ts';
import { fillMark, type Mark } from './marks.ts';
import { NumberView } from './number-view.tsx';
import { useHands } from './use-hands.ts';

/** The value that belongs to a mark, read off a log or a picture later. */
export function FillView({ mark }: { mark: Mark }) {
  const { store } = useOpenPage();
  const { fill } = useHands();
  const gone = (store.valueAt(mark.place) as { readonly state?: string } | undefined)?.state !== 'marked';
  return (
    <NumberView
      key={mark.place}
      what={BENCH_PAGE.valueAt(clockText(mark.at))}
      number={{ key: `fill-${mark.kind}`, kind: mark.kind, units: [mark.unit] }}
      asks={[]}
      was={
        <button type="button" className="plain" onClick={() => fill(null)}>
          {gone ? BENCH_PAGE.filledInBackToStep : BENCH_PAGE.laterBackToTheStep}
        </button>
      }
      level={null}
      watches={null}
      canMark={false}
      takesStates={false}
      target={null}
      changesFor={({ text, value }) => (gone ? [] : fillMark(mark, mark.cell ? text : String(value)))}
    />
  );
}

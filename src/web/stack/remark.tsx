import { remarksOn } from '../state/remarks-on.ts';
import { useSnapshot } from '../state/use-case.ts';

/** What cannot be right at a place, in one sentence; the rest is judged without it. */
export function Remark({ place }: { place: string }) {
  const { view } = useSnapshot();
  const said = remarksOn(place, view.warnings);
  return said === '' ? null : (
    <p className="trouble remark" role="status">
      {said}
    </p>
  );
}

import { CASE_PAGE } from '../../present/words/case-page-words.ts';
import { memberWords } from '../../present/words/page-words.ts';
import type { FormNode } from '../../present/workspace/form.ts';
import { Field } from '../field/field.tsx';
import { SheetView } from '../part/sheet.tsx';
import { useOpenPage, useSnapshot } from '../state/use-case.ts';
import { SHEETS } from './chapter-sheets.ts';

const NOTHING_LIT = (): ReadonlySet<string> => new Set();

/** What was bought, when it was examined, with what, and what the judgement assumes. */
export function SamplePage() {
  const { form } = useOpenPage();
  useSnapshot();
  if (form.case.is !== 'object') return null;
  const { members } = form.case;
  const member = (key: string): FormNode => members.find((one) => one.key === key)?.node ?? { is: 'text' };
  const setting = member('setting');
  return (
    <article className="chapter" aria-labelledby="chapter-title">
      <header>
        <h2 id="chapter-title">{CASE_PAGE.sampleAndBench}</h2>
        <span className="small">{CASE_PAGE.whatWasBoughtWhenIt}</span>
      </header>
      <div className="fields">
        <Field node={{ is: 'text' }} place="/case/product/name" label={CASE_PAGE.product} required />
        <Field node={member('sample')} place="/case/sample" label={CASE_PAGE.sample} required />
        <Field node={member('examinedBy')} place="/case/examinedBy" label={CASE_PAGE.examinedBy} />
      </div>
      {SHEETS.sample.map((sheet) => (
        <SheetView key={JSON.stringify(sheet)} sheet={sheet} lit={NOTHING_LIT} />
      ))}
      <section aria-label={CASE_PAGE.setting}>
        <h3>{CASE_PAGE.setting}</h3>
        <p className="small">{CASE_PAGE.whatIsLeftEmptyHas}</p>
        <div className="fields">
          {setting.is === 'object' &&
            setting.members.map(({ key, node, required }) => (
              <Field key={key} node={node} place={`/case/setting/${key}`} label={memberWords(key)} required={required} />
            ))}
        </div>
      </section>
    </article>
  );
}

import { isRefusal } from '../../core/quantity/refusal.ts';
import { explainCheck, explainStep } from '../../present/text/explain.ts';
import { judgeCase } from '../judge-case.ts';
import { print, Refused, wantsColour } from '../output.ts';

/** Prints where a number comes from, down to the readings: a step by its path, or a check or finding by its id. */
export async function explain(path: string, what: string, options: { casebook?: string }): Promise<void> {
  const assessment = await judgeCase(path, options);
  const isCheck = assessment.findings.some(({ id, check }) => id === what || check === what);
  const text = isCheck
    ? explainCheck(assessment, what, { colour: wantsColour() })
    : explainStep(assessment, what, { colour: wantsColour() });
  if (isRefusal(text)) throw new Refused([text]);
  print(text);
}

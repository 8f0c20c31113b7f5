import { readFile } from 'node:fs/promises';
import { readTrace } from '../../app/read-trace.ts';
import { refuse } from '../../core/quantity/refusal.ts';
import { traceText } from '../../present/text/trace-text.ts';
import { print, Refused } from '../output.ts';

/** Reads circuit lines and says what they make; lines that cannot be read end as refusals after the rest was printed. */
export async function trace(path: string, options: { json?: boolean }): Promise<void> {
  const text = await readFile(path, 'utf8').catch((error: { code?: string }) => {
    throw new Refused([refuse('cannot-read', path, `a text file of circuit lines (${error.code ?? 'unknown'})`)]);
  });
  const { evidence, recognised, slips, refusals } = readTrace(text);
  print(options.json === true ? JSON.stringify(evidence, null, 2) : traceText(recognised, slips));
  if (refusals.length > 0) throw new Refused(refusals);
}

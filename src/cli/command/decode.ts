import { decodeMarking } from '../../core/marking/decode-marking.ts';
import { type Decoded, PARTS, type Part } from '../../core/marking/reading.ts';
import { isRefusal, type Refusal, refuse } from '../../core/quantity/refusal.ts';
import { decodeText } from '../decode-text.ts';
import { print, Refused } from '../output.ts';

/** Says what markings on parts can mean, one block a code. Codes that are not understood end as refusals after the others were printed. */
export async function decode(codes: string[], options: { json?: boolean; as?: string }): Promise<void> {
  const part = parsePart(options.as);
  if (isRefusal(part)) throw new Refused([part]);
  const results = codes.map((code) => decodeMarking(code, part));
  const decoded = results.filter((result): result is Decoded => !isRefusal(result));
  if (options.json === true)
    print(
      JSON.stringify(
        decoded.map(({ text, readings, settledBy }) => ({ code: text, readings, settledBy })),
        null,
        2,
      ),
    );
  else if (decoded.length > 0) print(decoded.map(decodeText).join('\n'));
  const refused = results.filter(isRefusal);
  if (refused.length > 0) throw new Refused(refused);
}

function parsePart(text: string | undefined): Part | undefined | Refusal {
  if (text === undefined) return undefined;
  const part = PARTS.find((one) => one === text.toLowerCase());
  return part ?? refuse('unknown-part', text, `one of ${PARTS.join(', ')}`, { place: '--as' });
}

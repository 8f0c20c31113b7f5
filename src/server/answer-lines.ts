import { ReadableStream } from 'node:stream/web';
import { setImmediate as breathe } from 'node:timers/promises';
import { isRefusal, type Refusal } from '../core/quantity/refusal.ts';
import { problemOf } from './problem.ts';

/** Told how far a piece of work is; answers whether anybody still waits for it. */
type Watch = (done: number, of: number) => Promise<boolean>;

/**
 * The answer to work that takes a while, line by line: {"done", "of"} on the way, then {"answer"} or {"problem"}. Whoever goes away stops it, and
 * between two pieces the server hears everybody else.
 */
export function answerLines(work: (watch: Watch) => Promise<object | Refusal>): Response {
  let waiting = true;
  const body = new ReadableStream<Uint8Array>({
    async start(stream) {
      const say = (line: object): void => {
        if (waiting) stream.enqueue(new TextEncoder().encode(`${JSON.stringify(line)}\n`));
      };
      const answer = await work(async (done, of) => {
        say({ done, of });
        await breathe();
        return waiting;
      }).catch((error: unknown) => error);
      if (answer instanceof Error) {
        if (waiting) stream.error(answer);
        return;
      }
      say(isRefusal(answer) ? { problem: problemOf(answer) } : { answer });
      if (waiting) stream.close();
    },
    cancel() {
      waiting = false;
    },
  });
  return new Response(body as never, { headers: { 'content-type': 'application/jsonl' } });
}

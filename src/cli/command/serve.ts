import { setFlagsFromString } from 'node:v8';
import { renderUnicodeCompact } from 'uqr';
import { isRefusal, refuse } from '../../core/quantity/refusal.ts';
import { startDrawingPool } from '../../drawing-pool/start-drawing-pool.ts';
import { LOOPBACK, runServer, USUAL_PORT } from '../../server/run-server.ts';
import { openCasebook } from '../../store/sqlite/open-casebook.ts';
import { print, Refused } from '../output.ts';
import { PAGES } from '../places.ts';

const HIGHEST_PORT = 65_535;
/** What is remembered of an open case has grown old when it goes: V8 looks at twice of what is in use, and not at four times. */
const COLLECT_EARLY = '--heap-growing-percent=100';

/** Opens a casebook, made where there is none, and serves its workspace until it is told to stop. */
export async function serve(options: { casebook: string; port?: string; host?: string }): Promise<void> {
  const port = Number(options.port ?? USUAL_PORT);
  if (!Number.isInteger(port) || port < 0 || port > HIGHEST_PORT)
    throw new Refused([refuse('wrong-port', options.port ?? '', `a port from 1 to ${HIGHEST_PORT}, or 0 for any`, { place: '--port' })]);
  setFlagsFromString(COLLECT_EARLY);
  const host = options.host ?? LOOPBACK;
  const store = await openCasebook(options.casebook, { access: 'write', make: true });
  if (isRefusal(store)) throw new Refused([store]);
  const drawings = startDrawingPool();
  const running = await runServer({ store, pages: PAGES, port, host, draw: drawings.draw });
  if (isRefusal(running)) {
    await Promise.all([store.close(), drawings.close()]);
    throw new Refused([running]);
  }
  for (const link of running.links) print(`workspace at ${link}`);
  const [first] = running.links;
  if (host !== LOOPBACK && first !== undefined) {
    print('Whoever has this link can read and change the casebook. On a phone in the same network, point the camera at:');
    print(renderUnicodeCompact(first));
  }
  print('Ctrl C stops it; everything entered is on the disk.');
  await untilStopped();
  await running.stop();
  await drawings.close();
}

function untilStopped(): Promise<void> {
  return new Promise((resolve) => {
    process.once('SIGINT', () => resolve());
    process.once('SIGTERM', () => resolve());
  });
}

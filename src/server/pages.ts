import { randomBytes } from 'node:crypto';
import { readFile, stat } from 'node:fs/promises';
import { extname, join, normalize, sep } from 'node:path';
import type { Context } from 'hono';
import { pagePolicy, SCRIPT_POLICY } from './policy.ts';
import { answerProblem, toProblem } from './problem.ts';

const MEDIA: Readonly<Record<string, string>> = {
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.woff2': 'font/woff2',
  '.txt': 'text/plain; charset=utf-8',
};
const NONCE_BYTES = 16;
const FOREVER = 'public, max-age=31536000, immutable'; // names of built files hold their hash

/** The built workspace: its files by name, and its one page for every other address. */
export function servePages(folder: string): (context: Context) => Promise<Response> {
  return async (context) => {
    const path = pathOf(context.req.path);
    if (path === null) return answerProblem(toProblem(400, 'no-such-page', 'The address cannot be read.'));
    if (path.startsWith('/assets/')) return serveFile(folder, path);
    return servePage(folder);
  };
}

/** Null for an address with a broken escape, or one that names a byte no file name has. */
function pathOf(written: string): string | null {
  try {
    const path = normalize(decodeURIComponent(written));
    return path.includes('\0') ? null : path;
  } catch {
    return null;
  }
}

async function serveFile(folder: string, path: string): Promise<Response> {
  const file = join(folder, path);
  const media = MEDIA[extname(file)];
  const found = file.startsWith(folder + sep) && media !== undefined ? await stat(file).catch(() => null) : null;
  if (found?.isFile() !== true || media === undefined) return answerProblem(toProblem(404, 'no-such-page', `There is no page at ${path}.`));
  // a worker keeps the policy that its file came with: an inert one would not let it start
  const policy = media.startsWith('text/javascript') ? { 'content-security-policy': SCRIPT_POLICY } : {};
  return new Response(await readFile(file), { headers: { 'content-type': media, 'cache-control': FOREVER, ...policy } });
}

async function servePage(folder: string): Promise<Response> {
  const built = await readFile(join(folder, 'index.html'), 'utf8').catch(() => null);
  if (built === null)
    return answerProblem(toProblem(500, 'not-built', 'The workspace is not built; run "npm run build" and start the server again.'));
  const nonce = randomBytes(NONCE_BYTES).toString('base64url');
  const page = built.replace(/<(script|link)\b/g, `<$1 nonce="${nonce}"`);
  return new Response(page, {
    headers: { 'content-type': 'text/html; charset=utf-8', 'content-security-policy': pagePolicy(nonce), 'cache-control': 'no-store' },
  });
}

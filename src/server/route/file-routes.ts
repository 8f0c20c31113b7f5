import { ReadableStream as NodeStream } from 'node:stream/web';
import type { OpenAPIHono } from '@hono/zod-openapi';
import { z } from '@hono/zod-openapi';
import { MOST_FILE_BYTES } from '../../app/case-source.ts';
import type { FileStore } from '../../app/casebook/casebook-store.ts';
import { noSuchCase } from '../../app/casebook/no-such-case.ts';
import { readWhole } from '../../app/casebook/read-whole.ts';
import { isRefusal, type Refusal, refuse, sentence } from '../../core/quantity/refusal.ts';
import { describe } from '../../importer/describe.ts';
import { readInstrumentFile } from '../../importer/read-instrument-file.ts';
import { HEAD_BYTES, mediaOf, PICTURES } from '../media-of.ts';
import { checkPhoto, MOST_PHOTO_BYTES } from '../photo/check-photo.ts';
import { THUMB, thumbOf } from '../photo/thumb-of.ts';
import { withoutPlace } from '../photo/without-place.ts';
import { answer, answerProblem, problemOf } from '../problem.ts';
import { safeName } from '../safe-name.ts';
import { caseId, takenFile } from '../schema.ts';
import { tooLarge } from '../spool.ts';
import type { Workspace } from '../workspace.ts';
import { described } from './described.ts';
import { validIn } from './valid-in.ts';

const MOST_TEXT_BYTES = 64 * 1024 ** 2; // of a text that is read for its table while the person waits
const hash = caseId.extend({
  sha256: z
    .string()
    .regex(/^[0-9a-f]{64}$/)
    .openapi({ param: { name: 'sha256', in: 'path' } }),
});
const named = z.object({ name: z.string().max(10_000), settle: z.union([z.string(), z.array(z.string())]).optional() });

/** Files of a case: taken as they come, told apart by their bytes, given out without the place where a photo was taken. */
export function fileRoutes(app: OpenAPIHono, { store, now }: Workspace): void {
  app.openapi(
    described({
      method: 'post',
      path: '/api/cases/{id}/files',
      summary: 'Take a file in; the body is its bytes',
      params: caseId,
      query: named,
      bytes: {
        media: ['application/octet-stream', 'text/plain', 'text/csv', ...PICTURES],
        most: MOST_FILE_BYTES,
        means: `A text of an instrument, at most ${MOST_FILE_BYTES} bytes, or a picture, at most ${MOST_PHOTO_BYTES} bytes; told apart by its bytes, whatever it is sent as.`,
      },
      gives: takenFile,
    }),
    async (context) => {
      const { id } = validIn<{ id: string }>(context, 'param');
      const head = await store.cases.head(id);
      if (head === null || head.removed !== null) return answerProblem(problemOf(noSuchCase(id)));
      const { name, settle } = validIn<z.infer<typeof named>>(context, 'query');
      const announced = Number(context.req.header('content-length') ?? '0');
      if (announced > MOST_FILE_BYTES) return answerProblem(problemOf(tooLarge(announced, MOST_FILE_BYTES)));
      const kept = await keep(store.files, context.req.raw.body, now());
      if (isRefusal(kept)) return answerProblem(problemOf(kept));
      const settled = Object.fromEntries(
        [settle ?? []].flat().map((text) => [text.split('=')[0] ?? '', text.split('=').slice(1).join('=')]),
      );
      return answer(context, {
        sha256: kept.sha256,
        bytes: kept.bytes,
        media: kept.media,
        name: safeName(name),
        ...(await understand(store.files, kept, settled)),
      });
    },
  );

  app.openapi(
    described({
      method: 'get',
      path: '/api/cases/{id}/files/{sha256}',
      summary: 'A file, a photo without the place where it was taken',
      params: hash,
      gives: 'application/octet-stream',
    }),
    async (context) => {
      const { sha256 } = validIn<z.infer<typeof hash>>(context, 'param');
      const known = await store.files.has(sha256);
      if (known === null) return answerProblem(problemOf(refuse('no-such-file', sha256, 'a file of this casebook')));
      const head = await readHead(store.files, sha256);
      const media = mediaOf(head) ?? 'application/octet-stream';
      const body = media.startsWith('image/')
        ? await withoutPlace(await readWhole(store.files, sha256), media)
        : NodeStream.from(store.files.read(sha256));
      const shown = media.startsWith('image/') ? 'inline' : 'attachment';
      return new Response(body as never, {
        headers: { 'content-type': media, 'content-disposition': `${shown}; filename="${sha256.slice(0, 12)}"` },
      });
    },
  );

  app.openapi(
    described({
      method: 'get',
      path: '/api/cases/{id}/files/{sha256}/thumb',
      summary: 'A small picture of a photo',
      params: hash,
      gives: 'image/webp',
    }),
    async (context) => {
      const { sha256 } = validIn<z.infer<typeof hash>>(context, 'param');
      const known = await store.files.readDerived(sha256, THUMB);
      if (known !== null) return picture(known.bytes, known.media);
      if ((await store.files.has(sha256)) === null)
        return answerProblem(problemOf(refuse('no-such-file', sha256, 'a file of this casebook')));
      const made = await thumbOf(await readWhole(store.files, sha256));
      if (isRefusal(made)) return answerProblem(problemOf(made));
      await store.files.writeDerived(sha256, THUMB, 'image/webp', made);
      return picture(made, 'image/webp');
    },
  );
}

function picture(bytes: Uint8Array, media: string): Response {
  return new Response(bytes as never, { headers: { 'content-type': media, 'cache-control': 'private, max-age=31536000, immutable' } });
}

/** The sender went away, or the server is stopping: nobody's defect. */
class BodyEnded extends Error {}

async function* arriving(body: ReadableStream<Uint8Array>): AsyncGenerator<Uint8Array> {
  try {
    yield* body;
  } catch (error) {
    throw new BodyEnded('the body ended early', { cause: error });
  }
}

interface Kept {
  readonly sha256: string;
  readonly bytes: number;
  readonly media: string;
}

/** Streams a body into the casebook; what is too long, or what it is not wanted to be, leaves nothing behind. */
async function keep(files: FileStore, body: ReadableStream<Uint8Array> | null, at: string): Promise<Kept | Refusal> {
  if (body === null) return refuse('no-body', 'nothing', 'the bytes of a file as the body');
  const upload = await files.begin(at);
  let bytes = 0;
  let head = new Uint8Array(0);
  let media: string | null = null;
  const photo: Uint8Array[] = []; // a picture is looked at before it is kept; a text never is held whole
  try {
    for await (const chunk of arriving(body)) {
      bytes += chunk.length;
      if (head.length < HEAD_BYTES) {
        head = new Uint8Array([...head, ...chunk.subarray(0, HEAD_BYTES - head.length)]);
        if (head.length === HEAD_BYTES) media = mediaOf(head);
        if (head.length === HEAD_BYTES && media === null) break;
      }
      const isPhoto = media?.startsWith('image/') === true;
      const most = isPhoto ? MOST_PHOTO_BYTES : MOST_FILE_BYTES;
      if (bytes > most) {
        await upload.abort();
        return tooLarge(bytes, most);
      }
      if (head.length < HEAD_BYTES || isPhoto) photo.push(chunk);
      await upload.write(chunk);
    }
    media ??= mediaOf(head);
    if (media === null) {
      await upload.abort();
      return refuse('unknown-media', describeHead(head), 'a text file of an instrument, or a JPEG, PNG, WebP, AVIF or TIFF picture');
    }
    const broken = media.startsWith('image/') ? await checkPhoto(new Uint8Array(Buffer.concat(photo))) : null;
    if (broken !== null) {
      await upload.abort();
      return broken;
    }
    return { ...(await upload.finish()), media };
  } catch (error) {
    // where the casebook is closing already, the next opening sweeps what was begun
    await upload.abort().catch(() => undefined);
    if (error instanceof BodyEnded)
      return refuse('upload-cut', `${bytes} bytes, then the end of the connection`, 'the whole file; none of it was kept');
    throw error;
  }
}

function describeHead(head: Uint8Array): string {
  const text = new TextDecoder('latin1').decode(head);
  if (/ftyp(heic|heix|mif1|hevc)/.test(text)) return 'a HEIC picture, which cannot be read here; save it as JPEG';
  if (/<svg|<!doctype|<html/i.test(text)) return 'a drawing or a page, which can hold a program';
  return head.length === 0 ? 'an empty file' : 'bytes of a kind that is not known here';
}

async function understand(files: FileStore, { sha256, bytes, media }: Kept, settled: Readonly<Record<string, string>>) {
  if (!(media.startsWith('text/') || media === 'image/tiff') || bytes > MOST_TEXT_BYTES) return {};
  const read = readInstrumentFile(await readWhole(files, sha256), settled);
  return isRefusal(read) ? { notUnderstood: sentence(read) } : { understood: describe(read) };
}

async function readHead(files: FileStore, sha256: string): Promise<Uint8Array> {
  for await (const chunk of files.read(sha256)) return chunk.subarray(0, HEAD_BYTES);
  return new Uint8Array(0);
}

import { SENDING_WORDS } from '../../present/words/sending-words.ts';

/** A problem that the server states in one sentence (RFC 9457), or that it could not be reached. */
export class Problem extends Error {
  readonly code: string;
  readonly place: string;

  constructor(code: string, sentence: string, place = '') {
    super(sentence);
    this.code = code;
    this.place = place;
  }
}

export const NOT_REACHED = 'not-reached';

/** Asks our own server; nothing else is ever asked. Throws a Problem. */
export async function request<T>(method: string, path: string, body?: unknown, signal?: AbortSignal): Promise<T> {
  const init: RequestInit = { method, headers: { accept: 'application/json' } };
  if (signal !== undefined) init.signal = signal;
  if (body instanceof Blob) {
    init.body = body;
    init.headers = { ...init.headers, 'content-type': body.type === '' ? 'application/octet-stream' : body.type };
  } else if (body !== undefined) {
    init.body = JSON.stringify(body);
    init.headers = { ...init.headers, 'content-type': 'application/json' };
  }
  const response = await ask(path, init);
  if (response.status === 204) return undefined as T;
  const isJson = (response.headers.get('content-type') ?? '').includes('json');
  if (response.ok) return (isJson ? await response.json() : await response.text()) as T;
  throw toProblem(response.status, isJson ? await response.text() : null);
}

/** The bytes of an answer. Throws a Problem. */
export async function requestBytes(path: string, signal?: AbortSignal): Promise<ArrayBuffer> {
  const response = await ask(path, signal === undefined ? {} : { signal });
  if (response.ok) return response.arrayBuffer();
  const isJson = (response.headers.get('content-type') ?? '').includes('json');
  throw toProblem(response.status, isJson ? await response.text() : null);
}

/** Asks for work that takes a while and hears of it line by line. Throws a Problem. */
export async function requestLines<T>(
  path: string,
  body: unknown,
  progress: (done: number, of: number) => void,
  signal: AbortSignal,
): Promise<T> {
  const response = await ask(path, { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify(body), signal });
  const isLines = (response.headers.get('content-type') ?? '').includes('jsonl');
  if (!response.ok || !isLines || response.body === null) throw toProblem(response.status, await response.text());
  let rest = '';
  const decoder = new TextDecoder();
  const reader = response.body.getReader();
  for (;;) {
    const { done, value } = await reader.read();
    rest += decoder.decode(value, { stream: !done });
    const lines = rest.split('\n');
    rest = lines.pop() ?? '';
    for (const line of lines) {
      const said = JSON.parse(line) as {
        done?: number;
        of?: number;
        answer?: T;
        problem?: { code: string; detail: string; place: string };
      };
      if (said.problem !== undefined) throw new Problem(said.problem.code, said.problem.detail, said.problem.place);
      if (said.answer !== undefined) return said.answer;
      progress(said.done ?? 0, said.of ?? 1);
    }
    if (done) throw new Problem(NOT_REACHED, SENDING_WORDS.serverWentAwayBeforeIt);
  }
}

async function ask(path: string, init: RequestInit): Promise<Response> {
  try {
    return await fetch(path, init);
  } catch (error) {
    if (init.signal?.aborted === true) throw error;
    throw new Problem(NOT_REACHED, SENDING_WORDS.serverDoesNotAnswerWhat);
  }
}

/** What an answer that is no success says; `json` is its body where that is JSON. */
export function toProblem(status: number, json: string | null): Problem {
  const { code, detail, place } = JSON.parse(json ?? '{}') as { code?: string; detail?: string; place?: string };
  return new Problem(code ?? `http-${status}`, detail ?? SENDING_WORDS.theServerAnswered(status), place ?? '');
}

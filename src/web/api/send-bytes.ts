import { SENDING_WORDS } from '../../present/words/sending-words.ts';
import { NOT_REACHED, Problem, toProblem } from './request.ts';

/** How an upload goes on, and how it is stopped. */
export interface Watch {
  /** Bytes that are on their way or there, of all of them. */
  readonly progress?: (sent: number, all: number) => void;
  readonly signal?: AbortSignal;
}

/** Sends bytes to our own server; only this older interface of the browser tells how many have gone. Throws a Problem. */
export function sendBytes<T>(path: string, body: Blob, { progress, signal }: Watch): Promise<T> {
  return new Promise((resolve, reject) => {
    const upload = new XMLHttpRequest();
    const stop = (): void => upload.abort();
    upload.open('POST', path);
    upload.setRequestHeader('accept', 'application/json');
    upload.setRequestHeader('content-type', 'application/octet-stream');
    upload.upload.addEventListener('progress', ({ loaded, total }) => progress?.(loaded, total));
    upload.addEventListener('load', () => {
      const isJson = (upload.getResponseHeader('content-type') ?? '').includes('json');
      const isGood = upload.status >= 200 && upload.status < 300;
      if (isGood && isJson) resolve(JSON.parse(upload.responseText) as T);
      else reject(toProblem(upload.status, isJson ? upload.responseText : null));
    });
    upload.addEventListener('error', () => reject(new Problem(NOT_REACHED, 'The server does not answer; nothing of this file was kept.')));
    upload.addEventListener('abort', () => reject(new Problem('stopped', 'Stopped; nothing of this file was kept.')));
    upload.addEventListener('loadend', () => signal?.removeEventListener('abort', stop));
    if (signal?.aborted === true) {
      reject(new Problem('stopped', SENDING_WORDS.stoppedNothingThisFileWas));
      return;
    }
    signal?.addEventListener('abort', stop);
    upload.send(body);
  });
}

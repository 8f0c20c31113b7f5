import { spawn } from 'node:child_process';

/** A script of this folder in a process of its own, its lines as they come, and a way to kill it without a word. */
export interface Child {
  readonly lines: string[];
  /** Until it has said so many lines, or has ended. */
  said(count: number): Promise<void>;
  /** SIGKILL; returns when it is dead and everything it said has arrived. */
  kill(): Promise<void>;
  readonly ended: Promise<number | null>;
}

export function startChild(script: string, args: readonly string[]): Child {
  const child = spawn(process.execPath, ['--import', 'tsx', new URL(script, import.meta.url).pathname, ...args], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const lines: string[] = [];
  let rest = '';
  let look = () => {};
  child.stdout.setEncoding('utf8').on('data', (text: string) => {
    const parts = (rest + text).split('\n');
    rest = parts.pop() ?? ''; // a line without its end was not said
    lines.push(...parts);
    look();
  });
  const ended = new Promise<number | null>((resolve) => child.on('close', (code) => resolve(code)));
  return {
    lines,
    ended,
    said: (count) =>
      Promise.race([
        new Promise<void>((resolve) => {
          look = () => {
            if (lines.length >= count) resolve();
          };
          look();
        }),
        ended.then(() => undefined),
      ]),
    async kill() {
      child.kill('SIGKILL');
      await ended;
    },
  };
}

import { execFile } from 'node:child_process';

export interface Ran {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

/** Runs the built command as a person would. */
export function mainsworthy(args: readonly string[], env: Readonly<Record<string, string>> = {}): Promise<Ran> {
  return new Promise((resolve) => {
    execFile(
      process.execPath,
      ['dist/cli/main.js', ...args],
      { env: { ...process.env, ...env }, maxBuffer: 64 * 1024 * 1024 },
      (error, out, err) => {
        resolve({ code: error === null ? 0 : typeof error.code === 'number' ? error.code : 1, out, err });
      },
    );
  });
}

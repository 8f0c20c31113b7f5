import { writeFileSync } from 'node:fs';
import type { Reporter, SerializedError, TestModule } from 'vitest/node';

/** Counts the run: into the file that `npm test` asks for, else as a closing line of its own. */
export default class ClosingLine implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], unhandled: readonly SerializedError[]): void {
    const count = { passed: 0, failed: unhandled.length, skipped: 0 };
    for (const module of modules) {
      let tests = 0;
      for (const test of module.children.allTests()) {
        tests += 1;
        const { state } = test.result();
        if (state === 'passed') count.passed += 1;
        else if (state === 'failed') count.failed += 1;
        else count.skipped += 1;
      }
      // a file that could not be loaded has no tests, and must not look green
      if (tests === 0) count.failed += 1;
    }
    const { MAINSWORTHY_COUNTS: path } = process.env;
    if (path !== undefined) writeFileSync(path, JSON.stringify(count));
    else process.on('exit', () => console.log(`${count.passed} passed, ${count.failed} failed, ${count.skipped} skipped`));
  }
}

import type { Reporter, SerializedError, TestModule } from 'vitest/node';

/** Prints `N passed, N failed, N skipped` alone on the last line, which is what the continuous integration reads. */
export default class ClosingLine implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], unhandled: readonly SerializedError[]): void {
    const count = { passed: 0, failed: unhandled.length, skipped: 0 };
    for (const module of modules) {
      let tests = 0;
      for (const test of module.children.allTests()) {
        tests += 1;
        const state = test.result().state;
        if (state === 'passed') count.passed += 1;
        else if (state === 'failed') count.failed += 1;
        else count.skipped += 1;
      }
      // a file that could not be loaded has no tests, and must not look green
      if (tests === 0 && !module.ok()) count.failed += 1;
    }
    process.on('exit', () => console.log(`${count.passed} passed, ${count.failed} failed, ${count.skipped} skipped`));
  }
}

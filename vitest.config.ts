import { defineConfig } from 'vitest/config';
import ClosingLine from './scripts/closing-line-reporter.ts';

export default defineConfig({
  test: {
    include: ['test/**/*.test.ts'],
    reporters: ['default', new ClosingLine()],
    testTimeout: 60_000,
    hookTimeout: 120_000,
    pool: 'threads',
    maxWorkers: 2,
  },
});

import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    globalSetup: 'tests/support/build.ts',
    // Much of the time is spent waiting for programs that the tests start.
    maxWorkers: '100%',
    testTimeout: 60_000,
    hookTimeout: 120_000,
    coverage: { include: ['src/**/*.ts'], reporter: ['text-summary', 'html'] },
  },
});

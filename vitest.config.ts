import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    globalSetup: 'tests/support/build.ts',
    // Much of the time is spent waiting for programs that the tests start.
    maxWorkers: '100%',
    // What the files import is read once for each worker and not for each file, which takes a quarter off the whole time.
    isolate: false,
    testTimeout: 60_000,
    hookTimeout: 120_000,
    coverage: { include: ['src/**/*.ts'], reporter: ['text-summary', 'html'] },
  },
});

// How the tests run: on two cores, and a browser test may take its time.
import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    globalSetup: ['tests/browser/share.ts'],
    globals: false,
    // Long enough for a machine that has other things to do: a limit here is for what hangs, not for what is slow.
    testTimeout: 180_000,
    hookTimeout: 120_000,
    maxWorkers: 2,
    allowOnly: false,
  },
});

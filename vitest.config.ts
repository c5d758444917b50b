// How the tests run: on two cores, and a browser test may take its time.
import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    globals: false,
    // A whole record is opened within 2 seconds on two slow cores; a build has its own limit.
    testTimeout: 20_000,
    hookTimeout: 30_000,
    maxWorkers: 2,
    allowOnly: false,
  },
});

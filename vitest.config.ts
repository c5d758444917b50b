// How the tests run: on two cores, and a browser test may take its time.
import { defineConfig } from 'vitest/config';

export default defineConfig(({ mode }) => ({
  test: {
    include: ['tests/**/*.test.ts'],
    globalSetup: ['tests/browser/share.ts'],
    globals: false,
    // `npm run test:long` tries as many bad inputs as this; tests/bad-input/size.ts says how many any other run does.
    env: mode === 'long' ? { BAD_INPUTS: process.env.BAD_INPUTS ?? '20000' } : {},
    // Long enough for a machine that has other things to do: a limit here is for what hangs, not for what is slow.
    testTimeout: 300_000,
    hookTimeout: 300_000,
    maxWorkers: 2,
    // What is tested holds nothing over from one file to the next, so modules are read once and not for each of them.
    isolate: false,
    allowOnly: false,
  },
}));

// Prints the count of passed and failed tests as the last line of a run, and exits by it.
import { existsSync, readFileSync } from 'node:fs';

const [file = '', habits, vitest] = process.argv.slice(2);
const results = existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')) : undefined;
const passed = results?.numPassedTests ?? 0;
const skipped = (results?.numPendingTests ?? 0) + (results?.numTodoTests ?? 0);
// A file that can't be loaded has no tests to count, and still has failed.
const unloaded = (results?.testResults ?? []).filter(
  ({ status, assertionResults }) => status === 'failed' && assertionResults.length === 0,
).length;
const found = (results?.numFailedTests ?? 0) + unloaded;
// Vitest can fail without a failed test, by an error outside of them.
const tests = found === 0 && (vitest !== '0' || passed === 0) ? 1 : found;
const failed = tests + (habits === '0' ? 0 : 1);

console.log(`${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`);
process.exitCode = failed > 0 ? 1 : 0;

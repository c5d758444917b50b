// The checks, in the order in which they run.
import type { Check } from './check.ts';

export const checks: readonly Check[] = [];

// 29 CFR 1910.1025(c) and its Appendix B, which prints 40 for ten hours; 1926.62(c)(2) gives the same rule.
import { expect, test } from 'vitest';
import { leadLimit } from '../../src/measure/lead-limit.ts';

test.each([
  [4, 50],
  [8, 50],
  [10, 40],
  [12, 100 / 3],
])('%d hours', (hours, limit) => {
  expect(leadLimit(hours * 60)).toBeCloseTo(limit, 9);
});

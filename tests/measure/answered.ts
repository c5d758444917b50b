// Takes the answer out, or fails with the sentence that stands in its place.
import type { Answer } from '../../src/measure/answer.ts';

export function answered<T>(result: Answer<T>): T {
  if (!result.ok) throw new Error(result.why);
  return result.value;
}

// What a check of file against file is.
import type { Day } from '../../figures/days.ts';
import type { Problem } from '../place.ts';
import type { CarRecord } from '../record.ts';

/** What a check found at one place; the rule and its severity are the check's own. */
export type Found = Omit<Problem, 'rule' | 'severity'>;

/** One rule. `why` is the sentence that says why it matters; it stands in the writer's guide. */
export type Check = {
  rule: string;
  severity: 'error' | 'warning';
  why: string;
  /** It says nothing useful while an entry can't be read, so it waits until all can be. */
  needsEveryEntry?: true;
  run: (record: CarRecord, world: { today: Day }) => Found[];
};

// What an hour costs the shop and what the owner is charged for it.
import type { Day } from '../figures/days.ts';
import { type Minor, overMinutes } from '../figures/money.ts';
import { type HourlyRule, hourlyRate } from './rules.ts';

/** Time worked by somebody at one kind of work, in minutes. */
export type Worked = {
  day: Day;
  who: string | undefined;
  work: string;
  minutes: number;
  /** Done at the shop's own expense, or within a price fixed beforehand. */
  free: boolean;
};

export type LabourRules = {
  rates: readonly HourlyRule[];
  pay: readonly HourlyRule[];
  /** Charged time is rounded up to this many minutes. */
  step: number | undefined;
  /** No line of hours is charged less than this many minutes. */
  minimum?: number | undefined;
};

/** Pay is for the minutes worked, the charge for the minutes charged. Without a rate in force both are 0. */
export function labourSums(
  worked: Worked,
  { rates, pay, step, minimum = 0 }: LabourRules,
): { cost: Minor; charged: Minor; chargedMinutes: number; rate: Minor } {
  const nothing = worked.free || worked.minutes === 0;
  const chargedMinutes = nothing ? 0 : steppedUp(Math.max(worked.minutes, minimum), step);
  const rate = hourlyRate(rates, worked) ?? 0;
  return {
    cost: overMinutes(hourlyRate(pay, worked) ?? 0, worked.minutes),
    charged: overMinutes(rate, chargedMinutes),
    chargedMinutes,
    rate,
  };
}

/** Minutes rounded up to the step begun: 61 minutes at a step of 15 are 75. */
export function steppedUp(minutes: number, step: number | undefined): number {
  return step ? Math.ceil(minutes / step) * step : minutes;
}

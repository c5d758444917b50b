// The words of a choice sheet that stand on its page and in print alike.
import type { Choice } from '../record/record.ts';

/** What a choice is as long as the owner's word is asked for. */
export const isOpen = ({ decided, withdrawn }: Choice): boolean => !decided && !withdrawn;

/** Heads of the figures over what was written of the options. */
export const FIGURE_HEADS = { cost: 'Expected cost', hours: 'Of that, hours', cheapest: 'Cheapest in' };

/** What the ranges of the table are; `money` where amounts are shown. */
export const rangesNote = (money: boolean): string =>
  money
    ? 'Ranges of cost: one time in ten lower, one time in ten higher. Other ranges as written, from low to high.'
    : 'Ranges as written, from low to high.';

/** What the bars are, and how many draws they are read from. */
export const barsCaption = (draws: number): string =>
  `What each may come to. Bar: from the cost passed nine times in ten to the cost passed one time in ten. Stroke: the middle, as often over as under. From ${draws.toLocaleString('en-US')} draws of the ranges.`;

/** When the comparison of a choice that is no longer open was made. */
export const asItStood = ({ decided }: Choice): string =>
  `as it stood when it was ${decided ? 'decided' : 'last written'}`;

export const COST_IS_ONE_LINE = 'Cost is one line of this sheet; fit, wait and what is kept stand beside it.';

/** The box beside those of the options. */
export const TRIAL_FIRST = 'A trial first, then ask again';

/** Who signs, left to right. */
export const signers = (shop: string): string[] => ['Signed, for the owner', `Signed, for ${shop}`, 'Date'];

export const NOTHING_LOGGED = 'No hours and no bills are logged to it.';

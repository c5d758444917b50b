// Finds options with a fixed price in choices that settle no planned line.
import type { Check } from './check.ts';

export const fixedPriceWithoutLines: Check = {
  rule: 'fixed-price-without-lines',
  severity: 'error',
  why: 'A fixed price is charged on the day when the lines that the choice settles are finished, so there must be such lines.',
  run: ({ choices }) =>
    choices
      .filter(({ settles = [], sure }) => settles.length === 0 && sure('settles'))
      .flatMap(({ options, placeAt }) =>
        options.flatMap(({ option, 'fixed-price': price }, i) =>
          price === undefined
            ? []
            : [
                {
                  place: placeAt(['options', i, 'fixed-price']),
                  reason: `Option \`${option}\` has a fixed price, and the choice settles no planned line.`,
                  mend: 'Name the planned lines under `settles`, such as `settles: [rear-fender-left/lower-edge]`.',
                },
              ],
        ),
      ),
};

// Finds pictures whose pair holds no other picture.
import { didYouMean } from '../nearest.ts';
import type { Check } from './check.ts';

export const pairWithoutPartner: Check = {
  rule: 'pair-without-partner',
  severity: 'warning',
  needsEveryEntry: true,
  why: 'Pictures of a pair stand side by side, which takes two.',
  run: ({ entries }) => {
    const pairs = Map.groupBy(
      entries.flatMap(({ photos = [], placeAt }) =>
        photos.flatMap(({ pair }, i) =>
          pair === undefined ? [] : [{ pair, place: () => placeAt(['photos', i, 'pair']) }],
        ),
      ),
      ({ pair }) => pair,
    );
    return [...pairs].flatMap(([name, [first, ...others]]) => {
      if (!first || others.length > 0) return [];
      const mend = didYouMean(
        name,
        [...pairs.keys()].filter((other) => other !== name),
      );
      return [
        {
          place: first.place(),
          reason: `No second picture has \`pair: ${name}\`.`,
          mend: mend ?? 'Give the other picture the same name, or take this one out until it is there.',
        },
      ];
    });
  },
};

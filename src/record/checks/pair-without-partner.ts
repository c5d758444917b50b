import type { Check } from './check.ts';

export const pairWithoutPartner: Check = {
  rule: 'pair-without-partner',
  severity: 'warning',
  why: 'Pictures of a pair stand side by side, which takes a before and an after.',
  run: ({ entries }) => {
    const pairs = Map.groupBy(
      entries.flatMap(({ photos = [], at }) =>
        photos.flatMap(({ pair, shows }, i) => (pair === undefined ? [] : [{ pair, shows, i, at }])),
      ),
      ({ pair }) => pair,
    );
    return [...pairs].flatMap(([name, shots]) => {
      const lacking = (['before', 'after'] as const).filter(
        (half) => !shots.some(({ shows }) => shows === half),
      );
      const [first] = shots;
      if (lacking.length === 0 || !first) return [];
      return [
        {
          place: first.at(['photos', first.i, 'pair']),
          reason: `The pair \`${name}\` has no picture that shows \`${lacking.join('` and none that shows `')}\`.`,
          mend: 'Mend the name of the pair, or take it out until the other picture is there.',
          related: shots.slice(1).map(({ at, i }) => at(['photos', i, 'pair'])),
        },
      ];
    });
  },
};

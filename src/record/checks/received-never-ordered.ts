// Finds receipts that close no order written before them.
import { didYouMean } from '../nearest.ts';
import type { Check } from './check.ts';
import { matchedOrders } from './orders.ts';

export const receivedNeverOrdered: Check = {
  rule: 'received-never-ordered',
  severity: 'warning',
  needsEveryEntry: true,
  why: 'A receipt closes its order by the same words; when they differ, the order stays open for good.',
  run: (record) => {
    const { open, unordered } = matchedOrders(record);
    const ofVendor = Map.groupBy(
      open.flatMap(({ entry, index }) => entry.ordered?.[index] ?? []),
      ({ from }) => from,
    );
    return unordered.flatMap(({ entry, index }) => {
      const line = entry.received?.[index];
      if (!line) return [];
      const words = (ofVendor.get(line.from) ?? []).map(({ what }) => what);
      return [
        {
          place: entry.placeAt(['received', index, 'what']),
          reason: `No open order of \`${line.what}\` from \`${line.from}\` stands before this.`,
          mend:
            didYouMean(line.what, words) ??
            'Write it under `ordered` on the day it was ordered, or only under `bought`.',
        },
      ];
    });
  },
};

// Finds open orders whose expected day has passed.
import { daysBetween } from '../../figures/days.ts';
import type { Check } from './check.ts';
import { matchedOrders } from './orders.ts';

export const orderOverdue: Check = {
  rule: 'order-overdue',
  severity: 'warning',
  needsEveryEntry: true,
  why: 'An order that nobody asks after holds up everything that waits for it.',
  run: (record, { today }) =>
    matchedOrders(record).open.flatMap(({ entry, index }) => {
      const order = entry.ordered?.[index];
      if (order?.expected === undefined || order.expected >= today) return [];
      const late = daysBetween(order.expected, today);
      return [
        {
          place: entry.placeAt(['ordered', index, 'expected']),
          reason: `\`${order.what}\` from \`${order.from}\` was expected on ${order.expected}, ${late} ${late === 1 ? 'day' : 'days'} ago.`,
          mend: 'Ask the vendor; when it comes, write it under `received` with the same words.',
        },
      ];
    }),
};

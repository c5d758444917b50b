// The commands that write, each on the small record, and what may stand after one of them was disturbed.
import { join } from 'node:path';
import type { Shop } from './shop.ts';

/**
 * `does` is the command and `into` where it writes; `first` goes before it and `after` comes after it, in a run that
 * nothing disturbs too. `once` names the file by which a command that may not be given twice is known to be done.
 */
export type Work = {
  name: string;
  into: 'record' | 'out' | 'cache';
  does: (shop: Shop) => string[];
  first?: (shop: Shop) => string[];
  after?: (shop: Shop) => string[];
  once?: { file: string; says: string };
};

const log = (words: string) => (): string[] => ['log', '--day', '2025-03-03', '--words', words];
const issue = (to: string, on: string) => (): string[] => ['statement', '--issue', '--to', to, '--on', on];

export const WORKS: readonly Work[] = [
  {
    name: 'log',
    into: 'record',
    does: log('The lip as well.'),
    after: log('And the seam.'),
    once: { file: 'log/2025-03-03.md', says: 'The lip as well.' },
  },
  {
    name: 'statement --issue',
    into: 'record',
    does: issue('2025-03-31', '2025-04-02'),
    after: issue('2025-04-30', '2025-05-02'),
    once: { file: 'statements/001.md', says: 'number' },
  },
  { name: 'photos', into: 'record', does: ({ card }) => ['photos', card] },
  { name: 'photos --make', into: 'cache', does: () => ['photos', '--make'] },
  { name: 'export', into: 'out', does: ({ out }) => ['export', join(out, 'tables')] },
  { name: 'book', into: 'out', does: ({ out }) => ['book', join(out, 'book.pdf')] },
  { name: 'build', into: 'out', does: ({ out }) => ['build', '--out', join(out, 'site')] },
  {
    name: 'build over an older site',
    into: 'out',
    first: ({ out }) => ['build', '--for', 'owner', '--out', join(out, 'site')],
    does: ({ out }) => ['build', '--out', join(out, 'site')],
  },
  { name: 'handover', into: 'out', does: ({ out }) => ['handover', join(out, 'bag')] },
];

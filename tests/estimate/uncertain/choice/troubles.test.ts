import { describe, expect, it } from 'vitest';
import type { Choice, Failure, Option } from '../../../../src/estimate/uncertain/choice/choice.ts';
import { compareOptions } from '../../../../src/estimate/uncertain/choice/compare.ts';
import { type Trouble, troublesIn } from '../../../../src/estimate/uncertain/choice/troubles.ts';
import { certain } from '../../../../src/figures/ranges.ts';

const drivers: Choice['drivers'] = [
  { id: 'price', kind: 'price', range: certain(100) },
  { id: 'hours', kind: 'hours', range: { low: 2, likely: 3, high: 5 } },
  { id: 'rate', kind: 'rate', range: certain(85) },
  { id: 'p', kind: 'chance', range: certain(0.2) },
  { id: 'q', kind: 'chance', range: { low: 0.1, likely: 0.2, high: 0.4 } },
];
const into = (next: string, chance = 'p', after = 0.5): Failure => ({ chance, after, next });
const way = (id: string, canFail?: Failure, amount = 'price'): Option => ({
  id,
  terms: [{ amount }],
  ...(canFail ? { canFail } : {}),
});
const found = (...options: Option[]): Trouble[] => troublesIn({ drivers, options });

describe('a choice that can’t be compared', () => {
  it('in a circle names the options in it, once, and not those that lead into it', () => {
    const circle = found(
      way('leave', into('sew')),
      way('sew', into('glue')),
      way('glue', into('sew')),
      way('buy'),
    );
    expect(circle).toEqual([{ kind: 'circle', options: ['glue', 'sew'] }]);
    expect(found(way('sew', into('sew')))).toEqual([{ kind: 'circle', options: ['sew'] }]);
  });

  it('with three options in a circle names them in the order they follow each other', () => {
    const circle = found(way('c', into('a')), way('a', into('b')), way('b', into('c')));
    expect(circle).toEqual([{ kind: 'circle', options: ['a', 'b', 'c'] }]);
  });

  it('comes back as a value, not thrown', () => {
    const outcome = compareOptions({ drivers, options: [way('sew', into('sew'))] }, { seed: 's', draws: 10 });
    expect(outcome).toEqual({ sound: false, troubles: [{ kind: 'circle', options: ['sew'] }] });
  });

  it('names what it does not know', () => {
    expect(found(way('sew', into('gone')))).toEqual([
      { kind: 'unknown-option', option: 'sew', next: 'gone' },
    ]);
    expect(found(way('sew', undefined, 'thread'))).toEqual([
      { kind: 'unknown-driver', option: 'sew', driver: 'thread' },
    ]);
  });

  it('names a driver that is of the wrong kind or stands twice in a product', () => {
    expect(found(way('sew', undefined, 'rate'))).toEqual([
      { kind: 'wrong-kind', option: 'sew', driver: 'rate' },
    ]);
    expect(found(way('sew', into('buy', 'price')), way('buy'))).toEqual([
      { kind: 'wrong-kind', option: 'sew', driver: 'price' },
    ]);
    expect(found({ id: 'sew', terms: [{ amount: 'hours', by: ['rate', 'rate'] }] })).toEqual([
      { kind: 'driver-twice', option: 'sew', driver: 'rate' },
    ]);
  });

  it('names an uncertain chance that is met twice on one way; a certain one may be', () => {
    const chain = (chance: string) =>
      found(way('a', into('b', chance)), way('b', into('c', chance)), way('c'));
    expect(chain('q')).toEqual([{ kind: 'chance-twice', option: 'a', driver: 'q' }]);
    expect(chain('p')).toEqual([]);
  });

  it('names ranges out of order, chances that are none, and names used twice', () => {
    const odd = troublesIn({
      drivers: [
        { id: 'upside down', kind: 'price', range: { low: 3, likely: 2, high: 1 } },
        { id: 'likely and more', kind: 'chance', range: certain(1.2) },
        { id: 'price', kind: 'price', range: certain(1) },
        { id: 'price', kind: 'price', range: certain(2) },
        { id: 'p', kind: 'chance', range: certain(0.2) },
      ],
      options: [way('sew', into('buy', 'p', 1.5)), { ...way('buy'), wait: { low: 9, likely: 2, high: 3 } }],
    });
    expect(odd).toEqual([
      { kind: 'named-twice', name: 'price' },
      { kind: 'out-of-range', name: 'upside down' },
      { kind: 'out-of-range', name: 'likely and more' },
      { kind: 'out-of-range', name: 'sew' },
      { kind: 'out-of-range', name: 'buy' },
    ]);
    expect(found()).toEqual([{ kind: 'no-options' }]);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fabricOf, fabricShares } from '../../src/rollup/fabric.ts';
import { recordOf } from './records.ts';

const part = (name: string, more = '') => `---\nname: ${name}\ngroup: Body\n${more}---\n`;

describe('what a part is made of now', () => {
  const choice = (way: string) => `---
question: Which?
part: cowl
asked: 2025-03-01
options:
  - { option: one, way: ${way}, lines: [{ do: It, work: metal, hours: 1 }] }
  - { option: two, way: leave, lines: [{ do: Nothing, work: metal, hours: 1 }] }
decided: { option: one, on: 2025-03-05, by: the owner, reason: It is so. }
---
`;
  const cowlOf = (texts: Record<string, string>) => {
    const record = recordOf(texts);
    const cowl = record.parts.find(({ id }) => id === 'cowl');
    return cowl && fabricOf(cowl, record);
  };

  it('is what its page says, unless a choice was decided, unless the log says', () => {
    const page = part('Cowl', 'fabric-now: period-part\n');
    expect(cowlOf({ 'parts/cowl.md': page })).toEqual({ now: 'period-part' });
    expect(cowlOf({ 'parts/cowl.md': page, 'choices/a.md': choice('repair') })).toEqual({
      now: 'original-repaired',
    });
    expect(cowlOf({ 'parts/cowl.md': page, 'choices/a.md': choice('leave') })).toEqual({
      now: 'period-part',
    });
    const log = '---\nfabric:\n  - { part: cowl, now: new-made, note: all of it }\n---\n';
    expect(cowlOf({ 'choices/a.md': choice('repair'), 'log/2025-04-01.md': log })).toEqual({
      now: 'new-made',
      note: 'all of it',
    });
  });

  it('is nothing when nobody said', () => {
    expect(cowlOf({})).toBeUndefined();
  });
});

describe('the shares of the fabric', () => {
  it('count every part once, and come to a hundred', () => {
    const word = fc.constantFrom(
      'original',
      'earlier-repair',
      'period-part',
      'reproduction',
      'new-made',
      'unknown',
    );
    fc.assert(
      fc.property(fc.array(word, { minLength: 1, maxLength: 40 }), (words) => {
        const texts = words.map((now, i): [string, string] => [
          `parts/p${i}.md`,
          part(`P ${i}`, `fabric: ${now}\n`),
        ]);
        const shares = fabricShares(recordOf(Object.fromEntries(texts)));
        // Two parts more are in every record of these tests.
        expect(shares.reduce((sum, { parts }) => sum + parts.length, 0)).toBe(words.length + 2);
        expect(shares.reduce((sum, { percent }) => sum + percent, 0)).toBe(100);
        for (const { parts, percent } of shares) {
          expect(Math.abs(percent - (100 * parts.length) / (words.length + 2))).toBeLessThan(1);
        }
      }),
      { numRuns: 40 },
    );
  });

  it('count an original part with a note of what is new in it as repaired', () => {
    const record = recordOf({
      'log/2025-04-01.md': '---\nfabric:\n  - { part: cowl, now: original, note: two corners new }\n---\n',
      'parts/frame.md': part('Frame', 'fabric: original\n'),
    });
    expect(
      fabricShares(record).map(({ kept, percent, parts }) => [kept, percent, parts.map(({ note }) => note)]),
    ).toEqual([
      ['original', 50, [undefined]],
      ['original-repaired', 50, ['two corners new']],
    ]);
  });
});

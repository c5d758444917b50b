import { describe, expect, it } from 'vitest';
import { beforeHandOver } from '../../src/views/before-hand-over.ts';
import { planted } from '../handover/planted.ts';

const told = (changed: Record<string, string> = {}) => {
  const { record, rollup } = planted(changed);
  return beforeHandOver(record, rollup);
};

const ENOUGH = {
  'choices/paint.md': `---
question: Cellulose, or enamel?
part: cowl
asked: 2025-03-10
options:
  - { option: cellulose, way: other, lines: [{ do: Spray it, work: paint, hours: 3 }] }
  - { option: enamel, way: other, lines: [{ do: Brush it, work: paint, hours: 5 }] }
withdrawn: { on: 2025-04-01, reason: Neither was to be had. }
---
`,
  'log/2025-05-01.md': `---
photos:
  - { file: IMG_3.jpg, part: cowl, shows: during, alt: A bare cowl on trestles. }
---
`,
};

describe('before a hand-over', () => {
  it('nothing is said of a record that has all it should', () => {
    expect(told(ENOUGH)).toEqual([]);
  });

  it('a choice without an answer is named, and a part that was covered unseen', () => {
    // The cowl was stripped in March, painted in April, and photographed before and after alone.
    expect(told()).toEqual([
      'Choices without an answer and its reason: Cellulose, or enamel?',
      'Parts whose work is covered now, and was never photographed while it could be seen: Cowl.',
    ]);
  });

  it('pictures without words, new parts without a mark and open orders are named', () => {
    const log = `---
photos:
  - { file: IMG_4.jpg, part: frame, shows: after }
fabric:
  - { part: frame, now: new-made, note: all of it }
ordered:
  - { what: Top nuts, from: millrace }
---
`;
    expect(told({ ...ENOUGH, 'log/2025-06-01.md': log })).toEqual([
      'Pictures without words for who can’t see them: IMG_4.jpg (2025-06-01).',
      'New parts without a mark that tells them from old ones: Frame.',
      'Orders that haven’t come: Top nuts, from Millrace Metals, ordered June 1, 2025.',
    ]);
  });

  it('a mark is letters with a year, or what a decided option says', () => {
    const log = (note: string) => `---\nfabric:\n  - { part: frame, now: new-made, note: "${note}" }\n---\n`;
    const marks = (note: string) => told({ ...ENOUGH, 'log/2025-06-01.md': log(note) }).length;
    // NB, FR and CS with the year: the permanent marks of Appendix I of the Charter of Turin.
    expect(['NB 2025', 'stamped FR2025 inside', 'nothing cut', 'in 2025'].map(marks)).toEqual([0, 0, 1, 1]);
    const cowl = '---\nfabric:\n  - { part: cowl, now: new-made }\n---\n';
    expect(told({ ...ENOUGH, 'log/2025-06-01.md': cowl })).toEqual([]);
  });
});

// A record with much still to be done, for timing: made up from a seed, the same at every run, with nothing wrong in it.
import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import type { WrittenFile } from '../../record/record.ts';

/**
 * So many planned lines are left, ten to a part, each with a range of hours and every third with things to buy; every
 * fifth is in hand. One line more of each part is finished.
 */
export function longPlan(lines: number, seed: number): WrittenFile[] {
  const random = xoroshiro128plus(seed);
  const draw = (from: number, to: number) => uniformInt(random, from, to);
  const parts = Array.from({ length: Math.ceil(lines / LEFT) }, (_, part) => `part-${part}`);
  const names = Array.from({ length: lines }, (_, i) => ({
    part: parts[Math.floor(i / LEFT)] as string,
    line: `line-${i % LEFT}`,
    i,
  }));
  const range = (low: number, wide: number) => {
    const likely = low + draw(1, wide);
    return `[${low}, ${likely}, ${likely + draw(1, 2 * wide)}]`;
  };
  return [
    { file: 'car.md', text: CAR },
    { file: 'shop.md', text: SHOP },
    ...parts.map((part) => ({
      file: `parts/${part}.md`,
      text: `---
name: ${part}
group: Body
planned:
  - { line: done, do: What is done, work: metal, hours: ${range(draw(3, 9), 6)} }
${names
  .filter((each) => each.part === part)
  .map(
    ({ line, i }) =>
      `  - { line: ${line}, do: Work of kind ${i}, work: ${i % 2 ? 'metal' : 'timber'}, hours: ${range(draw(3, 12), 9)}${i % 3 ? '' : `, spend: ${range(draw(20, 90), 120)}`} }`,
  )
  .join('\n')}
---
`,
    })),
    {
      file: 'log/2025-04-01.md',
      text: `---
by: tobias
hours:
${names
  .filter(({ i }) => i % 5 === 0)
  .map(
    ({ part, line, i }) =>
      `  - { part: ${part}, line: ${line}, work: ${i % 2 ? 'metal' : 'timber'}, time: 15m }`,
  )
  .join('\n')}
---
`,
    },
    ...parts.map((part, p) => ({
      file: `log/2025-05-${String(p + 1).padStart(2, '0')}.md`,
      text: `---
by: tobias
hours:
  - { part: ${part}, line: done, work: metal, time: ${draw(4, 9)}h }
finished: [${part}/done]
---
`,
    })),
  ];
}

const LEFT = 10;

const CAR = `---
name: Aldermere Fourteen
built: "1934"
opened: 2025-02-03
units: inch
currency: USD
agreed:
  - { on: 2025-02-03, amount: 400000 }
---
`;

const SHOP = `---
shop: Harrow Bend Coachworks
people:
  - { id: tobias, name: Tobias Reeve, initials: T.R. }
rates:
  - { from: 2025-01-01, rate: 75.00 }
handling:
  - { from: 2025-01-01, kind: bought, share: 10% }
materials:
  - { from: 2025-01-01, per-hour: 3.50, cap: 1600 }
---
`;

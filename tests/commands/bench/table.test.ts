import { describe, expect, it } from 'vitest';
import type { Row } from '../../../src/commands/bench/row.ts';
import { markdownText, tableText } from '../../../src/commands/bench/table.ts';

const READING: Row = {
  id: 'reading',
  what: 'read, check and roll up 600 entries',
  took: 1.2,
  against: 'yaml and remark alone, of the same bytes',
  floor: 0.8,
  goal: { ratio: 1.5 },
  megabytes: 412.4,
};
const BUILD: Row = {
  id: 'build',
  what: 'full build',
  took: 90,
  against: 'a bare site',
  floor: 45,
  goal: { ratio: 1.5, megabytes: 1000 },
  megabytes: 1200,
};

describe('the table', () => {
  it('gives each row its floor by name and figure, and names the goal that is missed', () => {
    expect(tableText([READING, BUILD])).toBe(
      `                                                   took     floor    ratio           goal    memory
read, check and roll up 600 entries              1.20 s    800 ms     1.50            1.5    412 MB
  against yaml and remark alone, of the same bytes
full build                                         90 s      45 s     2.00   1.5, 1000 MB   1200 MB
  OVER THE GOAL: ratio, memory
  against a bare site`,
    );
  });

  it('says what moved since the last one', () => {
    const last = { under: 'before', rows: [{ ...READING, took: 1, megabytes: 400 }] };
    expect(
      tableText([READING, BUILD], last)
        .split('\n')
        .filter((line) => /was|last/.test(line)),
    ).toEqual(['  was 1.25, memory 400 MB: the ratio moved by +20%', '  not in the last table']);
  });

  it('is narrow enough for a terminal of 100 columns', () => {
    for (const line of tableText([READING, BUILD]).split('\n')) expect(line.length).toBeLessThanOrEqual(100);
  });

  it('can go into a README', () => {
    expect(markdownText([READING])).toBe(`| what | against | took | floor | ratio | goal | memory |
| --- | --- | ---: | ---: | ---: | ---: | ---: |
| read, check and roll up 600 entries | yaml and remark alone, of the same bytes | 1.20 s | 800 ms | 1.50 | 1.5 | 412 MB |`);
  });
});

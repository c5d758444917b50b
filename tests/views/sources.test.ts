import { describe, expect, it } from 'vitest';
import { sourcesPage } from '../../src/views/sources.ts';
import { shopText } from '../rollup/records.ts';
import { viewed } from './records.ts';

const DAY = `---
by: tobias
measured:
  - { kind: level, part: cowl, state: before, at: L3, reading: 1.4°, by: ines, with: digital level }
  - { kind: thickness, part: cowl, state: before, readings: [0.046 in], target: 18 ga steel, within: 0.003 in }
  - { kind: timber, part: cowl, state: before, species: white ash, width: 5 in, grain: radial, moisture-from: 12%, moisture-to: 8% }
tested:
  - { what: Tank, part: cowl, since: 2025-05-01, until: 2025-05-15, result: holds, by: ines }
---
`;
const { record, rollup } = viewed({
  'shop.md': shopText('').replace('rates:', '  - { id: ines, name: Ines Marlow }\nrates:'),
  'log/2025-05-20.md': DAY,
});
const told = sourcesPage(record, rollup, { money: true });

describe('where figures come from', () => {
  it('is said of a reading: who, when and with what, as far as the entry says', () => {
    const rows = told.measured.flatMap((each) => each.rows).slice(-3);
    expect(rows.slice(0, 2)).toEqual([
      {
        what: 'Level, L3',
        state: 'before',
        day: { text: 'May 20, 2025', to: 'day/2025-05-20.html' },
        who: 'Ines Marlow',
        with: 'digital level',
      },
      {
        what: 'Thickness',
        state: 'before',
        day: { text: 'May 20, 2025', to: 'day/2025-05-20.html' },
        who: 'Tobias Reeve',
        with: 'not said',
      },
    ]);
  });

  it('is said of a test', () => {
    expect(told.tested.at(-1)).toMatchObject({
      what: 'Tank',
      over: 'May 1, 2025 to May 15, 2025',
      result: 'holds',
      who: 'Ines Marlow',
    });
  });

  it('names the published values that went in, and no others', () => {
    expect(told.published.map(({ what }) => what)).toEqual([
      'How far timber moves',
      'Sheet gauges, manufacturers’ standard',
    ]);
    for (const { source } of told.published) expect(source.length).toBeGreaterThan(20);
  });

  it('tells of money only whom it may', () => {
    const figures = (money: boolean) =>
      sourcesPage(record, rollup, { money }).made.map(({ figure, opens }) => `${figure}: ${opens.to}`);
    expect(figures(true)).toContain('Money: costs.html');
    expect(figures(false).join()).not.toMatch(/Money|costs\.html/);
    expect(figures(false)).toContain('Hours of work: days.html');
  });
});

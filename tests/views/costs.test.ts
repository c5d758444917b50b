import { describe, expect, it } from 'vitest';
import type { CostLine, Grouping, Row } from '../../src/rollup/cost-lines.ts';
import { tablesOf } from '../../src/rollup/tables.ts';
import { costFigures } from '../../src/views/cost-figures.ts';
import { costLead, ledgerOf } from '../../src/views/costs.ts';
import { type LineRow, linePages, linesOfYear, linesPage } from '../../src/views/lines.ts';
import { otherRules, taxRows } from '../../src/views/rules-in-use.ts';
import { cents, minutes, sum, viewed } from './records.ts';

const { record, rollup } = viewed();
const GROUPINGS: Grouping[] = ['part', 'group', 'kind', 'work', 'person', 'vendor', 'month', 'choice'];

describe('a ledger', () => {
  it.each(GROUPINGS)('by %s sums to its total, down every column and along every row', (by) => {
    const { rows, total, kinds } = ledgerOf(rollup, by, record);
    expect(rows.length).toBeGreaterThan(1);
    expect(sum(rows.map((row) => cents(row.total.text)))).toBe(cents(total.total.text));
    expect(sum(rows.map((row) => cents(row.cost)))).toBe(cents(total.cost));
    expect(sum(rows.map((row) => minutes(row.time.text)))).toBe(minutes(total.time.text));
    kinds.forEach((_, i) => {
      const column = rows.map((row) => cents(row.kinds[i]?.text ?? ''));
      expect(sum(column)).toBe(cents(total.kinds[i]?.text ?? ''));
    });
    for (const row of kinds.length > 0 ? [...rows, total] : []) {
      expect(sum(row.kinds.map(({ text }) => cents(text)))).toBe(cents(row.total.text));
    }
    expect(cents(total.total.text)).toBe(rollup.total.charged);
  });

  it('says hours and labor as worked by hand', () => {
    const { rows, kinds } = ledgerOf(rollup, 'part', record);
    const cowl = rows.find(({ label }) => label === 'Cowl');
    // 3 h 30 m and 2 h at 85.00.
    expect(cowl?.time.text).toBe('5 h 30 m');
    expect(cowl?.kinds[kinds.findIndex(({ kind }) => kind === 'labour')]?.text).toBe('467.50');
  });

  it('has a column only for kinds that stand in the record', () => {
    expect(ledgerOf(rollup, 'part', record).kinds.map(({ name }) => name)).toEqual([
      'Labor',
      'Bought',
      'Freight',
      'Tax paid',
      'Handling',
      'Deposits',
      'Materials',
      'Tax charged',
    ]);
  });

  it('opens each figure to the lines of its row and kind, and a part to its page', () => {
    const { rows, kinds, total } = ledgerOf(rollup, 'part', record);
    const cowl = rows.find(({ label }) => label === 'Cowl');
    expect(cowl?.about).toBe('part/cowl.html');
    expect(cowl?.total.to).toBe('lines/part/cowl.html');
    expect(cowl?.time.to).toBe('lines/part/cowl.html#labour');
    const bought = kinds.findIndex(({ kind }) => kind === 'bought');
    expect(cowl?.kinds[bought]?.to).toBe('lines/part/cowl.html#bought');
    expect(total.kinds[bought]?.to).toBe('lines/kind/bought.html');
    expect(rows.at(-1)).toMatchObject({ label: 'The car as a whole', total: { to: 'lines/part/none.html' } });
    expect(rows.at(-1)?.about).toBeUndefined();
  });
});

describe('the lead of the costs page', () => {
  it('says spent, agreed, paid and deposits out', () => {
    // Agreed: 5,000 and 700. Paid: 400. Out: the deposit of 60 on the pump.
    expect(costLead(record, rollup)).toMatch(
      /^\$[\d.]+ is spent of the \$5,700\.00 agreed\. \$400\.00 has been paid\. \$60\.00 of deposits is still out\.$/,
    );
  });

  it('says that nothing has been paid', () => {
    const unpaid = viewed({ 'log/2025-04-07.md': '---\nby: tobias\n---\n' });
    expect(costLead(unpaid.record, unpaid.rollup)).toContain('Nothing has been paid yet.');
  });
});

describe('the figures of the costs page', () => {
  it('draw rows that come to their total, with what has no bar of its own', () => {
    for (const { by, unit, bars, rest, total } of costFigures(record, rollup)) {
      const read = unit === 'Hours' ? minutes : cents;
      expect([by, sum([...bars, ...(rest ? [rest] : [])].map(({ text }) => read(text)))]).toEqual([
        by,
        read(total),
      ]);
    }
  });

  it('keep months in order and put the rest by size', () => {
    const figures = costFigures(record, rollup);
    expect(figures.map(({ by }) => by)).toEqual(['part', 'kind', 'month', 'work']);
    const months = figures.find(({ by }) => by === 'month')?.bars.map(({ label }) => label);
    expect(months).toEqual(['March 2025', 'April 2025']);
    const work = figures.find(({ by }) => by === 'work')?.bars.map(({ label, text }) => `${label} ${text}`);
    expect(work).toEqual(['Metal 5 h 30 m', 'Shop 1 h 00 m', 'Assembly 0 h 45 m']);
  });

  it('say how much many small parts come to', () => {
    const hours = Array.from({ length: 20 }, (_, i) => `  - { part: p${i}, work: metal, time: ${i + 1} }\n`);
    const parts = Object.fromEntries(
      hours.map((_, i) => [`parts/p${i}.md`, `---\nname: Part ${i}\ngroup: Small\n---\n`]),
    );
    const many = viewed({ ...parts, 'log/2025-06-02.md': `---\nhours:\n${hours.join('')}---\n` });
    const [figure] = costFigures(many.record, many.rollup);
    expect(figure?.bars).toHaveLength(14);
    expect(figure?.caption).toContain(`The 9 others come to ${figure?.rest?.text}.`);
    expect(sum([...(figure?.bars ?? []), figure?.rest ?? { text: '' }].map(({ text }) => cents(text)))).toBe(
      many.rollup.total.charged,
    );
  });
});

describe('the lines behind a row', () => {
  it.each(GROUPINGS)('by %s come to the row, kind by kind', (by) => {
    for (const row of rollup.tables[by].rows) {
      const { groups, foot } = linesPage(by, row, record);
      for (const group of groups) {
        expect(sum(group.rows.map(({ charged }) => cents(charged)))).toBe(cents(group.foot.charged));
        expect(sum(group.rows.map(({ cost }) => cents(cost)))).toBe(cents(group.foot.cost));
        expect(sum(group.rows.map(({ time }) => minutes(time)))).toBe(minutes(group.foot.time));
      }
      expect(sum(groups.map((group) => cents(group.foot.charged)))).toBe(row.charged);
      expect(cents(foot.charged)).toBe(row.charged);
      expect(sum(groups.map(({ count }) => count))).toBe(row.lines.length);
    }
  });

  const [none] = rollup.tables.work.rows.filter(({ key }) => key === undefined);
  if (!none) throw new Error('some lines are no work');
  const earlier = { ...none.lines[0], day: '2024-12-31' } as CostLine;
  const table = tablesOf([earlier, ...none.lines], record).work;
  const long = table.rows[0] as Row;

  it('stand year by year, kind by kind, where they are too many for one page', () => {
    const { groups, years, foot, lead } = linesPage('work', long, record, none.lines.length);
    expect(lead).toMatch(/, year by year\.$/);
    expect(years.map(({ year, to, count }) => [year, to, count])).toEqual([
      ['2024', 'lines/work/none/2024.html', 1],
      ['2025', 'lines/work/none/2025.html', none.lines.length],
    ]);
    expect(groups.flatMap(({ rows }) => rows)).toEqual([]);
    for (const of of [...groups, { years, foot, count: long.lines.length }]) {
      for (const figure of ['charged', 'cost'] as const)
        expect(sum(of.years.map(({ sums }) => cents(sums[figure])))).toBe(cents(of.foot[figure]));
      expect(sum(of.years.map(({ sums }) => minutes(sums.time)))).toBe(minutes(of.foot.time));
      expect(sum(of.years.map(({ count }) => count))).toBe(of.count);
    }
  });

  it('stand on the page of their year, and all of them on one', () => {
    const { years } = linesPage('work', long, record, 1);
    const pages = years.map(({ year, sums, count }) => {
      const { groups, foot, title } = linesOfYear('work', long, year, record);
      expect(title).toBe(`${long.label}, ${year}`);
      expect(foot).toEqual(sums);
      const rows = groups.flatMap(({ rows }) => rows);
      expect(rows.length).toBe(count);
      return rows;
    });
    const whole = linesPage('work', long, record, long.lines.length);
    const sorted = (rows: readonly LineRow[]) => rows.map((row) => JSON.stringify(row)).sort();
    expect(sorted(pages.flat())).toEqual(sorted(whole.groups.flatMap(({ rows }) => rows)));
  });

  it('stay on one page where all are of one year', () => {
    expect(linePages(none, 1)).toEqual([]);
    expect(linePages(long, 1)).toEqual(['2024', '2025']);
    expect(linePages(long, long.lines.length)).toEqual([]);
  });

  it('name day, part, file and line', () => {
    const row = rollup.tables.kind.rows.find(({ key }) => key === 'labour');
    if (!row) throw new Error('there is labor');
    const [first, second] = linesPage('kind', row, record).groups[0]?.rows ?? [];
    // The hours stand in the third and fourth line of the file.
    expect(first).toMatchObject({
      day: 'March 3, 2025',
      dayPage: 'day/2025-03-03.html',
      text: 'paint off the top',
      part: 'Cowl',
      partPage: 'part/cowl.html',
      time: '3 h 30 m',
      charged: '297.50',
      place: 'log/2025-03-03.md:3',
    });
    expect(second).toMatchObject({
      part: 'The car as a whole',
      charged: '0.00',
      notes: 'no charge: our own sweeping',
      place: 'log/2025-03-03.md:4',
    });
    expect(second?.partPage).toBeUndefined();
  });
});

describe('the rules behind the sums', () => {
  it('say where and how each tax is rounded', () => {
    expect(taxRows(record)).toEqual([
      {
        name: 'Sales tax',
        rate: '7%',
        who: 'charged to the owner',
        on: 'bought things',
        rounded: 'half up, on each line',
        from: 'January 1, 2025',
      },
      {
        name: 'County levy',
        rate: '0.25%',
        who: 'charged to the owner',
        on: 'bought things',
        rounded: 'half to even, once on the statement’s sum',
        from: 'January 1, 2025',
      },
    ]);
  });

  it('say step, handling and materials', () => {
    expect(otherRules(record)).toEqual([
      'Charged time is rounded up to 0 h 15 m.',
      'Handling on bought things: 10%, from January 1, 2025.',
      'Shop materials: $3.50 for each charged hour, at most $600.00 in all, from January 1, 2025.',
    ]);
  });
});

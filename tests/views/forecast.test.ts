// Sums by hand beside each; the shop charges 85.00 an hour, without tax and handling unless a test adds them.
import { describe, expect, it } from 'vitest';
import { rollUp } from '../../src/rollup/roll-up.ts';
import type { FigureTable } from '../../src/views/figure-table.ts';
import { finishChart, finishCurve } from '../../src/views/finish-chart.ts';
import { forecastOf, forecastPage } from '../../src/views/forecast.ts';
import { forecastText } from '../../src/views/forecast-text.ts';
import { chanceText, percentText } from '../../src/views/forecast-words.ts';
import { plain } from '../../src/views/live/said.ts';
import { plainTable, wrapped } from '../../src/views/plain-text.ts';
import { recordOf } from '../rollup/records.ts';
import { cents, minutes, sum } from './records.ts';

const cowl = (...planned: string[]) => ({
  'parts/cowl.md': `---\nname: Cowl\ngroup: Body panels\n${planned.length > 0 ? `planned:\n${planned.map((line) => `  - { ${line} }\n`).join('')}` : ''}---\n`,
});
const agreed = (amount: string) => ({
  'car.md': `---\nname: Aldermere Fourteen\nbuilt: "1934"\nopened: 2025-02-03\nunits: inch\ncurrency: USD\n${amount && `agreed: [{ on: 2025-02-03, amount: ${amount} }]\n`}---\n`,
});
const DAY = {
  'log/2025-03-03.md': `---
hours:
  - { part: cowl, line: strip, work: metal, time: 2 }
  - { part: frame, work: metal, time: 1h 30m }
---
`,
};
const STRIP = 'line: strip, do: Strip it, work: metal, hours: 3';
const DENTS = 'line: dents, do: Raise the dents, work: metal, hours: [40, 60, 110]';

function told(texts: Record<string, string>, corrected = true) {
  const record = recordOf({ ...DAY, ...texts });
  const rollup = rollUp(record);
  return { record, rollup, page: forecastPage(record, rollup, { draws: 4_000, corrected }) };
}
const cells = ({ rows }: FigureTable) => rows.map((row) => [row.head, ...row.cells.map(({ text }) => text)]);

describe('the sentence of the forecast', () => {
  it('says spent, likely, eight times in ten, and the chance of what was agreed', () => {
    const { page } = told({ ...cowl(STRIP, DENTS), ...agreed('5700') });
    // 3 h 30 m at 85.00. The finish scatters over thousands, so that it is known to a hundred.
    expect(plain(page.lead)).toMatch(
      /^\$297\.50 is spent; the finish is likely at \$5,\d00, eight times in ten under \$[67],\d00, and within the \$5,700 agreed \d\d times in a hundred\.$/,
    );
    expect(page.lead.filter((piece) => typeof piece !== 'string')).toHaveLength(2);
  });

  it('keeps every digit of a certain finish: 3 h 30 m spent and 1 h left', () => {
    expect(plain(told({ ...cowl(STRIP), ...agreed('400') }).page.lead)).toBe(
      '$297.50 is spent; the finish comes to $382.50, within the $400 agreed.',
    );
    expect(plain(told({ ...cowl(STRIP), ...agreed('380') }).page.lead)).toContain('over the $380 agreed.');
    expect(plain(told({ ...cowl(STRIP), ...agreed('') }).page.lead)).toBe(
      '$297.50 is spent; the finish comes to $382.50.',
    );
  });

  it('says that nothing is left', () => {
    expect(plain(told({ ...cowl(), 'log/2025-03-03.md': '---\nby: tobias\n---\n' }).page.lead)).toBe(
      '$0.00 is spent. Nothing that was planned is left.',
    );
    expect(plain(told(cowl('line: strip, do: Strip it, work: metal')).page.lead)).toBe(
      '$297.50 is spent. What is left of the planned work has no estimate.',
    );
  });

  it('never says that a chance is certain', () => {
    expect([1, 0.996, 0.97, 0.01, 0.004, 0].map(chanceText)).toEqual([
      'more than 99 times in a hundred',
      'more than 99 times in a hundred',
      '97 times in a hundred',
      'once in a hundred times',
      'less than once in a hundred times',
      'less than once in a hundred times',
    ]);
    expect([0, 0.004, 0.07].map(percentText)).toEqual(['0%', 'less than 1%', '7%']);
  });
});

describe('the figures', () => {
  it('stand at four chances, spent above them', () => {
    const { page } = told({ ...cowl(STRIP), ...agreed('400') });
    expect(cells(page.percents.money)).toEqual([
      ['Spent', '$297.50'],
      ['Left', '$85.00', '$85.00', '$85.00', '$85.00'],
      ['Finish', '$382.50', '$382.50', '$382.50', '$382.50'],
    ]);
    expect(cells(page.percents.hours)).toEqual([
      ['Spent', '3 h 30 m'],
      ['Left', '1 h', '1 h', '1 h', '1 h'],
      ['Finish', '4 h 30 m', '4 h 30 m', '4 h 30 m', '4 h 30 m'],
    ]);
    expect(page.against.map(plain)).toEqual([
      'Eight times in ten $17.50 or more of the $400 agreed is left over.',
    ]);
  });

  it('rise from P10 to P90, and the finish is spent and left', () => {
    const { page } = told(cowl(STRIP, DENTS));
    for (const [name, ...figures] of cells(page.percents.money).slice(1)) {
      const amounts = figures.map((text) => cents(text.replace('$', '')));
      expect([name, amounts]).toEqual([name, amounts.toSorted((a, b) => a - b)]);
    }
  });

  it('stand as written beside as corrected once five lines are finished', () => {
    const done = Array.from({ length: 5 }, (_, i) => `line: d${i}, do: Do it, work: metal, hours: 10`);
    const logs = Object.fromEntries(
      done.map((_, i) => [
        `log/2025-04-0${i + 1}.md`,
        `---\nhours: [{ part: cowl, line: d${i}, work: metal, time: 12 }]\nfinished: [cowl/d${i}]\n---\n`,
      ]),
    );
    const texts = { ...cowl(...done, 'line: next, do: Next, work: metal, hours: 10'), ...logs };
    const { page } = told({ ...texts, 'log/2025-03-03.md': '---\nby: tobias\n---\n' });
    // 10 h times the root of 1.2 are 10 h 57 m, said to the quarter hour.
    expect(cells(page.percents.hours).map((row) => row.slice(0, 2))).toEqual([
      ['Spent', '60 h 00 m'],
      ['Left, corrected', '11 h'],
      ['Finish, corrected', '71 h'],
      ['Left, as written', '10 h'],
      ['Finish, as written', '70 h'],
    ]);
    expect(page.experience[0]).toBe(
      'Hours: 5 finished lines, the middle one at 1.20 of its likely figure. What is left of a plan is taken at 1.10 of what was written.',
    );
    const bare = told({ ...texts, 'log/2025-03-03.md': '---\nby: tobias\n---\n' }, false).page;
    expect(cells(bare.percents.hours).map(([name]) => name)).toEqual(['Spent', 'Left', 'Finish']);
    expect(bare.experience[0]).toContain('Nothing is corrected by that here.');
    expect(plain(page.earned)).toBe(
      'Planned lines were expected to take 60 h in all. What is done of them was expected to take 50 h and took 60 h 00 m: 0.83 hours earned for each hour worked. At that pace they come to 72 h in all.',
    );
  });

  it('say how much has to be held back', () => {
    const { page, record, rollup } = told({ ...cowl(DENTS), ...agreed('5700') });
    const { contingency, likelyFinish, finish } = forecastOf(record, rollup, { draws: 4_000 });
    // Spent 297.50, and 60 h at 85.00.
    expect(likelyFinish).toBe(29_750 + 510_000);
    expect(contingency).toBeCloseTo(finish.money.p80 - likelyFinish, 6);
    expect(plain(page.against[1] ?? [])).toContain('come to $5,400;');
    expect(plain(page.against[0] ?? [])).toMatch(
      /^To end within what was agreed eight times in ten, \$[\d,]+ would have to be added to the \$5,700\.$/,
    );
  });
});

describe('the lines of the forecast', () => {
  it('say their state, and plainly what has run over', () => {
    const { page } = told({
      ...cowl(
        'line: strip, do: Strip it, work: metal, hours: [1, 1, 2]',
        'line: fit, do: Fit it, work: metal, hours: 4, spend: 30',
        'line: wire, do: Wire it, work: metal, hours: 2',
      ),
      'log/2025-04-01.md': `---
bought: [{ what: Bolts, from: keld, part: cowl, line: fit, price: 45 }]
left: [{ line: cowl/wire, hours: [1, 2, 3] }]
---
`,
    });
    expect(page.left.rows.map(({ head, to, notes }) => [head, to, ...(notes ?? [])])).toEqual([
      [
        'Strip it',
        'part/cowl.html',
        'Cowl',
        'in hand; past its high end: 2 h 00 m worked, 2 h 00 m at most foreseen',
      ],
      [
        'Fit it',
        'part/cowl.html',
        'Cowl',
        'in hand; past its high end: $45.00 paid for things bought, $30.00 at most foreseen',
      ],
      ['Wire it', 'part/cowl.html', 'Cowl', 'as written April 1, 2025'],
    ]);
  });

  it('name the five that carry most of the spread, the widest first', () => {
    const lines = [40, 10, 80, 20, 60, 30].map(
      (wide, i) =>
        `line: l${i}, do: Line of ${wide}, work: metal, hours: [10, ${10 + wide / 2}, ${10 + wide}]`,
    );
    const { rows } = told(cowl(...lines)).page.widest;
    expect(rows.map(({ head }) => head)).toEqual([80, 60, 40, 30, 20].map((wide) => `Line of ${wide}`));
    expect(
      sum(rows.map(({ cells: [, share] }) => Number.parseInt(share?.text ?? '', 10))),
    ).toBeLessThanOrEqual(100);
  });

  it('say what the forecast misses', () => {
    const { page } = told({
      ...cowl('line: fit, do: Fit it, work: metal'),
      'choices/paint.md': `---
question: Cellulose, or enamel?
part: cowl
asked: 2025-03-01
options:
  - { option: cellulose, way: other, lines: [{ do: Spray it, work: metal, hours: 5 }] }
  - { option: enamel, way: other, lines: [{ do: Brush it, work: metal, hours: 5 }] }
---
`,
    });
    expect(page.missing).toEqual([
      '“Cellulose, or enamel?” is not in the forecast: no planned line is named under `settles` in its file.',
      'Cowl: Fit it. It is planned without an estimate, and counts as nothing.',
    ]);
  });
});

describe('work that was never planned', () => {
  it('comes to its total, by part and line by line', () => {
    const { table, lines, text } = told(cowl(STRIP)).page.unplanned;
    // 1 h 30 m on the frame at 85.00, beside 2 h planned: 43% of all; 75 to 100 of what is left, 85.00.
    expect(cells(table)).toEqual([['Frame', '1 h 30 m', '127.50']]);
    const [time, charged] = table.foot?.cells ?? [];
    expect([minutes(time?.text ?? ''), cents(charged?.text ?? '')]).toEqual([
      90,
      sum(lines.map((line) => cents(line.charged))),
    ]);
    expect(plain(text)).toBe(
      '$127.50 and 1 h 30 m went into what no planned line and no choice names: 43% of all that was charged. If what is left draws as much along with it, about $64 comes on top. That is in none of the figures above.',
    );
  });
});

describe('the curve of the finish', () => {
  it('rises through all its points, with what was agreed in sight', () => {
    const { record, rollup } = told({ ...cowl(DENTS), ...agreed('5700') });
    const curve = finishCurve(forecastOf(record, rollup, { draws: 4_000 }));
    if (!curve) throw new Error('the finish is uncertain');
    const { data } = finishChart(curve, record.currency, 720).config;
    const points = data.datasets[0]?.data as { x: number; y: number }[];
    expect(points.map(({ y }) => y)).toEqual(Array.from({ length: 99 }, (_, i) => i + 1));
    expect(points.map(({ x }) => x)).toEqual(points.map(({ x }) => x).toSorted((a, b) => a - b));
  });

  it('is not drawn of a certain finish', () => {
    const { record, rollup } = told(cowl(STRIP));
    expect(finishCurve(forecastOf(record, rollup, { draws: 4_000 }))).toBeUndefined();
  });
});

describe('the forecast as text', () => {
  it('says everything that the page says, within eighty columns', () => {
    const { page, record } = told({ ...cowl(STRIP, DENTS), ...agreed('5700') });
    const text = forecastText(page, record.car.name);
    expect(text.split('\n').filter((line) => line.length > 80)).toEqual([]);
    const flat = text.replaceAll(/\s+/g, ' ');
    for (const said of [page.lead, ...page.against, page.earned, page.unplanned.text]) {
      expect(flat).toContain(plain(said));
    }
    for (const said of [...page.fine, ...page.experience]) expect(flat).toContain(said.trim());
    for (const table of [page.percents.money, page.percents.hours, page.left, page.waits, page.widest]) {
      for (const row of table.rows) for (const { text: figure } of row.cells) expect(flat).toContain(figure);
    }
  });

  it('breaks words between lines, and sets figures to the right of their column', () => {
    expect(wrapped('one two three', 7)).toEqual(['one two', 'three']);
    expect(
      plainTable({
        caption: 'Left',
        head: 'Line',
        columns: [{ head: 'Hours' }],
        rows: [{ head: 'Fit', notes: ['in hand'], cells: [{ text: '4 h' }] }],
        foot: { head: 'All', cells: [{ text: '4 h' }] },
      }).split('\n'),
    ).toEqual([
      'Left',
      '',
      'Line       Hours',
      '----------------',
      'Fit          4 h',
      '  in hand',
      '----------------',
      'All          4 h',
    ]);
  });
});

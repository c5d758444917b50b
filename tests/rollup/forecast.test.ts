// Sums are worked out by hand beside each; the plain shop charges 85.00 an hour, no tax and no handling.
import { describe, expect, it } from 'vitest';
import { normalCdf, normalQuantile } from '../../src/estimate/uncertain/normal.ts';
import { pertMean } from '../../src/estimate/uncertain/pert.ts';
import { earnedHours } from '../../src/rollup/ahead/earned.ts';
import { type ForecastOptions, forecastOf } from '../../src/rollup/ahead/forecast.ts';
import { unplannedOf } from '../../src/rollup/ahead/unplanned.ts';
import { heldUp } from '../../src/rollup/ahead/waits.ts';
import { orderOfWork } from '../../src/rollup/order-of-work.ts';
import { rollUp } from '../../src/rollup/roll-up.ts';
import { recordOf, shopText } from './records.ts';

const cowl = (...planned: string[]) => ({
  'parts/cowl.md': `---
name: Cowl
group: Body panels
${planned.length > 0 ? `planned:\n${planned.map((line) => `  - { ${line} }\n`).join('')}` : ''}---
`,
});
const day = (on: string, text: string) => ({ [`log/${on}.md`]: `---\n${text}\n---\n` });
const worked = (line: string, time: string) =>
  `hours:\n  - { part: cowl, line: ${line}, work: metal, time: ${time} }`;
const STRIP = 'line: strip, do: Strip it, work: metal, hours: 3';
const LEAD = 'line: lead, do: Fill the low spots, work: metal, hours: 6';
const DENTS = 'line: dents, do: Raise the dents, work: metal, hours: [6, 9, 16]';

function ahead(texts: Record<string, string>, options: ForecastOptions = {}) {
  const record = recordOf(texts);
  const rollup = rollUp(record);
  return { record, rollup, forecast: forecastOf(record, rollup, { draws: 2_000, ...options }) };
}

describe('what is left', () => {
  it('of certain lines is their sum: 9 h at 85.00', () => {
    const { forecast } = ahead(cowl(STRIP, LEAD));
    const { hours, money } = forecast.left;
    expect([hours.p10, hours.p90]).toEqual([9, 9]);
    expect([money.p10, money.p50, money.p90, forecast.likelyFinish]).toEqual([
      76_500, 76_500, 76_500, 76_500,
    ]);
    expect(forecast.contingency).toBe(0);
    // Agreed: 5,000.00 and 700.00.
    expect([forecast.within?.chance, forecast.spare]).toEqual([1, 570_000 - 76_500]);
  });

  it('is nothing where nothing is planned, and what is spent is the finish', () => {
    const { forecast } = ahead({
      ...cowl(),
      ...day('2025-03-03', 'hours:\n  - { part: cowl, work: metal, time: 2 }'),
    });
    expect([forecast.left.money.p90, forecast.finish.money.p10, forecast.spent.hours]).toEqual([
      0, 17_000, 2,
    ]);
    expect(forecast.lines).toEqual([]);
  });

  it('is nothing of a finished line, whatever it took', () => {
    const { forecast } = ahead({
      ...cowl(STRIP, LEAD),
      ...day('2025-03-03', `${worked('strip', '1')}\nfinished: [cowl/strip]`),
    });
    expect(forecast.lines.map(({ id }) => id)).toEqual(['cowl/lead']);
    expect(forecast.finish.money.p50).toBe(7 * 8_500);
  });

  it('of a line in hand is its plan less what is worked and bought, with tax and handling on what is left', () => {
    const shop = shopText(`handling:
  - { from: 2025-01-01, kind: bought, share: 10% }
  - { from: 2025-01-01, kind: outside, share: 8% }
materials:
  - { from: 2025-01-01, per-hour: 2.00, of-labour: 10% }
tax:
  - { name: Use tax, rate: 7%, side: paid, on: [bought], from: 2025-01-01, by: line }
  - { name: Sales tax, rate: 5%, side: charged, on: [bought, labour, materials], from: 2025-01-01, by: line }
`);
    const bought = 'bought:\n  - { what: Sheet, from: millrace, part: cowl, line: strip, price: 30 }';
    const { forecast } = ahead({
      'shop.md': shop,
      ...cowl(`${STRIP}, spend: 100, outside: 200`),
      ...day('2025-03-03', `${worked('strip', '1')}\n${bought}`),
    });
    // 2 h: 85.00 x 1.05, and (2.00 + 8.50) x 1.05 of materials. 70 x 1.07 x 1.1 x 1.05. 200 x 1.08.
    const left = 2 * (8_500 * 1.05 + 1_050 * 1.05) + 7_000 * 1.07 * 1.1 * 1.05 + 20_000 * 1.08;
    expect(forecast.left.hours.p50).toBeCloseTo(2, 9);
    expect(forecast.left.money.p50).toBeCloseTo(left, 6);
    expect(forecast.lines[0]?.money.mean).toBeCloseTo(left, 6);
    expect(forecast.lines[0]).toMatchObject({ begun: true, over: [], since: undefined });
  });

  it('is what the writer last said, less what was logged on later days', () => {
    const { forecast } = ahead({
      ...cowl(`${STRIP}, spend: 100`),
      ...day('2025-03-03', `${worked('strip', '2')}\nleft: [{ line: cowl/strip, hours: 5 }]`),
      ...day('2025-03-04', worked('strip', '1h 30m')),
    });
    // 5 - 1.5 h; what is to be bought keeps its plan.
    expect(forecast.left.hours.p50).toBe(3.5);
    expect(forecast.left.money.p50).toBeCloseTo(3.5 * 8_500 + 10_000, 6);
    expect(forecast.lines[0]?.since).toBe('2025-03-03');
  });

  it('of a line past its high end is said plainly, and is not nothing', () => {
    const { forecast } = ahead(
      { ...cowl(DENTS), ...day('2025-03-03', worked('dents', '18')) },
      { draws: 20_000 },
    );
    expect(forecast.lines[0]?.over).toEqual([{ of: 'hours', spent: 18, high: 16 }]);
    // The upper half of a log-normal about 18 with the deviation of a quarter: E exp(t|z|) = 2 exp(t^2/2) F(t).
    const mean = 18 * (2 * Math.exp(0.25 ** 2 / 2) * normalCdf(0.25) - 1);
    expect(forecast.lines[0]?.hours.mean).toBeCloseTo(mean, 5);
    expect(forecast.lines[0]?.hours.p90).toBeCloseTo(18 * (Math.exp(0.25 * normalQuantile(0.95)) - 1), 5);
    expect(forecast.likelyFinish).toBe(18 * 8_500);
  });

  it('without an estimate is named; without a rate its hours count and its money does not', () => {
    const { forecast } = ahead({
      'shop.md': shopText('', '  - { from: 2025-01-01, rate: 85.00, work: metal }'),
      ...cowl(
        STRIP,
        'line: paint, do: Paint it, work: paint, hours: 4',
        'line: fit, do: Fit it, work: assembly',
      ),
    });
    expect(forecast.unestimated.map(({ id }) => id)).toEqual(['cowl/fit']);
    expect(forecast.noRate).toEqual(['paint']);
    expect([forecast.left.hours.p50, forecast.left.money.p50]).toEqual([7, 3 * 8_500]);
  });

  it('keeps to a cap on materials', () => {
    const { forecast } = ahead({
      'shop.md': shopText('materials:\n  - { from: 2025-01-01, per-hour: 10.00, cap: 50 }\n'),
      ...cowl(STRIP, LEAD),
      ...day('2025-03-03', `${worked('strip', '3')}\nfinished: [cowl/strip]`),
    });
    // 30.00 of 50.00 is used; 6 h at 10.00 would be 60.00, and 20.00 may pass.
    expect(forecast.materials).toBeCloseTo(1 / 3, 9);
    expect(forecast.left.money.p50).toBeCloseTo(6 * 8_500 + 2_000, 6);
  });

  it('is worked out once, and comes out the same again', () => {
    const texts = cowl(DENTS);
    const { record, rollup, forecast } = ahead(texts);
    expect(forecastOf(record, rollup, { draws: 2_000 })).toBe(forecast);
    expect(ahead(texts).forecast.quantiles).toEqual(forecast.quantiles);
  });

  it('does not hang on the order of the parts', () => {
    const texts = { ...cowl(DENTS), 'parts/door.md': cowl(LEAD, DENTS)['parts/cowl.md'] };
    const turned = rollUp(recordOf(texts, (names) => names.toReversed()));
    const found = forecastOf(
      recordOf(texts, (names) => names.toReversed()),
      turned,
      { draws: 2_000 },
    );
    expect(found.quantiles).toEqual(ahead(texts).forecast.quantiles);
  });
});

describe('the correction from finished lines', () => {
  const done = Array.from({ length: 5 }, (_, i) => `line: done-${i}, do: Do it, work: metal, hours: 10`);
  const texts = {
    ...cowl(...done, 'line: next, do: The next, work: metal, hours: 10'),
    ...Object.assign(
      {},
      ...done.map((_, i) =>
        day(`2025-03-0${i + 1}`, `${worked(`done-${i}`, '12')}\nfinished: [cowl/done-${i}]`),
      ),
    ),
  };

  it('is shrunk toward none by their number: 1.2 in each of five lines gives the root of 1.2', () => {
    const { forecast } = ahead(texts);
    const { n, used, median } = forecast.experience.hours;
    expect([n, used, median]).toEqual([5, true, 1.2]);
    expect(forecast.left.hours.p50).toBeCloseTo(10 * Math.sqrt(1.2), 9);
    // The sum of likely figures stays as written.
    expect(forecast.likelyFinish).toBe(70 * 8_500);
    expect(forecast.experience.money).toMatchObject({ n: 0, used: false, median: null });
  });

  it('can be left off', () => {
    const { forecast } = ahead(texts, { corrected: false });
    expect(forecast.experience.hours).toMatchObject({ n: 5, used: false });
    expect(forecast.left.hours.p50).toBe(10);
  });

  it('sets what was earned beside what it took', () => {
    const { record, rollup, forecast } = ahead(texts, { corrected: false });
    // Planned 60 h; 50 h earned in 60 h worked; at that pace the whole takes 72 h.
    const { planned, earned, actual, index, whole } = earnedHours(record, rollup, forecast.experience);
    expect([planned, earned, actual]).toEqual([60, 50, 60]);
    expect(index).toBeCloseTo(50 / 60, 12);
    expect(whole).toBeCloseTo(72, 9);
  });

  it('gives a line in hand the share of its plan that is done', () => {
    const { record, rollup, forecast } = ahead({
      ...cowl(DENTS),
      ...day('2025-03-03', worked('dents', '3')),
    });
    // 3 h of a mean of 29/3 h are worked before the low end, so 3 h are earned.
    const { earned } = earnedHours(record, rollup, forecast.experience);
    expect(pertMean({ low: 6, likely: 9, high: 16 })).toBeCloseTo(29 / 3, 12);
    expect(earned).toBeCloseTo(3, 6);
  });
});

describe('a choice in the forecast', () => {
  const choice = (more: string) => ({
    'choices/corners.md': `---
question: New corners, or patches?
part: cowl
asked: 2025-03-01
options:
  - { option: patch, way: repair, lines: [{ do: Patch them, work: metal, hours: 10 }] }
  - { option: new, way: new-made, lines: [{ buy: Corners, price: 500, from: millrace }], mark: NB 2025 }
${more}---
`,
  });
  const decided =
    'settles: [lead]\ndecided: { option: patch, on: 2025-03-05, by: the owner, reason: Sound. }\n';

  it('stands for the lines that it settles while it is open, each way equally likely', () => {
    const { forecast } = ahead({ ...cowl(STRIP, LEAD), ...choice('settles: [lead]\n') });
    expect(forecast.lines.map(({ id }) => id)).toEqual(['cowl/strip']);
    const [open] = forecast.choices;
    expect(open).toMatchObject({ lines: ['cowl/lead'], money: { p10: 50_000, p90: 85_000 } });
    expect(open?.chosen).toBeUndefined();
    // Half of the draws each way, within four standard errors of 2,000 draws.
    const half = 4 * Math.sqrt(0.25 / 2_000);
    expect(Math.abs((open?.money.mean ?? 0) - 67_500)).toBeLessThan(35_000 * half);
    expect(Math.abs((open?.hours.mean ?? 0) - 5)).toBeLessThan(10 * half);
    // 3 h at 85.00, and the mean of both ways.
    expect(forecast.likelyFinish).toBe(25_500 + 67_500);
    expect(open?.share).toBeCloseTo(1, 9);
  });

  it('draws the same whichever option is written first', () => {
    const texts = { ...cowl(LEAD), ...choice('settles: [lead]\n') };
    const written = texts['choices/corners.md'];
    const [first = '', second = ''] = written.split('\n').filter((line) => line.startsWith('  - { option'));
    const turned = written.replace(`${first}\n${second}`, `${second}\n${first}`);
    expect(ahead({ ...texts, 'choices/corners.md': turned }).forecast.quantiles).toEqual(
      ahead(texts).forecast.quantiles,
    );
    expect(turned).not.toBe(written);
  });

  it('that names no line is named, and the lines count as planned', () => {
    const { forecast } = ahead({ ...cowl(STRIP, LEAD), ...choice('') });
    expect(forecast.uncounted).toMatchObject([{ choice: { id: 'corners' }, why: 'no line named' }]);
    expect(forecast.left.money.p50).toBe(9 * 8_500);
  });

  it('counts with the option decided on until its lines are worked on', () => {
    const texts = { ...cowl(LEAD), ...choice(decided) };
    const fresh = ahead(texts).forecast;
    expect(fresh.choices).toMatchObject([{ chosen: 'patch' }]);
    expect([fresh.left.hours.p10, fresh.left.money.p90]).toEqual([10, 85_000]);
    // Hours before the decision, such as a trial, leave it so; then the line speaks: 6 h less 1 and 2.
    const trial = ahead({ ...texts, ...day('2025-03-04', worked('lead', '1')) }).forecast;
    expect(trial.left.hours.p50).toBe(10);
    const begun = ahead({
      ...texts,
      ...day('2025-03-04', worked('lead', '1')),
      ...day('2025-03-06', worked('lead', '2')),
    }).forecast;
    expect(begun.choices).toEqual([]);
    expect(begun.left.hours.p50).toBe(3);
    const stated = ahead({
      ...texts,
      ...day('2025-03-05', 'left: [{ line: cowl/lead, hours: 4 }]'),
    }).forecast;
    expect(stated.left.hours.p50).toBe(4);
  });

  it('counts no more once its lines are finished, or it is withdrawn', () => {
    const finished = ahead({
      ...cowl(LEAD),
      ...choice('settles: [lead]\n'),
      ...day('2025-03-06', `${worked('lead', '2')}\nfinished: [cowl/lead]`),
    }).forecast;
    expect([finished.choices, finished.uncounted, finished.left.money.p90]).toEqual([[], [], 0]);
    const withdrawn = ahead({
      ...cowl(LEAD),
      ...choice('settles: [lead]\nwithdrawn: { on: 2025-03-05, reason: Both were sound. }\n'),
    }).forecast;
    expect([withdrawn.choices, withdrawn.left.hours.p50]).toEqual([[], 6]);
  });
});

describe('work that was never planned', () => {
  it('is what names no planned line and no choice, by part, against what was planned', () => {
    const { rollup } = ahead({
      ...cowl(STRIP),
      ...day(
        '2025-03-03',
        `hours:
  - { part: cowl, line: strip, work: metal, time: 3 }
  - { part: cowl, work: metal, time: 1 }
  - { part: frame, work: metal, time: 30m }
bought:
  - { what: Pump in exchange, from: keld, part: frame, price: 8.50, deposit: 60 }`,
      ),
    });
    const { total, share, perPlanned, parts } = unplannedOf(rollup);
    // 85.00, and 42.50 with 8.50; the deposit comes back. Planned: 255.00.
    expect(total.charged).toBe(13_600);
    expect(parts.map(({ part, total: of }) => [part, of.charged, of.minutes])).toEqual([
      ['cowl', 8_500, 60],
      ['frame', 5_100, 30],
    ]);
    expect(share).toBeCloseTo(136 / 391, 12);
    expect(perPlanned).toBeCloseTo(136 / 255, 12);
  });

  it('is nothing in an empty record', () => {
    expect(unplannedOf(ahead(cowl()).rollup)).toMatchObject({ share: 0, perPlanned: 0, parts: [] });
  });
});

describe('what holds up what is left', () => {
  it('counts each line once, the hours of a choice with its first line', () => {
    const { record, rollup, forecast } = ahead({
      ...cowl(
        STRIP,
        `${LEAD}, after: [strip]`,
        'line: paint, do: Paint it, work: metal, hours: 4, after: [lead]',
      ),
      'choices/paint.md': `---
question: Cellulose, or enamel?
part: cowl
asked: 2025-03-01
settles: [paint]
options:
  - { option: cellulose, way: other, lines: [{ do: Spray it, work: metal, hours: 5 }] }
  - { option: enamel, way: other, lines: [{ do: Brush it, work: metal, hours: 5 }] }
---
`,
    });
    expect(heldUp(forecast, orderOfWork(record, rollup))).toEqual([
      { for: 'now', lines: ['cowl/strip'], hours: 3 },
      { for: 'word', lines: ['cowl/paint'], hours: 5 },
      { for: 'work', lines: ['cowl/lead'], hours: 6 },
    ]);
  });
});

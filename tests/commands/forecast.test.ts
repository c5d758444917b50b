import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { openFolder } from '../../src/disk/open-folder.ts';
import { rollUp } from '../../src/rollup/roll-up.ts';
import { forecastPage } from '../../src/views/forecast.ts';
import { plain } from '../../src/views/live/said.ts';
import { demoCopy, npmRun } from './run.ts';

describe('npm run forecast', () => {
  it('prints the figures of the page, the same at every run', async () => {
    const [first, again] = await Promise.all([npmRun('forecast'), npmRun('forecast', ['content'])]);
    expect([first.code, first.err, again.out]).toEqual([0, '', first.out]);
    const { record } = await openFolder('content');
    if (!record) throw new Error('the demo opens');
    const page = forecastPage(record, rollUp(record));
    const flat = first.out.replaceAll(/\s+/g, ' ');
    expect(flat).toContain(plain(page.lead));
    for (const { head, cells } of [...page.percents.money.rows, ...page.percents.hours.rows]) {
      expect(flat).toContain([head, ...cells.map(({ text }) => text)].join(' '));
    }
    expect(first.out.split('\n').filter((line) => line.length > 80)).toEqual([]);
  });

  it('leaves out what finished lines teach when asked', async () => {
    const { code, out } = await npmRun('forecast', ['--as-written']);
    expect(code).toBe(0);
    expect(out).toContain('Nothing is corrected by that here.');
    expect(out).not.toContain('corrected  ');
  });

  it('says what is wrong with the record, and forecasts nothing', async () => {
    const folder = await demoCopy();
    await writeFile(
      join(folder, 'log/2025-11/2025-11-21.md'),
      '---\nhours: [{ part: cowl, time: 2x }]\n---\n',
    );
    const { code, out, err } = await npmRun('forecast', [], folder);
    expect([code, out]).toEqual([1, '']);
    expect(err).toContain('Unexpected `2x`');
  });

  it('says how it is used', async () => {
    const { code, err } = await npmRun('forecast', ['--as-wrote']);
    expect(code).toBe(2);
    expect(err).toContain('Use: npm run --silent forecast -- [--as-written] [folder].');
  });
});

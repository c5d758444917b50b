import { describe, expect, it } from 'vitest';
import { progress, progressText } from '../../src/photos/progress.ts';
import { eachInTurn, room } from '../../src/photos/turns.ts';

describe('the bar', () => {
  it('says what is done, what is left, and how long that takes', () => {
    // 1,200 in 4 minutes are 300 a minute: 1,800 more take 6.
    expect(progressText(1200, 3000, 240_000, 80)).toBe(
      'Photos ████████████░░░░░░░░░░░░░░░░░░ 1200 of 3000, 1800 left, about 6 min',
    );
    expect(progressText(3, 4, 3000, 80)).toMatch(/ 3 of 4, 1 left, about 1 s$/);
  });

  it.each([79, 40, 20, 5, 1])('stays within a terminal %i wide', (columns) => {
    expect(progressText(7, 3000, 1000, columns).length).toBeLessThan(columns);
  });

  it('is drawn in a terminal alone, ten times a second at most, and is wiped', () => {
    const drawn: string[] = [];
    const write = (text: string) => drawn.push(text);
    let time = 0;
    const run = (isTTY: boolean) => {
      const bar = progress(100, { isTTY, columns: 80, write }, () => time);
      for (let i = 0; i < 100; i++) {
        time += 10;
        bar.step();
      }
      bar.end();
    };
    run(false);
    expect(drawn).toEqual([]);
    run(true);
    expect(drawn.length).toBeLessThanOrEqual(12);
    expect(drawn.at(-2)).toContain('100 of 100, 0 left');
    expect(drawn.at(-1)).toBe('\r\x1b[2K');
  });
});

describe('work at once', () => {
  it('is bounded, and all of it is done', async () => {
    let now = 0;
    let most = 0;
    const done: number[] = [];
    await eachInTurn([...Array(50).keys()], 3, async (n) => {
      now += 1;
      most = Math.max(most, now);
      await new Promise((go) => setTimeout(go, n % 4));
      now -= 1;
      done.push(n);
    });
    expect(most).toBe(3);
    expect(done.toSorted((a, b) => a - b)).toEqual([...Array(50).keys()]);
  });

  it('waits until its share of the room is free; what is too large has it alone', async () => {
    const inside = room(10);
    let full = 0;
    let most = 0;
    const shares = [4, 4, 4, 25, 1, 10, 3];
    const seen: number[] = [];
    await Promise.all(
      shares.map((share) =>
        inside(share, async () => {
          full += Math.min(share, 10);
          most = Math.max(most, full);
          await new Promise((go) => setTimeout(go, 2));
          full -= Math.min(share, 10);
          seen.push(share);
        }),
      ),
    );
    expect(most).toBeLessThanOrEqual(10);
    expect(seen).toEqual(shares);
    await expect(inside(2, () => Promise.reject(new Error('no')))).rejects.toThrow('no');
    expect(await inside(10, async () => 'free again')).toBe('free again');
  });
});

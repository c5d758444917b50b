import { describe, expect, it } from 'vitest';
import { fileProgress, fileProgressText } from '../../src/handover/progress.ts';

describe('the bar of files', () => {
  it('says what is done, what is left, and about how long', () => {
    // 60 done in 1 s of 300: 240 more take 4 s.
    expect(fileProgressText(60, 300, 1000, 80)).toBe(
      `Files ${'█'.repeat(6)}${'░'.repeat(24)} 60 of 300, 240 left, about 4 s`,
    );
    expect(fileProgressText(1, 3, 90_000, 20)).toHaveLength(19);
  });

  it('is drawn in a terminal only, ten times a second at most, and gone at the end', () => {
    const written: string[] = [];
    let now = 0;
    const draw = (isTTY: boolean) => {
      const bar = fileProgress({ isTTY, columns: 60, write: (text) => written.push(text) }, () => now);
      for (let file = 0; file < 50; file += 1) {
        now += 10;
        bar.step(50);
      }
      bar.end();
    };
    draw(false);
    expect(written).toEqual([]);
    draw(true);
    expect(written.length).toBeLessThan(8);
    expect(written.at(-1)).toBe('\r\u001b[2K');
  });
});

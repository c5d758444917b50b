import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { differenceText, lineDifference } from '../../src/views/line-difference.ts';

describe('the difference of two texts', () => {
  it('shows what comes and goes, with a line around it', () => {
    expect(differenceText('a\nb\nc\nd\ne\n', 'a\nb\nx\nd\ne\nf\n')).toBe('  b\n- c\n+ x\n  d\n  e\n+ f');
    expect(differenceText('', 'a\n\nb\n')).toBe('+ a\n+\n+ b');
    expect(differenceText('a\r\nb\r\n', 'a\r\nb\r\n')).toBe('');
  });

  it('holds both texts, whatever they are, and keeps no fewer lines than both have in common at their ends', () => {
    const text = fc.array(fc.constantFrom('a', 'b', '', '  c'), { maxLength: 12 });
    fc.assert(
      fc.property(text, text, text, text, (start, old, fresh, end) => {
        const [before, after] = [old, fresh].map((middle) => [...start, ...middle, ...end]);
        const lines = lineDifference(
          before?.map((line) => `${line}\n`).join('') ?? '',
          after?.map((line) => `${line}\n`).join('') ?? '',
        );
        const of = (...hows: string[]) =>
          lines.filter(({ how }) => hows.includes(how)).map((line) => line.text);
        expect(of('same', 'gone')).toEqual(before);
        expect(of('same', 'added')).toEqual(after);
        expect(of('same').length).toBeGreaterThanOrEqual(start.length + end.length);
      }),
    );
  });
});

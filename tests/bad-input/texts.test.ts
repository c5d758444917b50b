import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { openRecord } from '../../src/record/open.ts';
import type { Problem } from '../../src/record/place.ts';
import { SMALL } from '../record/small.ts';
import { brokenText, realTexts, type Text } from './real-texts.ts';
import { PATIENCE, tries } from './size.ts';
import { unsound } from './sound.ts';

const ENTRY = 'log/2025-03-04.md';

/** The small record with one more text, or with one of its own replaced. `took` is the time of the processor, in ms. */
function opened({ file, text }: Text): { problems: Problem[]; wrong: string[]; took: number } {
  const texts = new Map<string, string>([...Object.entries(SMALL), [file, text]]);
  const files = [...texts].map(([name, words]) => ({ file: name, text: words }));
  const before = process.cpuUsage();
  const { problems } = openRecord({ files, photos: [], today: '2025-12-31' });
  return { problems, wrong: unsound(problems, texts), took: process.cpuUsage(before).user / 1000 };
}

describe('a text that is broken', () => {
  it(
    'gets sentences with places that are there, whatever line of a real one is changed',
    () => {
      expect(realTexts.length).toBeGreaterThan(200);
      fc.assert(
        fc.property(brokenText, (text) => {
          expect(opened(text).wrong).toEqual([]);
        }),
        tries(0.5),
      );
    },
    PATIENCE,
  );

  it(
    'gets them for any letters at all, in front matter and below',
    () => {
      const letters = fc.oneof(fc.string({ unit: 'binary', maxLength: 200 }), fc.string({ maxLength: 200 }));
      const texts = fc.oneof(
        letters,
        letters.map((words) => `---\n${words}\n---\n`),
        letters.map((words) => `---\nby: tobias\n---\n${words}`),
        fc
          .array(letters, { maxLength: 5 })
          .map((words) => `---\n${words.map((w) => `by: ${w}`).join('\n')}\n---\n`),
      );
      const files = fc.constantFrom(
        'car.md',
        'shop.md',
        'parts/cowl.md',
        'statements/1.md',
        'choices/x.md',
        ENTRY,
      );
      fc.assert(
        fc.property(files, texts, (file, text) => {
          expect(opened({ file, text }).wrong).toEqual([]);
        }),
        tries(0.25),
      );
    },
    PATIENCE,
  );

  it(
    'never takes a field of any file for what it isn’t: whatever stands in it is read or told',
    () => {
      const odd = fc.json({ maxDepth: 3 });
      const keyed = fc
        .tuple(fc.constantFrom(...realTexts), fc.nat(), odd)
        .map(([{ file, text }, at, json]): Text => {
          const keys = [...text.matchAll(/^( *(?:- )?[a-z-]+: ).*$/gm)];
          const key = keys[at % Math.max(1, keys.length)];
          if (!key) return { file, text };
          const [whole, lead] = [key[0], key[1] ?? ''];
          return {
            file,
            text: text.slice(0, key.index) + lead + json + text.slice(key.index + whole.length),
          };
        });
      fc.assert(
        fc.property(keyed, (text) => {
          expect(opened(text).wrong).toEqual([]);
        }),
        tries(0.1),
      );
    },
    PATIENCE,
  );
});

const deep = (open: string, close: string) => `---\nby: ${open.repeat(10_000)}${close.repeat(10_000)}\n---\n`;
const aliases = Array.from({ length: 30 }, (_, i) => `a${i}: &a${i} [${`*a${i - 1}, `.repeat(i ? 9 : 0)}x]`);

describe('a text that means to stop the reading', () => {
  it.each<[what: string, text: string]>([
    ['brackets 10,000 deep', deep('[', ']')],
    ['braces 10,000 deep', deep('{a: ', '}')],
    ['lists 10,000 deep on a line', `---\nby:\n  ${'- '.repeat(10_000)}x\n---\n`],
    ['values that stand for each other, 9 to the 30th', `---\n${aliases.join('\n')}\n---\n`],
    ['a value that holds itself', '---\nby: &a [*a]\n---\n'],
    ['a line of a megabyte in a value', `---\nby: ${'x'.repeat(990_000)}\n---\n`],
    ['a key of a megabyte', `---\n${'x'.repeat(990_000)}: y\n---\n`],
    ['a comment of a megabyte and an unknown key', `---\nbye: x #${'x'.repeat(990_000)}\n---\n`],
    ['a front matter that is never closed', `---\nby: tobias\n${'x\n'.repeat(100_000)}`],
  ])('is told in a sentence and soon: %s', (_, text) => {
    const { problems, wrong, took } = opened({ file: ENTRY, text });
    expect(wrong).toEqual([]);
    expect(problems.map(({ place }) => place.file)).toContain(ENTRY);
    expect(took).toBeLessThan(10_000);
  });

  it.each<[what: string, text: string]>([
    ['quotes 10,000 deep', '>'.repeat(10_000)],
    ['lists 10,000 deep', '- '.repeat(10_000)],
    ['brackets 10,000 deep', '['.repeat(10_000)],
    ['stars 10,000 deep', '*a '.repeat(10_000)],
    ['a line of 200 kB', 'word '.repeat(40_000)],
    ['a table of 2,000 columns', `${'|a'.repeat(2000)}|\n${'|-'.repeat(2000)}|\n`],
  ])('ends soon in the words of a day: %s', (_, body) => {
    const { wrong, took } = opened({ file: ENTRY, text: `---\nby: tobias\n---\n${body}\n` });
    expect(wrong).toEqual([]);
    expect(took).toBeLessThan(10_000);
  });
});

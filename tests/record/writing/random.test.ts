import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { splitFrontMatter } from '../../../src/record/front-matter.ts';
import { sheets } from '../../../src/record/schema/sheets.ts';
import { changedText } from '../../../src/record/writing/change.ts';
import type { Edit } from '../../../src/record/writing/edit.ts';
import { entry, type Line, type Made, odd, type Values } from './odd-entries.ts';

/** Something to do to an entry, what its values are then, and the lines that may change for it. */
type Done = { edit: Edit; values: Values; touched: (of: string) => boolean; said?: string };

/** Chooses an edit by three numbers and some text, and says by itself what must come of it. */
function choose({ values, lines }: Made, pick: number, which: number, text: string): Done {
  const after = structuredClone(values) as Values & { hours?: Values[]; finished?: string[] };
  const inBraces = (at: number) => lines.some(({ of }) => of === `hours/${at}`);
  const none = () => false;
  const at = which % Math.max(1, after.hours?.length ?? 0);
  const list = after.hours;
  switch (pick % 9) {
    case 0:
      after.hours = [...(list ?? []), { part: 'cowl', time: '1h', note: text }];
      return {
        edit: { add: ['hours'], item: { note: text, time: '1h', part: 'cowl' } },
        values: after,
        touched: none,
      };
    case 1:
      after.finished = [...(after.finished ?? []), text];
      return { edit: { add: ['finished'], item: text }, values: after, touched: (of) => of === 'finished' };
    case 2:
      return { edit: { append: 'And more.' }, values: after, touched: none, said: 'And more.' };
    case 3:
      return {
        edit: { set: ['by'], value: text },
        values: { ...after, by: text },
        touched: (of) => of === 'by',
      };
    case 4:
      after.marks = [{ mark: text, what: text }];
      return {
        edit: { set: ['marks'], value: [{ what: text, mark: text }] },
        values: after,
        touched: none,
      };
  }
  if (!list) {
    const gone = Object.keys(after)[0];
    if (gone === undefined)
      return { edit: { set: ['by'], value: text }, values: { by: text }, touched: none };
    delete after[gone];
    return { edit: { remove: [gone] }, values: after, touched: (of) => of.startsWith(gone) };
  }
  const own = `hours/${at}`;
  const key = pick % 9 === 5 ? 'time' : 'note';
  const line = list[at] ?? {};
  if (pick % 9 <= 6) {
    line[key] = text;
    return {
      edit: { set: ['hours', at, key], value: text },
      values: after,
      touched: (of) => of === `${own}/${key}` || of === own,
    };
  }
  if (pick % 9 === 7) {
    list.splice(at, 1);
    if (list.length === 0) delete after.hours;
    return {
      edit: { remove: ['hours', at] },
      values: after,
      touched: (of) => of === own || of.startsWith(`${own}/`) || (list.length === 0 && of === 'hours'),
    };
  }
  delete line.part;
  return {
    edit: { remove: ['hours', at, 'part'] },
    values: after,
    // The key below moves up to the dash.
    touched: (of) => of === `${own}/part` || of === `${own}/time` || (inBraces(at) && of === own),
  };
}

const plain = (values: unknown) =>
  JSON.parse(JSON.stringify(values, (key, value: unknown) => (key === 'place' ? undefined : value)));

/** True for a line that may be gone: it is meant, or it is a comment between the lines of what is taken out. */
function mayGo(lines: readonly Line[], at: number, touched: Done['touched']): boolean {
  const own = lines[at]?.of;
  if (own !== undefined) return touched(own);
  const [before, after] = [lines.slice(0, at), lines.slice(at)].map((some, i) =>
    i === 0 ? some.findLast(({ of }) => of)?.of : some.find(({ of }) => of)?.of,
  );
  return before !== undefined && after !== undefined && touched(before) && touched(after);
}

describe('500 random edits', () => {
  it('say exactly what was meant, and keep every other line byte for byte and in order', () => {
    let made = 0;
    fc.assert(
      fc.property(entry, fc.nat(), fc.nat(), odd, (entry, pick, which, text) => {
        const { edit, values, touched, said } = choose(entry, pick, which, text);
        const changed = changedText(entry.text, [edit], sheets.entry);
        if (changed === undefined) throw new Error(`refused ${JSON.stringify(edit)}`);
        made += 1;
        const read = splitFrontMatter('', changed);
        expect(read.problems).toEqual([]);
        expect(plain(read.values)).toEqual(plain(values));
        const left = changed.replace(/^\uFEFF/, '').split(entry.end);
        entry.lines.forEach(({ text }, at) => {
          if (mayGo(entry.lines, at, touched)) return;
          const found = left.indexOf(text);
          expect(found, `${JSON.stringify(text)} is kept`).toBeGreaterThanOrEqual(0);
          left.splice(0, found + 1);
        });
        expect(changed.startsWith('\uFEFF')).toBe(entry.text.startsWith('\uFEFF'));
        expect(/\n$/.test(changed)).toBe(
          /\n$/.test(entry.text) || (said !== undefined && /---\r?\n?$/.test(entry.text)),
        );
        // No line end of the other kind came in.
        expect(changed.replaceAll(entry.end, '')).not.toMatch(/[\r\n]/);
      }),
      { numRuns: 500, seed: 1934 },
    );
    expect(made).toBe(500);
  });

  it('one after the other in one entry lose no comment', () => {
    const edits = fc.array(fc.tuple(fc.constantFrom(0, 1, 3, 4), odd), { minLength: 10, maxLength: 10 });
    fc.assert(
      fc.property(entry, edits, (entry, chosen) => {
        let { text, values } = entry;
        for (const [pick, words] of chosen) {
          const done = choose({ ...entry, values }, pick, 0, words);
          text = changedText(text, [done.edit], sheets.entry) ?? 'refused';
          values = done.values;
        }
        expect(plain(splitFrontMatter('', text).values)).toEqual(plain(values));
        const comments = (of: string) => of.split(/\r?\n/).filter((line) => /^\s*#/.test(line));
        expect(comments(text)).toEqual(comments(entry.text));
      }),
      { numRuns: 50, seed: 1934 },
    );
  });
});

import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { DeskLine } from '../../src/desk/browser/told.ts';
import { entryAfter } from '../../src/desk/entry-after.ts';
import { lineText } from '../../src/desk/field-text.ts';
import { splitFrontMatter } from '../../src/record/front-matter.ts';
import type { Value } from '../../src/record/writing/edit.ts';
import { entry, type Line, type Made, odd, type Values } from '../record/writing/odd-entries.ts';

const plain = (values: unknown) =>
  JSON.parse(JSON.stringify(values, (key, value: unknown) => (key === 'place' ? undefined : value)));

/** A form as the page holds it, and what must come of it: by its own sums, not by the desk’s. */
type Form = { by: string; lists: Record<string, DeskLine[]>; words: string };
type Done = { form: Form; values: Values; touched: (of: string) => boolean; words?: string };

function formOf({ text, values }: Made): Form {
  const { by, ...lists } = plain(values) as Record<string, Value>;
  const lines = (value: Value): readonly Value[] => (Array.isArray(value) ? value : [value]);
  return {
    by: typeof by === 'string' ? by : '',
    lists: Object.fromEntries(
      Object.entries(lists).map(([list, value]) => [
        list,
        lines(value).map((line, at) => ({ at, line: lineText(line) })),
      ]),
    ),
    words: splitFrontMatter('', text).body.markdown,
  };
}

/** Does something to the form, chosen by two numbers and a text. */
function choose(made: Made, pick: number, which: number, text: string): Done {
  const form = formOf(made);
  const after = structuredClone(plain(made.values)) as Values & { hours?: Values[]; finished?: string[] };
  const none = () => false;
  const { hours: lines = [] } = form.lists;
  const at = which % Math.max(1, lines.length);
  const [own, line] = [lines[at], after.hours?.[at]];
  const kind = pick % 6;
  if (kind === 0 || !own || !line || typeof own.line === 'string') {
    const by = after.by === undefined && form.by !== '' ? { by: form.by } : {};
    form.lists.hours = [...lines, { line: { note: text, time: '1h', part: 'cowl' } }];
    after.hours = [...(after.hours ?? []), { ...by, part: 'cowl', time: '1h', note: text }];
    return { form, values: after, touched: none };
  }
  const is = (of: string) => of === `hours/${at}` || of.startsWith(`hours/${at}/`);
  if (kind === 1) {
    form.lists.finished = [...(form.lists.finished ?? []), { line: text }];
    after.finished = [...(after.finished ?? []), text];
    return { form, values: after, touched: (of) => of === 'finished' };
  }
  if (kind === 2) {
    form.words = `${form.words.trimEnd()}\n\nAnd more.`;
    return { form, values: after, touched: none, words: 'And more.' };
  }
  if (kind === 3) {
    own.line.note = text;
    line.note = text;
    return { form, values: after, touched: (of) => of === `hours/${at}/note` || of === `hours/${at}` };
  }
  if (kind === 4) {
    own.line.time = '7h';
    line.time = '7h';
    return { form, values: after, touched: (of) => of === `hours/${at}/time` || of === `hours/${at}` };
  }
  lines.splice(at, 1);
  after.hours?.splice(at, 1);
  const last = after.hours?.length === 0;
  if (last) delete after.hours;
  return { form, values: after, touched: (of) => is(of) || (last && of === 'hours') };
}

/** A line that may be gone: it is meant, or it is a comment between the lines of what is taken out. */
function mayGo(lines: readonly Line[], at: number, touched: Done['touched']): boolean {
  const own = lines[at]?.of;
  if (own !== undefined) return touched(own);
  const before = lines.slice(0, at).findLast(({ of }) => of)?.of;
  const after = lines.slice(at).find(({ of }) => of)?.of;
  return before !== undefined && after !== undefined && touched(before) && touched(after);
}

it('500 random edits at the desk say what was meant, and keep every other line byte for byte and in order', () => {
  let count = 0;
  // Spaces at the ends of a field are a slip of the thumb: they aren’t written.
  const said = odd.map((text) => text.trim()).filter((text) => text !== '');
  fc.assert(
    fc.property(entry, fc.nat(), fc.nat(), said, (made, pick, which, text) => {
      const { form, values, touched, words } = choose(made, pick, which, text);
      const changed = entryAfter(made.text, form);
      if (changed === undefined) throw new Error(`refused ${JSON.stringify(form)}`);
      count += 1;
      const read = splitFrontMatter('', changed);
      expect(read.problems).toEqual([]);
      expect(plain(read.values)).toEqual(values);
      if (words !== undefined) expect(read.body.markdown.trimEnd().endsWith(words)).toBe(true);
      const left = changed.replace(/^\uFEFF/, '').split(made.end);
      made.lines.forEach(({ text: was }, at) => {
        if (mayGo(made.lines, at, touched)) return;
        const found = left.indexOf(was);
        expect(found, `${JSON.stringify(was)} is kept`).toBeGreaterThanOrEqual(0);
        left.splice(0, found + 1);
      });
      expect(changed.startsWith('\uFEFF')).toBe(made.text.startsWith('\uFEFF'));
      // No line end of the other kind came in.
      expect(changed.replaceAll(made.end, '')).not.toMatch(/[\r\n]/);
    }),
    { numRuns: 500, seed: 1934 },
  );
  expect(count).toBe(500);
});

it('a form in which nothing was done changes nothing, whatever stands in the entry', () => {
  fc.assert(
    fc.property(entry, (made) => {
      expect(entryAfter(made.text, formOf(made))).toBe(made.text);
    }),
    { numRuns: 300, seed: 1934 },
  );
});

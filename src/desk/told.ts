// What the page is told of an entry: what stands in it, what may be written, and the names that it may use.
import { splitFrontMatter } from '../record/front-matter.ts';
import type { CarRecord } from '../record/record.ts';
import { knownNames } from '../record/writing/line-problems.ts';
import { withoutPlaces } from '../record/writing/read-back.ts';
import { suggestedFor } from '../record/writing/suggested.ts';
import type { DeskLine, OpenChoice, Told } from './browser/told.ts';
import { keptDraft } from './draft.ts';
import { fileOf } from './entry-of.ts';
import { fieldText, linesOf, lineText } from './field-text.ts';
import type { RecordAt } from './lying.ts';
import { shapes } from './shapes.ts';

/** The entry, or a sentence that says why it can’t be shown. */
export async function toldOf(at: RecordAt, entry: string): Promise<Told | string> {
  const { lying, opened } = await at.now();
  const { record } = opened;
  if (!record) return 'The record can’t be opened; npm run check says why.';
  const file = fileOf(
    entry,
    lying.files.map((written) => written.file),
  );
  if (file === undefined) return `\`${entry}\` is no entry and no day such as \`2025-04-16\`.`;
  const text = lying.files.find((written) => written.file === file)?.text;
  const split = splitFrontMatter(file, text ?? '');
  if (split.broken)
    return `${file} can’t be read, so it can’t be changed here. See what npm run check says of it, and mend it by hand.`;
  const values = withoutPlaces(split.values);
  const day = entry.slice(0, 10);
  const all = shapes();
  const suggested = suggestedFor(day, record);
  const draft = await keptDraft(at, entry, text);
  const lines = (list: string): DeskLine[] =>
    linesOf(values, list).map((line, place) => ({ at: place, line: lineText(line) }));
  return {
    entry,
    file,
    day,
    read: at.give(text),
    by: fieldText(values.by),
    lists: Object.fromEntries(all.map(({ list }) => [list, lines(list)])),
    words: split.body.markdown.trim(),
    shapes: all,
    offers: offersOf(record, suggested),
    choices: openChoices(at, record, lying.files),
    waiting: suggested.photos.filter(({ caption, alt }) => !caption && !alt).map(({ file: name }) => name),
    ...(draft ? { draft } : {}),
  };
}

/** Names to choose from, the likeliest first. Planned lines that are finished stay out, but may be typed in the file. */
function offersOf(record: CarRecord, suggested: ReturnType<typeof suggestedFor>): Told['offers'] {
  const parts = new Map(record.parts.map(({ id, name }) => [id, name]));
  const places = new Map(record.parts.map(({ id, at }) => [id, at]));
  const vendors = new Map((record.shop.vendors ?? []).map(({ id, name }) => [id, name]));
  const named = (names: ReadonlyMap<string, string>) => (value: string) => ({
    value,
    label: names.get(value) ?? value,
  });
  return {
    part: suggested.parts.map((id) => ({
      ...named(parts)(id),
      work: suggested.workOn.get(id) ?? '',
      at: places.get(id) ?? '',
    })),
    vendor: suggested.vendors.map(named(vendors)),
    person: record.shop.people.map(({ id, name }) => ({ value: id, label: name })),
    work: [...(knownNames('work', record) ?? [])].map((value) => ({ value, label: value })),
    choice: record.choices.map(({ id, question }) => ({ value: id, label: question })),
    line: suggested.lines.map(({ name, part, do: label, work }) => ({
      value: name,
      label,
      part,
      work,
    })),
  };
}

function openChoices(
  at: RecordAt,
  record: CarRecord,
  files: readonly { file: string; text: string }[],
): OpenChoice[] {
  return record.choices
    .filter(({ decided, withdrawn }) => !decided && !withdrawn)
    .map(({ id, question, options, file }) => ({
      id,
      question,
      options: options.map(({ option, name }) => ({ value: option, label: name ?? option })),
      read: at.give(files.find((written) => written.file === file)?.text),
    }));
}

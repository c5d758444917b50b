// What can be searched for: days, parts, choices and captions, each with its words. It is made from the record that an
// audience may see, as every page is.
import MiniSearch from 'minisearch';
import type { CarRecord, Choice, Entry, Part } from '../record/record.ts';
import { choiceState, optionName } from './choices.ts';
import { entryTitle } from './day.ts';
import { fabricPage } from './fabric.ts';
import { jsonInPage } from './json-text.ts';
import { page } from './links.ts';
import { SEARCH, type Searched } from './live/searched.ts';
import { namesOf } from './names.ts';
import type { Photos } from './photos.ts';
import { allWords, firstWords } from './prose.ts';
import { takenText } from './shot-words.ts';
import { allShots } from './timeline.ts';

/** A classic script that puts the index where the page’s own script finds it: nothing is fetched. */
export function searchScript(found: readonly Searched[]): string {
  const index = new MiniSearch<Searched>(SEARCH);
  index.addAll(found);
  return `globalThis.recordSearch=${jsonInPage(index)};\n`;
}

/** Everything that can be found, the newest days first. */
export function searched(record: CarRecord, photos: Photos): Searched[] {
  const names = namesOf(record);
  const shots = allShots(record, photos).filter(({ caption }) => caption !== '');
  return [
    ...record.entries.toReversed().map((entry) => ofDay(entry)),
    ...record.parts.map(ofPart),
    ...record.choices.map((choice) => ofChoice(choice)),
    ofFabric(record),
    ...shots.map((shot) => ({
      kind: 'Photograph' as const,
      to: page.day(shot.entry),
      title: shot.caption,
      words: takenText(shot, true),
      text: together([shot.alt, names.part(shot.part)]),
    })),
  ].map((one, id) => ({ id, ...one }));
}

type Found = Omit<Searched, 'id'>;

function ofDay(entry: Entry): Found {
  const {
    hours = [],
    bought = [],
    outside = [],
    ordered = [],
    marks = [],
    finishes = [],
    tested = [],
  } = entry;
  return {
    kind: 'Day',
    to: page.day(entry.id),
    title: entryTitle(entry),
    words: firstWords(entry.body.tree),
    text: together([
      allWords(entry.body.tree),
      ...hours.map(({ note }) => note),
      ...[...bought, ...outside, ...ordered].map(({ what }) => what),
      ...marks.flatMap(({ mark, what, kept }) => [mark, what, kept]),
      ...finishes.flatMap(({ what, product, colour, where }) => [what, product, colour, where]),
      ...tested.flatMap(({ what, result, note }) => [what, result, note]),
      ...(entry.sought ?? []).flatMap(({ what, outcome }) => [what, outcome]),
      ...(entry.measured ?? []).flatMap((reading) => [reading.note, reading.with]),
      ...(entry.fabric ?? []).map(({ note }) => note),
    ]),
  };
}

function ofPart(part: Part): Found {
  return {
    kind: 'Part',
    to: page.part(part.id),
    title: part.name,
    words: part.group,
    text: together([
      part.group,
      part.found?.note,
      allWords(part.body.tree),
      ...(part.planned ?? []).map((line) => line.do),
    ]),
  };
}

function ofChoice(choice: Choice): Found {
  return {
    kind: 'Choice',
    to: page.choice(choice.id),
    title: choice.question,
    words: choiceState(choice),
    text: together([
      choice.decided?.reason,
      choice.withdrawn?.reason,
      allWords(choice.body.tree),
      ...choice.options.flatMap((option) => [
        optionName(option),
        option.mark,
        ...(option.for ?? []),
        ...(option.against ?? []),
        ...option.lines.map((line) => line.do),
      ]),
    ]),
  };
}

/** The page of what is original, repaired and new, by the words that tell its parts. */
function ofFabric(record: CarRecord): Found {
  const { opening, shares, changed } = fabricPage(record);
  return {
    kind: 'Page',
    to: page.fabric,
    title: 'Original, repaired, new',
    words: opening,
    text: together([
      ...shares.map(({ words }) => words),
      ...changed.flatMap(({ rows }) => rows.flatMap(({ part, now }) => [part.text, now])),
    ]),
  };
}

const together = (texts: readonly (string | undefined)[]) => texts.filter(Boolean).join(' ');

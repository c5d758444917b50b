// The work part by part, in order: what was planned and when it was finished, then what was done, day by day.
import { type CarRecord, type Entry, lineName, type Part, personOf } from '../../record/record.ts';
import { fabricOf } from '../../rollup/fabric.ts';
import { datedText } from '../dated.ts';
import { type Names, namesOf } from '../names.ts';
import { fabricText } from '../part.ts';
import { capital, words } from '../parts.ts';
import { type BookTable, tableOf } from './table.ts';

export type BookPart = {
  id: string;
  name: string;
  /** As found and as it is now, in one sentence. */
  state: string;
  planned: BookTable | undefined;
  done: BookTable | undefined;
};

export type BookWork = {
  groups: { group: string; parts: BookPart[] }[];
  /** What was done for the car as a whole. */
  whole: BookTable | undefined;
};

export function bookWork(record: CarRecord): BookWork {
  const done = Map.groupBy(doneLines(record), ({ part }) => part);
  const finished = finishedOn(record);
  const groups = Map.groupBy(record.parts, ({ group }) => group);
  return {
    groups: [...groups].map(([group, parts]) => ({
      group,
      parts: parts.map((part) => ({
        id: part.id,
        name: part.name,
        state: stateText(part, record),
        planned: plannedTable(part, finished),
        done: doneTable(done.get(part.id) ?? []),
      })),
    })),
    whole: doneTable(done.get(undefined) ?? []),
  };
}

/** `Found damaged, original; now original, lower edge new.` */
function stateText(part: Part, record: CarRecord): string {
  const found = [
    part.found ? `found ${part.found.condition}` : '',
    part.fabric ? fabricText(part.fabric) : '',
  ]
    .filter((text) => text !== '')
    .join(', ');
  const fabric = fabricOf(part, record);
  const now = fabric ? `now ${fabricText(fabric.now)}${fabric.note ? `: ${fabric.note}` : ''}` : '';
  const text = [found, now].filter((each) => each !== '').join('; ');
  return text === '' ? '' : `${capital(text)}.`;
}

/** The day on which each planned line was last said to be finished. */
function finishedOn({ entries }: CarRecord): Map<string, string> {
  return new Map(
    entries.flatMap(({ finished = [], day }) => finished.map((name) => [lineName(name, undefined), day])),
  );
}

function plannedTable(part: Part, finished: ReadonlyMap<string, string>): BookTable | undefined {
  return tableOf(part.planned ?? [], [
    { head: 'Planned', wide: 8, text: (line) => line.do },
    { head: 'Work', wide: 0, text: ({ work }) => capital(words(work)) },
    {
      head: 'Finished',
      wide: 0,
      text: ({ line }) => {
        const on = finished.get(`${part.id}/${line}`);
        return on ? datedText(on) : 'not finished';
      },
    },
  ]);
}

type Done = { part: string | undefined; day: string; who: string; work: string; what: string[] };

function doneTable(lines: readonly Done[]): BookTable | undefined {
  return tableOf(lines, [
    { head: 'Day', wide: 0, text: ({ day }) => datedText(day) },
    { head: 'Who', wide: 0, text: ({ who }) => who },
    { head: 'Work', wide: 0, text: ({ work }) => capital(words(work)) },
    { head: 'What was done', wide: 8, text: ({ what }) => capital(what.join('; ')) },
  ]);
}

/** Hours and outside work as lines; those of one day, person, part and kind of work are one line. */
function doneLines(record: CarRecord): Done[] {
  const names = namesOf(record);
  const joined = new Map<string, Done>();
  for (const entry of record.entries) {
    for (const line of [...hoursLines(entry, record, names), ...outsideLines(entry, names)]) {
      const key = JSON.stringify([line.part, line.day, line.who, line.work]);
      const known = joined.get(key);
      if (!known) joined.set(key, line);
      else known.what.push(...line.what.filter((what) => !known.what.includes(what)));
    }
  }
  return [...joined.values()];
}

function hoursLines(entry: Entry, record: CarRecord, names: Names): Done[] {
  return (entry.hours ?? []).map(({ part, line, work, note, ...hours }) => {
    const planned = line === undefined ? undefined : lineName(line, part);
    return {
      part: part ?? (planned?.includes('/') ? planned.split('/')[0] : undefined),
      day: entry.day,
      who: names.initials(personOf(hours, entry, record.shop)),
      work,
      what: [note ?? (planned === undefined ? words(work) : names.line(planned))],
    };
  });
}

function outsideLines(entry: Entry, names: Names): Done[] {
  return (entry.outside ?? []).map(({ part, line, what, from }) => ({
    part: part ?? (line?.includes('/') ? line.split('/')[0] : undefined),
    day: entry.day,
    who: '',
    work: 'outside',
    what: [`${what}, by ${names.vendor(from)}`],
  }));
}

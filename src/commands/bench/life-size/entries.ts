// The days of a made-up record: hours on the lines that are in hand, bills, readings, pictures, tags, what was finished.
import type { WrittenFile } from '../../../record/record.ts';
import type { Bought } from './bills.ts';
import { billsOf } from './bills.ts';
import { countsOver, dayOf, type Line } from './calendar.ts';
import type { Choice } from './choices.ts';
import { type Draw, oneOf, rangeText } from './draw.ts';
import type { Part } from './parts.ts';
import { photoLines } from './pictures.ts';
import { padsOf, readingsOf } from './readings.ts';
import { note, prose } from './words.ts';

/** What a log is made from; `photos` are paths under the record's folder. */
export type Plan = {
  entries: number;
  bills: number;
  parts: readonly Part[];
  choices: readonly Choice[];
  photos: readonly string[];
};

/** The files of the log. */
export function entryFiles(plan: Plan, draw: Draw): WrittenFile[] {
  const { entries, bills, parts, choices } = plan;
  const active = linesInHand(parts, entries);
  const named = new Map(choices.filter(({ state }) => state === 'decided').map((one) => [one.part.id, one]));
  const choiceOf = (entry: number, part: string) => {
    const choice = named.get(part);
    return choice && entry >= choice.since ? choice.id : undefined;
  };
  const onLine = (entry: number) => oneOrNone(active[entry] ?? [], draw);
  const bought = billsOf(countsOver(bills, entries), onLine, choiceOf, draw);
  const pictures = byDay(plan.photos);
  const names = new Map(parts.map(({ id, name }) => [id, name]));
  return Array.from({ length: entries }, (_, entry) => {
    const day = dayOf(entry, entries);
    const inHand = active[entry] ?? [];
    const about = onLine(entry);
    const name = (about && names.get(about.part)) ?? 'The car';
    const photos = photoLines(pictures.get(day) ?? [], inHand, names, draw);
    const front = [
      ...hours(entry, inHand, choiceOf, draw),
      ...listed(bought[entry]),
      ...block('measured', about ? readingsOf(entry, about.part, draw) : []),
      ...block('pads', about ? padsOf(entry, about.part, draw) : []),
      ...block('photos', photos),
      ...now(entry, about, draw),
      ...block(
        'finished',
        inHand.filter(({ to }) => to === entry).map(({ part, line }) => `  - ${part}/${line}\n`),
      ),
    ];
    const words = Array.from({ length: draw(1, 3) }, () => prose(draw(3, 5), name, draw)).join('\n\n');
    return {
      file: `log/${day.slice(0, 7)}/${day}.md`,
      text: `---\n${front.join('')}---\n\n${words}\n${draw(0, 9) ? '' : TABLE}`,
    };
  });
}

/** For each entry the lines that are in hand with it. */
function linesInHand(parts: readonly Part[], entries: number): Line[][] {
  const active = Array.from({ length: entries }, (): Line[] => []);
  for (const line of parts.flatMap(({ lines }) => lines)) {
    for (let entry = line.from; entry <= Math.min(line.to, entries - 1); entry++) active[entry]?.push(line);
  }
  return active;
}

/** A line that is finished gets hours that day, and one to three others do. */
function hours(
  entry: number,
  inHand: readonly Line[],
  choiceOf: (entry: number, part: string) => string | undefined,
  draw: Draw,
): string[] {
  const finishing = inHand.filter(({ to }) => to === entry);
  const others = Array.from({ length: draw(1, 3) }, () => oneOrNone(inHand, draw)).filter(
    (line) => line !== undefined,
  );
  const lines = [...finishing, ...others].map(({ part, line, work }, i) => {
    const choice = choiceOf(entry, part);
    return `  - part: ${part}\n    line: ${line}\n    work: ${work}\n    by: ${i % 2 ? 'ines' : 'tobias'}\n    time: ${draw(0, 1) ? '1h ' : ''}${draw(2, 3) * 15}m\n    note: ${JSON.stringify(note(draw))}\n${choice ? `    choice: ${choice}\n` : ''}`;
  });
  const shop =
    '  - work: shop\n    by: ines\n    time: 1h\n    note: bench cleared\n    no-charge: our own time\n';
  return block('hours', lines.length > 0 ? lines : [shop]);
}

/** What is written less often: tags, a search, a finish, a test, the owner's word and money, what is left. */
function now(entry: number, about: Line | undefined, draw: Draw): string[] {
  if (!about) return [];
  const { part, line } = about;
  const every = (entries: number, from: number, field: string, text: string) =>
    entry % entries === from ? block(field, [`  - ${text}\n`]) : [];
  return [
    ...every(
      3,
      1,
      'marks',
      `{ mark: TAG ${entry}, what: "Bolts, 5/16 in", part: ${part}, from-where: front flange, count: ${draw(2, 12)}, kept: bag ${entry}, as: refit }`,
    ),
    ...every(
      25,
      4,
      'sought',
      `{ what: A second one to the pattern, part: ${part}, asked: [Oxbow Breakers, two owners by letter], outcome: not found }`,
    ),
    ...every(
      11,
      2,
      'finishes',
      `{ part: ${part}, what: primer, product: epoxy primer, mix: "4:1", coats: 2, where: "inside and out, edges by brush" }`,
    ),
    ...every(
      17,
      5,
      'tested',
      `{ what: Load of one person, part: ${part}, result: holds, note: "two hours, nothing moved" }`,
    ),
    ...every(40, 6, 'agreed', `{ what: Go on as proposed, amount: ${draw(5, 40) * 100}, how: by telephone }`),
    ...every(20, 9, 'paid', `{ amount: ${draw(3, 9) * 1000}, how: bank transfer }`),
    ...(about.to > entry
      ? every(10, 3, 'left', `{ line: ${part}/${line}, hours: ${rangeText(draw(1, 4), 6, draw)} }`)
      : []),
    ...every(30, 8, 'shop-only', 'ask for more room next time'),
  ];
}

function listed(bought: Bought | undefined): string[] {
  return Object.entries(bought ?? {}).flatMap(([field, lines]) => block(field, lines));
}

const block = (field: string, lines: readonly string[]): string[] =>
  lines.length > 0 ? [`${field}:\n`, ...lines] : [];

function oneOrNone<T>(list: readonly T[], draw: Draw): T | undefined {
  return list.length > 0 ? oneOf(list, draw) : undefined;
}

/** Pictures by the day whose folder they lie in. */
function byDay(photos: readonly string[]): Map<string, string[]> {
  return Map.groupBy(photos, (file) => file.slice('photos/'.length, -'/IMG_0000.jpg'.length));
}

const TABLE =
  '\n| mount | before | after |\n| --- | ---: | ---: |\n| L1 | 1/8 in | 1/16 in |\n| R1 | 3/16 in | 1/16 in |\n';

// Where figures come from: who measured and tested, when and with what, and what every sum is made of.
import gauges from '../../shared/gauges.json' with { type: 'json' };
import type { CarRecord, Entry } from '../record/record.ts';
import type { Rollup } from '../rollup/cost-lines.ts';
import { type Measured, measurementsOf } from '../rollup/measured.ts';
import { datedText } from './dated.ts';
import { workersOf } from './day.ts';
import type { Linked } from './fabric.ts';
import { page } from './links.ts';
import { drawnParts } from './measured.ts';
import { namesOf } from './names.ts';
import { capital } from './parts.ts';

/** One reading: what was read, when, by whom and with what, as far as the record says. */
export type ReadRow = { what: string; state: string; day: Linked; who: string; with: string };
export type TestRow = { what: string; part: string; over: string; result: string; who: string; day: Linked };

export type SourcesPage = {
  opening: string;
  measured: { part: string; opens?: Linked; rows: ReadRow[] }[];
  tested: TestRow[];
  /** Figures that are counted, summed or worked out, and the page that opens each to its lines. */
  made: { figure: string; from: string; opens: Linked }[];
  /** Published values that went into them. */
  published: { what: string; source: string }[];
};

/** `money`: who reads it may see amounts. */
export function sourcesPage(record: CarRecord, rollup: Rollup, { money }: { money: boolean }): SourcesPage {
  const { readings } = measurementsOf(record);
  const tested = testRows(record);
  return {
    opening: openingText(readings, tested),
    measured: measuredRows(readings, record),
    tested,
    made: madeRows(record, rollup, money),
    published: publishedRows(readings),
  };
}

function openingText(readings: readonly Measured[], tested: readonly unknown[]): string {
  if (readings.length + tested.length === 0) return 'Nothing has been measured or tested yet.';
  const said = readings.filter(({ reading }) => reading.with !== undefined).length;
  const instrument = readings.length > 0 ? ` ${said} of the readings say what they were read with.` : '';
  return `${many(readings.length, 'reading')} and ${many(tested.length, 'test')}, each with who and when.${instrument} Each opens to the entry in which it was written down.`;
}

function measuredRows(readings: readonly Measured[], record: CarRecord): SourcesPage['measured'] {
  const names = namesOf(record);
  const drawn = new Set(drawnParts(record));
  const entries = new Map(record.entries.map((entry) => [entry.id, entry]));
  const byPart = Map.groupBy(readings, ({ part }) => part);
  const known = record.parts.map(({ id }) => id).filter((id) => byPart.has(id));
  return [...new Set([...known, ...byPart.keys()])].map((part) => ({
    part: names.part(part),
    ...(drawn.has(part)
      ? { opens: { text: 'drawn to scale', to: page.measured(part) } }
      : known.includes(part) && { opens: { text: 'its page', to: page.part(part) } }),
    rows: (byPart.get(part) ?? []).map(({ kind, name, state, day, entry, reading }) => ({
      what: capital(name === '' ? kind : `${kind}, ${name}`),
      state,
      day: { text: datedText(day), to: page.day(entry) },
      who: whoOf(reading, entries.get(entry), record),
      with: reading.with ?? 'not said',
    })),
  }));
}

function testRows(record: CarRecord): TestRow[] {
  const names = namesOf(record);
  return record.entries.flatMap((entry) =>
    (entry.tested ?? []).map((test) => ({
      what: test.what,
      part: names.part(test.part),
      over: [test.since, test.until].flatMap((day) => (day ? [datedText(day)] : [])).join(' to '),
      result: test.result,
      who: whoOf(test, entry, record),
      day: { text: datedText(entry.day), to: page.day(entry.id) },
    })),
  );
}

/** The line’s own person, else everybody of the entry. */
function whoOf(line: { by?: string | undefined }, entry: Entry | undefined, record: CarRecord): string {
  if (line.by) return namesOf(record).person(line.by);
  return (entry && workersOf(entry, record).join(', ')) || 'not said';
}

function madeRows(record: CarRecord, rollup: Rollup, money: boolean): SourcesPage['made'] {
  const hours = record.entries.flatMap(({ hours: own = [] }) => own).length;
  const photos = record.entries.flatMap(({ photos: own = [] }) => own).length;
  const rows: [boolean, string, string, string, string][] = [
    [
      hours > 0,
      'Hours of work',
      `The sum of ${many(hours, 'line')} of hours, each written down on its day by who worked.`,
      money ? 'costs' : 'days',
      money ? page.costs : page.days,
    ],
    [
      money && rollup.total.lines.length > 0,
      'Money',
      `The sum of ${many(rollup.total.lines.length, 'line')} of hours, bills, materials, handling and tax; each table opens to its own.`,
      'costs',
      page.costs,
    ],
    [
      record.parts.length > 0,
      'Shares of fabric',
      `Counted from ${many(record.parts.length, 'part')}, each once, whatever its size.`,
      'original, repaired, new',
      page.fabric,
    ],
    [
      record.choices.length > 0,
      'Original kept by an option',
      'The shop’s estimate, written down before the choice was decided.',
      'choices',
      page.choices,
    ],
    [
      measurementsOf(record).readings.length > 0,
      'What a reading comes to',
      'Worked out from the reading alone; how far off it may be follows from how far the reading may be.',
      'measurements',
      page.measurements,
    ],
    [
      photos > 0,
      'Days of photographs',
      'From the camera’s own clock where the file tells it, else the day of the entry.',
      'photographs',
      page.photos,
    ],
  ];
  return rows.flatMap(([there, figure, from, text, to]) =>
    there ? [{ figure, from, opens: { text, to } }] : [],
  );
}

function publishedRows(readings: readonly Measured[]): SourcesPage['published'] {
  const timber = readings.flatMap((each) =>
    each.kind === 'timber' && each.answer.ok ? [each.answer.value.rule.source] : [],
  );
  const systems = readings.flatMap((each) =>
    each.kind === 'thickness' && each.reading.target?.gauge ? [each.reading.target.gauge.system] : [],
  );
  return [
    ...[...new Set(timber)].map((source) => ({ what: 'How far timber moves', source })),
    ...gauges.systems
      .filter(({ name }) => systems.includes(name))
      .map(({ name, source }) => ({ what: `Sheet gauges, ${name}`, source })),
  ];
}

const many = (count: number, one: string) => `${count} ${count === 1 ? one : `${one}s`}`;

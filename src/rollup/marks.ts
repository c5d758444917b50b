// What came off the car and was tagged: the order in which it goes back, what is kept, what has no home yet.
import type { Day } from '../figures/days.ts';
import type { Place } from '../record/place.ts';
import { type CarRecord, photoPath } from '../record/record.ts';

/** One tag, as written, with the entry it stands in. `photo` is a path of the record's folder. */
export type Mark = {
  mark: string;
  what: string;
  part?: string;
  fromWhere?: string;
  count?: number;
  kept?: string;
  /** refit, pattern, spare or scrap. */
  as: string;
  photo?: string;
  day: Day;
  entry: string;
  place: Place;
};

/** What a tag doesn't say and would have to, for the thing to be found and put back. */
export type Lack = 'kept' | 'from-where';

/** The marks of a record, for a page and for paper. */
export type Marks = {
  /** In the order in which things came off. */
  all: Mark[];
  /** What goes back, by part: the part that came off last first, and in it what came off last first. */
  reassembly: { part: string | undefined; marks: Mark[] }[];
  homeless: { mark: Mark; lacks: Lack[] }[];
};

export function marksOf(record: CarRecord): Marks {
  const all = record.entries.flatMap((entry) =>
    (entry.marks ?? []).map(
      ({ mark, what, part, count, kept, as, photo, place, 'from-where': fromWhere }): Mark => ({
        mark,
        what,
        ...(part !== undefined && { part }),
        ...(fromWhere !== undefined && { fromWhere }),
        ...(count !== undefined && { count }),
        ...(kept !== undefined && { kept }),
        as,
        ...(photo !== undefined && { photo: photoPath(photo, entry.day) }),
        day: entry.day,
        entry: entry.id,
        place,
      }),
    ),
  );
  const back = all.filter(({ as }) => as === 'refit').toReversed();
  return {
    all,
    reassembly: [...Map.groupBy(back, ({ part }) => part)].map(([part, marks]) => ({ part, marks })),
    homeless: all.map((mark) => ({ mark, lacks: lacksOf(mark) })).filter(({ lacks }) => lacks.length > 0),
  };
}

/** Scrap needs no shelf, and only what goes back needs the place that it came from. */
function lacksOf({ as, kept, fromWhere }: Mark): Lack[] {
  return [
    ...(kept === undefined && as !== 'scrap' ? ['kept' as const] : []),
    ...(fromWhere === undefined && as === 'refit' ? ['from-where' as const] : []),
  ];
}

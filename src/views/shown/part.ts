// What a part's page shows: where it sits, how it was found, what is planned, what it has taken, its days, choices and
// pictures.
import { minutesText } from '../../figures/hours.ts';
import type { Body } from '../../record/body.ts';
import type { CarRecord, Part } from '../../record/record.ts';
import type { Rollup } from '../../rollup/cost-lines.ts';
import type { Sees } from '../audience.ts';
import { partState } from '../car.ts';
import { type Caution, cautionsOf } from '../cautions.ts';
import { choiceState } from '../choices.ts';
import { datedText } from '../dated.ts';
import { type Change, changeOf, type Reason } from '../fabric.ts';
import { hazardsOfPart } from '../hazards.ts';
import { fromLines } from '../line-text.ts';
import { page } from '../links.ts';
import { listId } from '../marks.ts';
import { drawnParts } from '../measured.ts';
import { type Pair, pairsOf } from '../pairs.ts';
import {
  choicesOf,
  daysOfPart,
  fabricNow,
  type KindSums,
  kindSums,
  marksOfPart,
  type PartDay,
  readingsOfPart,
} from '../part.ts';
import { capital, words } from '../parts.ts';
import type { Photos, Shot } from '../photos.ts';
import { type PlannedTable, plannedTable } from '../planned.ts';
import { shotsByPart } from '../shot-filters.ts';
import { photographs } from '../shot-words.ts';
import { allShots, newest } from '../timeline.ts';
import type { Compared } from './compared.ts';

/** Pictures that a part's page shows; the others have pages of their own. */
const MOST_SHOTS = 12;

export type PartShown = {
  path: string;
  name: string;
  group: string;
  state: string;
  file: string;
  /** Its place on the drawings, and the one that shows it. */
  at: string | undefined;
  view: 'plan' | 'side';
  found: { on: string; day: string; condition: string; note: string } | undefined;
  fabric: string | undefined;
  now: string | undefined;
  change: Change;
  /** How it was found stands above already. */
  why: Reason[];
  body: Body;
  planned: PlannedTable;
  cautions: Caution[];
  sums: KindSums | undefined;
  code: string;
  /** Its time so far in words, for who sees no amounts. */
  worked: string;
  choices: { question: string; to: string; state: string }[];
  readings: ReturnType<typeof readingsOfPart>;
  /** The page on which its readings are drawn. */
  drawn: string | undefined;
  marks: ReturnType<typeof marksOfPart>;
  marksAt: string;
  pairs: Pair[];
  latest: Shot[];
  photos: { to: string; text: string; count: number };
  days: PartDay[];
  daysCaption: string;
  /** Whose the hours of its days are; empty where none are counted. */
  daysNote: string;
};

export function partShown(
  part: Part,
  { record, rollup, photos }: { record: CarRecord; rollup: Rollup; photos: Photos },
  sees: Sees,
): PartShown {
  const { id, name, group, file, at, found, body } = part;
  const row = rollup.tables.part.rows.find(({ key }) => key === id);
  const change = changeOf(part, record);
  const shots = shotsByPart(record, photos).find((filter) => filter.part === id)?.shots ?? [];
  const marks = marksOfPart(part, record);
  return {
    path: page.part(id),
    name,
    group,
    state: partState(part, rollup),
    file,
    at,
    view: part.side === 'right' || at?.startsWith('sill') || at?.endsWith('right') ? 'plan' : 'side',
    found: found && {
      on: found.on,
      day: datedText(found.on),
      condition: capital(found.condition),
      note: found.note ?? '',
    },
    fabric: part.fabric && words(part.fabric),
    now: fabricNow(part, record),
    change,
    why: change.reasons.filter(({ choice }) => choice),
    body,
    planned: plannedTable(part, record, rollup),
    cautions: cautionsOf(hazardsOfPart(part)),
    sums: kindSums('part', row, record),
    code: record.currency.code,
    worked:
      row && row.minutes > 0 ? `${minutesText(row.minutes)} of work.` : 'No hours are written down for it.',
    choices: choicesOf(part, record).map((choice) => ({
      question: choice.question,
      to: page.choice(choice.id),
      state: choiceState(choice),
    })),
    readings: readingsOfPart(part, record),
    drawn: drawnParts(record).includes(id) ? page.measured(id) : undefined,
    marks,
    marksAt: marks.some(({ as }) => as === 'refit') ? `${page.marks}#${listId(id)}` : page.marks,
    pairs: pairsOf(allShots(record, photos)).filter(({ parts }) => parts.includes(id)),
    latest: newest(shots, MOST_SHOTS),
    photos: { to: page.photosOfPart(id), text: photographs(shots.length), count: shots.length },
    days: daysOfPart(part, record, rollup),
    daysCaption: `Days that name this part${sees.money ? `, ${fromLines(row?.lines.length ?? 0)}` : ''}`,
    daysNote: row ? `${sees.money ? 'hours and money are' : 'hours are'} those of this part` : '',
  };
}

/** The same with its pictures apart. */
export function partCompared({ latest, ...shown }: PartShown): Compared {
  return { shown, shared: latest };
}

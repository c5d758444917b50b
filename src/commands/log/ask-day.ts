// The conversation at the end of a day, in the order in which it is told: hours, bills, orders, readings, pads,
// pictures, finished lines, the rest, the words.
import type { Day } from '../../figures/days.ts';
import type { CarRecord } from '../../record/record.ts';
import type { Added } from '../../record/writing/add-to-entry.ts';
import { isKeys, type Keys, type Value } from '../../record/writing/edit.ts';
import { suggestedFor } from '../../record/writing/suggested.ts';
import { askLines, type Talk } from './ask-lines.ts';
import { askPhotos } from './ask-photos.ts';
import type { Asker, Offer } from './asker.ts';

/** Asks for a day. `begun` is what a draft or flags know already; `keep` is told after every answer. */
export async function askDay(
  asker: Asker,
  day: Day,
  record: CarRecord,
  begun: Added,
  keep: (added: Added) => Promise<void>,
): Promise<Added> {
  const lists: Record<string, Value[]> = Object.fromEntries(
    Object.entries(begun.lists).map(([list, lines]) => [list, [...lines]]),
  );
  const added = { ...begun, lists };
  const suggested = suggestedFor(day, record);
  const talk: Talk = {
    asker,
    record,
    suggested,
    lines: (list) => lists[list] ?? [],
    keep: async (list, at, line) => {
      const own = lists[list] ?? [];
      own[at] = line;
      lists[list] = own;
      await keep(added);
    },
  };
  const by = added.by ?? (await askPerson(asker, record));
  if (by !== undefined && by !== '') added.by = by;
  await askHours(talk, by);
  await askKinds(talk, 'Anything bought, or done outside?', ['bought', 'outside']);
  await askReceived(talk);
  await askKinds(talk, 'Anything ordered, or sent back?', ['ordered', 'returned']);
  await askKinds(talk, 'Anything measured?', ['measured']);
  await askKinds(talk, 'Any pads put under a mount?', ['pads']);
  await askPhotos(talk);
  await askFinished(talk);
  await askKinds(talk, 'Anything else?', OTHERS);
  const words = await asker.text({
    message: 'The day in words',
    example: 'what was found, what was done, and why',
    ...(added.words ? { initial: added.words } : {}),
    needed: false,
    check: () => undefined,
  });
  if (words !== '') added.words = words;
  await keep(added);
  return added;
}

const OTHERS = ['marks', 'sought', 'finishes', 'tested', 'left', 'fabric', 'agreed', 'paid'];
const LIST_NAMES: Readonly<Record<string, string>> = {
  bought: 'a thing bought',
  outside: 'work done outside',
  ordered: 'a thing ordered',
  returned: 'a thing sent back',
  measured: 'a reading',
  pads: 'pads under a mount',
  marks: 'a tag on what came off',
  sought: 'a part hunted for',
  finishes: 'a finish: lead, filler, primer, paint',
  tested: 'a test',
  left: 'what is now thought left of a line',
  fabric: 'what a part is now made of',
  agreed: 'the owner’s word',
  paid: 'money from the owner',
};
const NO_MORE: Offer = { value: '', label: 'no more' };

/** Nothing where the shop has one person; an empty text where several worked. */
async function askPerson(asker: Asker, { shop }: CarRecord): Promise<string | undefined> {
  if (shop.people.length < 2) return undefined;
  const offers = shop.people.map(({ id, name }) => ({ value: id, label: name }));
  return asker.pick({ message: 'Who worked?', offers: [...offers, { value: '', label: 'more than one' }] });
}

/** Who worked is asked of each line only where more than one did. */
async function askHours(talk: Talk, by: string | undefined): Promise<void> {
  const { asker, suggested, record } = talk;
  const names = new Map(record.parts.map(({ id, name }) => [id, name]));
  const parts = suggested.parts.map((value) => ({ value, label: names.get(value) ?? value }));
  const several = by === '';
  const people = record.shop.people.map(({ id, name }) => ({ value: id, label: name }));
  await askLines(talk, 'hours', async (before) => {
    const part = await asker.pick({
      message: before ? 'Hours on another part?' : 'Hours: on which part?',
      offers: [before ? NO_MORE : { ...NO_MORE, label: 'no hours' }, WHOLE, ...parts],
      ...(before ? {} : { initial: suggested.parts[0] ?? '' }),
    });
    if (part === '') return undefined;
    const who = several ? await asker.pick({ message: 'Who worked on it?', offers: people }) : undefined;
    return { ...(part === WHOLE.value ? {} : { part }), ...(who ? { by: who } : {}) };
  });
}

const WHOLE: Offer = { value: '*', label: 'the car as a whole' };

/** Asks for lines of several lists, each new one by its list. */
async function askKinds(talk: Talk, message: string, lists: readonly string[]): Promise<void> {
  for (;;) {
    const half = lists.find((list) => talk.lines(list).length > 0);
    const offers = lists.map((value) => ({ value, label: LIST_NAMES[value] ?? value }));
    const list = await talk.asker.pick({
      message: half ? `${message} Anything more?` : message,
      offers: [NO_MORE, ...offers],
    });
    if (list === '') return;
    let one = false;
    await askLines(talk, list, async (before) => {
      if (one) return undefined;
      one = true;
      return alike(list, before);
    });
  }
}

/** The next line of one bill has its vendor and number. */
function alike(list: string, before: Keys | undefined): Keys {
  if (!before || !['bought', 'outside'].includes(list)) return {};
  const { from, bill } = before;
  return bill === undefined ? {} : { from, bill };
}

async function askReceived(talk: Talk): Promise<void> {
  const { orders } = talk.suggested;
  const there = talk.lines('received').length;
  if (orders.length === 0) return;
  const named = new Map(
    orders.map((order) => {
      const { what, from, part, ordered } = order;
      return [`${what}, from ${from}${part ? ` for ${part}` : ''}, ordered ${ordered}`, order];
    }),
  );
  const chosen = await talk.asker.some({
    message: 'Did an order come?',
    offers: [...named.keys()].map((label) => ({ value: label, label })),
  });
  for (const [n, label] of chosen.entries()) {
    const order = named.get(label);
    if (!order) continue;
    const { what, from, part } = order;
    await talk.keep('received', there + n, { what, from, ...(part ? { part } : {}) });
  }
}

/** Open lines of the parts worked on today first. */
async function askFinished(talk: Talk): Promise<void> {
  const today = new Set(talk.lines('hours').flatMap((line) => (isKeys(line) ? [String(line.part)] : [])));
  const { lines } = talk.suggested;
  const there = new Set(talk.lines('finished'));
  const open = [
    ...lines.filter(({ part }) => today.has(part)),
    ...lines.filter(({ part }) => !today.has(part)),
  ];
  const offers = open
    .filter(({ name }) => !there.has(name))
    .map(({ name, do: label }) => ({ value: name, label }));
  if (offers.length === 0) return;
  const chosen = await talk.asker.some({ message: 'Planned lines finished today?', offers });
  for (const name of chosen) await talk.keep('finished', talk.lines('finished').length, name);
}

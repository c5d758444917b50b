// The kinds of value that a field can hold, each read from its writing into what is kept. Every field says
// what it is, gives an example, and names the audience that may see it: `history` is everybody, `owner` is
// the owner and the shop, `shop` is the shop alone.
import { z } from 'zod';
import { readAngle } from '../../figures/angles.ts';
import type { Currency } from '../../figures/currency.ts';
import { readDay } from '../../figures/days.ts';
import { readMinutes } from '../../figures/hours.ts';
import { readLength, type Units } from '../../figures/lengths.ts';
import { readMoney } from '../../figures/money.ts';
import { inOrder, type Range } from '../../figures/ranges.ts';
import type { Reading } from '../../figures/reading.ts';
import { readCount, readShare } from '../../figures/shares.ts';
import { readThickness } from '../../figures/thickness.ts';
import { ID } from '../id.ts';
import type { Place } from '../place.ts';

export type Audience = 'history' | 'owner' | 'shop';

/** What a reference names. */
export type Refers = 'part' | 'line' | 'vendor' | 'person' | 'choice' | 'photo' | 'work';

/** A field: its schema with a sentence, an example as it would be written, and its audience. */
export function field<S extends z.ZodType>(
  schema: S,
  says: string,
  example: string,
  audience: Audience = 'history',
): S {
  return schema.meta({ description: says, examples: [example], audience }) as S;
}

/** A value read from text by a reader of figures/. */
export function readBy<T>(reader: (text: string) => Reading<T>) {
  return z.string({ error: 'one value, not a list or a set of keys' }).transform((text, context): T => {
    const reading = reader(text);
    if (reading.ok) return reading.value;
    context.issues.push({ code: 'custom', message: reading.expected, input: text });
    return z.NEVER;
  });
}

/** The readers that don't depend on the record's currency or units. */
export const value = {
  text: () => z.string({ error: 'text' }).refine((text) => text.trim() !== '', { error: 'some words' }),
  id: () => z.string({ error: 'a name' }).regex(ID, { error: ID_WORDS }),
  day: () => readBy(readDay),
  time: () => readBy(readMinutes),
  share: () => readBy((text) => readShare(text)),
  rate: () => readBy((text) => readShare(text, 10)),
  count: () => readBy(readCount),
  whole: () =>
    readBy<number>((text) =>
      /^\d{1,4}$/.test(text.trim())
        ? { ok: true, value: Number(text) }
        : { ok: false, expected: 'a whole number' },
    ),
  angle: () => readBy(readAngle),
  oneOf: <W extends string>(words: readonly W[]) => z.enum(words as readonly [W, ...W[]]),
  /** Said or left out; never `false`. */
  yes: () => z.enum(['true']).transform((): true => true),
  /** One text or a list of them; a list is kept. */
  texts: () =>
    z.union([value.text().transform((text) => [text]), z.array(value.text())], {
      error: 'text, or a list of texts',
    }),
  ref: (refers: Refers) => value.text().meta({ refers }),
  /** A picture's name: it can't lead out of the record's photos. */
  photo: () =>
    value.text().refine((name) => !/^[/\\]|(^|[/\\])\.\.([/\\]|$)|^[a-z]:/i.test(name), {
      error: 'a picture inside the record’s photos/ folder, such as `IMG_1028.jpg`',
    }),
  refs: (refers: Refers) => z.array(value.ref(refers), { error: 'a list' }),
  refOrRefs: (refers: Refers) =>
    z.union([value.ref(refers).transform((name) => [name]), z.array(value.ref(refers)).min(1)], {
      error: 'a name, or a list of names',
    }),
  hoursRange: () => range(readMinutes, 'hours such as `9`, or `[6, 9, 16]` for low, likely, high'),
  dayRange: () => range(wholeDays, 'days such as `30`, or `[20, 30, 60]` for low, likely, high'),
};

const ID_WORDS = 'a name of lower-case letters, digits and hyphens, such as `rear-fender-left`';

/** The readers that need the record's currency and units. */
export function inRecord(currency: Currency, units: Units | undefined) {
  const money = (text: string) => readMoney(text, currency);
  return {
    ...value,
    money: () => readBy((text) => notBelowZero(money(text), currency)),
    /** An amount that may be below zero: only statements, which a command writes, have such. */
    signed: () => readBy(money),
    moneyRange: () =>
      range((text) => notBelowZero(money(text), currency), 'an amount, or `[low, likely, high]`'),
    length: () => readBy((text) => readLength(text, units)),
    thickness: () => readBy((text) => readThickness(text, units)),
  };
}

export type Fields = ReturnType<typeof inRecord>;

/** One line of a list: strict keys, and the place where it was written. */
export function line<S extends z.ZodRawShape>(shape: S) {
  return sheet({ ...shape, place: z.custom<Place>() });
}

/** The keys of a file or of a set within it: unknown ones are refused, the nearest known one is offered. */
export function sheet<S extends z.ZodRawShape>(shape: S) {
  const known = Object.keys(shape).filter((key) => key !== 'place');
  return z.strictObject(shape, {
    error: (issue) =>
      issue.code === 'unrecognized_keys' ? known.map((name) => `\`${name}\``).join(', ') : 'a set of keys',
  });
}

/** A list of lines. */
export const lines = <S extends z.ZodType>(schema: S) =>
  z.array(schema, { error: 'a list, each line begun with `- `' });

function range(reader: (text: string) => Reading<number>, expected: string) {
  return z.unknown().transform((written, context): Range => {
    const parts = Array.isArray(written) ? written : [written];
    const figures = parts.map((part) => (typeof part === 'string' ? reader(part) : undefined));
    const [low, likely = low, high = likely] = figures;
    if (![1, 3].includes(parts.length) || !low?.ok || !likely?.ok || !high?.ok) {
      context.issues.push({ code: 'custom', message: expected, input: written });
      return z.NEVER;
    }
    const found = { low: low.value, likely: likely.value, high: high.value };
    if (inOrder(found)) return found;
    context.issues.push({ code: 'custom', message: 'low, likely, high in rising order', input: written });
    return z.NEVER;
  });
}

function wholeDays(text: string): Reading<number> {
  return /^\d{1,4}$/.test(text.trim())
    ? { ok: true, value: Number(text) }
    : { ok: false, expected: 'whole days' };
}

function notBelowZero(amount: Reading<number>, currency: Currency): Reading<number> {
  if (!amount.ok || amount.value >= 0) return amount;
  return {
    ok: false,
    expected: `an amount of ${currency.code} of zero or more: what comes back is written under \`returned\``,
  };
}

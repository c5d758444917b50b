// Prints the bound book: the data of views/book.ts, set by the sheets in book/.
import type { Units } from '../figures/lengths.ts';
import type { BookData } from '../views/book.ts';
import { asJpeg, type Edition, type Printed, typeset } from './typeset.ts';

export { EDITIONS, type Edition, type Printed } from './typeset.ts';

/** Prints the book. `pictures` are JPEGs by the `file` of their plates. Throws when the printer finds a fault. */
export async function printBook(
  data: BookData,
  pictures: ReadonlyMap<string, Uint8Array>,
  { edition, units }: { edition: Edition; units: Units },
): Promise<Printed> {
  const set = {
    ...data,
    plates: data.plates.map((plate) => ({ ...plate, file: asJpeg(plate.file) })),
    // The names that go into the index.
    parts: data.work.groups.flatMap(({ parts }) => parts.map(({ name }) => name)),
  };
  const jpegs = new Map([...pictures].map(([name, bytes]) => [asJpeg(name), bytes]));
  return typeset('book', set, jpegs, { edition, units, made: data.made.day });
}

// What the checks of unknown names have in common: each mention of one kind, held against the names there are.
import { type Mention, mentions } from '../mentions.ts';
import { didYouMean } from '../nearest.ts';
import type { CarRecord } from '../record.ts';
import type { Found } from './check.ts';

/** A problem for each mention that isn't among the known names; `otherwise` is the mend when none is near. */
export function unknownNames(
  mentions: Iterable<Mention>,
  known: ReadonlySet<string>,
  reason: (mention: Mention) => string,
  otherwise: (mention: Mention) => string,
): Found[] {
  const near = new Map<string, string | undefined>();
  const found: Found[] = [];
  for (const mention of mentions) {
    if (known.has(mention.name)) continue;
    if (!near.has(mention.name)) near.set(mention.name, didYouMean(mention.name, known));
    found.push({
      place: mention.place,
      reason: reason(mention),
      mend: near.get(mention.name) ?? otherwise(mention),
    });
  }
  return found;
}

/** Mentions of what shop.md lists; none while a line of the list can't be read, since it may be the one that is missed. */
export function ofShop(record: CarRecord, refers: 'vendor' | 'person' | 'work'): Mention[] {
  return record.shop.sure(LISTED[refers])
    ? mentions(record).filter((mention) => mention.refers === refers)
    : [];
}

const LISTED = { vendor: 'vendors', person: 'people', work: 'work' };

/** `` `tobias` or `ines` ``, at most eight of them. */
export function named(names: Iterable<string>): string {
  const all = [...names].slice(0, 8).map((name) => `\`${name}\``);
  return all.length > 1 ? `${all.slice(0, -1).join(', ')} or ${all.at(-1)}` : all.join('');
}

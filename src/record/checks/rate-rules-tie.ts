// Finds rules of shop.md of which none is more particular or newer than the other.
import type { Path } from '../front-matter.ts';
import type { Place } from '../place.ts';
import type { Check, Found } from './check.ts';

export const rateRulesTie: Check = {
  rule: 'rate-rules-tie',
  severity: 'error',
  why: 'Two rules that begin on one day and fit one hour equally leave open what it costs.',
  run: ({ shop }) => [
    ...(['rates', 'pay'] as const).flatMap((list) => hourly(shop[list] ?? [], list, shop.placeAt)),
    ...same(
      (shop.handling ?? []).map(({ from, kind }) => `${from} for \`${kind}\``),
      'handling',
      shop.placeAt,
    ),
    ...same(
      (shop.materials ?? []).map(({ from }) => from),
      'materials',
      shop.placeAt,
    ),
    ...same(
      (shop.tax ?? []).map(({ from, name, side }) => `${from} for \`${name}\`, ${side}`),
      'tax',
      shop.placeAt,
    ),
  ],
};

type Rule = { from: string; who?: string | undefined; work?: string | undefined };
type At = (path: Path) => Place;

/** A rule for a person and one for a kind of work tie, unless a rule for both stands above them. */
function hourly(rules: readonly Rule[], list: string, placeAt: At): Found[] {
  const words = rules.map(
    ({ from, who, work }) => `${from}${who ? ` for \`${who}\`` : ''}${work ? ` at \`${work}\`` : ''}`,
  );
  const both = new Map<string, string>();
  const ofPeople = new Map<string, { who: string; index: number }[]>();
  for (const [index, { from, who, work }] of rules.entries()) {
    if (who && work) {
      const key = `${who} ${work}`;
      const first = both.get(key);
      if (first === undefined || from < first) both.set(key, from);
    } else if (who) ofPeople.set(from, [...(ofPeople.get(from) ?? []), { who, index }]);
  }
  const crossed = rules.flatMap(({ from, who, work }, index) =>
    who || !work
      ? []
      : (ofPeople.get(from) ?? [])
          .filter((person) => (both.get(`${person.who} ${work}`) ?? '9999') > from)
          .map((person) => ({
            place: placeAt([list, index]),
            reason: `Two rules of \`${list}\` begin on ${from} and fit \`${work}\` by \`${person.who}\` equally.`,
            mend: `Add one for both: \`- { from: ${from}, rate: …, who: ${person.who}, work: ${work} }\`.`,
            related: [placeAt([list, person.index])],
          })),
  );
  return [...same(words, list, placeAt), ...crossed];
}

function same(words: readonly string[], list: string, placeAt: At): Found[] {
  const first = new Map<string, number>();
  return words.flatMap((word, index) => {
    const before = first.get(word);
    if (before === undefined) {
      first.set(word, index);
      return [];
    }
    return [
      {
        place: placeAt([list, index]),
        reason: `Two rules of \`${list}\` begin on ${word}.`,
        mend: 'Take one of them out, or give it its own first day.',
        related: [placeAt([list, before])],
      },
    ];
  });
}

// What bringing pictures in says when it is done, in plain lines: of many that are alike, the first few by name.

import { visibleMessage } from '../../views/visible.ts';
import { verdictText } from '../verdict.ts';
import type { BroughtIn } from './bring-in.ts';

/** The lines, in the order in which they matter. */
export function broughtInText({ listed, dryRun, ...done }: BroughtIn): string {
  const lines = [
    ...(dryRun ? ['With --dry-run nothing is written; this is what would be done.'] : []),
    done.copies.length === 0 ? 'No new pictures.' : `${pictures(done.copies.length)} copied into photos/.`,
    ...listed.map(({ day, photos, entry, how }) => `  ${day}: ${some(photos)}, ${HOW[how](entry)}`),
    ...copiesText(done.copies),
    ...knownText(done.known),
    ...outsideText(done.outside),
    ...refusedText(done.refused),
    ...othersText(done.others),
    ...(listed.length > 0 && !dryRun
      ? ['Next: write what each shows under `caption` and `alt`. npm run check says which are still without.']
      : []),
  ];
  return lines.map(visibleMessage).join('\n');
}

const HOW = {
  added: (entry: string) => `added to ${entry}.`,
  made: (entry: string) => `listed in ${entry}, which is new.`,
  'by-hand': (entry: string) =>
    `not listed: ${entry} is written in a way that can’t be added to safely. See what npm run check says of it, or list them under \`photos\` by hand.`,
};

function copiesText(copies: BroughtIn['copies']): string[] {
  const undated = copies.filter((copy) => copy.undated).map(({ from }) => `\`${from}\``);
  return [
    ...copies.flatMap(({ asked, to }) =>
      asked ? [`Another picture has the name \`${asked}\`, so this one is \`${to}\`.`] : [],
    ),
    ...(undated.length > 0
      ? [
          `${some(undated)} ${undated.length === 1 ? 'has' : 'have'} no date from a camera, and went to the day on which the file was last changed.`,
        ]
      : []),
  ];
}

function knownText(known: BroughtIn['known']): string[] {
  if (known.length === 0) return [];
  const names = known.map(({ from, path }) => `\`${from}\` as \`${path}\``);
  return [
    `${pictures(known.length)} ${known.length === 1 ? 'is' : 'are'} in the record already: ${some(names)}.`,
  ];
}

function outsideText(outside: BroughtIn['outside']): string[] {
  return [...Map.groupBy(outside, ({ day }) => day)].map(
    ([day, alike]) =>
      `${some(alike.map(({ from }) => `\`${from}\``))} ${alike.length === 1 ? 'is' : 'are'} dated ${day}, before the record opens or after today, and ${alike.length === 1 ? 'was' : 'were'} left alone. If the camera’s clock was wrong, name the day: --day 2025-04-16.`,
  );
}

function refusedText(refused: BroughtIn['refused']): string[] {
  return [...Map.groupBy(refused, ({ verdict }) => verdict.why).values()].flatMap(([first, ...others]) => {
    if (!first) return [];
    const [reason, mend] = verdictText(first.from, first.verdict);
    const also = others.map(({ from }) => `\`${from}\``);
    return [
      `${reason} It was left alone.${also.length > 0 ? ` So ${also.length === 1 ? 'was' : 'were'} ${some(also)}.` : ''} ${mend}`,
    ];
  });
}

function othersText(others: readonly string[]): string[] {
  if (others.length === 0) return [];
  const names = some(others.map((other) => `\`${other}\``));
  return [
    `${names} ${others.length === 1 ? 'is no picture and was' : 'are no pictures and were'} left alone.`,
  ];
}

const pictures = (count: number) => (count === 1 ? '1 picture' : `${count} pictures`);

/** The first three, and how many more there are. */
function some(names: readonly string[]): string {
  const more = names.length - 3;
  return `${names.slice(0, 3).join(', ')}${more > 0 ? ` and ${more} more` : ''}`;
}

// What all commands that print a PDF have in common: where it goes, in which edition, and what is said of it.
import { whyNotPrinted, writePdf } from '../disk/write-pdf.ts';
import { EDITIONS, type Edition, isEdition, KINDS, type Kind, type Printed } from '../handover/typeset.ts';

/** What is to be printed, where to, and in which edition. */
export type Print = { kind: Kind; file: string; edition: Edition };

const NAMES: { [kind in Kind]: string } = {
  book: 'The book',
  statement: 'The statement',
  choice: 'The choice sheet',
};

/** The print that was asked for, or the sentence that says what was wrong with the asking. */
export function printAsked(
  kind: Kind,
  file: string | undefined,
  edition: string | undefined = 'archive',
): Print | string {
  if (!isEdition(edition)) return `\`${edition}\` is no edition.`;
  if (!file?.endsWith('.pdf')) return `${NAMES[kind]} is a file whose name ends in \`.pdf\`.`;
  return { kind, file, edition };
}

/** Why it can't be put where it is to go. */
export const notPrinted = ({ kind, file }: Print) => whyNotPrinted(file, KINDS[kind].keyword);

/** Puts it in place and says so. Gives the exit: 0, or 1 where it couldn’t be written. */
export async function printed({ kind, file, edition }: Print, print: Printed): Promise<number> {
  if (print.missing.length > 0) console.error(missingText(kind, print.missing));
  const why = await writePdf(file, print.pdf);
  if (why !== undefined) {
    console.error(why);
    return 1;
  }
  console.log(`${NAMES[kind]} is in ${file}. ${EDITIONS[edition].says}`);
  return 0;
}

function missingText(kind: Kind, missing: readonly string[]): string {
  const letters = missing.map((letter) => `\`${letter}\``).join(', ');
  return `${NAMES[kind]}’s type has no ${letters}: printed as numbers in brackets.`;
}

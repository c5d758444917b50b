// The words that lie on top of a hand-over: the page to begin with, and how to read everything without this program.
import type { Day } from '../figures/days.ts';
import type { CarRecord } from '../record/record.ts';
import { whatItIs } from './car.ts';
import { datedText } from './dated.ts';
import { wrapped } from './plain-text.ts';

/**
 * What they speak of. `books` are the files of the bound book, by what each edition is for; `costs` that it is said what
 * the work came to; `unread` counts pictures that are named and couldn't be read.
 */
export type HandedOver = {
  record: CarRecord;
  made: Day;
  sum: string;
  books: { file: string; says: string }[];
  originals: boolean;
  costs: boolean;
  unread: number;
};

/** How the thing that was handed over is known from every other. */
export function identifierOf({ car }: CarRecord): string {
  return car.numbers?.chassis ? `${car.name}, chassis ${car.numbers.chassis}` : car.name;
}

/** In one sentence, for the description of the bag. */
export function descriptionOf(record: CarRecord): string {
  return `The record of the restoration of one car, ${record.car.name}: pages, a bound book, the texts it was kept in, tables and photographs. ${whatItIs(record)}`;
}

/** A page that needs nothing but itself; its links name files, so that they open from a folder. */
export function startHere({ record, made, sum, books, costs }: HandedOver): string {
  const item = (file: string, name: string, says: string) =>
    `      <li><a href="${html(file)}">${html(name)}</a><br>${html(says)}</li>`;
  return `<!DOCTYPE html>
<html lang="en-US">
  <head>
    <meta charset="utf-8">
    <meta name="viewport" content="width=device-width, initial-scale=1">
    <meta http-equiv="content-security-policy" content="default-src 'none'; style-src 'unsafe-inline'">
    <title>${html(record.car.name)}: start here</title>
    <style>
      body { max-width: 40rem; margin: 2rem auto; padding: 0 1rem; background: #f8f4ea; color: #1d1c18; font: 1.0625rem/1.5 "Gill Sans", "Segoe UI", sans-serif; }
      h1 { font: 500 2.125rem/1.15 "Rockwell", "Georgia", serif; border-bottom: 2px solid #c2381d; padding-bottom: 0.5rem; }
      h2 { font: 500 1.25rem/1.3 "Rockwell", "Georgia", serif; margin-top: 2rem; }
      a { color: #1f4434; }
      li { margin-bottom: 0.75rem; }
      code { overflow-wrap: anywhere; }
    </style>
  </head>
  <body>
    <h1>${html(record.car.name)}</h1>
    <p>${html(whatItIs(record))} The record of its restoration by ${html(record.shop.shop)}, for whoever has the car, handed over on ${html(datedText(made))}.</p>
    <h2>Read</h2>
    <ul>
${[
  item(
    'data/site/index.html',
    'The pages',
    'The car, its days, parts, choices, measurements and pictures, in a browser. No network is needed.',
  ),
  ...(costs
    ? [item('data/site/came-to.html', 'What it came to', 'The sums of the work, by group and by part.')]
    : []),
  ...books.map(({ file, says }) =>
    item(`data/${file}`, `The bound book, ${file.replace(/^.*\//, '')}`, says),
  ),
  item(
    'HOW-TO-READ.txt',
    'How to read all of it without any of this',
    'What each file is and what was left out, in plain text.',
  ),
].join('\n')}
    </ul>
    <h2>Check</h2>
    <p>Each file stands in <a href="manifest-sha256.txt">manifest-sha256.txt</a> with its sum; <code>sha256sum -c manifest-sha256.txt</code> compares them all. The sum on the cover of the book is</p>
    <p><code>${html(sum)}</code></p>
  </body>
</html>
`;
}

/** Plain text, for a time in which nothing else of this opens. */
export function howToRead(about: HandedOver): string {
  const { record, made, sum, books, originals, costs } = about;
  const photos = originals
    ? 'the photographs as the cameras wrote them, with all that cameras write.'
    : 'the photographs at their own size, encoded again so that no place and no camera’s number is in them. The words of the record (title, caption, text for who can’t see it, day) are in each as XMP.';
  const parts: [string, string[]][] = [
    [
      `${identifierOf(record).toUpperCase()}`,
      [
        whatItIs(record),
        `This folder holds the record of its restoration by ${record.shop.shop}, handed over on ${datedText(made)}. Nothing in it needs the program that made it, and nothing needs a network.`,
      ],
    ],
    [
      'WHAT IS HERE',
      [
        'START-HERE.html: a page with links to the rest.',
        'data/site: pages for a browser (HTML). Open data/site/index.html. Every page can be read without scripts, which only the search needs; its pictures lie beside it as WebP.',
        ...books.map(({ file, says }) => `data/${file}: the bound book. ${says}`),
        'The book holds the words and the plates. If only one file can be kept, keep the first of these, and print it.',
        'data/record: the record itself, in texts (UTF-8) that all else follows from. See below.',
        `data/record/photos: ${photos}`,
        `data/tables: hours and things bought${costs ? ', and what the work came to,' : ''} as CSV, each beginning with a line of names. data/tables/datapackage.json says what each column holds (Data Package).`,
        'bagit.txt, bag-info.txt, manifest-*.txt, tagmanifest-*.txt: the folder is a bag (BagIt 1.0, RFC 8493). These name each file with its sums.',
      ],
    ],
    ['WHAT WAS LEFT OUT', leftOut(about)],
    [
      'HOW THE TEXTS ARE WRITTEN',
      [
        'A file begins with a line of three hyphens, then names and values (YAML 1.2), then three hyphens again, then the day or the part in plain words (Markdown).',
        'record/car.md is the car; record/shop.md who worked on it; record/parts one file for each part, with how it was found and what was planned; record/choices one for each decision, with the options, what was chosen and why; record/log one for each day, named by its date.',
        'In a day, "hours" is what was done, by whom and on which part; "measured" are readings, "before" as found and "after" as left; "marks" are the tags of what came off; "finishes" says what was put on, and where lead lies; "photos" names the pictures of that day, which lie in record/photos in a folder of that date.',
        'A part or a person is named by a short name. A part’s is the name of its file; a person’s stands in record/shop.md as "id". A length such as 1 5/16 in is inches; an amount is in the currency that record/car.md names.',
      ],
    ],
    [
      'HOW TO CHECK IT',
      [
        'Any program for SHA-256 sums will do. Where there is a command line:',
        '    sha256sum -c manifest-sha256.txt',
        'A percent sign in the name of a file is written %25 in the manifests, as the standard asks; that program then doesn’t find the file, and its sum must be compared by hand.',
        'The cover of the book carries one sum for everything but the book. It is the SHA-256 sum of the lines of manifest-sha256.txt that don’t begin data/book/:',
        "    grep -v '  data/book/' manifest-sha256.txt | sha256sum",
        `    ${sum}`,
      ],
    ],
    [
      'HOW TO KEEP IT',
      [
        'Keep two copies in two places, and one with the car’s papers. Print the book. Copy the folder to a new disk every few years, and check it after copying.',
      ],
    ],
  ];
  return `${parts.map(([head, paragraphs]) => [head, ...paragraphs.map(paragraph)].join('\n\n')).join('\n\n\n')}\n`;
}

/** What the record of the shop holds and this copy doesn't, so that nobody takes a gap for a fact. */
function leftOut({ costs, unread }: HandedOver): string[] {
  const pictures =
    unread === 1 ? 'One that is named couldn’t be read.' : `${unread} that are named couldn’t be read.`;
  return [
    'The shop’s own record holds more. Not in this copy are: the owner’s name, how to reach people, what people were paid, what an hour was charged at, estimates, prices, bills, what was agreed on and paid, the owner’s statements, and words that were for the shop alone. Where a text had the owner’s name it says "the owner".',
    `${costs ? 'What the work came to was asked for: it is in the book, in data/site/came-to.html and in data/tables/totals.csv, as sums alone.' : 'Nor is there any amount of money, since none was asked for.'}`,
    'In the texts, comments and remarks went too. A text that must name an amount says 0, and the first line of such a file says so. A 0 there doesn’t mean that it cost nothing.',
    `Photographs have names of their day and a number, not those that the camera gave. Pictures that no text names were left out.${unread > 0 ? ` ${pictures}` : ''}`,
  ];
}

/** Lines of at most 76 letters; what is set in is a command, and stays as it is. */
const paragraph = (text: string) => (text.startsWith('    ') ? text : wrapped(text, 76).join('\n'));

const html = (text: string) =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');

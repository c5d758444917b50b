// The rooms of src/ and what each may import: the table that the import rule is tested by.

/** `rooms` are other rooms of src/, `packages` npm packages; `any` packages means all but the forbidden ones. */
export type Room = {
  room: string;
  rooms: readonly string[];
  packages: readonly string[] | 'any';
  /** May use node:*, that is files, processes and the network. */
  node: boolean;
  why: string;
};

const PURE = ['figures', 'measure', 'estimate', 'record', 'rollup', 'views', 'views/live'];
const EDGE = [...PURE, 'disk', 'photos', 'handover'];
/** Only the site draws pages, and only the pictures' and the drawings' rooms make pictures. */
export const KEPT: Readonly<Record<string, readonly string[]>> = {
  astro: ['site', 'commands'],
  sharp: ['photos'],
  '@napi-rs/canvas': ['drawing'],
};

/** Inside site/, few files reach the disk; browser scripts hold figures and sums alone. */
export const ROOMS: readonly Room[] = [
  {
    room: 'figures',
    rooms: [],
    packages: ['big.js', 'fraction.js', 'currency-codes'],
    node: false,
    why: 'figures are the ground floor: every other room stands on them',
  },
  {
    room: 'measure',
    rooms: ['figures'],
    packages: ['big.js', 'fraction.js'],
    node: false,
    why: 'geometry works on figures and knows no log and no file',
  },
  {
    room: 'estimate',
    rooms: ['figures'],
    packages: ['big.js', 'pure-rand'],
    node: false,
    why: 'sums and ranges know no log entry, no file and no page',
  },
  {
    room: 'record',
    rooms: ['figures'],
    packages: [
      'zod',
      'gray-matter',
      'js-yaml',
      'yaml',
      'unified',
      'remark-parse',
      'remark-gfm',
      'mdast',
      'fastest-levenshtein',
      '@noble/hashes',
    ],
    node: false,
    why: 'the record is read from text, so that a test can write it out; only disk/ opens files',
  },
  {
    room: 'rollup',
    rooms: ['figures', 'measure', 'estimate', 'record'],
    packages: ['big.js'],
    node: false,
    why: 'totals follow from the record alone, whoever shows them',
  },
  {
    room: 'views/live',
    rooms: ['figures', 'estimate'],
    packages: ['chart.js', 'minisearch'],
    node: false,
    why: 'it is said again in the browser while a reader moves a figure, where there is no record',
  },
  {
    room: 'views',
    rooms: ['figures', 'measure', 'estimate', 'record', 'rollup', 'photos', 'views/live'],
    packages: 'any',
    node: false,
    why: 'what a page says is worked out before anything is drawn',
  },
  {
    room: 'drawing',
    rooms: ['views/live'],
    packages: ['chart.js', '@napi-rs/canvas'],
    node: false,
    why: 'pages and the thread that draws ahead make the same pictures of charts',
  },
  { room: 'disk', rooms: EDGE, packages: 'any', node: true, why: 'disk/ serves pages and commands alike' },
  { room: 'photos', rooms: EDGE, packages: 'any', node: true, why: 'pictures are made before pages are' },
  { room: 'handover', rooms: EDGE, packages: 'any', node: true, why: 'a folder to hand over needs no site' },
  {
    room: 'desk',
    rooms: [...EDGE, 'desk/browser'],
    packages: 'any',
    node: true,
    why: 'the desk writes the record and uses no page of the site',
  },
  {
    room: 'desk/browser',
    rooms: ['figures'],
    packages: [],
    node: false,
    why: 'the page of the desk shows what the desk tells it and sums nothing',
  },
  {
    room: 'commands',
    rooms: [...EDGE, 'desk', 'drawing'],
    packages: 'any',
    node: true,
    why: 'a command uses the built site, not its insides',
  },
  {
    room: 'site',
    rooms: ['views', 'views/live', 'figures', 'drawing'],
    packages: 'any',
    node: false,
    why: 'pages draw what views say; only src/site/record.ts opens the record',
  },
  {
    room: 'site/browser',
    rooms: ['figures', 'estimate', 'views/live'],
    packages: ['chart.js', 'minisearch'],
    node: false,
    why: 'a browser script holds the sums it shows and nothing of the record',
  },
];

/** The files of the site that reach the disk: they open the record, follow it in dev, and put pictures and the script beside the pages. */
export const OPENS: readonly string[] = [
  'src/site/record.ts',
  'src/site/integration.ts',
  'src/site/followed.ts',
  'src/site/scripts.ts',
];

/** The room that a file of src/ lies in. */
export function roomOf(file: string): Room | undefined {
  return ROOMS.toSorted((a, b) => b.room.length - a.room.length).find(({ room }) =>
    file.startsWith(`src/${room}/`),
  );
}

// Entries as no two people write them: odd spaces, comments anywhere, lists in every manner, both line ends.
import fc from 'fast-check';

/** A line of an entry, and the path of what stands on it; of a comment, an empty line or the words there is none. */
export type Line = { text: string; of?: string };
export type Values = Record<string, unknown>;

/** Texts that YAML could misread, and some that it can't. */
export const odd = fc.oneof(
  fc.constantFrom(
    'left corner cut out',
    '1 5/16"',
    `2' 3 1/2"`,
    'Lip: gone, all of it',
    'Bill #3 # and more',
    '"soft" {steel}',
    '[x], y',
    '- one',
    '20817',
    '1,084.50',
    'true',
    '~',
    '# 3',
    "it's",
    'bay\\2',
    'a: b: c',
    '? x',
    '%',
    '@',
    '`',
    '|',
    '> x',
    '!a',
    '&a',
    '*a',
    '---',
    '...',
    'é°½ “x”',
  ),
  fc.string({ minLength: 1, maxLength: 12 }).filter((text) => text.trim() !== ''),
);
const space = fc.constantFrom('', ' ', '   ');
const comment = fc.constantFrom('', '', '  # so', ' #: x, [y] {z} - "');
const name = fc.constantFrom('cowl', 'springs', 'rear-fender-left');

/** Some lines of no meaning: they must come through every edit. */
const idle = fc.array(fc.constantFrom('', '# Two of them.', '# hours:', '#   - { part: cowl }'), {
  maxLength: 2,
});

type Block = { key: string; lines: Line[]; value: unknown };

const scalarBlock = (key: string, value: string) =>
  fc.tuple(space, comment).map(([s, c]): Block => {
    return { key, value, lines: [{ text: `${key}: ${s}${value}${c}`, of: key }] };
  });

/** A line of a list, in braces or key by key, with odd spaces and comments. */
const item = fc.record({
  part: name,
  time: fc.constantFrom('2h', '2h 30m', '3.5'),
  note: fc.option(fc.constantFrom('all four', 'left: "gone"', 'again'), { nil: undefined }),
  flow: fc.boolean(),
  dash: fc.constantFrom('- ', '-   '),
  gap: space,
  behind: comment,
  between: idle,
});
type Item = typeof item extends fc.Arbitrary<infer T> ? T : never;

function itemLines(key: string, one: Item, at: number, set: string): Line[] {
  const { part, time, note, dash, gap, behind, flow } = one;
  const bare = note?.includes(':') ? JSON.stringify(note) : note;
  const own = `${key}/${at}`;
  const idleLines = one.between.map((text) => ({ text: text === '' ? '' : `${set}  ${text}` }));
  if (flow) {
    const noted = bare === undefined ? '' : `, note: ${bare}`;
    return [{ text: `${set}${dash}{${gap}part: ${part},${gap} time: ${time}${noted} }${behind}`, of: own }];
  }
  const inner = set + ' '.repeat(dash.length);
  return [
    { text: `${set}${dash}part: ${gap}${part}${behind}`, of: `${own}/part` },
    ...idleLines,
    { text: `${inner}time: ${time}`, of: `${own}/time` },
    ...(bare === undefined ? [] : [{ text: `${inner}note: ${gap}${bare}${behind}`, of: `${own}/note` }]),
  ];
}

const hours = fc
  .record({
    items: fc.array(item, { minLength: 1, maxLength: 3 }),
    set: fc.constantFrom('', '  '),
    behind: comment,
  })
  .map(({ items, set, behind }): Block => {
    const lines = items.flatMap((one, at) => itemLines('hours', one, at, set));
    const value = items.map(({ part, time, note }) => ({
      part,
      time,
      ...(note === undefined ? {} : { note }),
    }));
    return { key: 'hours', value, lines: [{ text: `hours:${behind}`, of: 'hours' }, ...lines] };
  });

const finished = fc
  .record({
    names: fc.array(name, { minLength: 1, maxLength: 3 }),
    flow: fc.boolean(),
    gap: space,
    behind: comment,
  })
  .map(({ names, flow, gap, behind }): Block => {
    const value = names.map((one) => `${one}/strip`);
    const row = { text: `finished: [${gap}${value.join(`,${gap} `)}${gap}]${behind}`, of: 'finished' };
    const rows = value.map((one, at) => ({ text: `  -${gap} ${one}${behind}`, of: `finished/${at}` }));
    return { key: 'finished', value, lines: flow ? [row] : [{ text: 'finished:', of: 'finished' }, ...rows] };
  });

const shopOnly = fc.constantFrom<Block>(
  {
    key: 'shop-only',
    value: 'quote higher\n- next: time\n',
    lines: [
      { text: 'shop-only: |', of: 'shop-only' },
      { text: '  quote higher', of: 'shop-only' },
      { text: '  - next: time', of: 'shop-only' },
    ],
  },
  {
    key: 'shop-only',
    value: 'quote higher',
    lines: [{ text: 'shop-only:   quote higher', of: 'shop-only' }],
  },
);

export const entry = fc
  .record({
    blocks: fc
      .tuple(
        fc.option(scalarBlock('by', 'tobias')),
        fc.option(hours),
        fc.option(finished),
        fc.option(shopOnly),
        fc.option(scalarBlock('weather', 'wet')),
      )
      .map((blocks) => blocks.filter((block) => block !== null))
      .chain((blocks) => fc.shuffledSubarray(blocks, { minLength: blocks.length })),
    idle: fc.array(idle, { minLength: 6, maxLength: 6 }),
    words: fc.constantFrom('', '\nStripped it.\n', '\nStripped: it.  \n\n---\n\n# More\n\n\n', 'No end'),
    crlf: fc.boolean(),
    mark: fc.boolean(),
  })
  .map(({ blocks, idle, words, crlf, mark }) => {
    const lines: Line[] = [
      { text: '---' },
      ...blocks.flatMap((block, i) => [...(idle[i] ?? []).map((text) => ({ text })), ...block.lines]),
      ...(idle[5] ?? []).map((text) => ({ text })),
      { text: '---' },
      ...words.split('\n').map((text) => ({ text })),
    ];
    const end = crlf ? '\r\n' : '\n';
    return {
      lines,
      text: (mark ? '\uFEFF' : '') + lines.map(({ text }) => text).join(end),
      values: Object.fromEntries(blocks.map(({ key, value }) => [key, value])) as Values,
      end,
    };
  });
export type Made = typeof entry extends fc.Arbitrary<infer T> ? T : never;

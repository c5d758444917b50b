// Days as people really break them: each a file of its own, with what becomes of it. `told` days have a problem of their
// own; the others are read, and what they say is what was meant.

export type Broken = [what: string, content: string | Uint8Array, becomes: 'told' | 'read'];

const RIGHT = `---
by: tobias
hours:
  - { part: cowl, work: metal, time: 2h }
---

Stripped it.
`;
const keys = (...lines: string[]) => `---\n${lines.join('\n')}\n---\n\nStripped it.\n`;
const words = (body: string) => `---\nby: tobias\n---\n\n${body}\n`;
const bytes = (...parts: (string | number[])[]) =>
  Buffer.concat(parts.map((part) => (typeof part === 'string' ? Buffer.from(part) : Buffer.from(part))));
const utf16 = (text: string, order: 'le' | 'be') => {
  const plain = Buffer.from(`\ufeff${text}`, 'utf16le');
  return order === 'le' ? plain : plain.swap16();
};
const hour = (values: string) => keys('by: tobias', 'hours:', `  - { ${values} }`);
const bought = (price: string) =>
  keys('bought:', `  - { what: Rivets, from: millrace, part: cowl, price: ${price}, bill: "1" }`);

export const BROKEN: readonly Broken[] = [
  // The file as a whole.
  ['an empty file', '', 'read'],
  ['a file of spaces', '   \n\t\n  \n', 'read'],
  ['words alone', 'Stripped the cowl today.\n', 'read'],
  ['half a file, cut in a value', RIGHT.slice(0, 62), 'told'],
  ['half a file, cut before its closing line', RIGHT.slice(0, RIGHT.indexOf('---\n\n')), 'told'],
  ['UTF-16, as an old editor saves it', utf16(RIGHT, 'le'), 'told'],
  ['UTF-16 the other way round', utf16(RIGHT, 'be'), 'told'],
  ['Latin-1', bytes('---\nby: tobias\n---\n\nCoup', [0xe9], ', stripped.\n'), 'told'],
  ['half a letter of UTF-8 at the end', bytes(RIGHT, [0xe2, 0x82]), 'told'],
  ['a letter of UTF-8 written too long', bytes(RIGHT, [0xc0, 0xaf]), 'told'],
  ['half a pair of UTF-16 in UTF-8', bytes(RIGHT, [0xed, 0xa0, 0x80]), 'told'],
  ['a NUL byte in the words', RIGHT.replace('it.', 'i\0t.'), 'told'],
  ['a NUL byte in a value', RIGHT.replace('tobias', 'tob\0ias'), 'told'],
  ['a file of NUL bytes, as a crash leaves it', new Uint8Array(512), 'told'],
  ['a picture by another name', bytes([0xff, 0xd8, 0xff, 0xe0, 0, 16], 'JFIF\0'), 'told'],
  ['a mark of the byte order at the start', `\ufeff${RIGHT}`, 'read'],
  ['two of them', `\ufeff\ufeff${RIGHT}`, 'read'],
  ['one in the middle of a key', RIGHT.replace('hours', 'ho\ufeffurs'), 'told'],
  ['one before a value', RIGHT.replace('tobias', '\ufefftobias'), 'told'],
  ['lines that end in CR LF', RIGHT.replaceAll('\n', '\r\n'), 'read'],
  ['lines that end in CR alone', RIGHT.replaceAll('\n', '\r'), 'read'],
  ['ends of all kinds in one file', RIGHT.replace('\n', '\r\n').replace('tobias\n', 'tobias\r'), 'read'],
  ['a page of HTML', '<!doctype html>\n<html><body><p>Stripped it.</p></body></html>\n', 'told'],
  ['a letter in rich text', '{\\rtf1\\ansi Stripped it.\\par}\n', 'read'],
  [
    'marks of a merge',
    RIGHT.replace('by: tobias\n', '<<<<<<< HEAD\nby: tobias\n=======\nby: ines\n>>>>>>> theirs\n'),
    'told',
  ],
  [
    'marks of a merge in the words',
    words('<<<<<<< HEAD\nStripped it.\n=======\nStripped all.\n>>>>>>> theirs'),
    'told',
  ],

  // Where the front matter begins and ends.
  ['no line of dashes at the start', RIGHT.slice(4), 'told'],
  ['an empty line before the dashes', `\n${RIGHT}`, 'told'],
  ['a space before the dashes', ` ${RIGHT}`, 'told'],
  ['spaces after the first dashes', RIGHT.replace('---\n', '---  \n'), 'read'],
  ['spaces after the last dashes', RIGHT.replace('---\n\n', '---  \n\n'), 'read'],
  ['four dashes', RIGHT.replace('---\n', '----\n'), 'told'],
  ['long dashes, as a word processor makes them', RIGHT.replaceAll('---', '\u2014'), 'told'],
  ['equals signs in place of dashes', RIGHT.replaceAll('---', '==='), 'told'],
  ['plus signs, which mean TOML', RIGHT.replaceAll('---', '+++'), 'told'],
  ['dots at its end', RIGHT.replace('---\n\n', '...\n\n'), 'told'],
  ['two front matters', RIGHT + RIGHT, 'told'],
  ['an empty front matter', '---\n---\n\nStripped it.\n', 'read'],
  ['a front matter of comments', '---\n# nothing today\n---\n\nStripped it.\n', 'read'],
  ['code in place of YAML', '---js\nmodule.exports = { by: process.exit(3) }\n---\n', 'told'],

  // Keys and their order.
  ['a key twice', keys('by: tobias', 'by: ines'), 'told'],
  ['a list twice', keys('by: tobias', 'finished: [cowl/strip]', 'finished: [cowl/lead]'), 'told'],
  ['a tab to indent', keys('hours:', '\t- { part: cowl, work: metal, time: 2h, by: tobias }'), 'told'],
  ['a tab after the colon', keys('by:\ttobias'), 'read'],
  ['no space after the colon', keys('by:tobias'), 'told'],
  ['a space before the colon', keys('by : tobias'), 'read'],
  ['a key with a capital', keys('By: tobias'), 'told'],
  ['a space that doesn’t break, after the colon', keys('by:\u00a0tobias'), 'told'],
  [
    'spaces that don’t break, to indent',
    keys('hours:', '\u00a0\u00a0- { part: cowl, work: metal, time: 2h }'),
    'told',
  ],
  ['a wide colon', keys('by\uff1a tobias'), 'told'],
  ['an equals sign', keys('by = tobias'), 'told'],
  ['a line that is indented by one too many', keys('by: tobias', ' hours: []'), 'told'],
  [
    'a list whose lines don’t stand under each other',
    keys('hours:', '  - part: cowl', '     work: metal'),
    'told',
  ],
  ['a list without its dash', keys('hours:', '  part: cowl', '  work: metal', '  time: 2h'), 'told'],
  ['a bullet in place of the dash', keys('hours:', '  • part: cowl'), 'told'],
  ['an empty line of a list', keys('by: tobias', 'finished:', '  -', '  - cowl/strip'), 'told'],
  ['a sheet pasted in', keys('hours:', 'part,work,time', 'cowl,metal,2h', 'cowl,paint,1h'), 'told'],
  ['a table of Markdown pasted in', keys('hours:', '| part | work |', '| --- | --- |'), 'told'],
  ['a bracket left open', keys('finished: [cowl/strip'), 'told'],
  ['a brace left open', keys('hours:', '  - { part: cowl, work: metal, time: 2h, by: tobias'), 'told'],
  ['a quote left open', keys('by: "tobias'), 'told'],
  ['quotes of a word processor', hour('part: cowl, work: metal, time: 2h, note: “left, corner”'), 'told'],
  ['a second colon in a value', keys('shop-only: quote: higher'), 'told'],
  ['a number sign that cuts a value', keys('by: #tobias'), 'told'],
  ['a comma that cuts an amount', bought('1,084.50'), 'told'],

  // What YAML can do and a day can’t.
  ['an anchor and what stands for it', keys('by: &me tobias', 'shop-only: *me'), 'told'],
  ['a merge key', keys('by: tobias', '<<: { shop-only: x }'), 'told'],
  ['a tag that would make an object', keys('by: !!js/function "function () { process.exit(3) }"'), 'told'],
  ['a tag of its own', keys('by: !person tobias'), 'told'],
  ['a tag for bytes', keys('by: !!binary dG9iaWFz'), 'told'],
  ['a list as a key', keys('? [by, for]', ': tobias'), 'told'],
  ['two documents in one', keys('by: tobias', '...', 'by: ines'), 'told'],
  ['a directive', keys('%YAML 1.1', 'by: tobias'), 'told'],
  ['a key that every object has', keys('constructor: tobias'), 'told'],
  ['the key that changes all objects', keys('__proto__: { by: tobias }'), 'told'],
  ['a place of its own', keys('place: { file: x, line: 0, column: 0 }'), 'told'],

  // Figures, days and names.
  [
    'a day that no calendar has',
    keys('tested:', '  - { what: Tank, result: holds, since: 2025-02-30 }'),
    'told',
  ],
  ['a day of noughts', keys('tested:', '  - { what: Tank, result: holds, since: 0000-00-00 }'), 'told'],
  [
    'a day the other way round',
    keys('tested:', '  - { what: Tank, result: holds, since: 04.03.2025 }'),
    'told',
  ],
  ['a number beyond all numbers', bought('1e400'), 'told'],
  ['minus nought', bought('-0'), 'read'],
  ['without end', bought('.inf'), 'told'],
  ['not a number', bought('.nan'), 'told'],
  ['a hexadecimal number', bought('0x10'), 'told'],
  ['an octal number', bought('0o17'), 'told'],
  ['a number of a hundred digits', bought('9'.repeat(100)), 'told'],
  ['a decimal comma', bought('"12,50"'), 'told'],
  ['digits of another script', bought('١٢'), 'told'],
  ['a minus of a word processor', bought('\u221212.50'), 'told'],
  ['yes for a name', keys('by: yes'), 'told'],
  ['a list for a text', keys('by: [tobias]'), 'told'],
  ['a text for a list', keys('hours: 2h'), 'told'],
  ['a time of more than a day', hour('part: cowl, work: metal, time: 99h'), 'told'],
  ['a letter that looks like another in a name', hour('part: c\u043ewl, work: metal, time: 2h'), 'told'],
  ['a sign without width in a name', hour('part: cow\u200bl, work: metal, time: 2h'), 'told'],
  ['a soft hyphen in a name', hour('part: co\u00adwl, work: metal, time: 2h'), 'told'],
  ['signs that turn the writing round', hour('part: \u202elwoc\u202c, work: metal, time: 2h'), 'told'],
  ['an order to a terminal', hour('part: "\u001b[2J\u001b[31mcowl", work: metal, time: 2h'), 'told'],
  ['a name of emoji', hour('part: 🚗, work: metal, time: 2h'), 'told'],
  ['words of emoji', words('Stripped it 👩🏽‍🔧 🇩🇪.'), 'read'],
  ['words from right to left', words('הסרנו את הצבע. أزلنا الطلاء.'), 'read'],
  ['a thousand marks on one letter', words(`e${'\u0301'.repeat(1000)}`), 'read'],

  // The words.
  ['HTML in the words', words('Stripped <b>it</b>.'), 'told'],
  ['a script in the words', words('<script>hit()</script>'), 'told'],
  ['a comment that is never closed', words('<!-- to do'), 'told'],
  ['a fence that is never closed', words('```\nStripped it.'), 'read'],
  ['a link to nothing', words('[bill]()'), 'read'],
  ['quotes a thousand deep', words('>'.repeat(1000)), 'told'],
  [
    'lists two hundred deep',
    words(Array.from({ length: 200 }, (_, i) => `${'  '.repeat(i)}- x`).join('\n')),
    'told',
  ],

  // Too much of it.
  ['a line of a megabyte', words('x'.repeat(990_000)), 'read'],
  ['a value of a megabyte', hour(`part: ${'x'.repeat(900_000)}, work: metal, time: 2h`), 'told'],
  ['a key of half a megabyte', keys(`${'x'.repeat(500_000)}: y`), 'told'],
  ['more than a megabyte', 'Stripped it.\n'.repeat(80_000), 'told'],
  ['a hundred thousand lines of a list', keys('finished:', ...Array(100_000).fill(' - a/b')), 'told'],
  ['a hundred thousand keys', keys(...Array.from({ length: 60_000 }, (_, i) => `k${i}: 1`)), 'told'],
];

import { describe, expect, it } from 'vitest';
import { LEADS } from '../../../src/record/writing/leads.ts';
import { lineFromWords, namesFromWords } from '../../../src/record/writing/line-from-words.ts';
import { openSmall } from '../small.ts';

const { record } = openSmall({
  'shop.md': `---
shop: Harrow Bend Coachworks
people:
  - { id: tobias, name: Tobias Reeve }
  - { id: ines, name: Ines Marlow }
rates:
  - { from: 2025-01-01, rate: 80 }
work: [striping]
---
`,
  'parts/frame.md': '---\nname: Frame\ngroup: Frame\n---\n',
});
if (!record) throw new Error('the record opens');
const read = (list: string, said: string) => {
  const found = lineFromWords(list, said, record);
  return 'line' in found ? found.line : found.wrong;
};

describe('a line said in words', () => {
  it.each<[list: string, said: string, line: object]>([
    [
      'hours',
      'cowl metal 2h 30m; left corner cut out',
      { part: 'cowl', work: 'metal', time: '2h 30m', note: 'left corner cut out' },
    ],
    ['hours', '2h30m ines striping cowl', { part: 'cowl', work: 'striping', time: '2h30m', by: 'ines' }],
    ['hours', 'cowl/lead metal 1:30', { part: 'cowl', line: 'lead', work: 'metal', time: '1:30' }],
    [
      'hours',
      'shop 45m; no-charge swept; note again',
      { work: 'shop', time: '45m', 'no-charge': 'swept', note: 'again' },
    ],
    ['hours', 'part: cowl; work=metal; time 2.5', { part: 'cowl', work: 'metal', time: '2.5' }],
    // Words stay words, also those that would be a list or a set of keys in a file.
    [
      'hours',
      'cowl metal 2h; note [as found]',
      { part: 'cowl', work: 'metal', time: '2h', note: '[as found]' },
    ],
    [
      'hours',
      'cowl metal 2h; {left, right} done',
      { part: 'cowl', work: 'metal', time: '2h', note: '{left, right} done' },
    ],
    [
      'bought',
      '{loose: bolts}; from millrace; bill [sic]; price 1.10',
      { what: '{loose: bolts}', from: 'millrace', bill: '[sic]', price: '1.10' },
    ],
    ['hours', 'cowl metal 2h; one;; two', { part: 'cowl', work: 'metal', time: '2h', note: 'one; two' }],
    [
      'bought',
      'Line wrench, 3/8; from keld; price 4.90',
      { what: 'Line wrench, 3/8', from: 'keld', price: '4.90' },
    ],
    [
      'bought',
      'From here to there; from keld; price 4',
      { what: 'From here to there', from: 'keld', price: '4' },
    ],
    [
      'measured',
      'level frame before; at L3; reading 1.4°',
      { kind: 'level', part: 'frame', state: 'before', at: 'L3', reading: '1.4°' },
    ],
    [
      'measured',
      'thickness cowl after; readings 0.047 in, 0.044 in',
      { kind: 'thickness', part: 'cowl', state: 'after', readings: ['0.047 in', '0.044 in'] },
    ],
    [
      'measured',
      'heights frame after; points [{ mount: L1, z: 0 in }]',
      { kind: 'heights', part: 'frame', state: 'after', points: [{ mount: 'L1', z: '0 in' }] },
    ],
    ['pads', 'L3 before; 1/8 in + 1/16 in', { mount: 'L3', state: 'before', stack: ['1/8 in', '1/16 in'] }],
    ['finishes', 'cowl red lead; coats 2', { part: 'cowl', what: 'red lead', coats: '2' }],
    [
      'left',
      'cowl/lead; hours 1, 3, 7; spend 1,084.50',
      { line: 'cowl/lead', hours: ['1', '3', '7'], spend: '1,084.50' },
    ],
    ['paid', '8,000.00; bank transfer', { amount: '8,000.00', how: 'bank transfer' }],
  ])('%s: %s', (list, said, line) => {
    expect(read(list, said)).toEqual(line);
  });

  it.each<[list: string, said: string, says: string]>([
    ['hours', 'cowl metl 2h', '`metl` is no time, part, kind of work or person. Did you mean `metal`?'],
    [
      'hours',
      'cowl metal 2h scraped',
      '`scraped` is no time, part, kind of work or person. Words of your own go behind a semicolon.',
    ],
    ['hours', 'cowl metal 2,5h', 'Unexpected `2,5h`, expected a time such as `3h 30m`, `3:30` or `3.5`.'],
    [
      'measured',
      'levl frame before',
      '`levl` is no kind of measurement, part or `before`, `trial` or `after`. Did you mean `level`?',
    ],
    ['hours', 'cowl metal 2h; note a; note b', '`note` is said twice in `cowl metal 2h; note a; note b`.'],
  ])('%s: %s isn’t understood', (list, said, says) => {
    expect(read(list, said)).toBe(says);
  });

  it('is understood as each example in the help is', () => {
    // The examples are of the demo, whose names the small record hasn’t.
    const known = Object.entries(LEADS).filter(([, { words }]) => words === undefined);
    expect(known.length).toBeGreaterThan(9);
    for (const [list, { example }] of known) expect(read(list, example)).toBeTypeOf('object');
  });

  it('may be names alone', () => {
    expect(namesFromWords('cowl/strip, cowl/lead  frame/paint')).toEqual([
      'cowl/strip',
      'cowl/lead',
      'frame/paint',
    ]);
  });
});

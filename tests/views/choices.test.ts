import { describe, expect, it } from 'vitest';
import { optionRows } from '../../src/views/choice.ts';
import { choiceGroups, choiceState, decision } from '../../src/views/choices.ts';
import { viewed } from './records.ts';

const { record } = viewed();
const choiceOf = (id: string) => {
  const choice = record.choices.find((each) => each.id === id);
  if (!choice) throw new Error(`no choice ${id}`);
  return choice;
};
const corners = choiceOf('corners');
const paint = choiceOf('paint');

it('lists open choices before decided ones, and leaves out a heading with nothing under it', () => {
  expect(
    choiceGroups(record).map(({ title, items }) => [title, items.map(({ choice }) => choice.id)]),
  ).toEqual([
    ['Open', ['paint']],
    ['Decided', ['corners']],
  ]);
});

it('says that no choice is open', () => {
  const none = viewed({
    'choices/paint.md': `---
question: Cellulose, or enamel?
part: cowl
asked: 2025-03-10
options:
  - { option: cellulose, way: other, lines: [{ do: Spray it, work: paint, hours: 4 }] }
  - { option: enamel, way: other, lines: [{ do: Brush it, work: paint, hours: 7 }] }
withdrawn: { on: 2025-04-01, reason: It stays bare }
---
`,
  });
  const groups = choiceGroups(none.record);
  expect(groups[0]).toEqual({ title: 'Open', none: 'No choice is open.', items: [] });
  expect(groups[2]?.items[0]).toMatchObject({ state: 'withdrawn April 1, 2025', reason: 'It stays bare' });
});

it('says where a choice stands, with the option’s name as it was written', () => {
  expect(choiceState(paint)).toBe('open, needed by May 1, 2025');
  expect(choiceState(corners)).toBe('decided March 5, 2025: New corners in NB steel');
  expect(decision(paint)).toBeUndefined();
  expect(decision(corners)).toEqual({
    chosen: 'New corners in NB steel.',
    by: 'By the owner, by letter.',
    reason: 'The old metal is too thin.',
  });
});

describe('the options side by side', () => {
  const rows = new Map(optionRows(corners, record).map(({ head, cells }) => [head, cells]));

  it('have a cell for each option in every row, and only rows in which something stands', () => {
    expect([...rows.keys()]).toEqual([
      'Way',
      'Work',
      'To buy',
      'Wait',
      'Original kept',
      'Can fail',
      'Mark',
      'For',
    ]);
    for (const cells of rows.values()) expect(cells).toHaveLength(2);
  });

  it('say their lines as written, a range as an estimate and one figure as what was named', () => {
    expect(rows.get('Work')).toEqual([
      [
        {
          text: 'Shape two corners (metal)',
          figures: [{ before: '', text: '5 – 14 h, most likely 8', estimate: true }],
          care: 'care: hot work',
        },
      ],
      [{ text: 'Patch them (metal)', figures: [{ before: '', text: '3 h', estimate: false }], care: '' }],
    ]);
    expect(rows.get('To buy')).toEqual([
      [
        {
          text: 'Sheet, from Millrace Metals',
          figures: [
            { before: '', text: '$40', estimate: false },
            { before: 'freight ', text: '$8 – 15, most likely 10', estimate: true },
            { before: 'tax ', text: '7%', estimate: false },
          ],
          care: '',
        },
      ],
      [],
    ]);
  });

  it('say how an option can fail and what follows', () => {
    expect(rows.get('Can fail')?.[1]?.[0]?.text).toBe(
      'A chance of 25%. By then 40% of its cost is spent, and this follows: New corners in NB steel.',
    );
  });
});

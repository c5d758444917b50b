// What a choice sheet says beside the comparison itself: what figures rest on, who is asked what, what can hurt.
import { describe, expect, it } from 'vitest';
import { rollUp } from '../../src/rollup/roll-up.ts';
import { optionRows } from '../../src/views/choice.ts';
import {
  askedOf,
  choiceCautions,
  choiceSheet,
  choiceShots,
  sheetJson,
} from '../../src/views/choice-sheet.ts';
import type { Photos } from '../../src/views/photos.ts';
import { recordOf, shopText } from '../rollup/records.ts';

const record = recordOf({
  'shop.md': shopText('handling:\n  - { from: 2025-01-01, kind: bought, share: 10% }\n'),
  'choices/corners.md': `---
question: "New corners, or patches? </script>"
part: cowl
asked: 2025-03-01
needed-by: 2025-04-01
photos: [photos/2025-03-03/b.jpg]
options:
  - { option: patch, name: "Patch them, in place", way: repair, fixed-price: 480, lines: [{ do: Patch the corners, work: metal, hours: [4, 6, 11], hazards: [hot-work] }] }
  - { option: new, name: New corners, way: new-made, lines: [{ buy: Corner, price: [300, 340, 420], freight: 20 }, { do: Fit them, work: paint, hours: 3, hazards: [hot-work, spray] }] }
---
`,
  'log/2025-03-03.md': `---
photos:
  - { file: a.jpg, part: cowl, caption: one }
  - { file: b.jpg, part: cowl, caption: two }
---
`,
});
const choice = record.choices[0];
if (!choice) throw new Error('The record has a choice.');
const sheet = choiceSheet(choice, record, rollUp(record));
const picture = (file: string) => ({ file, width: 4, height: 3, small: { file, width: 4, height: 3 } });
const photos: Photos = new Map(
  ['photos/2025-03-03/a.jpg', 'photos/2025-03-03/b.jpg'].map((file) => [file, picture(file)]),
);

describe('a choice sheet', () => {
  it('says what its figures rest on', () => {
    expect(sheet?.basis).toEqual(['Hours at $85.00', 'With handling and tax by the rules of March 3, 2025']);
  });

  it('names what the owner is asked for, and by when', () => {
    expect(askedOf(choice)).toBe('One of these two ways, by April 1, 2025.');
  });

  it('calls the one thing that an option buys by its name', () => {
    expect(sheet?.controls.map(({ label, text }) => [label, text])).toContainEqual([
      'Corner with freight',
      // (300 + 4 x 340 + 420) / 6 + 20 = 366.67
      '$367',
    ]);
  });

  it('charges a fixed price, whatever the hours, and says it', () => {
    expect(sheet?.said.options[0]).toMatchObject({ id: 'patch', cost: '$480.00', span: 'certain' });
    expect(optionRows(choice, record).find(({ head }) => head === 'Fixed price')?.cells).toEqual([
      [{ text: '$480.00', figures: [], care: '' }],
      [],
    ]);
  });

  it('gives each caution once, with the options that it belongs to', () => {
    expect(choiceCautions(choice).map(({ hazard, options }) => [hazard, options])).toEqual([
      ['hot-work', ['Patch them, in place', 'New corners']],
      ['spray', ['New corners']],
    ]);
  });

  it('shows the pictures that it names, else the newest of its parts', () => {
    const shown = (of: typeof choice) => choiceShots(of, record, photos, 3).map(({ caption }) => caption);
    const { photos: _, ...unnamed } = choice;
    expect([shown(choice), shown(unnamed)]).toEqual([['two'], ['one', 'two']]);
  });

  it('carries nothing that could end the element it stands in', () => {
    const named = { ...choice, options: choice.options.map((each) => ({ ...each, name: '</script>' })) };
    const shown = choiceSheet(named, record, rollUp(record));
    const json = shown ? sheetJson(shown.sheet) : '<';
    expect(json).not.toContain('<');
    expect(Object.values(JSON.parse(json).names)).toEqual(['</script>', '</script>']);
  });
});

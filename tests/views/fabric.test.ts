import { describe, expect, it } from 'vitest';
import { whyOfDay } from '../../src/views/day-why.ts';
import { changeOf, fabricPage } from '../../src/views/fabric.ts';
import { fabricDrawn } from '../../src/views/fabric-drawn.ts';
import { recordOf, shopText } from '../rollup/records.ts';

const part = (name: string, more = '') => `---\nname: ${name}\ngroup: Body\n${more}---\n`;
const SILL = `---
question: Splice the sill, or a new one?
part: sill
asked: 2025-03-01
options:
  - { option: splice, name: Splice it, way: repair, lines: [{ do: It, work: timber, hours: 1 }] }
  - { option: whole, way: new-made, lines: [{ do: It, work: timber, hours: 1 }] }
decided: { option: splice, on: 2025-03-05, by: "the owner, by letter", reason: The rest is sound }
---
`;
const TWO = shopText('').replace('rates:', '  - { id: ines, name: Ines Marlow }\nrates:');
const TEXTS = {
  'shop.md': TWO,
  'parts/cowl.md': part('Cowl', 'at: cowl\nfabric: original\n'),
  'parts/sill.md': part('Sill', 'at: sill-left\nfabric: original\n'),
  'parts/floor.md': part(
    'Floor',
    'fabric: original\nfound: { on: 2025-02-10, condition: missing, note: only screws }\n',
  ),
  'parts/top.md': part('Top cloth', 'at: top\nfabric: unknown\n'),
  'parts/bows.md': part('Top bows', 'at: top\nfabric: original\n'),
  'parts/irons.md': part('Top irons', 'at: top\nfabric: new-made\n'),
  'parts/lamp.md': part('Lamp', 'at: lamps\n'),
  'choices/sill.md': SILL,
  'log/2025-03-20.md': `---
by: tobias
hours:
  - { part: sill, work: timber, time: 2h, by: ines }
  - { part: cowl, work: metal, time: 1h }
fabric:
  - { part: sill, now: original, note: front end new }
  - { part: floor, now: new-made }
---
`,
};
const record = recordOf(TEXTS);
const of = (id: string) => {
  const found = record.parts.find((each) => each.id === id);
  if (!found) throw new Error(`there is ${id}`);
  return changeOf(found, record);
};

describe('a change of a part', () => {
  it('names who worked on it that day, the day, and the decision with its reason', () => {
    expect(of('sill')).toEqual({
      said: { text: 'March 20, 2025', to: 'day/2025-03-20.html' },
      who: 'Ines Marlow',
      reasons: [
        {
          choice: { text: 'Splice the sill, or a new one?', to: 'choice/sill.html' },
          text: 'Decided March 5, 2025, by the owner, by letter: Splice it. The rest is sound.',
        },
      ],
    });
  });

  it('names everybody of the day where no line names the part, and how it was found where nobody decided', () => {
    expect(of('floor')).toEqual({
      said: { text: 'March 20, 2025', to: 'day/2025-03-20.html' },
      who: 'Tobias Reeve, Ines Marlow',
      reasons: [{ text: 'Found missing: only screws.' }],
    });
  });
});

describe('the page of what is original, repaired and new', () => {
  const told = fabricPage(record);

  it('counts each part once', () => {
    const own = record.parts.length;
    const counted = told.shares.reduce((sum, { count }) => sum + Number(count), 0);
    expect(counted).toBe(own);
    expect(told.opening).toMatch(
      new RegExp(
        `^Of ${own} parts, 2 are as they were built, 1 is repaired, 2 are new, 3 are of no known origin\\.$`,
      ),
    );
  });

  it('tells every part but those as they were built with what it is now', () => {
    const rows = told.changed.flatMap((each) => each.rows);
    expect(rows.find(({ id }) => id === 'sill')).toMatchObject({ found: 'Original', now: 'Front end new' });
    expect(rows.map(({ id }) => id)).not.toContain('cowl');
    expect(told.original.map(({ text }) => text)).toContain('Cowl');
  });
});

describe('the drawing of what is original, repaired and new', () => {
  const drawn = fabricDrawn(record);

  it('marks each place, and a place where parts differ as repaired', () => {
    expect(drawn.marks).toMatchObject({ 'sill-left': 'mended', top: 'mended', lamps: 'unsaid' });
    expect(drawn.marks.cowl).toBeUndefined();
    const cloth = { ...TEXTS, 'parts/irons.md': part('Top irons', 'at: top\nfabric: original\n') };
    expect(fabricDrawn(recordOf(cloth)).marks.top).toBe('unsaid');
  });

  it('says in words what it shows', () => {
    expect(drawn.words).toContain('Repaired or partly new: ');
    for (const { names } of drawn.told) expect(drawn.words).toContain(names);
    expect(drawn.told.map(({ how }) => how)).toEqual(['plain', 'hatched one way', 'dotted']);
  });
});

describe('why a day’s work was done', () => {
  const on = (day: string) => {
    const changed = recordOf({
      ...TEXTS,
      [`log/${day}.md`]: '---\nhours:\n  - { part: sill, work: timber, time: 1h, by: ines }\n---\n',
      'parts/sill.md': part('Sill', 'found: { on: 2025-02-10, condition: damaged, note: soft in front }\n'),
    });
    const entry = changed.entries.find((each) => each.day === day);
    return entry && whyOfDay(entry, changed);
  };

  it('is what was decided by then, with the day, who and the reason', () => {
    expect(on('2025-03-06')).toEqual([
      {
        part: { text: 'Sill', to: 'part/sill.html' },
        reasons: [
          {
            choice: { text: 'Splice the sill, or a new one?', to: 'choice/sill.html' },
            text: 'Decided March 5, 2025, by the owner, by letter: Splice it. The rest is sound.',
          },
        ],
      },
    ]);
  });

  it('is how the part was found before that', () => {
    expect(on('2025-03-04')?.[0]?.reasons).toEqual([{ text: 'Found damaged: soft in front.' }]);
  });
});

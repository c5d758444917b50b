// Which cautions a day and a part show. 29 CFR 1910.1025(c) for the limit of a long day.
import { describe, expect, test } from 'vitest';
import { cautionsOf } from '../../src/views/cautions.ts';
import { hazardsOfDay, hazardsOfPart, leadOnLongDays } from '../../src/views/hazards.ts';
import { recordOf } from '../rollup/records.ts';

const PARTS = {
  'parts/cowl.md': `---
name: Cowl
group: Body panels
planned:
  - { line: strip, do: Strip it, work: metal, hours: [2, 3, 5], hazards: [lead] }
  - { line: hang, do: Hang it, work: assembly, hours: 3, hazards: [] }
  - { line: fit, do: Fit it, work: assembly, hours: 6 }
---
`,
  'parts/sill.md': `---
name: Sill
group: Timber
planned:
  - { line: make, do: Make it, work: timber, hours: 10 }
---
`,
};

const shown = (hazards: readonly string[]) => cautionsOf(hazards).map(({ hazard }) => hazard);

function day(front: string, id = '2025-03-03') {
  const record = recordOf({ ...PARTS, [`log/${id}.md`]: `---\n${front}---\n` });
  const [entry] = record.entries;
  if (!entry) throw new Error('no entry');
  return { record, entry };
}

describe('a part', () => {
  test('shows what its lines name and what its kinds of work carry', () => {
    const { record } = day('by: tobias\n');
    const [cowl, sill] = ['cowl', 'sill'].map((name) => record.parts.find(({ id }) => id === name));
    expect(cowl && hazardsOfPart(cowl)).toEqual(['lead']);
    expect(sill && hazardsOfPart(sill)).toEqual(['wood-dust']);
  });
});

describe('a day', () => {
  test.each([
    ['the hazard of the planned line', '{ part: cowl, line: strip, work: metal, time: 1h }', ['lead']],
    ['the kind of work, without a line', '{ part: sill, work: timber, time: 1h }', ['wood-dust']],
    ['the words of the note', '{ part: cowl, work: metal, time: 1h, note: weld the lip }', ['hot-work']],
    [
      'the words of the note where the plan is silent',
      '{ part: cowl, line: fit, work: assembly, time: 1h, note: braze a stay }',
      ['hot-work'],
    ],
    [
      'nothing where the plan says that nothing can hurt',
      '{ part: cowl, line: hang, work: assembly, time: 1h, note: by the old weld }',
      [],
    ],
  ])('shows %s', (_, line, hazards) => {
    const { record, entry } = day(`hours:\n  - ${line}\n`);
    expect(shown(hazardsOfDay(entry, record))).toEqual(hazards);
  });

  test('shows lead and spraying where a finish is of that kind', () => {
    const { record, entry } = day(
      'finishes:\n  - { part: cowl, what: lead }\n  - { part: cowl, what: Primer }\n  - { part: sill, what: wax }\n',
    );
    expect(shown(hazardsOfDay(entry, record))).toEqual(['lead', 'spray']);
  });

  test('says what the limit for lead comes to in ten hours, over all entries of the day', () => {
    const line = (time: string) => `hours:\n  - { part: cowl, line: strip, work: metal, time: ${time} }\n`;
    const record = recordOf({
      ...PARTS,
      'log/2025-03-03.md': `---\n${line('6h')}---\n`,
      'log/2025-03-03-b.md': `---\n${line('4h')}---\n`,
      'log/2025-03-04.md': `---\n${line('8h')}---\n`,
    });
    expect(record.entries.map((entry) => leadOnLongDays(entry, record))).toEqual([
      ['Tobias Reeve worked 10 h 00 m this day: for so long a day the limit for lead is 40 µg/m³.'],
      ['Tobias Reeve worked 10 h 00 m this day: for so long a day the limit for lead is 40 µg/m³.'],
      [],
    ]);
  });
});

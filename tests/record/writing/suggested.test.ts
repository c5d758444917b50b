import { describe, expect, it } from 'vitest';
import { openRecord } from '../../../src/record/open.ts';
import { nextQuestion } from '../../../src/record/writing/questions.ts';
import { suggestedFor } from '../../../src/record/writing/suggested.ts';
import { SMALL } from '../small.ts';

const files = Object.entries({
  ...SMALL,
  'parts/frame.md':
    '---\nname: Frame\ngroup: Frame\nplanned:\n  - { line: paint, do: Paint it, work: paint }\n---\n',
  'parts/hood.md': '---\nname: Hood\ngroup: Body panels\n---\n',
  'shop.md': SMALL['shop.md'].replace('vendors:\n', 'vendors:\n  - { id: keld, name: Keld Fasteners }\n'),
  'log/2025-03-04.md': `---
hours:
  - { part: frame, work: paint, time: 1h }
ordered:
  - { what: Top cloth, from: keld, part: hood }
  - { what: Enamel, from: keld }
photos:
  - { file: IMG_1.jpg, caption: Done., alt: A frame. }
  - { file: IMG_2.jpg, caption: Half done. }
---
`,
  'log/2025-03-06.md':
    '---\nhours:\n  - { part: hood, work: metal, time: 1h }\nreceived:\n  - { what: Enamel, from: keld }\n---\n',
}).map(([file, text]) => ({ file, text }));
const photos = ['IMG_1.jpg', 'IMG_2.jpg', 'IMG_3.jpg'].map((name) => `photos/2025-03-04/${name}`);
const { record } = openRecord({ files, photos, today: '2025-03-10' });
if (!record) throw new Error('the record opens');

describe('what is suggested', () => {
  const suggested = suggestedFor('2025-03-04', record);

  it('puts parts and vendors first that came up last, as of that day', () => {
    expect(suggested.parts).toEqual(['frame', 'cowl', 'hood']);
    expect(suggested.vendors).toEqual(['keld', 'millrace']);
    expect(suggestedFor('2025-03-10', record).parts).toEqual(['hood', 'frame', 'cowl']);
  });

  it('are open lines in that order, open orders, and the day’s pictures without words', () => {
    expect(suggested.lines.map(({ name }) => name)).toEqual(['frame/paint', 'cowl/lead']);
    expect(suggested.orders).toEqual([
      { what: 'Top cloth', from: 'keld', part: 'hood', ordered: '2025-03-04' },
    ]);
    expect(suggested.photos).toEqual([{ file: 'IMG_2.jpg', caption: 'Half done.' }, { file: 'IMG_3.jpg' }]);
  });

  it('leads to a question with its offers, the likely one named', () => {
    const ask = (line: Record<string, string>, ...passed: string[]) =>
      nextQuestion('hours', line, new Set(passed), record, suggested);
    expect(
      nextQuestion('bought', { from: 'keld', what: 'Bolts' }, new Set(), record, suggested),
    ).toMatchObject({
      key: 'part',
      says: 'The part it is for; none means the car as a whole',
      needed: false,
      offers: [{ value: 'frame', label: 'Frame' }, { value: 'cowl' }, { value: 'hood' }],
    });
    expect(ask({})).toMatchObject({ key: 'line', offers: [] });
    expect(ask({ part: 'cowl' })).toMatchObject({
      key: 'line',
      offers: [{ value: 'lead', label: 'Fill the low spots' }],
    });
    expect(ask({ part: 'frame' }, 'line')).toMatchObject({ key: 'work', needed: true, likely: 'paint' });
    expect(ask({ part: 'cowl', line: 'lead' })).toMatchObject({ key: 'work', likely: 'metal' });
    expect(ask({ part: 'cowl', work: 'metal' }, 'line')).toMatchObject({
      key: 'time',
      example: '4h 15m',
      needed: true,
    });
    expect(ask({ part: 'cowl', work: 'metal', time: '1h' }, 'line', 'note')).toBeUndefined();
  });

  it('asks the kind of a reading first, then what that kind holds', () => {
    const first = nextQuestion('measured', {}, new Set(), record, suggested);
    expect(first?.offers?.map(({ value }) => value)).toContain('level');
    const keys: string[] = [];
    let line: Record<string, string> = { kind: 'gaps' };
    for (;;) {
      const next = nextQuestion('measured', line, new Set(), record, suggested);
      if (!next) break;
      keys.push(next.key);
      line = { ...line, [next.key]: 'x' };
    }
    expect(keys).toEqual(
      expect.arrayContaining(['part', 'state', 'where', 'readings', 'target', 'within', 'note']),
    );
    expect(keys.at(-1)).toBe('note');
    expect(keys).not.toContain('reading');
  });
});

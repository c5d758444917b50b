import { describe, expect, it } from 'vitest';
import { addedToEntry, isNothing } from '../../../src/record/writing/add-to-entry.ts';
import { newProblems } from '../../../src/record/writing/day-plan.ts';

const cowl = { part: 'cowl', work: 'metal', time: '150m' };

describe('what a day brought', () => {
  it('stands in a new entry under the day’s person, times written one way', () => {
    expect(
      addedToEntry('', { by: 'ines', lists: { finished: ['cowl/strip'], hours: [cowl] }, words: 'Done.' }),
    ).toBe(
      '---\nby: ines\nhours:\n  - { part: cowl, work: metal, time: 2h 30m }\nfinished: [cowl/strip]\n---\n\nDone.\n',
    );
  });

  it.each([
    ['the same person', 'by: ines\n', '- { part: cowl, work: metal, time: 2h 30m }'],
    ['another person', 'by: tobias\n', '- { part: cowl, work: metal, time: 2h 30m, by: ines }'],
    ['nobody', '', '- { part: cowl, work: metal, time: 2h 30m, by: ines }'],
  ])('names who worked on lines behind those of %s', (_, by, line) => {
    const before = `---\n${by}hours:\n  - { part: frame, time: 1h }\n---\n`;
    expect(addedToEntry(before, { by: 'ines', lists: { hours: [cowl] } })).toBe(
      `---\n${by}hours:\n  - { part: frame, time: 1h }\n  ${line}\n---\n`,
    );
  });

  it('gives a listed picture the words it lacks, and lists the others', () => {
    const before = '---\nphotos:\n  - file: a.jpg\n    caption:\n    alt: An edge.\n---\n';
    const photos = [
      { file: 'a.jpg', caption: 'Lip.', alt: 'Another alt.' },
      { file: 'b.jpg', caption: 'Hoop.' },
    ];
    expect(addedToEntry(before, { lists: { photos } })).toBe(
      '---\nphotos:\n  - file: a.jpg\n    caption: Lip.\n    alt: An edge.\n  - file: b.jpg\n    caption: Hoop.\n---\n',
    );
  });

  it('may be a note for the shop alone', () => {
    expect(addedToEntry('', { lists: { 'shop-only': ['quote higher'] } })).toBe(
      '---\nshop-only: quote higher\n---\n',
    );
  });

  it('isn’t added to an entry that can’t be read', () => {
    expect(addedToEntry('---\nby: "ines\n---\n', { lists: { hours: [cowl] } })).toBeUndefined();
  });

  it('is nothing when all is empty', () => {
    expect(isNothing({ lists: { hours: [] }, words: ' ' })).toBe(true);
    expect(isNothing({ by: 'ines', lists: {}, words: 'Done.' })).toBe(false);
  });
});

describe('a problem', () => {
  const at = (line: number, reason: string) => ({
    rule: 'r',
    severity: 'error' as const,
    place: { file: 'log/2025-03-03.md', line, column: 1 },
    reason,
  });

  it('is new when it wasn’t there before, wherever its line has gone', () => {
    expect(newProblems([at(3, 'a'), at(4, 'b')], [at(9, 'b'), at(3, 'a'), at(5, 'a'), at(1, 'c')])).toEqual([
      at(5, 'a'),
      at(1, 'c'),
    ]);
  });
});

// Every hazard that may be written has a caution, with the figures that its source gives.
import { describe, expect, test } from 'vitest';
import shared from '../../shared/cautions.json' with { type: 'json' };
import { HAZARD, WORK } from '../../src/record/words.ts';
import { CAUTION_CLOSING, cautionsOf, hazardsOfLine, hazardsOfWork } from '../../src/views/cautions.ts';

describe('the cautions', () => {
  test('there is one for every hazard, and none besides', () => {
    expect(shared.cautions.map(({ hazard }) => hazard)).toEqual([...HAZARD]);
  });

  test('each is one to three sentences with a source of law', () => {
    for (const { name, text, source } of cautionsOf(HAZARD)) {
      expect(name).not.toBe('');
      expect(text.split(/\.(?=\s|$)/).filter((part) => part !== '').length, text).toBeLessThanOrEqual(3);
      expect(source).toMatch(/^29 CFR 19\d\d\.\d+/);
    }
  });

  test('none says that work is safe', () => {
    for (const { text } of cautionsOf(HAZARD)) expect(text).not.toMatch(/\bsafe/i);
    expect(CAUTION_CLOSING).toContain('does not say that work is safe');
    expect(CAUTION_CLOSING).toMatch(/local codes.*licensed practice/);
  });

  // Figures: 29 CFR 1910.1025(c), 1910.252(a)(2)(iii)(B), 1910.1053(b)–(c), 1910.107, 1910.1000 table Z-1.
  test.each([
    ['lead', ['50 µg/m³', '30', '400 divided by the hours']],
    ['hot-work', ['35 ft', 'half an hour']],
    ['silica', ['50 µg/m³', '25']],
    ['spray', ['3 ft', '20 ft']],
    ['asbestos', ['five pairs of brakes or five clutches a week']],
    ['wood-dust', ['15 mg/m³', '5 of', 'advises 1']],
  ])('%s gives the figures of its source', (hazard, figures) => {
    for (const figure of figures) expect(cautionsOf([hazard])[0]?.text).toContain(figure);
  });

  test('each stands once, in one order, however they were written', () => {
    const names = (hazards: string[]) => cautionsOf(hazards).map(({ hazard }) => hazard);
    expect(names(['spray', 'lead', 'spray', 'hot-work'])).toEqual(['lead', 'hot-work', 'spray']);
    expect(names(['thirst'])).toEqual([]);
  });
});

describe('kinds of work', () => {
  test('timber carries wood dust and paint carries spraying; the others carry nothing by themselves', () => {
    const carried = Object.fromEntries(WORK.map((work) => [work, hazardsOfWork(work)]));
    expect(carried).toMatchObject({ timber: ['wood-dust'], paint: ['spray'], metal: [], trim: [] });
    expect(hazardsOfWork('striping')).toEqual([]);
    expect(hazardsOfWork(undefined)).toEqual([]);
  });

  test('a line has its own hazards and those of its work, each once', () => {
    expect(hazardsOfLine({ work: 'paint', hazards: ['spray', 'lead'] })).toEqual(['lead', 'spray']);
    expect(hazardsOfLine({ work: 'metal' })).toEqual([]);
  });
});

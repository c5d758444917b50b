import MiniSearch from 'minisearch';
import { describe, expect, it } from 'vitest';
import { SEARCH, type Searched } from '../../src/views/live/searched.ts';
import { searched, searchScript } from '../../src/views/search.ts';
import { viewed } from './records.ts';

const NOTES = `---
name: Cowl
group: Body panels
found: { on: 2025-02-10, condition: damaged, note: both lower corners gone }
---

- first hinge
- second strap

| kept | where |
| --- | --- |
| irons | loft |
`;
const { record } = viewed({ 'parts/cowl.md': NOTES });
const all = searched(record, new Map());
const index = new MiniSearch<Searched>(SEARCH);
index.addAll(all);
const found = (words: string) => index.search(words).map(({ to }) => to);

describe('the search', () => {
  it('knows every day, part and choice by its page, the newest day first', () => {
    expect(all.map(({ to }) => to)).toEqual([
      ...record.entries.map(({ id }) => `day/${id}.html`).reverse(),
      ...record.parts.map(({ id }) => `part/${id}.html`),
      ...record.choices.map(({ id }) => `choice/${id}.html`),
      'fabric.html',
    ]);
  });

  // Words of the texts of the record, each of which stands in one of them only.
  it.each([
    ['stripped', 'day/2025-03-03.html'],
    ['bolts', 'day/2025-03-03.html'],
    ['corners gone', 'part/cowl.html'],
    ['strap', 'part/cowl.html'],
    ['loft', 'part/cowl.html'],
    ['thickness', 'choice/corners.html'],
    ['cellulos', 'choice/paint.html'],
    ['celulose', 'choice/paint.html'],
    ['repaired new cowl', 'fabric.html'],
  ])('finds %s', (words, page) => {
    expect(found(words)).toContain(page);
  });

  it('asks for every word', () => {
    expect(found('cellulose loft')).toEqual([]);
  });

  it('is one assignment, that no text of the record can end', () => {
    const spoiled = viewed({
      'parts/cowl.md': '---\nname: "Cowl </script><script>"\ngroup: Body panels\n---\n',
    });
    const script = searchScript(searched(spoiled.record, new Map()));
    expect(script).not.toContain('</script');
    expect(script).toMatch(/^globalThis\.recordSearch=\{.*\};\n$/s);
  });
});

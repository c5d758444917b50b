import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { checks } from '../../src/record/checks/index.ts';
import { fieldTables } from '../../src/views/field-tables.ts';
import { between, problemCatalogue } from '../../src/views/problem-catalogue.ts';
import { problemText } from '../../src/views/problem-text.ts';
import { openProblem, problemFolders, saysOf } from './problem-folders.ts';
import { openSmall } from './small.ts';

const rules = checks.map(({ rule }) => rule);

describe('every problem', () => {
  it.each(problemFolders)('%s is said in these words', (name) => {
    expect(`${openProblem(name).problems.map(problemText).join('\n')}\n`).toBe(saysOf(name));
  });

  it.each(rules)('of the rule %s has a record that shows it and nothing else', (rule) => {
    expect(problemFolders).toContain(rule);
    expect(new Set(openProblem(rule).problems.map((problem) => problem.rule))).toEqual(new Set([rule]));
  });

  it('says what was found and how to mend it in whole sentences', () => {
    const found = problemFolders.flatMap((name) => openProblem(name).problems);
    expect(found.length).toBeGreaterThan(problemFolders.length);
    for (const { reason, mend } of found) {
      expect(reason).toMatch(/^[`A-Z\d$].*\.$/s);
      expect(mend ?? 'No mend.').toMatch(/^[`A-Z].*[.?]$/s);
    }
  });
});

describe('the checks', () => {
  it('each have a name of their own', () => {
    expect(new Set(rules).size).toBe(rules.length);
  });

  it('each say in one sentence why they matter', () => {
    expect(checks.filter(({ why }) => !/^[A-Z][^.]*\.$/.test(why)).map(({ rule }) => rule)).toEqual([]);
  });
});

describe('the writer’s guide', () => {
  const guide = readFileSync('content/README.md', 'utf8');

  it('begins with an entry that can be copied', () => {
    const entry = /```yaml\n(---\n.+?)```/s.exec(guide)?.[1] ?? '';
    const { problems, read, record } = openSmall({ 'log/2025-03-04.md': entry });
    expect(problems).toEqual([]);
    expect(read).toMatchObject({ entries: 2, bills: 2 });
    // 3 h 30 m as written in the guide.
    expect(record?.entries[1]?.hours?.[0]?.time).toBe(210);
  });

  it('lists the fields as the schemas have them; `npm run catalogue` writes them', () => {
    expect(between(guide, 'fields')).toBe(fieldTables());
  });

  it('lists the problems as they are said; `npm run catalogue` writes them', () => {
    const said = problemFolders.map((name) => ({ name, says: saysOf(name) }));
    expect(between(guide, 'problems')).toBe(problemCatalogue(said, checks));
  });
});

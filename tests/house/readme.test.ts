import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { problemText } from '../../src/views/problem-text.ts';
import { openSmall } from '../record/small.ts';

const readme = readFileSync('README.md', 'utf8');
const developers = readFileSync('DEVELOPERS.md', 'utf8');
const { scripts } = JSON.parse(readFileSync('package.json', 'utf8')) as { scripts: Record<string, string> };

describe('README.md', () => {
  const [indented = ''] = /(?<=\n\n) {4}---\n[\s\S]*?(?=\n\n`tobias`)/.exec(readme) ?? [];
  const entry = `${indented.replace(/^ {4}/gm, '')}\n`;

  it('shows a first entry that is right', () => {
    const { problems, record } = openSmall({ 'log/2025-04-16.md': entry });
    expect(problems).toEqual([]);
    expect(record?.entries.at(-1)?.bought?.[0]).toMatchObject({ price: 4620, bill: '20790' });
  });

  it('shows the answer to a mistake in it, word for word', () => {
    const { problems } = openSmall({ 'log/2025-04-16.md': entry.replace('2h 30m', '2.5x') });
    expect(problems).toHaveLength(1);
    for (const problem of problems) expect(readme).toContain(`\n    ${problemText(problem)}\n`);
  });
});

describe('README.md and DEVELOPERS.md', () => {
  const both = `${readme}\n${developers}`;

  it('name only commands that there are', () => {
    const named = [...both.matchAll(/npm run ([a-z]+)/g)].map(([, name = '']) => name);
    expect(named.length).toBeGreaterThan(6);
    expect(named.filter((name) => !(name in scripts))).toEqual([]);
  });

  it('name only files that there are', () => {
    const named = [...both.matchAll(/(?<=[`(])(?:src|tests|shared|public|content|\.ci)\/[\w./-]*/g)].map(
      String,
    );
    expect(named.length).toBeGreaterThan(10);
    expect(named.filter((path) => !existsSync(path))).toEqual([]);
  });
});

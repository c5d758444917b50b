import { readFileSync } from 'node:fs';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { filesIn } from './files.ts';

const PURE = ['figures', 'measure', 'estimate', 'record', 'rollup', 'views'];

/** Uses of the clock or of unseeded chance, each with file and line. */
function clockAndChance(file: string, text: string): string[] {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    const written = node.getText(source);
    const now = ts.isNewExpression(node) && /^new Date(\(\))?$/.test(written);
    const read =
      ts.isPropertyAccessExpression(node) && /^(Math\.random|Date\.now|performance\.now)$/.test(written);
    if (now || read) {
      const { line } = source.getLineAndCharacterOfPosition(node.getStart(source));
      found.push(`${file}:${line + 1} uses ${written}: give the day or the seed as an argument`);
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

describe('rooms that must say the same every time', () => {
  it('use no clock and no unseeded chance', () => {
    const files = filesIn('src').filter(
      (file) => PURE.includes(file.split('/')[1] ?? '') && file.endsWith('.ts'),
    );
    expect(files.length).toBeGreaterThan(30);
    expect(files.flatMap((file) => clockAndChance(file, readFileSync(file, 'utf8')))).toEqual([]);
  });

  it('would be told, with the line', () => {
    const text = 'const a = 1;\nconst b = Math.random() + Date.now();\nconst c = new Date();\n';
    expect(clockAndChance('src/figures/days.ts', text)).toEqual([
      'src/figures/days.ts:2 uses Math.random: give the day or the seed as an argument',
      'src/figures/days.ts:2 uses Date.now: give the day or the seed as an argument',
      'src/figures/days.ts:3 uses new Date(): give the day or the seed as an argument',
    ]);
    expect(clockAndChance('src/figures/days.ts', 'new Date(86_400_000 * 3);\n')).toEqual([]);
  });
});

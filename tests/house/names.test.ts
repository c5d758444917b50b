import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { describe, expect, it } from 'vitest';

const files = execFileSync('git', ['ls-files', '-co', '--exclude-standard'], { encoding: 'utf8' })
  .split('\n')
  .filter((file) => file !== '');
const ours = files.filter((file) => /^(src|tests|shared|\.ci)\//.test(file));
const texts = files.filter(
  (file) =>
    /\.(ts|mjs|js|astro|css|json|md|yaml|yml|svg)$|^\.ci\/run$/.test(file) && file !== 'package-lock.json',
);

const EMPTY_NAMES = ['utils', 'util', 'helpers', 'helper', 'common', 'manager', 'service', 'data', 'misc'];

/** Lines of a text that match, as `file:line`. */
function linesWith(file: string, wanted: RegExp): string[] {
  return readFileSync(file, 'utf8')
    .split('\n')
    .flatMap((line, at) => (wanted.test(line) ? [`${file}:${at + 1} ${line.trim().slice(0, 80)}`] : []));
}

describe('names', () => {
  it('say what a file or folder holds', () => {
    expect(ours.length).toBeGreaterThan(80);
    const empty = ours.filter((file) =>
      file.split('/').some((step) => EMPTY_NAMES.includes(basename(step).replace(/\..*$/, '').toLowerCase())),
    );
    expect(empty).toEqual([]);
  });

  it('are in lower case with hyphens, but for components', () => {
    const odd = ours.filter(
      (file) => file.endsWith('.ts') && !/^[a-z0-9]+([.-][a-z0-9]+)*$/.test(basename(file)),
    );
    expect(odd).toEqual([]);
  });
});

describe('what is kept', () => {
  // Written in two halves, so that this file doesn't find itself.
  it('leaves no work marked as undone', () => {
    const undone = new RegExp(`\\b(${'TO'}DO|${'FIX'}ME|${'XX'}X)\\b`);
    expect(texts.flatMap((file) => linesWith(file, undone))).toEqual([]);
  });

  it('names no folder of anybody’s machine', () => {
    const machine = new RegExp(
      `(^|[\\s"'\`(=])(/${'home'}/|/${'Users'}/|/${'work'}/|/${'root'}/|[A-Z]:\\\\\\\\)`,
    );
    expect(texts.flatMap((file) => linesWith(file, machine))).toEqual([]);
  });

  it('leaves no test that is skipped or runs alone', () => {
    const apart = new RegExp(`\\b(it|describe|test)\\.(${'on'}ly|${'sk'}ip|${'to'}do)\\b`);
    expect(ours.flatMap((file) => linesWith(file, apart))).toEqual([]);
  });
});

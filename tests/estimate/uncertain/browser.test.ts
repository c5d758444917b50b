import { createContext, runInContext } from 'node:vm';
import { gzipSync } from 'node:zlib';
import { build } from 'esbuild';
import { beforeAll, describe, expect, it } from 'vitest';
import { pertCurve } from '../../../src/estimate/uncertain/pert-curve.ts';
import { sampleLines } from '../../../src/estimate/uncertain/sample.ts';
import { compared, FENDER } from './choice/fender.ts';

const ROOM = './src/estimate/uncertain';
const ENTRY = [
  'calibration',
  'remainder',
  'sample',
  'spread',
  'summary',
  'earned-value',
  'pert',
  'pert-curve',
]
  .concat('choice/compare', 'triangular')
  .map((file) => `export * from '${ROOM}/${file}.ts';`)
  .join('\n');

let script = '';

beforeAll(async () => {
  const { outputFiles } = await build({
    stdin: { contents: ENTRY, resolveDir: process.cwd(), loader: 'ts' },
    bundle: true,
    write: false,
    minify: true,
    format: 'iife',
    globalName: 'ranges',
    platform: 'browser',
    target: 'es2022',
  });
  script = outputFiles[0]?.text ?? '';
});

/** A page without clock, chance, modules or node. */
function onPage(expression: string): string {
  const page = createContext({});
  runInContext(
    'Math.random = Date.now = () => { throw new Error("not to be asked"); }; Date = undefined;',
    page,
  );
  runInContext(script, page);
  return runInContext(`JSON.stringify(${expression})`, page) as string;
}

describe('as a classic script', () => {
  it('is under 90 kB packed', () => {
    expect(script.length).toBeGreaterThan(5_000);
    expect(gzipSync(script).length).toBeLessThan(90_000);
  });

  it('draws the same figures as here', () => {
    const range = { low: 6, likely: 9, high: 16 };
    const here = sampleLines([{ id: 'a', curve: pertCurve(range) }], { seed: 's', draws: 50 }).totals;
    const there = onPage(
      `Array.from(ranges.sampleLines([{ id: 'a', curve: ranges.pertCurve(${JSON.stringify(range)}) }],
        { seed: 's', draws: 50 }).totals)`,
    );
    expect(JSON.parse(there)).toEqual(Array.from(here));
  });

  it('compares a choice as here', () => {
    const there = onPage(
      `ranges.compareOptions(${JSON.stringify(FENDER)}, { seed: 'harrow bend', draws: 20000 }).comparison`,
    );
    expect(JSON.parse(there)).toEqual(JSON.parse(JSON.stringify(compared(FENDER))));
  });
});

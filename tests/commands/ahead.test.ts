// Choices, forecasts and charts that are drawn on another core come out as those that are drawn where they are asked for, and are found.
import { resolve } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { drawsAhead } from '../../src/commands/build/ahead.ts';
import { openFolder } from '../../src/disk/open-folder.ts';
import { chartSvg } from '../../src/drawing/charts.ts';
import type { CarRecord } from '../../src/record/record.ts';
import { choiceDraws, drawnOfChoice } from '../../src/rollup/ahead/choice-draws.ts';
import { comparedChoice } from '../../src/rollup/ahead/compared.ts';
import { type DrawnBefore, drawnBefore } from '../../src/rollup/ahead/drawn-before.ts';
import { finishFigures } from '../../src/rollup/ahead/finish-draws.ts';
import { finishDraws, forecastOf } from '../../src/rollup/ahead/forecast.ts';
import { outcomeOf } from '../../src/rollup/ahead/outcome.ts';
import type { Rollup } from '../../src/rollup/cost-lines.ts';
import { rollUp } from '../../src/rollup/roll-up.ts';
import { CHART_SIZES, chartPicture, drawnOfChart } from '../../src/views/chart-told.ts';
import { costCharts, forecastCharts } from '../../src/views/told-charts.ts';

let record: CarRecord;
let rollup: Rollup;
const ONE = { choices: 1, lines: 1 };
const nothing = (): DrawnBefore => ({ before: new Map(), now: new Map() });

const everything = () => ({
  choices: choiceDraws(record, rollup),
  finishes: finishDraws(record, rollup),
  charts: costCharts(record, rollup),
});
const nothingAsked = { choices: [], finishes: [], charts: [] };

beforeAll(async () => {
  record = (await openFolder(resolve('content'))).record as CarRecord;
  rollup = rollUp(record);
});

describe('what is drawn on another core', () => {
  it('is what pages ask for, and nothing is drawn twice', async () => {
    const results = nothing();
    const ahead = drawsAhead(results, { many: ONE, cores: 2 });
    ahead.begin(everything());
    await ahead.done();
    expect(results.before.size).toBeGreaterThan(record.choices.length);
    // What is told once more rests on what was drawn.
    drawnBefore(record, results);
    await ahead.begin({ ...nothingAsked, charts: forecastCharts(record, rollup) });

    for (const choice of record.choices) {
      comparedChoice(choice, record, rollup.lines);
      outcomeOf(choice, record, rollup);
    }
    forecastOf(record, rollup);
    forecastOf(record, rollup, { corrected: false });
    const charts = [...costCharts(record, rollup), ...forecastCharts(record, rollup)];
    expect(charts.length).toBeGreaterThan(6);
    const noDrawing = () => Promise.reject(new Error('is drawn already'));
    for (const told of charts)
      for (const size of CHART_SIZES) await chartPicture(told, size, record, noDrawing);
    expect([...results.now.keys()].sort()).toEqual([...results.before.keys()].sort());
    for (const [name, result] of results.now) expect(result).toBe(results.before.get(name));

    // The same in this thread, each choice by itself.
    const finishes = finishDraws(record, rollup).map((draws) => [draws.name, finishFigures(draws)] as const);
    expect(finishes.length).toBe(2);
    const here = new Map<string, unknown>([
      ...choiceDraws(record, rollup).flatMap(drawnOfChoice),
      ...finishes,
      ...charts.flatMap((told) => drawnOfChart(told, chartSvg)),
    ]);
    expect(results.before).toEqual(here);
    const anew = nothing();
    const again = { ...record };
    drawnBefore(again, anew);
    for (const choice of record.choices.map((one) => ({ ...one }))) {
      comparedChoice(choice, again, rollup.lines);
      outcomeOf(choice, again, rollup);
    }
    forecastOf(again, { ...rollup });
    forecastOf(again, { ...rollup }, { corrected: false });
    for (const told of charts)
      for (const size of CHART_SIZES) await chartPicture(told, size, again, async () => chartSvg);
    expect(anew.now).toEqual(here);
  });

  it('is left alone where it is little, known, or there is one core', async () => {
    const choices = choiceDraws(record, rollup);
    const known = nothing();
    for (const choice of choices)
      for (const [name, result] of drawnOfChoice(choice)) known.before.set(name, result);
    for (const draws of finishDraws(record, rollup)) known.before.set(draws.name, finishFigures(draws));
    const size = known.before.size;
    for (const [results, how] of [
      [nothing(), { many: { choices: choices.length + 1, lines: 9999 }, cores: 2 }],
      [nothing(), { many: ONE, cores: 1 }],
      [known, { many: ONE, cores: 2 }],
    ] as const) {
      const ahead = drawsAhead(results, how);
      const isKnown = (name: string) => results.before.has(name);
      const told = {
        choices,
        finishes: finishDraws(record, rollup, isKnown),
        charts: costCharts(record, rollup),
      };
      expect(ahead.begin(told)).toBeUndefined();
      await ahead.done();
      expect([0, size]).toContain(results.before.size);
    }
  });

  it('stops the build where it can’t be drawn', async () => {
    const ahead = drawsAhead(nothing(), { many: ONE, cores: 2 });
    const [one] = choiceDraws(record, rollup);
    ahead.begin({
      choices: [{ ...one, sums: { drivers: [] } } as unknown as NonNullable<typeof one>],
      finishes: [],
      charts: [],
    });
    await expect(ahead.done()).rejects.toThrow(/What lies ahead can’t be drawn/);
    await ahead.rest();
  });

  it('is given up when the build ends early', async () => {
    const ahead = drawsAhead(nothing(), { many: ONE, cores: 2 });
    ahead.begin(everything());
    await ahead.rest();
    await expect(ahead.done()).rejects.toThrow(/ended/);
    await expect(ahead.begin(nothingAsked)).rejects.toThrow(/ended/);
  });
});

// Least squares against NIST's Statistical Reference Datasets (public domain).
import { describe, expect, it } from 'vitest';
import { leastSquares } from '../../../src/measure/least-squares.ts';
import { answered } from '../../measure/answered.ts';
import { norris } from './norris.ts';

/** To a share of the expected value. */
function expectNear(value: number | null | undefined, expected: number, share = 1e-9): void {
  expect(Math.abs((value ?? Number.NaN) / expected - 1), `${value} against ${expected}`).toBeLessThan(share);
}

describe('reference data', () => {
  // Values as in the GNU Scientific Library's fit/test.c; confirmed with another program.
  it('D14: Norris', () => {
    const fit = answered(
      leastSquares(
        norris.map(({ x }) => [1, x]),
        norris.map(({ y }) => y),
      ),
    );
    expectNear(fit.coefficients[0], -0.262323073774029);
    expectNear(fit.coefficients[1], 1.00211681802045);
    expectNear(fit.deviations?.[0], 0.232818234301152);
    expectNear(fit.deviations?.[1], 0.000429796848199937);
    expectNear(fit.residualDeviation, 0.884796396144373);
    expectNear(fit.residualSquares, 26.6173985294224);
    expectNear(fit.rSquared, 0.999993745883712);
  });

  it('D16: NoInt1, a line through zero', () => {
    const steps = Array.from({ length: 11 }, (_, i) => i);
    const fit = answered(
      leastSquares(
        steps.map((i) => [60 + i]),
        steps.map((i) => 130 + i),
      ),
    );
    expectNear(fit.coefficients[0], 2.07438016528926, 1e-10);
    expectNear(fit.deviations?.[0], 0.0165289256198347, 1e-10);
    expectNear(fit.residualDeviation, 3.56753034006338, 1e-10);
    expectNear(fit.residualSquares, 127.272727272727, 1e-10);
    expectNear(fit.rSquared, 0.999365492298663, 1e-10);
  });

  // Data and values from memory; the values recomputed in exact fractions.
  it('D17: Longley, whose columns nearly follow from each other', () => {
    const rows = LONGLEY.trim()
      .split('\n')
      .map((line) => line.trim().split(/\s+/).map(Number));
    const fit = answered(
      leastSquares(
        rows.map((row) => [1, ...row.slice(1)]),
        rows.map(([y = Number.NaN]) => y),
      ),
    );
    [
      -3482258.63459582, 15.0618722713733, -0.035819179292591, -2.02022980381683, -1.03322686717359,
      -0.0511041056535807, 1829.15146461355,
    ].forEach((expected, j) => {
      expectNear(fit.coefficients[j], expected);
    });
    expectNear(fit.residualDeviation, 304.854073561965);
    expectNear(fit.rSquared, 0.995479004577296);
  });
});

// Employment; price index, product, unemployed, armed forces, population, year.
const LONGLEY = `
60323  83.0 234289 2356 1590 107608 1947
61122  88.5 259426 2325 1456 108632 1948
60171  88.2 258054 3682 1616 109773 1949
61187  89.5 284599 3351 1650 110929 1950
63221  96.2 328975 2099 3099 112075 1951
63639  98.1 346999 1932 3594 113270 1952
64989  99.0 365385 1870 3547 115094 1953
63761 100.0 363112 3578 3350 116219 1954
66019 101.2 397469 2904 3048 117388 1955
67857 104.6 419180 2822 2857 118734 1956
68169 108.4 442769 2936 2798 120445 1957
66513 110.8 444546 4681 2637 121950 1958
68655 112.6 482704 3813 2552 123366 1959
69564 114.2 502601 3931 2514 125368 1960
69331 115.7 518173 4806 2572 127852 1961
70551 116.9 554894 4007 2827 130081 1962
`;

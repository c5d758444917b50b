// Linear least squares for the small fits of the workshop: lines, planes, twist.
import { type Answer, answer, noAnswer } from './answer.ts';

/**
 * `deviations` are the standard deviations of the coefficients and `residualDeviation` that of the residuals, with
 * `free` degrees of freedom, null when none is left. `rSquared` is about the mean where a column is constant, else
 * about zero (the rule of NIST's Statistical Reference Datasets). `share(i, k)` is how much of value k the fitted value
 * i takes, `pull(j, k)` how fast coefficient j moves with value k.
 */
export type Fit = {
  coefficients: number[];
  residuals: number[];
  residualSquares: number;
  free: number;
  residualDeviation: number | null;
  deviations: number[] | null;
  rSquared: number;
  share: (i: number, k: number) => number;
  pull: (j: number, k: number) => number;
};

/**
 * Fits values to the columns of `rows` by Householder's QR (Golub and Van Loan, Matrix Computations, 5.3), columns
 * scaled to length one, with one step of refinement on the residuals so that badly conditioned columns keep their
 * digits. No answer when there are fewer rows than columns, or a column follows from the others.
 */
export function leastSquares(rows: readonly (readonly number[])[], values: readonly number[]): Answer<Fit> {
  const columns = rows[0]?.length ?? 0;
  if (columns === 0 || rows.length < columns || rows.length !== values.length) {
    return noAnswer('A fit needs at least as many readings as it has unknowns.');
  }
  const lengths = Array.from({ length: columns }, (_, j) => norm(rows.map((row) => row[j] ?? 0)));
  const scaled = rows.map((row) => row.map((entry, j) => entry / (lengths[j] || 1)));
  const factors = factor(scaled);
  if (!factors) return noAnswer('These readings don’t settle the fit: they lie in one line or at one place.');
  const first = solve(factors, values);
  const step = solve(factors, residualsOf(scaled, values, first));
  const settled = first.map((each, j) => each + (step[j] ?? 0));
  return answer(fitFrom({ rows, scaled, values, lengths, factors, settled }));
}

/** Reflections below and R on and above the diagonal; `tops` holds the diagonal of R. */
type Factors = { columns: number[][]; tops: number[] };

const norm = (entries: readonly number[]): number => Math.hypot(...entries);

/** A column counts as following from the others when less than this share of it is its own. */
const OWN = 1e-11;

function factor(rows: readonly (readonly number[])[]): Factors | undefined {
  const width = rows[0]?.length ?? 0;
  const columns = Array.from({ length: width }, (_, j) => rows.map((row) => row[j] ?? 0));
  const tops: number[] = [];
  for (const [j, column] of columns.entries()) {
    const below = norm(column.slice(j));
    if (!(below > OWN)) return undefined;
    const top = (column[j] ?? 0) > 0 ? -below : below;
    tops.push(top);
    column[j] = (column[j] ?? 0) - top;
    for (const other of columns.slice(j + 1)) reflect(other, column, j);
  }
  return { columns, tops };
}

/** Mirrors a vector at the plane whose normal stands in `mirror` from place j on. */
function reflect(vector: number[], mirror: readonly number[], j: number): void {
  let product = 0;
  let square = 0;
  for (let i = j; i < vector.length; i++) {
    product += (vector[i] ?? 0) * (mirror[i] ?? 0);
    square += (mirror[i] ?? 0) ** 2;
  }
  const by = (2 * product) / square;
  for (let i = j; i < vector.length; i++) vector[i] = (vector[i] ?? 0) - by * (mirror[i] ?? 0);
}

function solve({ columns, tops }: Factors, values: readonly number[]): number[] {
  const turned = [...values];
  columns.forEach((mirror, j) => {
    reflect(turned, mirror, j);
  });
  const result = new Array<number>(columns.length).fill(0);
  for (let j = columns.length - 1; j >= 0; j--) {
    let rest = turned[j] ?? 0;
    for (let k = j + 1; k < columns.length; k++) rest -= (columns[k]?.[j] ?? 0) * (result[k] ?? 0);
    result[j] = rest / (tops[j] ?? 1);
  }
  return result;
}

function residualsOf(
  rows: readonly (readonly number[])[],
  values: readonly number[],
  coefficients: readonly number[],
): number[] {
  return rows.map((row, i) =>
    row.reduce((rest, entry, j) => rest - entry * (coefficients[j] ?? 0), values[i] ?? 0),
  );
}

type Solved = {
  rows: readonly (readonly number[])[];
  scaled: readonly (readonly number[])[];
  values: readonly number[];
  lengths: readonly number[];
  factors: Factors;
  settled: readonly number[];
};

function fitFrom({ rows, scaled, values, lengths, factors, settled }: Solved): Fit {
  const residuals = residualsOf(scaled, values, settled);
  const residualSquares = residuals.reduce((sum, each) => sum + each * each, 0);
  const free = rows.length - settled.length;
  const residualDeviation = free > 0 ? Math.sqrt(residualSquares / free) : null;
  const constant = lengths.some((_, j) => rows.every((row) => row[j] === rows[0]?.[j]));
  const middle = constant ? values.reduce((sum, each) => sum + each, 0) / values.length : 0;
  const whole = values.reduce((sum, each) => sum + (each - middle) ** 2, 0);
  const inverse = inverseOf(factors);
  const directions = scaled.map((row) => inverse.map((line) => dot(line, row)));
  return {
    coefficients: settled.map((each, j) => each / (lengths[j] || 1)),
    residuals,
    residualSquares,
    free,
    residualDeviation,
    deviations:
      residualDeviation === null
        ? null
        : lengths.map(
            (length, j) => (residualDeviation * norm(inverse.map((line) => line[j] ?? 0))) / length,
          ),
    rSquared: whole === 0 ? 1 : 1 - residualSquares / whole,
    share: (i, k) => dot(directions[i] ?? [], directions[k] ?? []),
    pull: (j, k) =>
      dot(
        inverse.map((line) => line[j] ?? 0),
        directions[k] ?? [],
      ) / (lengths[j] ?? 1),
  };
}

const dot = (one: readonly number[], other: readonly number[]): number =>
  one.reduce((sum, each, j) => sum + each * (other[j] ?? 0), 0);

/** R^-1 transposed: its line i times a row of the fit is entry i of that row of Q. */
function inverseOf({ columns, tops }: Factors): number[][] {
  const lines: number[][] = [];
  for (const [i, top] of tops.entries()) {
    const line = tops.map((_, j) => (i === j ? 1 : 0) as number);
    for (let k = 0; k < i; k++) {
      for (let j = 0; j <= k; j++) line[j] = (line[j] ?? 0) - (columns[i]?.[k] ?? 0) * (lines[k]?.[j] ?? 0);
    }
    lines.push(line.map((each) => each / top));
  }
  return lines;
}

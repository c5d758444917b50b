// The beta curves with alpha + beta = 6: all the shapes that a PERT range of weight 4 can take.

/** What is needed at one x: the chance of at most x, and x times the density there. */
export type BetaAt = { chance: number; flow: number };

/**
 * Chance of at most x, 0 < x < 1, by the continued fraction of DLMF 8.17.22, taken from the nearer end (8.17.4).
 * `weight` is `betaWeight(alpha)`; `flow` is x times the density, which is d chance / d ln x.
 */
export function betaAt(x: number, alpha: number, weight: number): BetaAt {
  const beta = SUM - alpha;
  const flow = Math.exp(alpha * Math.log(x) + (beta - 1) * Math.log1p(-x)) / weight;
  if (x <= (alpha + 1) / (SUM + 2)) {
    return { chance: (flow * (1 - x)) / (alpha * fraction(x, alpha, beta)), flow };
  }
  return { chance: 1 - (flow * (1 - x)) / (beta * fraction(1 - x, beta, alpha)), flow };
}

/**
 * B(alpha, 6 - alpha) for 1 <= alpha <= 5. Recurrence and reflection of the gamma function (DLMF 5.5.1, 5.5.3) give
 * (1-a)(2-a)(3-a)(4-a)(5-a) pi / (120 sin pi a); the factor that vanishes at a whole number is taken with the sine.
 */
export function betaWeight(alpha: number): number {
  const whole = Math.round(alpha);
  const angle = Math.PI * (alpha - whole);
  let product = angle === 0 ? 1 : angle / Math.sin(angle);
  for (let j = 1; j < SUM; j++) if (j !== whole) product *= Math.abs(j - alpha);
  return product / 120;
}

const SUM = 6;

/** Lentz's evaluation from the top: a few levels suffice on this side of the mean. */
function fraction(x: number, a: number, b: number): number {
  let upper = 1;
  let lower = 0;
  let value = 1;
  for (let m = 0; m < 200; m++) {
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    upper = 1 + odd / upper;
    lower = 1 / (1 + odd * lower);
    value *= upper * lower;
    const n = m + 1;
    const even = (n * (b - n) * x) / ((a + 2 * n - 1) * (a + 2 * n));
    upper = 1 + even / upper;
    lower = 1 / (1 + even * lower);
    const change = upper * lower;
    value *= change;
    if (Math.abs(change - 1) < 1e-15) break;
  }
  return value;
}

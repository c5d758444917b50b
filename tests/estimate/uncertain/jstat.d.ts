// The parts of jstat that the tests check against; it comes without types.
declare module 'jstat' {
  type Beta = { inv(p: number, a: number, b: number): number; cdf(x: number, a: number, b: number): number };
  type Triangular = {
    cdf(x: number, low: number, high: number, likely: number): number;
    mean(low: number, high: number, likely: number): number;
    variance(low: number, high: number, likely: number): number;
  };
  type Normal = {
    cdf(x: number, mean: number, deviation: number): number;
    inv(p: number, mean: number, deviation: number): number;
  };
  const jstat: { jStat: { beta: Beta; triangular: Triangular; normal: Normal } };
  export default jstat;
}

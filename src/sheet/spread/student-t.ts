/**
 * Quantile of Student's t: the `t` that a two-sided interval of this confidence needs.
 *
 * @param confidence such as 0.95, between 0 and 1
 * @param dof degrees of freedom, above 0; Infinity gives the normal distribution
 * Source of the distribution: JCGM 100 (GUM), annex G; tested against its table G.2.
 */
export function studentT(confidence: number, dof: number): number {
  let low = 0;
  let high = 1;
  while (coverage(high, dof) < confidence) high *= 2;
  for (let i = 0; i < 100 && high - low > 1e-13 * high; i += 1) {
    const middle = (low + high) / 2;
    if (coverage(middle, dof) < confidence) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Probability that |t| stays below a value. */
export function coverage(t: number, dof: number): number {
  if (dof > 1e6) return 2 * normalBelow(t) - 1;
  return 1 - incompleteBeta(dof / (dof + t * t), dof / 2, 0.5);
}

/** Probability that a standard normal variable stays below `z`; error below 1e-12. */
export function normalBelow(z: number): number {
  const tail = 0.5 * upperGamma(z * z * 0.5);
  return z < 0 ? tail : 1 - tail;
}

/** Q(1/2, x), the upper regularised incomplete gamma function of one half: erfc of the root of x. */
function upperGamma(x: number): number {
  if (x < 1.5) return 1 - lowerSeries(x);
  let b = x + 0.5;
  let c = 1e300;
  let d = 1 / b;
  let h = d;
  for (let i = 1; i < 500; i += 1) {
    const a = -i * (i - 0.5);
    b += 2;
    d = 1 / (a * d + b);
    c = b + a / c;
    const delta = d * c;
    h *= delta;
    if (Math.abs(delta - 1) < 1e-16) break;
  }
  return (Math.exp(-x) * Math.sqrt(x) * h) / Math.sqrt(Math.PI);
}

function lowerSeries(x: number): number {
  if (x === 0) return 0;
  let term = 2;
  let sum = term;
  for (let n = 1; n < 500 && Math.abs(term) > 1e-17 * Math.abs(sum); n += 1) {
    term *= x / (n + 0.5);
    sum += term;
  }
  return (sum * Math.exp(-x) * Math.sqrt(x)) / Math.sqrt(Math.PI);
}

/** Regularised incomplete beta function by its continued fraction. */
function incompleteBeta(x: number, a: number, b: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  const front = Math.exp(
    lnGamma(a + b) - lnGamma(a) - lnGamma(b) + a * Math.log(x) + b * Math.log(1 - x),
  );
  return x < (a + 1) / (a + b + 2)
    ? (front * betaFraction(x, a, b)) / a
    : 1 - (front * betaFraction(1 - x, b, a)) / b;
}

function betaFraction(x: number, a: number, b: number): number {
  const tiny = 1e-300;
  let c = 1;
  let d = 1 / nonZero(1 - ((a + b) * x) / (a + 1), tiny);
  let h = d;
  for (let m = 1; m < 1000; m += 1) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / nonZero(1 + even * d, tiny);
    c = nonZero(1 + even / c, tiny);
    h *= d * c;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / nonZero(1 + odd * d, tiny);
    c = nonZero(1 + odd / c, tiny);
    h *= d * c;
    if (Math.abs(d * c - 1) < 1e-15) break;
  }
  return h;
}

function nonZero(x: number, tiny: number): number {
  return Math.abs(x) < tiny ? tiny : x;
}

const LANCZOS = [
  0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313,
  -176.61502916214059, 12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6,
  1.5056327351493116e-7,
];

function lnGamma(x: number): number {
  const y = x - 1;
  const t = y + 7.5;
  const sum = LANCZOS.reduce((total, c, i) => total + (i === 0 ? c : c / (y + i)), 0);
  return 0.5 * Math.log(2 * Math.PI) + (y + 0.5) * Math.log(t) - t + Math.log(sum);
}

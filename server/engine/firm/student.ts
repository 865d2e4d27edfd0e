/** Student’s t distribution, for how sure a mean of few values is. Plain numbers. */

/**
 * The value that a t of so many degrees of freedom keeps below with this probability, 0.5 to 1. By halving of the
 * distribution (Abramowitz and Stegun 26.7.3 and 26.7.4, the closed forms for whole degrees of freedom).
 */
export function studentT(probability: number, freedom: number): number {
  if (!(probability > 0.5 && probability < 1) || !(freedom >= 1)) return Number.NaN;
  const n = Math.min(Math.floor(freedom), MOST);
  let [low, high] = [0, 1];
  while (below(high, n) < probability && high < 1e9) high *= 2;
  for (let i = 0; i < 100; i++) {
    const middle = (low + high) / 2;
    if (below(middle, n) < probability) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Of more the last digit that anyone reads no longer moves, and the sum only gets longer. */
const MOST = 2000;

/** The probability of less than t. */
function below(t: number, n: number): number {
  return 0.5 + between(t, n) / 2;
}

/** A(t|n): the probability of more than -t and less than t. */
function between(t: number, n: number): number {
  const angle = Math.atan(t / Math.sqrt(n));
  const [sine, cosine] = [Math.sin(angle), Math.cos(angle)];
  if (n % 2 === 0) return sine * series(cosine, n / 2, 1);
  const rest = n === 1 ? 0 : sine * cosine * series(cosine, (n - 1) / 2, 2);
  return (2 / Math.PI) * (angle + rest);
}

/** 1 + a/(a+1) cos² + a(a+2)/((a+1)(a+3)) cos⁴ + …, so many terms of it. */
function series(cosine: number, terms: number, a: number): number {
  let [sum, term] = [1, 1];
  for (let top = a; top < a + 2 * (terms - 1); top += 2) {
    term *= (top / (top + 1)) * cosine * cosine;
    sum += term;
  }
  return sum;
}

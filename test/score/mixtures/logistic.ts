/** Solves a x = b for a symmetric positive definite matrix, by Cholesky. @throws when it is not positive definite */
export function solve(a: readonly (readonly number[])[], b: readonly number[]): number[] {
  const n = b.length
  const lower = a.map(() => new Array<number>(n).fill(0))
  for (let i = 0; i < n; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = a[i]![j]!
      for (let k = 0; k < j; k++) sum -= lower[i]![k]! * lower[j]![k]!
      if (i === j && sum <= 0) throw new Error('matrix is not positive definite')
      lower[i]![j] = i === j ? Math.sqrt(sum) : sum / lower[j]![j]!
    }
  }
  const y = new Array<number>(n).fill(0)
  for (let i = 0; i < n; i++) {
    let sum = b[i]!
    for (let k = 0; k < i; k++) sum -= lower[i]![k]! * y[k]!
    y[i] = sum / lower[i]![i]!
  }
  const x = new Array<number>(n).fill(0)
  for (let i = n - 1; i >= 0; i--) {
    let sum = y[i]!
    for (let k = i + 1; k < n; k++) sum -= lower[k]![i]! * x[k]!
    x[i] = sum / lower[i]![i]!
  }
  return x
}

export const logistic = (x: number): number => 1 / (1 + Math.exp(-Math.max(-30, Math.min(30, x))))

const dot = (a: readonly number[], b: readonly number[]): number => {
  let sum = 0
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!
  return sum
}

const MOST_STEPS = 40

/**
 * Ridge logistic regression by Newton steps; the first column is the constant and is not shrunk.
 * @param ridge  weight of the squared coefficients beside the summed log loss
 */
export function fitLogistic(x: readonly (readonly number[])[], y: readonly number[], ridge: number): number[] {
  const m = x[0]!.length
  let w = new Array<number>(m).fill(0)
  for (let step = 0; step < MOST_STEPS; step++) {
    const gradient = w.map((value, j) => (j === 0 ? 0 : ridge * value))
    const curve = w.map((_, i) => w.map((__, j) => (i !== j ? 0 : i === 0 ? 1e-6 : ridge)))
    x.forEach((row, at) => {
      const p = logistic(dot(row, w))
      const weight = p * (1 - p) + 1e-9
      for (let i = 0; i < m; i++) {
        if (row[i] === 0) continue
        gradient[i]! += (p - y[at]!) * row[i]!
        for (let j = 0; j < m; j++) curve[i]![j]! += weight * row[i]! * row[j]!
      }
    })
    const move = solve(curve, gradient)
    w = w.map((value, i) => value - move[i]!)
    if (Math.max(...move.map(Math.abs)) < 1e-7) break
  }
  return w
}

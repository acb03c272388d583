/** A value and its slope. */
export interface Point {
  value: number
  slope: number
}

const MAX_STEPS = 200

/**
 * Where a falling function crosses zero: Newton steps, halved into the bracket whenever they leave it.
 *
 * @param of      value and slope at x; the value falls with x over the whole bracket
 * @param bracket lower and upper end, value positive at the lower and negative at the upper
 * @param search  width to which x is found, and where to start (else in the middle)
 */
export function crossing(
  of: (x: number) => Point,
  bracket: readonly [number, number],
  { within, start }: { within: number; start?: number | undefined },
): number {
  let [low, high] = bracket
  let x = start ?? (low + high) / 2
  for (let step = 0; step < MAX_STEPS; step++) {
    const { value, slope } = of(x)
    if (value === 0) return x
    if (value > 0) low = x
    else high = x
    const newton = x - value / slope
    if (Math.abs(newton - x) <= within) return newton
    const next = newton > low && newton < high ? newton : (low + high) / 2
    if (high - low <= within) return next
    x = next
  }
  return x
}

/**
 * A value that a function gives back: of(x) = x, found in a bracket (secant steps, halved when they stall).
 *
 * @param of      of(x) - x is not negative at `low` and not positive at `high`; one crossing is found if there are more
 * @param within  size of |of(x) - x| that is small enough
 */
export function fixedPoint(of: (x: number) => number, bracket: readonly [number, number], within: number): number {
  let [low, high] = bracket
  let x = Math.min(high, Math.max(low, of(low)))
  let before: { x: number; gap: number } | undefined
  for (let step = 0; step < MAX_STEPS; step++) {
    const gap = of(x) - x
    if (Math.abs(gap) <= within || high - low <= within / 8) return x
    if (gap > 0) low = x
    else high = x
    const secant = before && before.gap !== gap ? x - (gap * (x - before.x)) / (gap - before.gap) : x + gap
    before = { x, gap }
    x = secant > low && secant < high && step % 8 !== 7 ? secant : (low + high) / 2
  }
  return x
}

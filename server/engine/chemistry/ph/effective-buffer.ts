/** A point of a hidden titration curve: charge that the product holds at a pH, and how far the reading may be off. */
export interface CurvePoint {
  ph: number
  charge: number
  /** half width of the charge that comes from the error of the reading */
  error: number
}

/** One effective buffer: charge = base + size / (1 + 10^(pH - pKa)). */
export interface EffectiveBuffer {
  pka: number
  base: number
  /** total of the buffer, not negative */
  size: number
}

const protonated = (ph: number, pka: number): number => 1 / (1 + 10 ** (ph - pka))

export const chargeOf = ({ pka, base, size }: EffectiveBuffer, ph: number): number => base + size * protonated(ph, pka)

/** Base and size by least squares, each point weighed by its error. */
function fitted(points: readonly CurvePoint[], pka: number): EffectiveBuffer {
  const rows = points.map(({ ph, charge, error }) => ({ f: protonated(ph, pka), charge, weight: 1 / error ** 2 }))
  const sum = (of: (row: (typeof rows)[number]) => number): number => rows.reduce((total, row) => total + of(row), 0)
  const weight = sum((row) => row.weight)
  const f = sum((row) => row.weight * row.f) / weight
  const charge = sum((row) => row.weight * row.charge) / weight
  const spread = sum((row) => row.weight * (row.f - f) ** 2)
  const slope = sum((row) => row.weight * (row.f - f) * (row.charge - charge))
  const size = spread === 0 ? 0 : Math.max(0, slope / spread)
  return { pka, size, base: charge - size * f }
}

const STEP_PKA = 0.1

/**
 * Effective buffers that explain a titration curve within the error of its readings.
 *
 * @param points  at least two points of the curve
 * @param range   constants to try: a buffer outside of it does nothing between the readings and the target
 * @returns       one buffer for each constant that fits; none where no single buffer does
 *
 * Two points leave the constant open, three and more narrow it. A product with several buffers beyond the last reading
 * can need more than any of these.
 */
export function effectiveBuffers(
  points: readonly CurvePoint[],
  range: { min: number; max: number },
): EffectiveBuffer[] {
  const count = Math.max(1, Math.round((range.max - range.min) / STEP_PKA))
  const pkas = Array.from({ length: count + 1 }, (_, n) => range.min + ((range.max - range.min) * n) / count)
  return pkas
    .map((pka) => fitted(points, pka))
    .filter((buffer) => points.every((point) => Math.abs(chargeOf(buffer, point.ph) - point.charge) <= point.error))
}

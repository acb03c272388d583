export interface Scale {
  from: number
  to: number
  ticks: number[]
  /** place on the axis, 0 to 1 */
  at: (value: number) => number
}

const STEPS = [1, 2, 2.5, 5, 10]

/** Round step of an axis: at most `most` of them between the ends. */
function stepOf(span: number, most: number): number {
  const rough = span / most
  const power = 10 ** Math.floor(Math.log10(rough))
  return (STEPS.find((step) => step * power >= rough * 0.999) ?? 10) * power
}

/** A straight axis that covers the values with round ticks. @throws never: an empty span becomes one unit wide */
export function scaleOf(min: number, max: number, most = 6): Scale {
  const span = max > min ? max - min : 1
  const step = stepOf(span, most)
  const from = Math.floor(min / step + 1e-9) * step
  const to = Math.ceil((min + span) / step - 1e-9) * step
  const count = Math.round((to - from) / step)
  const ticks = Array.from({ length: count + 1 }, (_, at) => Number((from + at * step).toPrecision(10)))
  return { from, to, ticks, at: (value) => (Math.min(to, Math.max(from, value)) - from) / (to - from) }
}

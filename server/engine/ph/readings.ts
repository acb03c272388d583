import { readableName } from '#engine/units/readable-name.ts'
import { short } from '#engine/units/round.ts'
import type { Addition } from './additive.ts'
import type { AdjustAsked, Meter } from './adjust-types.ts'

/** How far a reading may be off (bench practice): a meter 0.05, strips 0.3 to 0.5. */
export const READING_ERROR_PH: Record<Meter, number> = { meter: 0.05, strips: 0.5 }

/** Added where a dilution was read and it is not known how far it lies from the product. */
export const DILUTION_ERROR_PH = 0.25

type Readings = NonNullable<AdjustAsked['measured']>

/** @throws RangeError naming the reading whose amount does not follow on the one before it */
export function mustFollow(measured: Readings): void {
  measured.forEach(({ added_g }, index) => {
    const before = measured[index - 1]
    if (before === undefined && added_g !== 0)
      throw new RangeError(`measured/0/added_g: expected 0 (the pH before anything goes in), got ${added_g}`)
    if (before !== undefined && added_g <= before.added_g)
      throw new RangeError(
        `measured/${index}/added_g: expected more than ${before.added_g} (all that went in up to this reading), got ${added_g}`,
      )
  })
}

/** @throws RangeError naming the reading that moves the wrong way by more than both readings can be off */
export function mustMove(measured: Readings, addition: Addition, error_ph: number): void {
  const down = addition.kind === 'acid' ? 1 : -1
  measured.forEach(({ ph }, index) => {
    const before = measured[index - 1]
    if (before === undefined || down * (ph - before.ph) <= 2 * error_ph) return
    const name = readableName(addition.inci)
    throw new RangeError(
      `measured/${index}/ph: expected ${down > 0 ? 'at most' : 'at least'} ${short(before.ph)}, as ${name} ${down > 0 ? 'lowers' : 'raises'} the pH; got ${short(ph)}`,
    )
  })
}

/** Total that a straight line through the last two readings would ask for [g]; null where it asks for nothing. */
export function straightLine(measured: Readings, target_ph: number): number | null {
  const [before, last] = [measured.at(-2), measured.at(-1)]
  if (!before || !last || before.ph === last.ph) return null
  const per_ph = (last.added_g - before.added_g) / (before.ph - last.ph)
  const total = last.added_g + per_ph * (last.ph - target_ph)
  return total > last.added_g ? total : null
}

import type { Level } from '#engine/model/records.ts'
import type { Lint } from './lint.ts'
import { fileOf } from './places.ts'

function fault({ min, max, typical }: Level): string | undefined {
  const ends = [min, max, typical].filter((end) => end !== undefined)
  if (ends.some((end) => !(end > 0 && end <= 100))) return `a level lies above 0 and at most at 100 %`
  if (typical === undefined) return undefined
  if (typical < (min ?? 0) || typical > (max ?? 100)) return `typical ${typical} lies outside ${min} to ${max}`
  return undefined
}

/** Guards against use levels that no formula can have, or whose usual dose lies outside their own range. */
export const levelIsInOrder: Lint = (_raw, { ingredients }) =>
  [...ingredients.values()].flatMap((ingredient) =>
    ingredient.roles.flatMap(({ level_percent }, at) => {
      const message = level_percent && fault(level_percent)
      return message ? [{ path: `${fileOf(ingredient)}/roles/${at}/level_percent`, message }] : []
    }),
  )

import type { Lint } from './lint.ts'
import { problemsIn } from './walk.ts'

const isUpsideDown = (min: unknown, max: unknown): boolean =>
  typeof min === 'number' && typeof max === 'number' && min > max

/** Guards against ranges written the wrong way round: a window that is empty is never met. */
export const rangeIsOrdered: Lint = (raw) =>
  problemsIn([...raw.ingredients, ...raw.limits, raw.classes, raw.roles], (object, report) => {
    const { min, max } = object
    if (isUpsideDown(min, max)) report(`min ${String(min)} is above max ${String(max)}`)
    for (const key in object) {
      const value = object[key]
      if (Array.isArray(value) && value.length === 2 && isUpsideDown(value[0], value[1]))
        report(`${String(value[0])} is above ${String(value[1])}`, key)
    }
  })

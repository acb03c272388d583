import type { Lint } from './lint.ts'
import { objectsOf } from './walk.ts'

const isUpsideDown = (min: unknown, max: unknown): boolean =>
  typeof min === 'number' && typeof max === 'number' && min > max

/** Guards against ranges written the wrong way round: a window that is empty is never met. */
export const rangeIsOrdered: Lint = (raw) =>
  [...raw.ingredients, ...raw.limits].flatMap((file) =>
    objectsOf(file).flatMap((found) => {
      const { object } = found
      const problems = isUpsideDown(object['min'], object['max'])
        ? [{ path: found.path, message: `min ${String(object['min'])} is above max ${String(object['max'])}` }]
        : []
      for (const key in object) {
        const value = object[key]
        if (Array.isArray(value) && value.length === 2 && isUpsideDown(value[0], value[1]))
          problems.push({ path: `${found.path}/${key}`, message: `${String(value[0])} is above ${String(value[1])}` })
      }
      return problems
    }),
  )

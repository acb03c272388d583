import { isObject } from '#engine/knowledge/expand-claims.ts'
import type { Lint } from './lint.ts'
import { objectsIn } from './walk.ts'

const isUpsideDown = (min: unknown, max: unknown): boolean =>
  typeof min === 'number' && typeof max === 'number' && min > max

/** Guards against ranges written the wrong way round, and levels outside 0 to 100 %. */
export const rangeIsOrdered: Lint = (raw) =>
  [...raw.ingredients, ...raw.limits].flatMap(({ path, data }) =>
    [...objectsIn(data, path)].flatMap(({ path: at, object }) => {
      const problems = []
      if (isUpsideDown(object['min'], object['max']))
        problems.push({ path: at, message: `min ${object['min']} is above max ${object['max']}` })
      for (const [key, value] of Object.entries(object)) {
        if (Array.isArray(value) && value.length === 2 && isUpsideDown(value[0], value[1])) {
          problems.push({ path: `${at}/${key}`, message: `${value[0]} is above ${value[1]}` })
        }
      }
      const level = object['level_percent']
      if (isObject(level) && Number(level['max'] ?? 0) > 100)
        problems.push({ path: `${at}/level_percent`, message: 'above 100 %' })
      return problems
    }),
  )

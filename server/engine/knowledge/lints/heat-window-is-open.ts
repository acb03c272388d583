import { decidedRange } from './facts.ts'
import type { Lint } from './lint.ts'
import { fileOf } from './places.ts'

const ROOM_C = 25

/** Guards against a heat limit below the heat that the ingredient needs: it could not be worked in at all. */
export const heatWindowIsOpen: Lint = (_raw, { ingredients }) =>
  [...ingredients.values()].flatMap((ingredient) => {
    const heat_max_c = decidedRange(ingredient, 'heat_max_c')?.max
    if (heat_max_c === undefined) return []
    const needed = decidedRange(ingredient, 'heat_min_c')?.min
    const path = `${fileOf(ingredient)}/facts/heat_max_c`
    return [
      ...(needed !== undefined && needed > heat_max_c
        ? [{ path, message: `bears ${heat_max_c} C and needs ${needed} C` }]
        : []),
      ...(heat_max_c < ROOM_C ? [{ path, message: `bears ${heat_max_c} C, less than a warm room` }] : []),
    ]
  })

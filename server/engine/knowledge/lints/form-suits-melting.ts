import { deciding, decidedRange } from './facts.ts'
import type { Lint } from './lint.ts'
import { fileOf } from './places.ts'

const LIQUID_BELOW_C = 26 // impure grades and what cools slowly stay liquid a little below
const SOLID_ABOVE_C = 20
const SOLID = new Set(['solid', 'powder'])

/** Guards against a liquid that melts above room temperature and a solid that melts below it. Trade forms may be solutions: the active matter says so. */
export const formSuitsMelting: Lint = (_raw, { ingredients }) =>
  [...ingredients.values()].flatMap((ingredient) => {
    const form = deciding(ingredient, 'form')?.is
    const melting = decidedRange(ingredient, 'melting_c')
    if (form === undefined || !melting) return []
    const dissolved = (decidedRange(ingredient, 'active_percent')?.max ?? 100) < 95
    const path = `${fileOf(ingredient)}/form`
    if (form === 'liquid' && !dissolved && (melting.min ?? -Infinity) > LIQUID_BELOW_C)
      return [{ path, message: `liquid, and melts only at ${melting.min} C` }]
    if (SOLID.has(form) && (melting.max ?? Infinity) < SOLID_ABOVE_C)
      return [{ path, message: `${form}, and melts already at ${melting.max} C` }]
    return []
  })

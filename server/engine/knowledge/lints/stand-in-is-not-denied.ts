import type { Lint } from './lint.ts'
import { fileOf } from './places.ts'

/** Guards against yes and no of one pair in the same circumstances, and against a thing that replaces itself. */
export const standInIsNotDenied: Lint = (_raw, { ingredients }) =>
  [...ingredients.values()].flatMap((one) =>
    one.standsFor.flatMap((yes, at) => {
      const path = `${fileOf(one)}/stands_in_for/${at}`
      if (yes.for === one.id) return [{ path, message: `${one.id} stands in for itself` }]
      const denied = one.notFor.some(
        (no) => no.for === yes.for && JSON.stringify(no.when ?? {}) === JSON.stringify(yes.when ?? {}),
      )
      return denied ? [{ path, message: `${yes.for} is also in does_not_stand_in_for, in the same circumstances` }] : []
    }),
  )

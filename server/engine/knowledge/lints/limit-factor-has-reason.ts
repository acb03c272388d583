import type { Lint } from './lint.ts'

const ROUNDING = 0.001

/**
 * Points out factors above one (a gram that counts as more than a gram), and none at all. A salt counts less than its
 * acid; where more than the mass counts there has to be a reason (a heavier substance stands for it in the entry).
 */
export const limitFactorHasReason: Lint = (_raw, { limits }) =>
  limits.flatMap(({ id, members }) =>
    Object.entries(members).flatMap(([member, factor]) => {
      const path = `limits/${id}.yaml/members/${member}`
      if (!(factor > 0)) return [{ path, message: `counts ${String(factor)} g a gram; expected above 0` }]
      return factor > 1 + ROUNDING ? [{ path, message: `counts ${factor} g a gram` }] : []
    }),
  )

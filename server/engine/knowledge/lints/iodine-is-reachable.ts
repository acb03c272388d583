import { iodineValue } from '#engine/chemistry/oil-constants.ts'
import { deciding, rangeOfClaim } from './facts.ts'
import type { Lint } from './lint.ts'
import { placeOf } from './places.ts'

const TOLERANCE = 3

const doubleBonds = (acid: string): number => Number(/^C\d+:(\d)/.exec(acid)?.[1] ?? 0)

/** Lowest and highest iodine value that the unsaturated share of a profile can have, were it all its mildest or its most unsaturated acid. */
function bounds(shares: Readonly<Record<string, number>>): { min: number; max: number } | null {
  const unsaturated = Object.entries(shares).filter(([acid, share]) => doubleBonds(acid) > 0 && share >= 1)
  const share = unsaturated.reduce((sum, [, one]) => sum + one, 0)
  const values = unsaturated.flatMap(([acid]) => iodineValue({ [acid]: 100 }) ?? [])
  if (values.length === 0) return null
  return { min: (share / 100) * Math.min(...values), max: (share / 100) * Math.max(...values) }
}

/** Guards against an iodine value that the oil's own fatty acids cannot give, whatever their split. */
export const iodineIsReachable: Lint = (_raw, { ingredients }) =>
  [...ingredients.values()].flatMap((oil) => {
    const shares = oil.classes.has('triglyceride') ? deciding(oil, 'fatty_acids')?.shares : undefined
    const reach = shares && bounds(shares)
    if (!reach) return []
    return (oil.facts.get('iodine_value') ?? []).flatMap((claim) => {
      const { min = -Infinity, max = Infinity } = rangeOfClaim(claim) ?? {}
      if (min <= reach.max + TOLERANCE && max >= reach.min - TOLERANCE) return []
      const text = `${reach.min.toFixed(0)} to ${reach.max.toFixed(0)}`
      return [{ path: placeOf(oil, claim), message: `${min} to ${max}, while its acids can only give ${text}` }]
    })
  })

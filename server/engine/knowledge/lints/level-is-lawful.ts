import type { Ingredient, Limit, LimitRow, PlaysRole } from '#engine/model/records.ts'
import { decidedRange } from './facts.ts'
import type { Lint, Vocabulary } from './lint.ts'
import { fileOf } from './places.ts'

const ROUNDING = 1.005 // a legal figure in round numbers, an equivalent in four digits
const SCENTS = new Set(['scent', 'fragrance', 'essential-oil'])
const PRESERVES = new Set(['preservative', 'preservative-booster'])

/** A hair dye or sunscreen entry says nothing of other uses, a preservative entry nothing of other roles. */
function concerns({ kind, use }: Limit, { role }: PlaysRole): boolean {
  if (kind !== 'law' || use === 'hair-dye') return false
  if (use === 'preservative') return PRESERVES.has(role)
  if (use === 'uv-filter') return role === 'uv-filter'
  if (use === 'fragrance') return SCENTS.has(role)
  return !(use === 'not-preservative' && role === 'preservative')
}

/** Whether a row may bear on the products in which a role is played. */
function mayGovern({ scope }: LimitRow, { when }: PlaysRole): boolean {
  if (scope.product && when?.product && scope.product !== when.product) return false
  return !(scope.areas && when?.areas && !scope.areas.some((area) => when.areas?.includes(area)))
}

/** Whether together they leave no product out: a row for all, or one for each kind of product. */
function coversAll(rows: readonly LimitRow[]): boolean {
  const scopes = rows.map(({ scope }) => Object.entries(scope).filter(([, value]) => value !== undefined))
  const plain = scopes
    .filter((entries) => entries.every(([key]) => key === 'product'))
    .map((entries) => entries[0]?.[1])
  return plain.includes(undefined) || (plain.includes('leave-on') && plain.includes('rinse-off'))
}

/** Most that any product may hold [% as the entry counts]; undefined where it leaves products out or bans outright. */
function mostAllowed({ rows, date }: Limit, role: PlaysRole): number | undefined {
  const inForce = rows.filter(({ applies_from }) => applies_from === undefined || applies_from <= date)
  const limiting = inForce.filter((row) => row.prohibited === true || row.max_percent !== undefined)
  if (!coversAll(limiting)) return undefined
  const maxima = limiting.filter((row) => mayGovern(row, role)).flatMap((row) => row.max_percent ?? [])
  return maxima.length === 0 ? undefined : Math.max(...maxima)
}

/** Entries by the ingredient that they count, with the grams counted in a gram of it. */
function countedBy({ limits, ingredients }: Vocabulary): [Ingredient, Limit, number][] {
  return limits.flatMap((limit) => {
    const named = Object.entries(limit.members).flatMap(([id, factor]): [Ingredient, Limit, number][] => {
      const ingredient = ingredients.get(id)
      return ingredient ? [[ingredient, limit, factor]] : []
    })
    const ofClass = limit.memberClasses.length === 0 ? [] : [...ingredients.values()]
    return [
      ...named,
      ...ofClass
        .filter(({ id, classes }) => !(id in limit.members) && limit.memberClasses.some((one) => classes.has(one)))
        .map((one): [Ingredient, Limit, number] => [one, limit, 1]),
    ]
  })
}

/**
 * Guards against a use level above what any product may hold by law, counted as the entry counts it: as the acid
 * where it says so, by strength where a solution is sold. Outright bans are left to the rule of law: a record of a
 * banned substance is kept so that the tool knows it.
 */
export const levelIsLawful: Lint = (_raw, vocabulary) =>
  countedBy(vocabulary).flatMap(([ingredient, limit, factor]) => {
    const strength = (decidedRange(ingredient, 'active_percent')?.min ?? 100) / 100
    return ingredient.roles.flatMap((role, at) => {
      const most = concerns(limit, role) ? mostAllowed(limit, role) : undefined
      const counted = (role.level_percent?.max ?? 0) * factor * strength
      if (most === undefined || counted <= most * ROUNDING) return []
      const basis = limit.basis ? ` ${limit.basis}` : ''
      return [
        {
          path: `${fileOf(ingredient)}/roles/${at}/level_percent`,
          message: `up to ${Number(counted.toPrecision(3))} %${basis}; ${limit.id} allows at most ${most} %`,
        },
      ]
    })
  })

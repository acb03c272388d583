import { worstAccess } from '#engine/model/access.ts'
import { HIGHEST_HLB, hlbOfBlend } from '#engine/chemistry/hlb-blend.ts'
import type { Claim, Ingredient, Provenance, Role } from '#engine/model/records.ts'
import { middle } from '#engine/units/range.ts'
import { roundTo } from '#engine/units/round.ts'
import { usedClaim } from './used-claim.ts'

const HOLDS = ['emulsifier', 'solubiliser']
const LEAST_EMULSIFIERS = 2

interface Part {
  ingredient: Ingredient
  share_percent: number
}

function broadest(role: string, roles: ReadonlyMap<string, Role>): string {
  const above = roles.get(role)?.broader
  return above === undefined || above === role ? role : broadest(above, roles)
}

const does = (ingredient: Ingredient, jobs: readonly string[], roles: ReadonlyMap<string, Role>): boolean =>
  ingredient.roles.some(({ role }) => jobs.includes(broadest(role, roles)))

const isFattyAlcohol = ({ ingredient }: Part): boolean => ingredient.classes.has('fatty-alcohol')

type Figure = { value: number; locator: string; from: readonly Provenance[] } | null

/**
 * HLB by mass from the emulsifying parts, two at least, all nonionic: others are not chosen by HLB. None where one of
 * them has none. Fatty alcohol gives body and is not counted.
 */
function hlbOf(blend: Ingredient, parts: readonly Part[], roles: ReadonlyMap<string, Role>): Figure {
  if (!does(blend, HOLDS, roles)) return null
  const shares = blend.classProvenance
  const holding = parts.filter((part) => does(part.ingredient, HOLDS, roles) && !isFattyAlcohol(part))
  if (holding.length < LEAST_EMULSIFIERS || !holding.every(({ ingredient }) => ingredient.classes.has('nonionic')))
    return null
  const claims = holding.flatMap(({ ingredient }) => usedClaim(ingredient, 'hlb') ?? [])
  if (claims.length < holding.length) return null
  const known = holding.flatMap(({ ingredient, share_percent }, at) => {
    const { value, min, max } = claims[at] ?? {}
    const hlb = value ?? middle({ ...(min !== undefined && { min }), ...(max !== undefined && { max }) })
    const isSound = hlb !== undefined && hlb >= 0 && hlb <= HIGHEST_HLB && share_percent > 0 && share_percent <= 100
    return isSound ? [{ share_percent, hlb, id: ingredient.id }] : [] // a lint names what is not sound
  })
  if (known.length < holding.length) return null
  return {
    value: roundTo(hlbOfBlend(known), 1),
    locator: `worked out by mass from ${known.map(({ id, hlb }) => `${id} (${hlb})`).join(', ')}`,
    from: [shares, ...claims],
  }
}

/**
 * Active matter: the parts, stated pure, that do the job of the blend, where the job is dosed by it. None where the
 * shares are those of the active parts alone: how much water the trade form holds is then not known.
 */
function activeOf(blend: Ingredient, parts: readonly Part[], roles: ReadonlyMap<string, Role>): Figure {
  const main = blend.roles[0]?.role ?? ''
  if (roles.get(main)?.swap.dose !== 'active-matter') return null
  const active = parts.filter(({ ingredient }) => does(ingredient, [broadest(main, roles)], roles))
  if (active.length === 0 || active.length === parts.length) return null
  return {
    value: roundTo(
      active.reduce((sum, { share_percent }) => sum + share_percent, 0),
      1,
    ),
    locator: `worked out from its parts ${active.map(({ ingredient }) => ingredient.id).join(', ')}`,
    from: [blend.classProvenance],
  }
}

/**
 * HLB and active matter of a recorded blend, worked out from its parts where the record states none; marked derived.
 * A blend with a part that has no record gets neither.
 */
export function blendClaims(
  blend: Ingredient,
  ingredients: ReadonlyMap<string, Ingredient>,
  roles: ReadonlyMap<string, Role>,
): Claim[] {
  const parts = blend.madeOf.flatMap(({ ingredient: id, share_percent }) => {
    const ingredient = ingredients.get(id)
    return ingredient ? [{ ingredient, share_percent }] : []
  })
  if (parts.length === 0 || parts.length < blend.madeOf.length) return []
  const figures = {
    hlb: { figure: hlbOf(blend, parts, roles), unit: '1' },
    active_percent: { figure: activeOf(blend, parts, roles), unit: '%' },
  }
  return Object.entries(figures).flatMap(([property, { figure, unit }]) => {
    if (!figure || blend.facts.has(property)) return []
    const { value, locator, from } = figure
    const source = [...new Set(from.map((one) => one.source))].sort().join('; ')
    const { date } = blend.classProvenance
    const id = `${blend.id}#${property}/derived`
    return [
      {
        id,
        property,
        value,
        unit,
        kind: 'derived' as const,
        source,
        locator,
        access: worstAccess(from),
        date,
        used: true,
      },
    ]
  })
}

import { worstAccess } from '#engine/model/access.ts'
import type { Claim } from '#engine/model/records.ts'
import type { GraphEdge } from './graph-edge.ts'
import { usedClaim } from './subject.ts'
import type { World } from './world.ts'

/** Ingredients that share a stated window of pH or heat with this one, by id. */
export function holdsWithNodes({ holdsWith: { nodes, between } }: World, start: string): string[] {
  if (!nodes.has(start)) return []
  return [...nodes.keys()]
    .filter((id) => {
      const { ph, heat_c } = between(start, id)
      return id !== start && (ph !== undefined || heat_c !== undefined)
    })
    .sort()
}

/** A chain is as strong as its weakest claim. */
function evidenceOf(claims: readonly Claim[]) {
  const sources = [...new Set(claims.map(({ source }) => source))].sort()
  return {
    kind: 'derived' as const,
    source: sources.join('; '),
    ...(claims.length > 0 && { access: worstAccess(claims) }),
    claims: claims.map(({ id }) => id),
  }
}

/** The derived edge between two ingredients: where both keep, and from which claims that follows; null where an end states nothing. */
export function holdsWithEdge(world: World, from: string, to: string): GraphEdge | null {
  const { ph, heat_c } = world.holdsWith.between(from, to)
  if (ph === undefined && heat_c === undefined) return null
  const properties = [...(ph === undefined ? [] : ['ph_stability']), ...(heat_c === undefined ? [] : ['heat_max_c'])]
  const ends = [from, to].flatMap((id) => world.find(id) ?? [])
  const claims = properties.flatMap((property) => ends.flatMap((subject) => usedClaim(subject, property) ?? []))
  return {
    id: `${from}>holds-with>${to}`,
    from,
    to,
    relation: 'holds-with',
    ...(ph !== undefined && { ph }),
    ...(heat_c !== undefined && { heat_c }),
    ...evidenceOf(claims),
  }
}

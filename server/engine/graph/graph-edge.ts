import type { Level, Provenance } from '#engine/model/records.ts'
import type { Range } from '#engine/units/range.ts'
import { statementOf } from './links.ts'
import type { Link } from './links.ts'

/** An edge as others see it, with its conditions and its evidence. */
export interface GraphEdge extends Partial<Provenance> {
  id: string
  from: string
  to: string
  relation: string
  says?: string
  severity?: string
  /** level at which a role is played, or share of a part */
  level_percent?: Level
  /** of a stand-in: parts for one part, and how well it does */
  ratio?: number
  grade?: string
  ph?: Range | null
  heat_c?: Range | null
  /** ids of the claims that a derived edge follows from */
  claims?: string[]
}

export function edgeOf({ key, from, to, attributes }: Link): GraphEdge {
  const { relation, level_percent, ratio, grade } = attributes
  return {
    id: key,
    from,
    to,
    relation,
    ...statementOf(attributes),
    ...(level_percent && { level_percent }),
    ...(ratio !== undefined && { ratio }),
    ...(grade !== undefined && { grade }),
  }
}
